"""The kill calendar: a month or a week of days, and the chosen day's bookings in their turn."""

from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QEvent, QMimeData, QObject, QPoint, Qt, Signal
from PySide6.QtGui import QDrag, QKeySequence, QMouseEvent, QShortcut
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from desktop.bench import Target
from desktop.fields.dates import MONTHS, date_text, weekdays
from desktop.look.space import EDGE, ROW_DENSE, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.over import open_over
from desktop.rail.calendar_days import cells_of, span_of
from desktop.rail.calendar_grid import LOT, CalendarGrid
from desktop.rail.calendar_move import move_booking
from desktop.rail.calendar_papers import CalendarPapers
from desktop.rail.minutes_dialog import MinutesDialog
from desktop.rail.other_day_dialog import OtherDayDialog
from desktop.rail.week_dialog import WeekDialog
from desktop.tables import Column, RowsModel, Table, count_column
from shared.shop.calendar import Filled
from shared.shop.day_order import DayLot

if TYPE_CHECKING:
    from PySide6.QtWidgets import QHBoxLayout

    from db.store import Store
    from desktop.bench import Bench
    from desktop.fields import FormDialog

COUNTING = "rail.calendar"


class CalendarDialog(QDialog):
    """M or Ctrl+X picks the chosen booking up, Enter, M or Ctrl+V on a day puts it down.

    Signals:
        changed: something was moved.
        go: a booking was picked.
    """

    changed = Signal()
    go = Signal(Target)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.month = True
        self.day = bench.today()
        self.held: DayLot | None = None
        self.dialog: FormDialog | None = None
        self._pressed: QPoint | None = None
        self._lots: tuple[DayLot, ...] = ()
        open_over(self, 1340, 690 if theme_of(self).percent > 100 else 640)
        self.papers = CalendarPapers(bench, self)
        self._build()
        self._connect()
        self.retranslate()
        self.refresh()
        self.grid.setFocus(Qt.FocusReason.OtherFocusReason)

    def _build(self) -> None:
        self.heading = Words("group", parent=self)
        self.said = Words("body", "quiet", self).wrapped()
        self.of_day = Words("group", parent=self).wrapped()
        self.full = Words("body", "quiet", self).wrapped()
        self.grid = CalendarGrid(self)
        self.table: Table[DayLot] = Table(
            RowsModel(self._columns()), self, height=ROW_DENSE, sortable=False
        )
        self.table.viewport().installEventFilter(self)
        self.before, self.after, self.view = (button(self, quiet=True) for _ in range(3))
        self.week, self.minutes, self.other, self.list, self.sheets, self.ics, self.leave = (
            button(self) for _ in range(7)
        )
        top = row(gap=TOGETHER)
        top.addWidget(self.heading)
        top.addStretch(1)
        for one in (self.before, self.after, self.view):
            top.addWidget(one)
        left = column(gap=TOGETHER)
        left.addLayout(top)
        left.addWidget(self.grid, 1)
        left.addWidget(self.said)
        right = column(gap=TOGETHER)
        right.addWidget(self.of_day)
        right.addWidget(self.full)
        right.addWidget(self.table, 1)
        across = row(gap=EDGE)
        across.addLayout(left, 13)
        across.addLayout(right, 8)
        whole = column(self, gap=TOGETHER * 2, edge=EDGE)
        whole.addLayout(across, 1)
        for feet in self._feet():
            whole.addLayout(feet)

    def _feet(self) -> "list[QHBoxLayout]":
        """The buttons: in large type in two rows, since one is wider than a small screen."""
        plans, papers = (self.week, self.minutes, self.other), (self.list, self.sheets, self.ics)
        large = theme_of(self).percent > 100
        rows = [row(gap=TOGETHER) for _ in range(2 if large else 1)]
        for group, feet in ((plans, rows[0]), (papers, rows[-1])):
            for one in group:
                feet.addWidget(one)
        for feet in rows:
            feet.addStretch(1)
        rows[-1].addWidget(self.leave)
        return rows

    def _columns(self) -> list[Column[DayLot]]:
        words = self.bench.words
        return [
            count_column("lot", lambda: self.tr("Lot"), lambda one: one.number, width=52),
            count_column("head", lambda: self.tr("Head"), lambda one: one.head, width=76),
            Column(
                "animal",
                lambda: self.tr("Animal"),
                lambda one: words.name("", f"species.{one.species}", one.head),
                width=72,
            ),
            Column(
                "kind",
                lambda: self.tr("Kind"),
                lambda one: words.say(f"regime.{one.regime}"),
                width=158,
            ),
            Column(
                "producer",
                lambda: self.tr("Producer"),
                lambda one: one.producer,
                stretch=True,
                tip=_about,
            ),
        ]

    def _connect(self) -> None:
        self.grid.turned.connect(self.turn)
        self.grid.opened.connect(self._enter)
        self.grid.dropped.connect(self._put)
        self.grid.currentCellChanged.connect(self._day_chosen)
        self.table.picked.connect(lambda one: self._go(one))
        self.before.clicked.connect(lambda: self.turn(-1))
        self.after.clicked.connect(lambda: self.turn(1))
        self.view.clicked.connect(self.change_view)
        self.week.clicked.connect(self.plan_week)
        self.minutes.clicked.connect(self.plan_minutes)
        self.other.clicked.connect(self.plan_day)
        self.list.clicked.connect(lambda: self.papers.day_list(self.day))
        self.sheets.clicked.connect(lambda: self.papers.sheets_of_next_day())
        self.ics.clicked.connect(lambda: self.papers.save_ics(span_of(self.day, month=self.month)))
        self.leave.clicked.connect(self.reject)
        for keys, do in (
            ("M", self.pick_up_or_put),
            ("Ctrl+X", self.pick_up),
            ("Ctrl+V", self.put_down),
            ("Ctrl+P", self.list.click),
            ("W", self.change_view),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(do)

    def retranslate(self) -> None:
        """Set every word again."""
        self.setWindowTitle(self.tr("Kill calendar"))
        self.grid.setAccessibleName(self.tr("Days"))
        self.table.set_name(self.tr("Bookings of the day, in their turn"))
        self.before.setText(self.tr("&Back"))
        self.after.setText(self.tr("&Forward"))
        self.view.setText(self.tr("As a &week") if self.month else self.tr("As a &month"))
        self.week.setText(self.tr("&Kill days"))
        self.minutes.setText(self.tr("Block min&utes"))
        self.other.setText(self.tr("&This date"))
        self.list.setText(self.tr("&List of the day"))
        self.sheets.setText(self.tr("Block &sheets due next"))
        self.ics.setText(self.tr("Save as &calendar file"))
        self.leave.setText(self.tr("Close"))
        self._say()

    def refresh(self) -> None:
        """Read the shown days again, in four queries; orders' lines are counted on a worker."""
        span = span_of(self.day, month=self.month)
        with self.bench.store.read() as work:
            filled = work.calendar.filled(*span, count_lines=False)
            self._lots = work.calendar.lots(*span)
        self._show_cells(span, filled)
        self._show_day()
        self.bench.work.forget(COUNTING)
        if not filled.counted:
            self.bench.work.run(
                filled_days,
                self.bench.store,
                span,
                then=lambda found: self._lines_counted(span, found),
                key=COUNTING,
                owner=self,
            )

    def _lines_counted(self, span: tuple[date, date], filled: Filled) -> None:
        """The block minutes of the shown days are known now."""
        self._show_cells(span, filled)
        self._show_full()

    def _show_cells(self, span: tuple[date, date], filled: Filled) -> None:
        words, day = self.bench.words, self.day
        shown = span[0] + (span[1] - span[0]) // 2  # arrows may choose a day of the next month
        cells = cells_of(span, filled, self._lots, words, shown)
        names = weekdays(words.language)
        self.grid.blockSignals(True)
        self.grid.show_days(cells, names, day)
        self.grid.blockSignals(False)
        self.heading.setText(f"{MONTHS[words.language][shown.month - 1].capitalize()} {shown.year}")

    def turn(self, by: int) -> None:
        """The month or week before or after."""
        if not self.month:
            self.day += timedelta(7 * by)
        else:
            months = self.day.year * 12 + self.day.month - 1 + by
            first = date(months // 12, months % 12 + 1, 1)
            last = (first + timedelta(31)).replace(day=1) - timedelta(1)
            self.day = first.replace(day=min(self.day.day, last.day))
        self.refresh()

    def change_view(self) -> None:
        """A month, or a week."""
        self.month = not self.month
        self.retranslate()
        self.refresh()

    def pick_up_or_put(self) -> None:
        """M: one thing or the other."""
        if self.held is None:
            self.pick_up()
        else:
            self.put_down()

    def pick_up(self) -> None:
        """Take the chosen booking, or the day's first, in hand; arrows then choose the day."""
        self.held = self.table.chosen() or next(iter(self.table.rows.rows()), None)
        self._say()
        if self.held is not None:
            self.grid.setFocus(Qt.FocusReason.OtherFocusReason)

    def put_down(self) -> None:
        """On the chosen day."""
        if self.held is not None:
            self._put(self.held.id, self.day)

    def reject(self) -> None:
        """Esc lets go of what is in hand, then closes."""
        if self.held is not None:
            self.held = None
            self._say()
        else:
            super().reject()

    def plan_week(self) -> None:
        """The shop's week."""
        self._ask(WeekDialog(self.bench, self))

    def plan_minutes(self) -> None:
        """What the block takes."""
        self._ask(MinutesDialog(self.bench, self))

    def plan_day(self) -> None:
        """This date closed, or with other places."""
        self._ask(OtherDayDialog(self.bench, self.day, self))

    def _ask(self, dialog: "FormDialog") -> None:
        self.dialog = dialog
        dialog.accepted.connect(self.refresh)
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _put(self, lot_id: int, day: date) -> None:
        said = move_booking(self.bench, lot_id, day)
        self.held = None
        self.day = day
        self.refresh()
        self.said.setText(said)
        self.changed.emit()

    def _enter(self) -> None:
        if self.held is not None:
            self.put_down()
        else:
            self.table.setFocus(Qt.FocusReason.OtherFocusReason)
            if self.table.rows.rowCount() and self.table.chosen() is None:
                self.table.choose(0)

    def _day_chosen(self) -> None:
        day = self.grid.day()
        if day is not None:
            self.day = day
            self._show_day()

    def _show_day(self) -> None:
        language = self.bench.words.language
        lots = [one for one in self._lots if one.day == self.day]
        self.table.show_rows(lots)
        head = sum(one.head for one in lots)
        text = self.tr("{day}: {head} head").format(day=date_text(self.day, language), head=head)
        self.of_day.setText(text)
        self._show_full()
        self._say()

    def _show_full(self) -> None:
        cell = self.grid.cells.get(self.day)
        self.full.setText("" if cell is None else ". ".join(cell.lines))

    def _say(self) -> None:
        if self.held is None:
            text = self.tr(
                "Arrows choose a day, Page up and down turn, Enter goes to its bookings, "
                "M picks one up, W changes the view. Or drag it with the mouse."
            )
        else:
            text = self.tr(
                "Lot {number} of {producer} in hand: Enter puts it on the chosen day, Esc lets go."
            ).format(number=self.held.number, producer=self.held.producer)
        self.said.setText(text)

    def _go(self, lot: object) -> None:
        if isinstance(lot, DayLot):
            self.go.emit(Target("counter", "lot", lot.id))
            self.accept()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A booking dragged out of the day's table."""
        if isinstance(event, QMouseEvent):
            at = event.position().toPoint()
            if event.type() is QEvent.Type.MouseButtonPress:
                self._pressed = at
            elif event.type() is QEvent.Type.MouseMove and self._pressed is not None:
                far = (at - self._pressed).manhattanLength()
                if far >= QApplication.startDragDistance():
                    self._pressed = None
                    self._drag()
                return True
            elif event.type() is QEvent.Type.MouseButtonRelease:
                self._pressed = None
        return super().eventFilter(watched, event)

    def _drag(self) -> None:
        lot = self.table.chosen()
        if lot is None:
            return
        drag = QDrag(self.table)
        what = QMimeData()
        what.setData(LOT, QByteArray(str(lot.id).encode()))
        drag.setMimeData(what)
        drag.exec(Qt.DropAction.MoveAction | Qt.DropAction.CopyAction)


def filled_days(store: "Store", span: tuple[date, date]) -> Filled:
    """What stands in the days shown, the lines of its orders counted; run it on a worker."""
    with store.read() as work:
        return work.calendar.filled(*span)


def _about(lot: DayLot) -> str:
    """What a row has no room for."""
    return "; ".join(one for one in (lot.producer, lot.phone, lot.keeps, lot.note) if one)
