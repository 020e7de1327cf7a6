"""Tests of the words."""
