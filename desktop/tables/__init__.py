"""Read-only tables over ready rows."""
