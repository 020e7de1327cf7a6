"""The books to look at: lists by days and text, the drawer counted, periods closed, files."""

from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QWidget

from db.problems import ReadStopped
from desktop.fields import ChoiceField, DateField, TextField
from desktop.fields.dates import date_text
from desktop.file_out import write_out
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.account_dialog import AccountDialog
from desktop.office.books_dialogs import BankDialog, DrawerDialog
from desktop.office.books_lists import BookList, BookLists
from desktop.office.opening_dialog import OpeningDialog
from desktop.office.progress import Steps
from desktop.office.reading_strip import ReadingStrip
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.tables import RowsModel, SumLine, Table
from desktop.tables.written import cells_of, has_words
from shared.money import money_text
from shared.shop.ledger import Owed
from shared.shop.problems import Refused
from shared.spreadsheet import csv_text

if TYPE_CHECKING:
    from desktop.bench import Bench


class BooksPage(QWidget):
    """One list at a time, for days from and to.

    Signals:
        said: what was done. changed: the books changed.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.lists = BookLists(bench, self).every()
        self._rows: list[Any] = []
        self.which: ChoiceField[int] = ChoiceField(self, required=True)
        self.start = DateField(bench.today, self)
        self.end = DateField(bench.today, self)
        self.wanted = TextField(self)
        self.status = Words("body", "quiet", self)
        self.progress = ReadingStrip(bench, self)
        self.stack = QStackedWidget(self)
        self.tables: list[Table[Any]] = []
        for one in self.lists:
            table: Table[Any] = Table(RowsModel(one.columns), self.stack)
            self.tables.append(table)
            self.stack.addWidget(table)
        self.sums = SumLine(self)
        self.paper = button(self)
        self.csv = button(self)
        self.journal_csv = button(self)
        self.journal_text = button(self)
        self.count = button(self)
        self.bank = button(self)
        self.opening = button(self)
        self.close_books = button(self)
        self._lay_out()
        self._connect()
        self.retranslate()
        self.which.set_value(0)
        self.start.set_value(bench.today().replace(day=1))
        self.end.set_value(bench.today())

    def _lay_out(self) -> None:
        down = column(self, gap=TOGETHER, edge=GROUP)
        above = row(gap=TOGETHER)
        for field, part in ((self.which, 2), (self.start, 1), (self.end, 1), (self.wanted, 2)):
            above.addWidget(field, part)
        down.addLayout(above)
        beside = row(gap=TOGETHER)
        beside.addWidget(self.status, 1)
        beside.addWidget(self.opening)
        beside.addWidget(self.bank)
        down.addLayout(beside)
        down.addWidget(self.progress)
        feet = column(gap=0)
        feet.addWidget(self.stack, 1)
        feet.addWidget(self.sums)
        down.addLayout(feet, 1)
        below = row(gap=TOGETHER)
        for each in (self.paper, self.csv, self.journal_csv, self.journal_text):
            below.addWidget(each)
        below.addStretch(1)
        below.addWidget(self.count)
        below.addWidget(self.close_books)
        down.addLayout(below)

    def _connect(self) -> None:
        for field in (self.which, self.start, self.end):
            field.committed.connect(self.refresh)
        self.wanted.changed.connect(self._show)
        self.tables[0].picked.connect(self.open_account)
        self.csv.clicked.connect(self.save_csv)
        self.paper.clicked.connect(self.show_paper)
        shortcut = QShortcut(QKeySequence("Ctrl+P"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.show_paper)
        self.journal_csv.clicked.connect(lambda: self.save_journal(as_csv=True))
        self.journal_text.clicked.connect(lambda: self.save_journal(as_csv=False))
        self.count.clicked.connect(self.count_drawer)
        self.bank.clicked.connect(self.carry_cash)
        self.opening.clicked.connect(self.open_with)
        self.close_books.clicked.connect(self.close_period)

    def retranslate(self) -> None:
        """Every word of the page."""
        self.which.set_label(self.tr("&List"))
        self.which.set_choices([(at, one.name()) for at, one in enumerate(self.lists)])
        self.start.set_label(self.tr("&From"))
        self.end.set_label(self.tr("T&o, or as of"))
        self.wanted.set_label(self.tr("Fi&nd in the list"))
        self.paper.setText(self.tr("On pape&r… (Ctrl+P)"))
        self.csv.setText(self.tr("Save as CS&V"))
        self.journal_csv.setText(self.tr("&Journal as CSV"))
        self.journal_text.setText(self.tr("Journal as &plain text"))
        self.opening.setText(self.tr("Openin&g balance"))
        self.bank.setText(self.tr("Cash to the &bank"))
        self.count.setText(self.tr("Count the &drawer"))
        self.close_books.setText(self.tr("&Close a period"))
        self.progress.retranslate()
        for one, table in zip(self.lists, self.tables, strict=True):
            table.set_name(one.name())
        if self.status.text():
            self._show()

    def days(self) -> tuple[date, date]:
        """The days asked for; today where a field is empty or not read."""
        end = self.end.value() or self.bench.today()
        return min(self.start.value() or end.replace(month=1, day=1), end), end

    def refresh(self) -> None:
        """Read the list chosen again, off the window's thread."""
        at = self.which.value() or 0
        self.stack.setCurrentIndex(at)
        self.sums.follow(self.tables[at], self.lists[at].sums, lambda: self.tr("Sum"))
        if self.progress.stops_for(self.refresh):
            return
        self.status.setText(self.tr("Reading the books"))
        one, span = self.lists[at], self.days()
        self.progress.run(lambda steps: self._read(one, span, steps), self._got)

    def _read(
        self, one: BookList, span: tuple[date, date], steps: Steps
    ) -> Sequence[object] | None:
        try:
            with self.bench.store.read(lambda: steps.stopped) as work:
                return one.read(work, *span)
        except ReadStopped:
            return None

    def _got(self, rows: Sequence[object] | None) -> None:
        self._rows = list(rows or ())
        self._show()
        if rows is None:
            self.status.setText(self.tr("Stopped; nothing is shown"))

    def _show(self) -> None:
        table = self.tables[self.stack.currentIndex()]
        asked = self.wanted.text().casefold().split()
        shown = self._rows
        if asked:
            shown = [one for one in shown if has_words(asked, cells_of(table.rows.columns, one))]
        table.show_rows(shown)
        count = self.tr("1 row") if len(shown) == 1 else self.tr("{count} rows")
        self.status.setText(count.format(count=f"{len(shown):,}"))

    def open_account(self, owed: Owed) -> None:
        """The account of one who owes."""
        if owed.customer_id is not None:
            self.account = AccountDialog(self.bench, owed.customer_id, owed.customer, self)
            self.account.open()

    def show_paper(self) -> None:
        """The list as it is shown on paper, its sums below; progress is told."""
        at = self.stack.currentIndex()
        one, shown = self.lists[at], self.tables[at].rows.rows()
        if self.progress.running or not shown:
            return
        rows, sums = [cells_of(one.columns, row) for row in shown], self.sums.cells()
        facts, columns = self._facts(one), one.columns

        def make(steps: Steps) -> bytes | None:
            from printing.report import report

            with self.bench.store.read() as work:
                shop = work.shop.details()
            pdf = report(
                one.name(),
                facts,
                None,
                str,
                [(each.title(), "right" if each.kind == "figure" else "left") for each in columns],
                steps.over(rows),
                shop=shop,
                made=self.bench.now(),
                words=self.bench.words,
                sums=sums,
            )
            return None if steps.stopped else pdf

        self.progress.paper(make, one.name())

    def _facts(self, one: BookList) -> list[tuple[str, str]]:
        """What the paper is of: its days, and what it was narrowed to."""
        language = self.bench.words.language
        start, end = (date_text(day, language) for day in self.days())
        facts = [(self.tr("From"), start), (self.tr("To"), end)]
        if one.days != "span":
            today = date_text(self.bench.today(), language)
            facts = [(self.tr("As of"), end if one.days == "end" else today)]
        if self.wanted.text().strip():
            facts.append((self.tr("With"), self.wanted.text().strip()))
        return facts

    def save_csv(self) -> None:
        """The rows as they are shown, as CSV: no sums, for a spreadsheet adds up itself."""
        table = self.tables[self.stack.currentIndex()]
        heads = [one.title() for one in table.rows.columns]
        rows = [cells_of(table.rows.columns, one) for one in table.rows.rows()]
        name = f"{self.lists[self.stack.currentIndex()].key}.csv"
        path = self.bench.messages.save_where(self.csv.text(), Path.home() / name, "CSV (*.csv)")
        if path is not None:
            self._write(path, lambda: csv_text(heads, rows))

    def save_journal(self, *, as_csv: bool) -> None:
        """The journal of the days asked for."""
        from desktop.shell.journal import pieces, written

        start, end = self.days()
        kind = "CSV (*.csv)" if as_csv else "Beancount (*.beancount)"
        name = f"journal-{start}-{end}.{'csv' if as_csv else 'beancount'}"
        path = self.bench.messages.save_where(self.tr("Journal"), Path.home() / name, kind)
        if path is None:
            return

        def text() -> str:
            with self.bench.store.read() as work:
                title = work.shop.details().name or "Steelyard"
                return "".join(written(pieces(work, start, end), title, as_csv=as_csv))

        self._write(path, text)

    def _write(self, path: Path, text: Callable[[], str]) -> None:
        def told(fault: str) -> None:
            if fault:
                self.bench.messages.tell(self.tr("The file was not written"), fault)
            else:
                self.said.emit(self.tr("Written: {path}").format(path=path))

        write_out(self.bench, path, text, told, self)

    def count_drawer(self) -> None:
        """Ask what is in the drawer and keep it beside what the books expect."""
        with self.bench.store.read() as work:
            expected = work.ledger.in_drawer()
        self.dialog = DrawerDialog(self.bench, expected, self)
        self.dialog.accepted.connect(self._counted)
        self.dialog.open()

    def _counted(self) -> None:
        self.said.emit(self.tr("The drawer is counted"))
        self.changed.emit()
        self.which.set_value(3)
        self.refresh()

    def open_with(self) -> None:
        """Ask for a balance from before these books."""
        self.opening_dialog = OpeningDialog(self.bench, self)
        self.opening_dialog.accepted.connect(self._opened)
        self.opening_dialog.open()

    def _opened(self) -> None:
        self.said.emit(self.tr("The opening balance is kept"))
        self.changed.emit()
        self.refresh()

    def carry_cash(self) -> None:
        """Ask what cash went to the bank, or came from it."""
        with self.bench.store.read() as work:
            there = work.ledger.in_drawer()
        self.bank_dialog = BankDialog(self.bench, there, self)
        self.bank_dialog.accepted.connect(self._carried)
        self.bank_dialog.open()

    def _carried(self) -> None:
        with self.bench.store.read() as work:
            left = work.ledger.in_drawer()
        said = self.tr("Kept. {sum} is left in the drawer.")
        self.said.emit(said.format(sum=money_text(left)))
        self.changed.emit()
        self.refresh()

    def close_period(self) -> None:
        """Close the books through the last day asked for, for good."""
        end, ask = self.end.value(), self.bench.messages
        title = self.tr("Close a period")
        if end is None:
            self.end.complain(self.tr("Say the last day to be closed."))
            return
        if end >= self.bench.today():
            self.end.complain(self._not_closed("not_over"))
            return
        day = date_text(end, self.bench.words.language)
        text = self.tr("Nothing can be dated {day} or before any more. It never opens again.")
        if not ask.ask(
            title, text.format(day=day), self.tr("Close the period"), self.tr("Leave it")
        ):
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            done = work.periods.close(end)
            if not isinstance(done, Refused):
                work.commit()
        if isinstance(done, Refused):
            self.end.complain(self._not_closed(done.code))
            return
        self.said.emit(self.tr("Closed through {day}").format(day=day))
        self.changed.emit()
        self.refresh()

    def _not_closed(self, code: str) -> str:
        if code == "not_over":
            return self.tr("Only a day that is over can be closed.")
        return self.tr("That day is closed already.")
