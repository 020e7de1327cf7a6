"""The menu behind the mark (F10): light or dark, size of type, language, copies, help, leaving."""

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from desktop.language import LANGUAGES
from desktop.settings import Settings, SettingsFile

PERCENTS = (90, 100, 110, 125, 150)


class ShopMenu(QMenu):
    """What belongs to the station rather than to one place.

    Signals:
        keys_wanted, help_wanted, about_wanted, copy_wanted, trace_wanted, records_wanted,
        leave_wanted: that entry was picked.
    """

    keys_wanted = Signal()
    help_wanted = Signal()
    about_wanted = Signal()
    copy_wanted = Signal()
    trace_wanted = Signal()
    records_wanted = Signal()
    leave_wanted = Signal()

    def __init__(self, settings: SettingsFile, parent: QWidget) -> None:
        super().__init__(parent)
        self.settings = settings
        self._choices: list[tuple[QAction, str, object]] = []
        self._theme_menu = self.addMenu("")
        self._themes = {
            name: self._choice(self._theme_menu, "theme", name) for name in ("light", "dark")
        }
        self._size_menu = self.addMenu("")
        for percent in PERCENTS:
            self._choice(self._size_menu, "percent", percent).setText(f"{percent} %")
        self._language_menu = self.addMenu("")
        for code, name in LANGUAGES.items():
            self._choice(self._language_menu, "language", code).setText(name)
        for menu in (self._theme_menu, self._size_menu, self._language_menu):
            self._make_exclusive(menu)
        self.addSeparator()
        self.trace_action = self._entry(self.trace_wanted, "Ctrl+T")
        self.records_action = self._entry(self.records_wanted)
        self.copy_action = self._entry(self.copy_wanted)
        self.addSeparator()
        self.help_action = self._entry(self.help_wanted, "F1")
        self.keys_action = self._entry(self.keys_wanted, "Ctrl+F1")
        self.about_action = self._entry(self.about_wanted)
        self.addSeparator()
        self.leave_action = self._entry(self.leave_wanted, "Ctrl+Q")
        settings.on_change(self._tick)
        self._tick(settings.now)
        self.retranslate()

    def retranslate(self) -> None:
        """Every entry in the window's language."""
        self.setTitle(self.tr("Shop"))
        self.setAccessibleName(self.tr("Shop"))
        self._theme_menu.setTitle(self.tr("&Light or dark"))
        self._themes["light"].setText(self.tr("&Light"))
        self._themes["dark"].setText(self.tr("&Dark"))
        self._size_menu.setTitle(self.tr("&Size of type"))
        self._language_menu.setTitle(self.tr("L&anguage"))
        self.trace_action.setText(self.tr("&Trace a tag or number…"))
        self.records_action.setText(self.tr("&Write out the records…"))
        self.copy_action.setText(self.tr("Make a &copy of the records now…"))
        self.help_action.setText(self.tr("&Help for this place"))
        self.keys_action.setText(self.tr("All &keys"))
        self.about_action.setText(self.tr("A&bout Steelyard"))
        self.leave_action.setText(self.tr("&Quit"))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange and hasattr(self, "leave_action"):
            self.retranslate()

    def _entry(self, signal: object, keys: str = "") -> QAction:
        action = QAction(self)
        if keys:
            action.setShortcut(QKeySequence(keys))
        action.triggered.connect(signal)
        self.addAction(action)
        return action

    def _choice(self, menu: QMenu, setting: str, value: object) -> QAction:
        action = QAction(menu)
        action.setCheckable(True)
        action.setData((setting, value))
        action.triggered.connect(self._chosen)
        menu.addAction(action)
        self._choices.append((action, setting, value))
        return action

    def _make_exclusive(self, menu: QMenu) -> None:
        group = QActionGroup(menu)
        for action in menu.actions():
            group.addAction(action)

    def _chosen(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            setting, value = action.data()
            self.settings.change(**{setting: value})

    def _tick(self, settings: Settings) -> None:
        for action, setting, value in self._choices:
            action.setChecked(getattr(settings, setting) == value)
