"""Checks of desktop/look."""
