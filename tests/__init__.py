"""The tests, laid out as the rooms they test."""
