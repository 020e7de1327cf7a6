"""The log: everything in one file of the shop's folder, Qt's own messages too."""

import logging
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import qInstallMessageHandler, qWarning

from desktop import logs


@pytest.fixture
def log_file(tmp_path: Path) -> Iterator[Path]:
    root = logging.getLogger()
    before, level = list(root.handlers), root.level
    path = logs.write_logs_to(tmp_path / "logs")
    yield path
    for handler in [each for each in root.handlers if each not in before]:
        root.removeHandler(handler)
        handler.close()
    root.setLevel(level)


def test_what_is_logged_stands_in_the_file(log_file: Path) -> None:
    logging.getLogger("desktop.rail").info("tag %s weighed", "114 ł")
    assert "INFO desktop.rail: tag 114 ł weighed" in log_file.read_text("utf-8")


def test_qts_messages_go_to_the_log(log_file: Path) -> None:
    before = qInstallMessageHandler(None)
    try:
        logs.hear_qt()
        qWarning("the platform says so")
    finally:
        qInstallMessageHandler(before)
    assert "WARNING qt: the platform says so" in log_file.read_text("utf-8")
