"""Checks of desktop/shell."""
