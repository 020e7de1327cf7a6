"""Checks of desktop/panels."""
