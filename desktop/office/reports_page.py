"""Reports one looks at: a chart, the table it is made of, and ways to take them along."""

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QSplitter, QStackedWidget, QWidget

from db.problems import ReadStopped
from desktop.fields import ChoiceField, DateField, TextField
from desktop.fields.dates import date_text
from desktop.file_out import write_out
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.progress import Steps
from desktop.office.reading_strip import ReadingStrip
from desktop.office.report_lists import Report, ReportLists
from desktop.panels.bar_chart import BarChart
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.tables import RowsModel, Table
from desktop.tables.written import cells_of, for_spreadsheet, has_words
from shared.carcass.anatomy import species as all_species
from shared.shop.charts import Chart
from shared.shop.reports import months
from shared.spreadsheet import csv_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from printing.page import Align

BACK = timedelta(days=91)
A_PIECE = 100
AT_HAND = 1000


class ReportsPage(QWidget):
    """One report at a time, for days from and to.

    Signals:
        said: what was done. changed: never sent; a report changes nothing.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.reports = ReportLists(bench, self).every()
        self._rows: list[Any] = []
        self._turned: Report | None = None
        self._build()
        self._lay_out()
        self._connect()
        self.retranslate()
        self.which.set_value(0)
        self.species.set_value("")
        self.start.set_value(bench.today() - BACK)
        self.end.set_value(bench.today())

    def _build(self) -> None:
        self.which: ChoiceField[int] = ChoiceField(self, required=True)
        self.start = DateField(self.bench.today, self)
        self.end = DateField(self.bench.today, self)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.wanted = TextField(self)
        self.status = Words("body", "quiet", self)
        self.progress = ReadingStrip(self.bench, self)
        self.both = QSplitter(Qt.Orientation.Vertical, self)
        self.both.setChildrenCollapsible(False)
        self.chart = BarChart(self.both)
        self.stack = QStackedWidget(self.both)
        self.tables: list[Table[Any]] = []
        for one in self.reports:
            table: Table[Any] = Table(RowsModel(one.columns), self.stack)
            table.horizontalHeader().sortIndicatorChanged.connect(self._draw)
            self.tables.append(table)
            self.stack.addWidget(table)
        self.empty = EmptyState(self)
        self.shown = QStackedWidget(self)
        self.shown.addWidget(self.both)
        self.shown.addWidget(self.empty)
        self.copy_all, self.csv, self.pdf = button(self), button(self), button(self)

    def _lay_out(self) -> None:
        down = column(self, gap=TOGETHER, edge=GROUP)
        above = row(gap=TOGETHER)
        parts = (
            (self.which, 3),
            (self.start, 2),
            (self.end, 2),
            (self.species, 2),
            (self.wanted, 2),
        )
        for field, part in parts:
            above.addWidget(field, part)
        down.addLayout(above)
        down.addWidget(self.progress)
        down.addWidget(self.shown, 1)
        self.both.setStretchFactor(0, 2)
        self.both.setStretchFactor(1, 3)
        below = row(gap=TOGETHER)
        below.addWidget(self.status, 1)
        for each in (self.copy_all, self.csv, self.pdf):
            below.addWidget(each)
        down.addLayout(below)

    def _connect(self) -> None:
        for field in (self.which, self.start, self.end):
            field.committed.connect(self.refresh)
        self.species.committed.connect(self._show)
        self.wanted.changed.connect(self._show)
        self.copy_all.clicked.connect(self.copy_table)
        self.csv.clicked.connect(self.save_csv)
        self.pdf.clicked.connect(self.show_pdf)

    def retranslate(self) -> None:
        """Every word of the page."""
        words = self.bench.words
        self.which.set_label(self.tr("&Report"))
        self.which.set_choices([(at, one.name()) for at, one in enumerate(self.reports)])
        self.start.set_label(self.tr("&From"))
        self.end.set_label(self.tr("&To"))
        self.species.set_label(self.tr("A&nimal"))
        named = [(one, words.name(one, f"species.{one}")) for one in all_species()]
        self.species.set_choices([("", self.tr("all")), *named])
        self.wanted.set_label(self.tr("F&ind in the table"))
        self.copy_all.setText(self.tr("&Copy the table"))
        self.csv.setText(self.tr("Save as CS&V"))
        self.pdf.setText(self.tr("As &PDF"))
        self.progress.retranslate()
        for one, table in zip(self.reports, self.tables, strict=True):
            table.set_name(one.name())
        self._show()

    def report(self) -> Report:
        """The report that is shown, whatever is half typed where one is chosen."""
        return self._turned or self.reports[0]

    def _chosen(self) -> Report:
        at = self.which.value()
        return self.report() if at is None else self.reports[at]

    def days(self) -> tuple[date, date]:
        """The days asked for; three months to today where a field is empty or not read."""
        end = self.end.value() or self.bench.today()
        return min(self.start.value() or end - BACK, end), end

    def refresh(self) -> None:
        """Read the report chosen again, off the window's thread; what is being read is stopped."""
        report = self._chosen()
        self.stack.setCurrentIndex(self.reports.index(report))
        self.start.setEnabled(report.dated)
        self.end.setEnabled(report.dated)
        self.species.setEnabled(report.species is not None)
        self._turn_to(report)
        if self.progress.stops_for(self.refresh):
            return
        self.status.setText(self.tr("Reading"))
        span = self.days()
        self.progress.run(lambda steps: self._read(report, span, steps), self._got)

    def _turn_to(self, report: Report) -> None:
        """Another report begins empty: the last one's chart never stands under its name."""
        if report is self._turned:
            return
        self._turned = report
        self._rows = []
        self.bench.work.forget("office.narrow")  # rows of the last report
        self.tables[self.stack.currentIndex()].show_rows([])
        self.empty.set_words(report.name(), self.tr("Reading"))
        self.shown.setCurrentWidget(self.empty)
        for each in (self.copy_all, self.csv, self.pdf):
            each.setEnabled(False)

    def _read(
        self, report: Report, span: tuple[date, date], steps: Steps
    ) -> tuple[Report, Sequence[Any]] | None:
        """Month by month, so that progress can be told and the reading stopped."""
        pieces = months(*span) if report.dated else (span,)
        found: list[Any] = []
        try:
            with self.bench.store.read(lambda: steps.stopped) as work:
                for start, end in steps.over(pieces):
                    found += report.read(work, start, end)
        except ReadStopped:
            return None
        return None if steps.stopped else (report, report.gather(found))

    def _got(self, found: tuple[Report, Sequence[Any]] | None) -> None:
        if found is None:
            self._rows = []
            self._show()
            self.status.setText(self.tr("Stopped; nothing is shown"))
            return
        self._rows = list(found[1])
        self._show()

    def _show(self) -> None:
        """Narrow the rows by animal and words and show them; many are looked through elsewhere."""
        asked, kind = self.wanted.text().casefold().split(), self.species.value() or ""
        asking = (self.report(), self._rows, asked, kind)
        if asked and len(self._rows) > AT_HAND:
            self.bench.work.run(_narrowed, *asking, then=self._show_rows, key="office.narrow")
        else:
            self.bench.work.forget("office.narrow")
            self._show_rows(_narrowed(*asking))

    def _show_rows(self, shown: list[Any]) -> None:
        report, table = self.report(), self.tables[self.stack.currentIndex()]
        table.show_rows(shown)
        self.empty.set_words(report.name(), self._why_empty(report))
        self.shown.setCurrentWidget(self.both if shown else self.empty)
        for each in (self.copy_all, self.csv, self.pdf):
            each.setEnabled(bool(shown))
        count = self.tr("1 row") if len(shown) == 1 else self.tr("{count} rows")
        self.status.setText(count.format(count=f"{len(shown):,}"))
        self._draw()

    def _why_empty(self, report: Report) -> str:
        if self._rows:
            return self.tr("No row has what is asked for above; empty the field or choose “all”.")
        if not report.dated:
            return report.teaches()
        start, end = (date_text(day, self.bench.words.language) for day in self.days())
        said = self.tr("Nothing from {start} to {end}.").format(start=start, end=end)
        return f"{said} {report.teaches()}"

    def _chart(self) -> Chart:
        table = self.tables[self.stack.currentIndex()]
        return self.report().chart(self.report().name(), table.rows.rows())

    def _draw(self) -> None:
        self.chart.show_chart(self._chart(), self.report().say)

    def copy_table(self) -> None:
        """Every row with its headings on the board, for a spreadsheet."""
        table = self.tables[self.stack.currentIndex()]
        table.clearSelection()
        QGuiApplication.clipboard().setText(table.as_text())
        self.said.emit(self.tr("The table is copied; paste it into a spreadsheet."))

    def save_csv(self) -> None:
        """The table as it is shown, figures as bare numbers, as CSV."""
        report, rows = self.report(), self.tables[self.stack.currentIndex()].rows.rows()
        name = f"{report.key}.csv"
        path = self.bench.messages.save_where(self.csv.text(), Path.home() / name, "CSV (*.csv)")
        if path is not None:
            text = csv_text(*for_spreadsheet(report.columns, rows))
            write_out(self.bench, path, lambda: text, lambda why: self._told(path, why), self)

    def _told(self, path: Path, fault: str) -> None:
        if fault:
            self.bench.messages.tell(self.tr("The file was not written"), fault)
        else:
            self.said.emit(self.tr("Written: {path}").format(path=path))

    def show_pdf(self) -> None:
        """Chart and table on paper, in the preview; progress is told and it can be stopped."""
        report = self.report()
        rows = [cells_of(report.columns, one) for one in self._shown_rows()]
        chart, facts = self._chart(), self._facts(report)
        heads: list[tuple[str, Align]] = [
            (one.title(), "right" if one.kind == "figure" else "left") for one in report.columns
        ]

        def make(steps: Steps) -> bytes | None:
            from printing.report import report as paper_of

            with self.bench.store.read() as work:
                shop = work.shop.details()
            pdf = paper_of(
                report.name(),
                facts,
                chart,
                report.say,
                heads,
                _counted(rows, steps),
                shop=shop,
                made=self.bench.now(),
                words=self.bench.words,
            )
            return None if steps.stopped else pdf

        self.progress.paper(make, report.name())

    def _shown_rows(self) -> Sequence[Any]:
        return self.tables[self.stack.currentIndex()].rows.rows()

    def _facts(self, report: Report) -> list[tuple[str, str]]:
        """What the paper is of: its days, and what it was narrowed to."""
        language = self.bench.words.language
        start, end = (date_text(day, language) for day in self.days())
        facts = [(self.tr("From"), start), (self.tr("To"), end)]
        if not report.dated:
            facts = [(self.tr("As of"), date_text(self.bench.today(), language))]
        kind = self.species.value()
        if kind and report.species is not None:
            facts.append((self.tr("Animal"), self.bench.words.name(kind, f"species.{kind}")))
        if self.wanted.text().strip():
            facts.append((self.tr("With"), self.wanted.text().strip()))
        return facts


def _narrowed(report: Report, rows: list[Any], asked: list[str], kind: str) -> list[Any]:
    """The rows of an animal that have all the words asked for."""
    if kind and report.species is not None:
        rows = [one for one in rows if report.species(one) == kind]
    if asked:
        rows = [one for one in rows if has_words(asked, cells_of(report.columns, one))]
    return rows


def _counted(rows: list[list[str]], steps: Steps) -> Iterator[list[str]]:
    """The rows, told in pieces of a hundred."""
    for piece in steps.over([rows[at : at + A_PIECE] for at in range(0, len(rows), A_PIECE)]):
        yield from piece
