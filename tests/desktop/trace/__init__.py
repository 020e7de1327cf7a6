"""Tests of the trace and of the kept records in the window."""
