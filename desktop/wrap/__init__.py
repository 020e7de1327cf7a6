"""Wrap: weigh, label, count, box."""
