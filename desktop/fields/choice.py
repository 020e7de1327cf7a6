"""The field for one of several: type any part of it, or step with up and down."""

from collections.abc import Callable, Sequence
from typing import Generic, TypeVar, cast

from PySide6.QtCore import QCoreApplication, QEvent, QModelIndex, QObject, QStringListModel, Qt
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QKeySequence,
    QShortcut,
    QStandardItem,
    QStandardItemModel,
)
from PySide6.QtWidgets import QApplication, QComboBox, QCompleter, QLineEdit, QWidget

from desktop.fields.field import Field
from desktop.fields.pick_box import PickBox
from shared.shop.customers import name_key
from shared.shop.found_names import name_forms
from shared.shop.other_names import Found, Layer, NamesSearched

T = TypeVar("T")
FEW = 4  # so many choices are named to who typed none of them
_BETWEEN = " · "
_OWN_NAME = Qt.ItemDataRole.UserRole
_PLACE = Qt.ItemDataRole.UserRole + 1
_OTHER = Qt.ItemDataRole.UserRole + 2
_PLAIN = Qt.KeyboardModifier.NoModifier
_PRESSED = (QEvent.Type.ShortcutOverride, QEvent.Type.KeyPress)
_BY_TAB = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)


class ChoiceField(Field[T], Generic[T]):
    """Takes one of `set_choices`; what is typed is found in any part of the words.

    The list below the line has what `NamesSearched` finds, else what is written nearly so. What
    was found by another name shows it behind its own, which is what the line then holds.

    A `free` field also takes words that are none of them: `value` is None then, `text` has them.
    """

    def __init__(
        self, parent: QWidget | None = None, *, required: bool = False, free: bool = False
    ) -> None:
        super().__init__(parent, required=required)
        self._free = free
        self._values: list[T] = []
        self._words = QStringListModel(self)
        self._also: Sequence[Sequence[str]] = ()
        self._others: Callable[[], Sequence[Layer]] | None = None
        self._by_names: NamesSearched | None = None
        self._like_typed: QStandardItemModel | None = None  # made when something is first typed
        self._name_popup = ""
        self._quiet = False
        self.picked_by = ""  # the other name by which what was picked last stood in the list
        self.selects_all = True  # False where typing goes on in what a key has begun
        self.box = PickBox(self)
        self.line = QLineEdit(self.box)
        self.box.setLineEdit(self.line)
        self.box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.box.setMaxVisibleItems(14)
        self._completer = cast("QCompleter", self.box.completer())
        self._completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self._completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._completer.setMaxVisibleItems(14)
        self._place(self.box)
        self.line.textEdited.connect(self._narrow)
        self.line.textEdited.connect(self._changed)
        self.line.editingFinished.connect(self._finished)
        self.box.activated.connect(self._picked)
        self.box.currentIndexChanged.connect(self._stepped)
        self.line.installEventFilter(self)
        self.box.view().installEventFilter(self)

    def begin_with(self, typed: str) -> None:
        """Put in what a key has begun, with the focus behind it; it isn't selected."""
        self.selects_all = False
        self.box.installEventFilter(self)  # it hands what brings the focus to its line, unseen
        self.set_text(typed)
        self.focus()
        self.line.setCursorPosition(len(typed))
        self._changed()

    def focus(self) -> None:
        """Give the keyboard to the field; what it holds is typed over, had it the keyboard or not.

        F7 at the Wrap and a "7" made "71 · Owner" of the order that stood there.
        """
        super().focus()
        if self.selects_all:
            self.line.selectAll()

    def take_list(self) -> None:
        view, below = self.box.view(), QApplication.activePopupWidget()
        if view.isVisible():
            at = view.currentIndex().row()
            self.box.hidePopup()
            if at >= 0:
                self.box.setCurrentIndex(at)
                self.box.activated.emit(at)
        elif below is not None and self.line.hasFocus():
            enter = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Return, _PLAIN)
            QCoreApplication.sendEvent(below, enter)

    def set_label(self, words: str) -> None:
        super().set_label(words)
        # A combo box tells a screen reader its value; its label has to be said apart.
        name = words.replace("&", "")
        self.line.setAccessibleName(name)
        self.box.view().setAccessibleName(name)
        self._name_popup = name

    def set_choices(
        self,
        choices: Sequence[tuple[T, str]],
        also: Sequence[Sequence[str]] = (),
        others: Callable[[], Sequence[Layer]] | None = None,
    ) -> None:
        """What can be chosen, as (value, words); what was chosen stays if it is still there.

        `also` has for each its own name in other forms, such as several of it; `others` gives the
        names it doesn't carry but is found by, and is read when something is first typed.
        """
        self._others = others
        self.share_choices(
            [value for value, _ in choices], QStringListModel([words for _, words in choices]), also
        )

    def share_choices(
        self, values: Sequence[T], words: QStringListModel, also: Sequence[Sequence[str]] = ()
    ) -> None:
        """As `set_choices`, with words that several fields share: a thousand are put once."""
        before = self.value()
        typed = self.text()
        self._quiet = True
        self._values = list(values)
        self._words = words  # the box doesn't keep it
        self._also, self._by_names = also, None
        self.box.setModel(words)
        if before is not None and before in self._values:
            self.box.setCurrentIndex(self._values.index(before))
        else:
            self.box.setCurrentIndex(-1)
            self.box.setEditText(typed)
        self._quiet = False

    @property
    def values(self) -> tuple[T, ...]:
        """What can be chosen, in the order it is offered."""
        return tuple(self._values)

    def value(self) -> T | None:
        at = self._at()
        return None if at is None else self._values[at]

    def set_value(self, value: T | None) -> None:
        self._quiet = True
        self.box.setCurrentIndex(self._values.index(value) if value in self._values else -1)
        if self.box.currentIndex() < 0:
            self.box.setEditText("")
        self.line.setCursorPosition(0)  # long words are shown from their beginning
        self._quiet = False
        self._rule = ""
        self._show("")

    def text(self) -> str:
        return self.box.currentText()

    def set_text(self, text: str) -> None:
        """Put typed text back as it was, one of the choices or not."""
        self._quiet = True
        self.box.setEditText(text)
        self._quiet = False
        self._show("")

    def hint(self, words: str) -> None:
        """Quiet words shown while nothing is chosen."""
        self.line.setPlaceholderText(words)

    def set_read_only(self, read_only: bool) -> None:
        """Show the choice without letting it be changed."""
        self.box.setEnabled(not read_only)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Coming by key into the field selects what it holds, to be typed over.

        Where a key has begun the words, a dialog that opens doesn't: the line itself would
        select that letter, and the next one typed would replace it.
        """
        if watched is self.line and event.type() is QEvent.Type.FocusIn:
            # Here, for a list below each field of a form is dear, and few of them are opened.
            cast("QWidget", self._completer.popup()).setAccessibleName(self._name_popup)
        if (
            watched is self.line
            and self.selects_all
            and event.type() is QEvent.Type.FocusIn
            and isinstance(event, QFocusEvent)
            and event.reason() is not Qt.FocusReason.MouseFocusReason
            and event.reason() is not Qt.FocusReason.PopupFocusReason
        ):
            self.line.selectAll()
        if watched is not self.line and isinstance(event, QKeyEvent) and self._handed_on(event):
            return True
        if (
            watched is self.line
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up)
            and self._into_list(event)
        ):
            return True
        if not self.selects_all and isinstance(event, QFocusEvent):
            if event.type() is QEvent.Type.FocusOut:
                self.selects_all = event.reason() in _BY_TAB
            elif event.reason() in _BY_TAB:
                plain = QFocusEvent(QEvent.Type.FocusIn, Qt.FocusReason.OtherFocusReason)
                return QCoreApplication.sendEvent(watched, plain)
        return super().eventFilter(watched, event)

    def _handed_on(self, event: QKeyEvent) -> bool:
        """Whether a key with Ctrl, pressed in the unfolded list, was done by the window.

        The list has the keyboard to itself: Ctrl+Enter in it chose and kept nothing.
        """
        ctrl = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if event.type() not in _PRESSED or not ctrl or not self.box.view().isVisible():
            return False
        pressed = QKeySequence(event.keyCombination())
        for one in self.window().findChildren(QShortcut):
            if one.isEnabled() and one.key() == pressed:
                if event.type() is QEvent.Type.ShortcutOverride:
                    event.accept()  # else the list takes it as Enter, and shuts
                else:
                    self.take_list()
                    one.activated.emit()
                return True
        return False

    def _into_list(self, event: QKeyEvent) -> bool:
        """Whether an arrow goes into the list of what is like what is typed, as yet no choice.

        It never steps to a choice that has nothing of it.
        """
        typed = self.text()
        if not typed.strip():
            self._quiet = True
            self.box.setCurrentIndex(-1)  # emptied at the last one, Down would find no further
            self._quiet = False
        if self._free or not typed.strip() or self._at() is not None:
            return False
        self._narrow(typed)
        if self._like(typed):
            self._completer.complete()
            QCoreApplication.sendEvent(cast("QWidget", self._completer.popup()), event)
        return True

    def _at(self) -> int | None:
        """Which choice the text means: its words, else the only one that holds them.

        A number means the choice that begins with it: order 4, though the others' tag is 41.
        """
        typed, names = name_key(self.text()), self._searched()
        forms = names.forms
        if not typed:
            return None
        current = self.box.currentIndex()
        if 0 <= current < len(forms) and forms[current][0] == typed:
            return current
        if self._free:
            return next((at for at, each in enumerate(forms) if each[0] == typed), None)
        if typed.isdigit():
            begun = [at for at, each in enumerate(forms) if each[0].split()[:1] == [typed]]
            if len(begun) == 1:
                return begun[0]
        return names.meant(typed)

    def _searched(self) -> NamesSearched:
        """What each choice is found by, its words first; read when first looked for."""
        if self._by_names is None:
            also = self._also or [()] * len(self._words.stringList())
            forms = [
                name_forms([words, *others])
                for words, others in zip(self._words.stringList(), also, strict=True)
            ]
            self._by_names = NamesSearched(forms, self._others)
        return self._by_names

    def _like(self, typed: str) -> tuple[Found, ...]:
        """The choices that have what is typed, else those written nearly so."""
        names = self._searched()
        return names.found(typed) or names.near(typed)

    def _narrow(self, typed: str) -> None:
        """Put below the line what is like what is typed."""
        self.picked_by = ""
        if self._like_typed is None:
            self._like_typed = QStandardItemModel(self)
            self._completer.setCompletionRole(_OWN_NAME)
            by_index = self._completer.activated[QModelIndex]  # pyright: ignore[reportIndexIssue]
            by_index.connect(self._picked_below)
        if self._completer.model() is not self._like_typed:  # the box hands it its own again
            self._completer.setModel(self._like_typed)
        items: list[QStandardItem] = []
        for found in self._like(typed):
            words = self.box.itemText(found.at)
            item = QStandardItem(words + (f"{_BETWEEN}{found.other}" if found.other else ""))
            item.setData(words, _OWN_NAME)
            item.setData(found.at, _PLACE)
            item.setData(found.other, _OTHER)
            items.append(item)
        self._like_typed.clear()
        self._like_typed.invisibleRootItem().appendRows(items)

    def _finished(self) -> None:
        at = self._at()
        if at is not None and self.box.itemText(at) != self.text():
            self._quiet = True
            self.box.setCurrentIndex(at)
            self.box.setEditText(self.box.itemText(at))
            self._quiet = False
        self._left()

    def _picked(self, at: int) -> None:
        if at >= 0:
            self._changed()
            self._left()

    def _picked_below(self, index: QModelIndex) -> None:
        """The box looks for what the list shows, and has nothing with another name behind it."""
        at, self.picked_by = index.data(_PLACE), index.data(_OTHER) or ""
        if self.box.currentIndex() != at:
            self._quiet = True
            self.box.setCurrentIndex(at)
            self._quiet = False
            self._picked(at)

    def _stepped(self, _at: int) -> None:
        if not self._quiet:
            self._changed()

    def _unread(self) -> str:
        if self._free or self._at() is not None:
            return ""
        near = self._like(self.text())
        if near:
            return self.tr("“{text}” may be {found}; type a little more.").format(
                text=self.text().strip(),
                found=self.tr(" or ").join(self.box.itemText(one.at) for one in near[:3]),
            )
        said = self.tr("“{text}” is not among the choices here.")
        if 0 < len(self._values) <= FEW:
            said = self.tr("“{text}” is not among the choices here: {choices}.")
        return said.format(
            text=self.text().strip(),
            choices=self.tr(" or ").join(self._words.stringList()),
        )
