"""What can be done with the order that is open: the main step, the usual ones, and the rest."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QLayout, QMenu, QPushButton, QWidget

from desktop.look.space import TOGETHER, row
from desktop.panels.buttons import button

if TYPE_CHECKING:
    from collections.abc import Callable


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to do: its code, its key; `shown` on a button where there is room."""

    code: str
    keys: str
    shown: bool = False


STEPS = (
    Step("usual", "F9", shown=True),
    Step("last_time", "Ctrl+L", shown=True),
    Step("note", "F12", shown=True),
    Step("owners", "Ctrl+O"),
    Step("lead", "Ctrl+G"),
    Step("history", "Ctrl+H"),
    Step("undo", "Ctrl+Z"),
    Step("redo", "Ctrl+Shift+Z"),
    Step("name", "F11"),
    Step("customer", "Ctrl+D"),
    Step("payment", "F7"),
    Step("booking", "Ctrl+E"),
    Step("confirmation", "Ctrl+P"),
    Step("form", "Ctrl+Shift+P"),
    Step("read_form", "Ctrl+Shift+O"),
    Step("hand_over", "F8"),
    Step("take_back", "Ctrl+Backspace"),
)


class OrderSteps(QWidget):
    """A row of buttons; what there is no room for is in the menu, where everything is.

    Signals:
        wanted: a step was chosen; carries its code, "main" for the main one.
    """

    wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.main = button(self, main=True)
        self.main.clicked.connect(lambda: self.wanted.emit("main"))
        self.menu = QMenu(self)
        self.more = button(self)
        self.more.setMenu(self.menu)
        self.buttons: dict[str, QPushButton] = {}
        across = row(self, gap=TOGETHER)
        across.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        across.addWidget(self.main)
        for step in STEPS:
            if step.shown:
                self.buttons[step.code] = self._button(step.code)
                across.addWidget(self.buttons[step.code])
        across.addWidget(self.more)
        across.addStretch(1)

    def add_keys(self, place: QWidget) -> None:
        """The steps' keys hold in the whole of a widget."""
        self._key(place, "Ctrl+Return", "main")
        for step in STEPS:
            self._key(place, step.keys, step.code)

    def name_main(self, words: str, *, possible: bool) -> None:
        """What the main step is now, and whether it can be done."""
        self.main.setText(words)
        self.main.setEnabled(possible)
        self._fit()

    def retranslate(self) -> None:
        """Set every word again."""
        said = self._words()
        self.more.setText(self.tr("&More"))
        if not self.main.text():
            self.main.setText(self.tr("Settle  Ctrl+Enter"))
        self.menu.clear()
        for step in STEPS:
            words = said[step.code]
            keys = QKeySequence(step.keys).toString(QKeySequence.SequenceFormat.PortableText)
            action = self.menu.addAction(f"{words}\t{keys}")
            action.triggered.connect(self._wish(step.code))
            if step.code in self.buttons:
                self.buttons[step.code].setText(f"{words}  {keys}")
        self._fit()

    def _words(self) -> dict[str, str]:
        return {
            "usual": self.tr("House's usual"),
            "last_time": self.tr("As last time"),
            "note": self.tr("Note"),
            "owners": self.tr("Owners side by side"),
            "lead": self.tr("Cut as another owner says"),
            "history": self.tr("Who changed what"),
            "undo": self.tr("Take back"),
            "redo": self.tr("Do again"),
            "name": self.tr("Name the owner"),
            "customer": self.tr("What is kept of the owner"),
            "payment": self.tr("Payment"),
            "booking": self.tr("Change or cancel the booking"),
            "confirmation": self.tr("Confirmation on paper"),
            "form": self.tr("Blank order form"),
            "read_form": self.tr("Read a filled form"),
            "hand_over": self.tr("Hand over"),
            "take_back": self.tr("Take the order back"),
        }

    def minimumSizeHint(self) -> QSize:
        """Room for the main step and the menu; the others go where there is none."""
        least = super().minimumSizeHint()
        least.setWidth(self.main.sizeHint().width() + TOGETHER + self.more.sizeHint().width())
        return least

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Hide from the right what would be cut off; the menu has it."""
        room = self.width() - self.main.sizeHint().width() - self.more.sizeHint().width()
        room -= TOGETHER
        for each in self.buttons.values():
            room -= each.sizeHint().width() + TOGETHER
            each.setVisible(room >= 0)

    def _button(self, code: str) -> QPushButton:
        made = button(self)
        made.clicked.connect(self._wish(code))
        return made

    def _wish(self, code: str) -> "Callable[[], None]":
        return lambda: self.wanted.emit(code)

    def _key(self, place: QWidget, keys: str, code: str) -> None:
        shortcut = QShortcut(QKeySequence(keys), place)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self._wish(code))
