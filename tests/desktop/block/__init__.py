"""Checks of desktop/block."""
