"""The columns of the wrapping table: what is planned of each line beside what is made."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.look.patterns import Mark
from desktop.tables import Column, Figure, count_column, figure, pounds_column
from desktop.wrap.wrapping import WrapLine
from shared.units import pounds_text

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from desktop.bench import Bench


class LineColumns(QObject):
    """Says the columns; a QObject so that its words are translated."""

    def __init__(self, bench: "Bench", place: "QWidget") -> None:
        super().__init__(place)
        self._bench = bench

    def columns(self) -> list[Column[WrapLine]]:
        """Product, planned and made, and how far the line is."""
        return [*self._planned(), *self._made()]

    def _planned(self) -> list[Column[WrapLine]]:
        return [
            Column(
                "product",
                lambda: self.tr("Product"),
                lambda row: row.product,
                stretch=True,
                tip=lambda row: row.product,
            ),
            Column(
                "planned",
                lambda: self.tr("Planned"),
                _planned,
                kind="figure",
                sort=lambda row: None if row.planned is None else row.planned.mid,
                width=84,
            ),
            pounds_column(
                "planned_lb", lambda: self.tr("Expected"), lambda row: row.planned_ng, width=90
            ),
        ]

    def _made(self) -> list[Column[WrapLine]]:
        return [
            count_column("made", lambda: self.tr("Made"), lambda row: row.packages, width=62),
            Column(
                "made_lb",
                lambda: self.tr("Net"),
                self._net,
                kind="figure",
                sort=lambda row: row.made_ng,
                width=100,
                tip=self._net_tip,
            ),
            Column(
                "state",
                lambda: self.tr("State"),
                lambda row: self.state(row),
                kind="state",
                mark=mark_of,
                width=180,
            ),
        ]

    def _net(self, row: WrapLine) -> str | Figure:
        """Its pounds; what was only counted has none, unless it was weighed together."""
        if row.together_ng is not None:
            return figure(pounds_text(row.made_ng + row.together_ng, 2))
        if row.counted and row.counted == row.packages:
            return self.tr("by count")
        pounds = pounds_text(row.made_ng, 2)
        return f"{pounds} +" if row.counted else figure(pounds)

    def _net_tip(self, row: WrapLine) -> str:
        if row.together_ng is not None:
            said = self.tr("{count} packages by count, weighed together: {pounds}")
            return said.format(count=row.counted, pounds=pounds_text(row.together_ng, 2))
        return self.tr("by count, not weighed") if row.counted else ""

    def state(self, row: WrapLine) -> str:
        """How far the line is, in a word or two."""
        if row.line == 0:
            return self.tr("odd")
        if row.planned is None:
            if row.stage is not None and not row.packages:
                return self._bench.words.say(f"batches.state_{row.stage}")
            return self.tr("not planned") if not row.packages else self.tr("made")
        if row.stage is not None and row.packages < row.planned.low:
            return self._bench.words.say(f"batches.state_{row.stage}")
        if not row.packages:
            return self.tr("to wrap")
        if row.packages < row.planned.low:
            return self.tr("begun")
        return self.tr("made") if row.packages <= row.planned.high else self.tr("more than planned")


def mark_of(row: WrapLine) -> Mark:
    """The pattern of a line's state; nothing is to be done here about what is in cure."""
    if row.planned is None:
        return Mark.PLAIN
    if row.stage is not None and row.packages < row.planned.low:
        return Mark.PLAIN
    if row.packages > row.planned.high:
        return Mark.TIGHT
    return Mark.SETTLED if row.packages >= max(row.planned.low, 1) else Mark.OPEN


def _planned(row: WrapLine) -> Figure:
    if row.planned is None:
        return Figure("")
    low, high = row.planned.low, row.planned.high
    return Figure(str(low) if low == high else f"{low}\u2013{high}")
