"""Checks of desktop/fields."""
