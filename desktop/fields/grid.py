"""Fields in columns, asked together whether they can be taken."""

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from desktop.fields.field import Field
from desktop.look.space import GROUP, STEP, TOGETHER


class FieldGrid(QWidget):
    """Fields laid out left to right in `columns`, in the order of Tab."""

    def __init__(self, columns: int = 2, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._columns = columns
        self._at = 0
        self._out_of_turn = False
        self.fields: list[Field[Any]] = []
        self._laid: list[tuple[QWidget, int]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(GROUP)
        self._grid.setVerticalSpacing(TOGETHER + 4)
        for column in range(columns):
            self._grid.setColumnStretch(column, 1)

    def add(self, field: Field[Any], span: int = 1) -> None:
        """The next field, over `span` columns; a row that is too short for it is left."""
        self._out_of_turn |= bool(self.fields) and field.made < self.fields[-1].made
        if self._out_of_turn:
            # Taken out and put back it comes last in the order of Tab, however early it was made.
            field.setParent(None)
        field.setParent(self)
        self.fields.append(field)
        self._laid.append((field, span))
        self._lay(field, span)

    def add_widget(self, widget: QWidget, span: int = 0) -> None:
        """Something else, over a whole row if not said otherwise: a hairline, a heading."""
        self._laid.append((widget, span or self._columns))
        self._lay(widget, span or self._columns)

    def end_row(self) -> None:
        """What comes next begins a row."""
        self._at = -(-self._at // self._columns) * self._columns

    def set_tight(self) -> None:
        """Rows as near to one another as can be read."""
        self._grid.setVerticalSpacing(STEP)

    def close_up(self) -> None:
        """Leave no room for what is hidden: the others move up, in the same order."""
        for widget, _span in self._laid:
            self._grid.removeWidget(widget)
        self._at = 0
        for widget, span in self._laid:
            if not _was_hidden(widget):
                self._lay(widget, span)

    def _lay(self, widget: QWidget, span: int) -> None:
        row, column = divmod(self._at, self._columns)
        if column + span > self._columns:
            row, column = row + 1, 0
        top = Qt.AlignmentFlag.AlignTop if isinstance(widget, Field) else Qt.AlignmentFlag(0)
        self._grid.addWidget(widget, row, column, 1, span, top)
        self._at = row * self._columns + column + span

    def problems(self) -> list[tuple[Field[Any], str]]:
        """The fields that can't be taken, and why; what is hidden isn't asked for."""
        asked = [one for one in self.fields if one.isEnabled() and not _was_hidden(one)]
        found = [(field, field.problem()) for field in asked]
        return [(field, said) for field, said in found if said]

    def show_problems(self) -> bool:
        """Show every complaint at its field and go to the first; True when there is none."""
        for field in self.fields:
            field.show_problem()
        found = self.problems()
        if found:
            found[0][0].focus()
        return not found


def _was_hidden(widget: QWidget) -> bool:
    """Whether it was hidden on purpose; what isn't shown yet is hidden too."""
    explicit = Qt.WidgetAttribute.WA_WState_ExplicitShowHide
    return widget.isHidden() and widget.testAttribute(explicit)
