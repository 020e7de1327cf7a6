"""Tests of the trade's rules."""
