"""A day that stands in a field is said anew in the other language; what can't be read stays."""

from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import QEvent, QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.fields import DateField

DAY = date(2026, 11, 26)  # a Thursday


@pytest.fixture
def spanish() -> Iterator[QLocale]:
    before = QLocale()
    yield QLocale(QLocale.Language.Spanish)
    QLocale.setDefault(before)


def test_a_day_follows_the_language_of_the_window(qtbot: QtBot, spanish: QLocale) -> None:
    field, other = DateField(lambda: DAY), DateField(lambda: DAY)
    for one in (field, other):
        qtbot.addWidget(one)
    field.set_value(DAY)
    other.line.setText("some day")
    assert field.text() == "Thu Nov 26, 2026"
    QLocale.setDefault(spanish)
    for one in (field, other):
        QApplication.sendEvent(one, QEvent(QEvent.Type.LanguageChange))
    assert field.text() == "jue 26 nov 2026"
    assert field.value() == DAY
    assert other.text() == "some day"
