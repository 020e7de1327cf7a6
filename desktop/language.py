"""The window's language: translators loaded and taken off; widgets hear LanguageChange.

Qt maps a file of words into memory and reads it at each sentence: one rewritten under the running
program, as an upgrade does, ended it. So the words are read whole and kept here.
"""

import logging
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTranslator

log = logging.getLogger(__name__)

# Each language is named in its own words.
LANGUAGES: dict[str, str] = {"en": "English", "es": "Español"}


class _Words(QTranslator):
    """A file of words, read whole. Raises OSError, or ValueError where it holds none."""

    def __init__(self, path: Path, parent: QObject) -> None:
        super().__init__(parent)
        self._kept = path.read_bytes()  # Qt copies none of it: it must live as long as this does
        if not self.load(self._kept):
            raise ValueError(f"no words in {path}")


class Language:
    """Loads `steelyard_<language>.qm` and Qt's own words; English is in the code itself."""

    def __init__(self, app: QCoreApplication, folder: Path) -> None:
        self._app = app
        self._folder = folder
        self._on: list[QTranslator] = []
        self.now = "en"

    def use(self, language: str) -> bool:
        """Speak a language from now on; False when its words are not there and nothing changed."""
        own = self._translator(self._folder / f"steelyard_{language}.qm")
        if own is None and language != "en":
            log.warning("no words for the window in %r", language)
            return False
        qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        fresh = [each for each in (own, self._translator(qt / f"qtbase_{language}.qm")) if each]
        for old in self._on:
            self._app.removeTranslator(old)
            old.deleteLater()
        for each in fresh:
            self._app.installTranslator(each)
        self._on = fresh
        self.now = language
        QLocale.setDefault(QLocale(QLocale.Language.Spanish if language == "es" else _US))
        return True

    def _translator(self, path: Path) -> QTranslator | None:
        try:
            return _Words(path, self._app)
        except FileNotFoundError:
            return None
        except (OSError, ValueError) as fault:
            log.warning("words not read: %s", fault)
            return None


_US = QLocale(QLocale.Language.English, QLocale.Country.UnitedStates)
