"""Tests of what a scale says on its line."""
