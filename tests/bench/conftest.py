"""What is measured collects where the program does."""

from tests.desktop.conftest import collecting

__all__ = ["collecting"]
