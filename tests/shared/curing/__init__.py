"""Tests of cure, smoke and sausage."""
