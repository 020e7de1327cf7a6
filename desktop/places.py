"""What every place of the window is: a title, a first focus, a refresh and a page of help."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Signal
from PySide6.QtWidgets import QWidget

if TYPE_CHECKING:
    from desktop.bench import Bench, Target


class Place(QWidget):
    """One place in the shop. Subclasses build in `__init__` and end it with `retranslate()`.

    Signals:
        said: a sentence for the status line.
        unsaid: a sentence that no longer holds; it goes if it still stands there.
        changed: this place has changed the shop's records; others refresh when entered.
        go: another place is wanted; carries a Target.
    """

    key = ""
    said = Signal(str)
    unsaid = Signal(str)
    changed = Signal()
    go = Signal(object)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self._of_shown = ""

    def say_of_shown(self, sentence: str) -> None:
        """Say what holds of what is shown now, until `unsay`: "Ctrl+Z takes them back"."""
        self._of_shown = sentence
        self.said.emit(sentence)

    def unsay(self) -> None:
        """Another thing is shown, or this one has changed: what was said of it goes."""
        if self._of_shown:
            self.unsaid.emit(self._of_shown)
            self._of_shown = ""

    def title(self) -> str:
        """The place's name, for the window's title."""
        return self.key

    def first_focus(self) -> QWidget:
        """What has the keyboard when the place is entered."""
        return self

    def refresh(self) -> None:
        """Read the shop's records again."""

    def open(self, what: "Target") -> None:
        """Show one thing: a customer, an animal, an order, a lot, a bill."""

    def at_hand(self) -> "Target | None":
        """What one is at here, which the place one goes to by its key may take up; or None."""
        return None

    def take_up(self, what: "Target") -> None:
        """Show what one was at in the place one comes from, where it means something here."""

    def may_leave(self) -> bool:
        """Whether the place lets go; a place that holds unsaved work asks first."""
        return True

    def help_page(self) -> str:
        """The page of the manual for this place."""
        return self.key

    def retranslate(self) -> None:
        """Set every word of the place again; called when the language changes."""

    def changeEvent(self, event: QEvent) -> None:
        """The language changed: set every word again."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()
