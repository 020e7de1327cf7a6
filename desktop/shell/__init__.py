"""The work without a window, one command a file."""
