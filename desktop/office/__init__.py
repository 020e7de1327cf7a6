"""Office: rates, bills, statements, the shop's own names."""
