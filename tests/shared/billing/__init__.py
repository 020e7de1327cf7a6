"""Tests of bills, statements and payments."""
