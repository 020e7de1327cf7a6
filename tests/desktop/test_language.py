"""The window's language: English is in the code, and a missing one changes nothing."""

from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from desktop.language import Language


def test_english_needs_no_file(qapp: QApplication, tmp_path: Path) -> None:
    before = QLocale()
    language = Language(qapp, tmp_path)
    assert language.use("en")
    assert language.now == "en"
    QLocale.setDefault(before)


def test_a_language_without_words_changes_nothing(qapp: QApplication, tmp_path: Path) -> None:
    language = Language(qapp, tmp_path)
    assert not language.use("es")
    assert language.now == "en"
