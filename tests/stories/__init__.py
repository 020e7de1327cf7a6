"""Whole days in the shop, from booking to bill, in one process."""
