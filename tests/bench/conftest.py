"""What is measured collects where the program does, and its windows go with the test."""

from tests.desktop.conftest import collecting, dressed, worn

__all__ = ["collecting", "dressed", "worn"]
