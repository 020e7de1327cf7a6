"""Tests of what labels must say."""
