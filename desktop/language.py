"""The window's language: translators loaded and taken off; widgets hear LanguageChange."""

import logging
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

log = logging.getLogger(__name__)

# Each language is named in its own words.
LANGUAGES: dict[str, str] = {"en": "English", "es": "Español"}


class Language:
    """Loads `steelyard_<language>.qm` and Qt's own words; English is in the code itself."""

    def __init__(self, app: QCoreApplication, folder: Path) -> None:
        self._app = app
        self._folder = folder
        self._on: list[QTranslator] = []
        self.now = "en"

    def use(self, language: str) -> bool:
        """Speak a language from now on; False when its words are not there and nothing changed."""
        fresh: list[QTranslator] = []
        own = self._translator(self._folder / f"steelyard_{language}.qm")
        if own is None and language != "en":
            log.warning("no words for the window in %r", language)
            return False
        qt = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        fresh = [each for each in (own, self._translator(qt / f"qtbase_{language}.qm")) if each]
        for old in self._on:
            self._app.removeTranslator(old)
        for each in fresh:
            self._app.installTranslator(each)
        self._on = fresh
        self.now = language
        QLocale.setDefault(QLocale(QLocale.Language.Spanish if language == "es" else _US))
        return True

    def _translator(self, path: Path) -> QTranslator | None:
        translator = QTranslator(self._app)
        return translator if path.exists() and translator.load(str(path)) else None


_US = QLocale(QLocale.Language.English, QLocale.Country.UnitedStates)
