"""The papers: shared values in, PDF bytes out."""
