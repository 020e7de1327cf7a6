"""Tests of the planner, file by file."""
