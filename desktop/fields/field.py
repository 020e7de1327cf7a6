"""What every entry field is: a label above, what is typed, and the complaint below in words."""

import re
from functools import cached_property
from itertools import count
from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop.look.space import STEP, column
from desktop.look.type_scale import Size, set_type
from desktop.panels.heading import Words

T = TypeVar("T")
_TURN = count()  # fields in the order they are made, which is Tab's where nothing else is said
# A number and its fraction or unit are not parted at the end of a line.
_TOGETHER = re.compile(r"(?<=\d) (?=\d|(?:lb|oz|kg|g|in|cm|mm)\b)")


class Field(QWidget, Generic[T]):
    """A labelled field. Subclasses hand their editor to `_place` and say how it is read.

    Signals:
        changed: what is typed or chosen has changed.
        committed: Enter was pressed or the field was left, and what it holds can be read.
    """

    changed = Signal()
    committed = Signal()

    def __init__(self, parent: QWidget | None = None, *, required: bool = False) -> None:
        super().__init__(parent)
        self.required = required
        self.made = next(_TURN)
        self.editor: QWidget = self
        self._rule = ""
        self.touched = False  # the person typed or chose here
        self.label = Words("small", "quiet", self)
        self._column = column(self, gap=STEP)
        self._column.addWidget(self.label)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    @cached_property
    def complaint(self) -> Words:
        """The words below the editor, made with the first complaint: most fields never have one."""
        made = Words("small", "complaint", self).wrapped()
        made.hide()
        self._column.addWidget(made)
        return made

    def set_label(self, words: str) -> None:
        """The field's name; & before a letter makes Alt and that letter lead here."""
        self.label.setText(words)
        self.label.setVisible(bool(words))
        self.editor.setAccessibleName(words.replace("&", ""))

    def set_name(self, words: str) -> None:
        """Its name for a screen reader alone, where a table's headings say what it is."""
        self.label.hide()
        self.editor.setAccessibleName(words)

    def set_size(self, size: Size) -> None:
        """Type what is entered in another size of the scale, e.g. "scale" on the rail."""
        set_type(self.editor, size)

    def value(self) -> T | None:
        """What was entered; None when nothing was, or it can't be read."""
        raise NotImplementedError

    def set_value(self, value: T | None) -> None:
        """Show a value; None empties the field."""
        raise NotImplementedError

    def text(self) -> str:
        """What stands in the field, letter by letter."""
        raise NotImplementedError

    def is_empty(self) -> bool:
        """Whether nothing was entered."""
        return not self.text().strip()

    def problem(self) -> str:
        """Why the field can't be taken as it stands, in words; "" when it can."""
        if self._rule:
            return self._rule
        if self.is_empty():
            return self.tr("Fill this in.") if self.required else ""
        return self._unread()

    def complain(self, sentence: str) -> None:
        """A rule's complaint, shown at this field until something else is typed."""
        self._rule = sentence
        self.show_problem()

    def show_problem(self) -> str:
        """Show what `problem` says, below the field, and return it."""
        return self._show(self.problem())

    def focus(self) -> None:
        """Give the keyboard to the field."""
        self.editor.setFocus(Qt.FocusReason.OtherFocusReason)

    def take_list(self) -> None:
        """Shut what the field unfolded; what is marked there is taken, as Enter takes it."""

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange and self._complains():
            self._rule = ""
            self.show_problem()

    def _unread(self) -> str:
        """Why what is typed can't be read, in words; "" when it can."""
        return ""

    def _place(self, editor: QWidget) -> None:
        """Put the editor below its label."""
        self.editor = editor
        self.setFocusProxy(editor)
        self.label.setBuddy(editor)
        self._column.addWidget(editor)

    def _complains(self) -> bool:
        return "complaint" in self.__dict__ and bool(self.complaint.text())

    def _changed(self) -> None:
        """The person typed: a rule's complaint is over, a shown one goes once it is mended."""
        self._rule = ""
        self.touched = True
        if self._complains():
            self._show(self.problem())
        self.changed.emit()

    def _left(self) -> None:
        """The person is done here: complain now, or say that it is taken."""
        said = self.problem() if self._rule or not self.is_empty() else ""
        if not self._show(said):
            self.committed.emit()

    def _show(self, sentence: str) -> str:
        if not sentence and "complaint" not in self.__dict__:
            return sentence
        shown = _TOGETHER.sub("\u00a0", sentence)
        if shown == self.complaint.text() and bool(shown) != self.complaint.isHidden():
            return sentence
        self.complaint.setText(shown)
        self.complaint.setVisible(bool(sentence))
        self.editor.setAccessibleDescription(sentence)
        mark = "true" if sentence else "false"
        if (self.editor.property("complaint") or "false") != mark:
            self.editor.setProperty("complaint", mark)
            self.editor.style().unpolish(self.editor)
            self.editor.style().polish(self.editor)
        return sentence
