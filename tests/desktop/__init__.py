"""Tests of the window and the shell commands."""
