"""What desktop tests share: recorded messages, and the program's own look on the application."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import bundled_fonts
from tests.desktop.recorded_messages import RecordedMessages


@pytest.fixture(scope="session", autouse=True)
def dressed(qapp: QApplication) -> Theme:
    """The application in the light theme and the bundled face, as it is started."""
    worn = Theme(family=load_fonts(bundled_fonts()))
    theme.apply(qapp, worn)
    return worn


@pytest.fixture
def messages() -> RecordedMessages:
    """The door for messages, which keeps what was said and answers what the test set."""
    return RecordedMessages()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """An empty folder for a shop's data."""
    return tmp_path / "shop"
