"""The species files: read, checked and held against published tables."""
