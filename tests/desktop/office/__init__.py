"""Checks of desktop/office."""
