"""Pieces every place is laid out with."""
