"""Checks of desktop/wrap."""
