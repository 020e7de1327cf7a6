"""The stories are told on the same bench as the tests of the window."""

from tests.desktop.conftest import bench, collecting, dressed, messages, paths, worn

__all__ = ["bench", "collecting", "dressed", "messages", "paths", "worn"]
