"""A table whose rows are as high as their words take, where one line would cut them off."""

from typing import Generic

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from desktop.look.space import ROW_DESK, TOGETHER
from desktop.tables.columns import Row
from desktop.tables.delegate import lines_of
from desktop.tables.large_letters import mark_room
from desktop.tables.rows import RowsModel
from desktop.tables.table import Table

MOST_LINES = 3


class TallTable(Table[Row], Generic[Row]):
    """As a Table; a long sentence stands in up to three lines."""

    def __init__(
        self,
        rows: RowsModel[Row],
        parent: QWidget | None = None,
        *,
        height: int = ROW_DESK,
        sortable: bool = True,
    ) -> None:
        super().__init__(rows, parent, height=height, sortable=sortable)
        # A column that stretches has its width only once the headings were laid out, unheard.
        self._soon = QTimer(self, singleShot=True, interval=0)
        self._soon.timeout.connect(lambda: self._fit_heights())
        self.horizontalHeader().sectionResized.connect(lambda *_widths: self._soon.start())

    def _fit(self) -> None:
        super()._fit()
        if hasattr(self, "_soon"):
            self._fit_heights()
            self._soon.start()

    def _reset(self) -> None:
        super()._reset()
        self._fit_heights()
        self._soon.start()

    def _fit_heights(self) -> None:
        usual, one_line = self.verticalHeader().defaultSectionSize(), self.fontMetrics().height()
        for at in range(self.rows.rowCount()):
            self.setRowHeight(at, usual + (self._lines(at) - 1) * one_line)

    def _lines(self, at: int) -> int:
        metrics, most = self.fontMetrics(), 1
        for place in range(len(self.rows.columns)):
            cell, mark, _, _ = self.rows.painted(at, place)
            if isinstance(cell, str):
                room = self.columnWidth(place) - 2 * TOGETHER
                room -= mark_room(metrics.height()) if mark is not None else 0
                most = max(most, len(lines_of(cell, metrics, room)))
        return min(most, MOST_LINES)
