"""Hands that use the whole window by chance, by a seed, and note what goes wrong.

They press keys, type rubbish and figures, push whatever button is seen, answer the door as it
comes, and go on while a question stands. The same seed does the same as far as the workers' turns
allow: what was done last stands with each fault.
"""

import random
from collections import deque
from collections.abc import Callable
from pathlib import Path
from time import monotonic

from PySide6.QtCore import QEvent, QEventLoop, QPoint, Qt, QTimer
from PySide6.QtGui import QKeyEvent, QShortcut
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDialog,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QWidget,
)
from shiboken6 import isValid

from desktop.app import Program
from desktop.fields import ChoiceField
from desktop.fields.field import Field

Key = Qt.Key
PLAIN, CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.AltModifier,
)
TEXTS = (
    *("", " ", "0", "-1", "2", "12", "1.5", "1,5", "1.234,56", "999999999999", "12 lb 4 oz", "1/0"),
    *("1¼ in", "½", "NaN", "inf", "1e9", "٣٤", "$12.50", "12,50", "101%", "301", "B-17", "1234 lb"),
    *("Maren Ødegård", "O'Brien", "Ñandú Peña", "李小龙", "ham", "chuleta", "rib steak", "h", "p"),
    *("<b>bold</b>", "{name}", "%s %d", "&&", "'; DROP TABLE orders; --", "a\tb", "x" * 300),
    *("today", "mañana", "11/30/2026", "29.2.2027", "0000-00-00", "9999-12-31", "25:99"),
    *("555 0101", "mail@", "\u202eabc", "\x00", "\u200b", "e\u0301"),
)
GOOD = {
    "WeightField": ("98.5", "212", "1 lb 4 oz"),
    "MoneyField": ("12.50", "300"),
    "CountField": ("1", "2", "6"),
    "DateField": ("today", "3/9/2026", "4/1/2026"),
    "LengthField": ("1", "3/4"),
    "PhoneField": ("555 0142",),
}
ANY_GOOD = ("Anna Berg", "as usual")
KEYS = (
    *(Key.Key_Tab, Key.Key_Backtab, Key.Key_Up, Key.Key_Down, Key.Key_Left, Key.Key_Right),
    *(Key.Key_Return, Key.Key_Enter, Key.Key_Escape, Key.Key_Space, Key.Key_PageUp),
    *(Key.Key_PageDown, Key.Key_Home, Key.Key_End, Key.Key_Delete, Key.Key_Backspace, Key.Key_Menu),
)
PLACES = (Key.Key_F2, Key.Key_F3, Key.Key_F4, Key.Key_F5, Key.Key_F6)
SETTINGS: tuple[tuple[str, object], ...] = (
    *(("theme", "dark"), ("theme", "light"), ("language", "es"), ("language", "en")),
    *(("percent", 90), ("percent", 150), ("percent", 100)),
)
ESCAPES = 16
STANDS_S = 0.03  # how long a question stands now and then, with the rest going on


class RandomDoor:
    """Answers whatever is asked by chance; the paths it names are good, missing, or a folder."""

    def __init__(self, chance: random.Random, folder: Path, note: Callable[[str], None]) -> None:
        self._chance, self._folder, self._note = chance, folder, note

    def tell(self, title: str, text: str, detail: str = "") -> None:
        self._stand("told", text)

    def ask(self, title: str, text: str, yes: str, no: str) -> bool:
        self._stand("asked", text)
        return self._chance.random() < 0.6

    def ask_reason(self, title: str, text: str, *, optional: bool = False) -> str | None:
        self._stand("asked why", text)
        return self._chance.choice((None, "dropped on the floor", "ñ " * 200))

    def save_where(self, title: str, suggested: Path, kind: str) -> Path | None:
        self._stand("asked where", title)
        here = self._folder
        return self._chance.choice((None, here / suggested.name, here / "gone" / "x.pdf", here))

    def open_which(self, title: str, folder: Path, kind: str) -> Path | None:
        self._stand("asked which", title)
        rubbish = self._folder / "rubbish.bin"
        rubbish.write_bytes(bytes(range(256)))
        return self._chance.choice((None, rubbish, self._folder, self._folder / "missing"))

    def _stand(self, how: str, text: str) -> None:
        self._note(f"{how}: {text[:80]!r}")
        assert text.strip(), f"{how} nothing"
        if self._chance.random() < 0.4:
            loop = QEventLoop()
            QTimer.singleShot(int(STANDS_S * 1000), loop.quit)
            loop.exec()


class RandomHands:
    """Does one thing after another; `wrong` is what nobody should have seen, with what led to it.

    `last` is what was done last, to be shown beside a fault of another kind.
    """

    def __init__(self, seed: int, folder: Path) -> None:
        self.chance = random.Random(seed)
        self.door = RandomDoor(self.chance, folder, self._note)
        self.last: deque[str] = deque(maxlen=25)
        self.wrong: list[str] = []
        self.done = 0
        self._program: Program | None = None

    def use(self, program: Program, actions: int, until: float) -> None:
        """So many things, or until a moment of the machine's clock; then Esc till home."""
        self._program = program
        program.window.activateWindow()
        kinds: dict[Callable[[], None], float] = {
            **{self._key: 20, self._type: 16, self._button: 24, self._shortcut: 14},
            **{self._click: 8, self._place: 5, self._fill: 5, self._form: 7, self._letter: 5},
            **{self._undo: 2, self._home: 4, self._set: 1.2, self._menu: 2},
        }
        for _ in range(actions):
            if monotonic() > until or not program.window.isVisible():
                break
            self.done += 1
            top = self._top()
            if not isinstance(top, QMenu) and not top.isActiveWindow():
                top.activateWindow()
            self.chance.choices(list(kinds), list(kinds.values()))[0]()
            self._settle()
            self._look()
        self._home()

    def _window(self) -> QWidget:
        assert self._program is not None
        return self._program.window

    def _top(self) -> QWidget:
        over = QApplication.activePopupWidget() or QApplication.activeModalWidget()
        active = QApplication.activeWindow()
        return over or (active if active is not None and active.isVisible() else self._window())

    def _focus(self) -> QWidget:
        popup = QApplication.activePopupWidget()
        if popup is not None:
            return popup.focusWidget() or popup
        focus, modal = QApplication.focusWidget(), QApplication.activeModalWidget()
        if focus is not None and modal is not None and not modal.isAncestorOf(focus):
            return modal  # it is just opening: what is behind it gets no key any more
        return focus or self._top()

    def _settle(self) -> None:
        assert self._program is not None
        end = monotonic() + (2 if self.chance.random() < 0.7 else 0)
        QApplication.processEvents()
        while self._program.bench.work.busy() and monotonic() < end:
            QTest.qWait(2)

    def _note(self, text: str) -> None:
        self.last.append(f"{self.done}: {text}")

    def _fault(self, text: str) -> None:
        self.wrong.append("\n".join((text, *self.last)))

    def _look(self) -> None:
        """Whether the keyboard is somewhere one sees."""
        if QApplication.activePopupWidget() is not None:
            return
        self._top().activateWindow()
        if QApplication.focusWidget() is None:
            QTest.qWait(20)
        focus = QApplication.focusWidget()
        if focus is None and QApplication.activePopupWidget() is None:
            self._fault(f"nothing has the keyboard in {called(self._top())}")
        elif focus is not None and not focus.isVisible() and focus.window().isVisible():
            self._fault(f"{called(focus)} has the keyboard and isn't shown")

    def _press(self, key: Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
        self._note(f"{modifier.name} {key.name} at {called(self._focus())}")
        QTest.keyClick(self._focus(), key, modifier)

    def _key(self) -> None:
        for _ in range(self.chance.choice((1, 1, 1, 2, 5))):
            self._press(self.chance.choice(KEYS), self.chance.choice((PLAIN,) * 10 + (SHIFT, CTRL)))

    def _letter(self) -> None:
        letter = Key(ord(self.chance.choice("ABCDEFGHIJKLMNOPRSTUVWXYZ123456789")))
        self._press(letter, self.chance.choice((CTRL, ALT)))

    def _place(self) -> None:
        self._press(self.chance.choice(PLACES))

    def _undo(self) -> None:
        self._press(self.chance.choice((Key.Key_Z, Key.Key_Z, Key.Key_Y)), CTRL)

    def _write(self, text: str, at: QWidget | None = None) -> None:
        for letter in text[: self.chance.choice((3, 12, 80))]:
            plain = letter.isascii() and letter != "\x00"
            key = ord(letter.upper()) if plain else Key.Key_unknown.value
            for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
                over = QApplication.activePopupWidget() or QApplication.activeModalWidget()
                if at is None or not isValid(at) or (over and not over.isAncestorOf(at)):
                    at = self._focus()
                QApplication.sendEvent(at, QKeyEvent(kind, key, PLAIN, letter))

    def _type(self) -> None:
        text = self.chance.choice((*TEXTS, f"{self.chance.uniform(0, 900):.1f}"))
        self._note(f"type {text[:30]!r} at {called(self._focus())}")
        self._write(text)
        if self.chance.random() < 0.4:
            self._press(self.chance.choice((Key.Key_Return, Key.Key_Tab)))

    def _go_to(self, widget: QWidget) -> bool:
        """As by a click: whatever list is open is shut first."""
        if QApplication.activePopupWidget() is not None:
            self._press(Key.Key_Escape)
        if QApplication.activePopupWidget() is not None:
            return False
        if not isValid(widget) or not widget.isVisible() or not widget.isEnabled():
            return False
        widget.window().activateWindow()  # a list that shuts leaves none in front, offscreen
        widget.setFocus()
        QTest.keyClick(widget, Key.Key_A, CTRL)
        return True

    def _fill(self) -> None:
        """Rubbish in some fields at once."""
        editors = [
            one
            for one in self._top().findChildren(QWidget)
            if isinstance(one, QLineEdit | QPlainTextEdit) and one.isVisible()
        ]
        for one in self.chance.sample(editors, min(5, len(editors))):
            if self._go_to(one):
                text = self.chance.choice(TEXTS)
                self._note(f"fill {text[:30]!r} in {called(one)}")
                self._write(text, one)
        if self.chance.random() < 0.5:
            self._press(Key.Key_Return, CTRL)

    def _form(self) -> None:
        """A form filled as one does, then taken."""
        top = self._top()
        fields: list[Field[object]] = [one for one in top.findChildren(Field) if one.isVisible()]
        for field in fields[:14]:
            if self.chance.random() < 0.25 or not isValid(field):
                continue
            texts = GOOD.get(type(field).__name__, ANY_GOOD)
            if isinstance(field, ChoiceField):
                texts = tuple(field.box.itemText(at) for at in range(field.box.count())) or ("",)
            editor = next((one for one in field.findChildren(QLineEdit) if one.isVisible()), None)
            if editor is not None and self._go_to(editor):
                text = self.chance.choice(texts)
                self._note(f"put {text[:30]!r} in {called(editor)}")
                self._write(text, editor)
        if isinstance(top, QDialog):
            self._press(Key.Key_Return, CTRL)

    def _button(self) -> None:
        top = self._top()
        seen = [one for one in top.findChildren(QAbstractButton) if in_sight(one, top)]
        if isinstance(top, QMenu) or not seen:
            return self._menu()
        one = self.chance.choice(seen)
        self._note(f"click {called(one)}")
        return QTest.mouseClick(one, Qt.MouseButton.LeftButton)

    def _shortcut(self) -> None:
        top = self._top()
        keys = [one.key() for one in top.findChildren(QShortcut) if one.isEnabled()]
        if keys:
            chosen = self.chance.choice(keys)
            self._note(f"{chosen.toString()} at {called(self._focus())}")
            QTest.keySequence(self._focus(), chosen)

    def _click(self) -> None:
        top = self._top()
        at = QPoint(self.chance.randrange(top.width()), self.chance.randrange(top.height()))
        hit = top.childAt(at) or top
        self._note(f"mouse {at.toTuple()} on {called(hit)}")
        QTest.mouseClick(hit, Qt.MouseButton.LeftButton, PLAIN, hit.mapFrom(top, at))

    def _menu(self) -> None:
        top = self._top()
        if not isinstance(top, QMenu):
            self._press(Key.Key_F10)
            return
        ways = [one for one in top.actions() if one.isEnabled() and not one.isSeparator()]
        chosen = self.chance.choice(ways)
        if chosen.shortcut().toString() != "Ctrl+Q":
            self._note(f"menu {chosen.text()!r}")
            at = top.actionGeometry(chosen).center()
            QTest.mouseClick(top, Qt.MouseButton.LeftButton, PLAIN, at)

    def _set(self) -> None:
        assert self._program is not None
        name, value = self.chance.choice(SETTINGS)
        self._note(f"{name} {value}")
        self._program.bench.settings.change(**{name: value})

    def _home(self) -> None:
        """Esc closes whatever is open, sooner or later."""
        for _ in range(ESCAPES):
            over = QApplication.activePopupWidget() or QApplication.activeModalWidget()
            if over is None:
                return
            if not isinstance(over, QMenu):
                over.activateWindow()
            self._press(Key.Key_Escape)
            QTest.qWait(1)
        left = QApplication.activeModalWidget()
        if left is not None:
            self._fault(f"Esc never closes {called(left)}")
            left.hide()


def called(widget: QWidget) -> str:
    """What a widget is, and its name."""
    words = widget.accessibleName() or widget.windowTitle()
    if not words and isinstance(widget, QAbstractButton):
        words = widget.text()
    return f"{type(widget).__name__} {words[:40]!r}"


def in_sight(widget: QWidget, top: QWidget) -> bool:
    """Whether one can click it: seen, enabled, and nothing over it."""
    if not widget.isVisible() or not widget.isEnabled() or isinstance(widget, QComboBox):
        return False
    hit = top.childAt(widget.mapTo(top, widget.rect().center()))
    return hit is not None and (hit is widget or widget.isAncestorOf(hit))
