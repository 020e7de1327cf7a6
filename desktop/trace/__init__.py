"""Tracing a tag or a number to all that is kept, and writing the kept records out."""
