"""Checks of desktop/counter."""
