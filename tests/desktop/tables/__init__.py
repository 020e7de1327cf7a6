"""Checks of desktop/tables."""
