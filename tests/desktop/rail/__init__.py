"""Checks of desktop/rail."""
