"""The reports one looks at: what each reads, its columns and its chart."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject

from desktop.fields.dates import date_text
from desktop.office.report_charts import ReportCharts, hours, number
from desktop.tables import Column, Figure, count_column, money_column, pounds_column
from shared.shop.charts import Chart
from shared.shop.reports import (
    BlockWeek,
    CutMade,
    CutOut,
    Killed,
    KillWeek,
    Sitting,
    by_week,
    cut_out,
    made_together,
    together,
)

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench

Rows = Sequence[Any]


@dataclass(frozen=True, slots=True)
class Report:
    """One report.

    `read` reads a span of days, `gather` makes the rows of all that was read, `species` says of
    which species a row is. `unit` is written behind the chart's figures. Where it isn't `dated`
    it says how things stand now, whatever days are asked for. `teaches` stands where nothing is.
    """

    key: str
    name: Callable[[], str]
    teaches: Callable[[], str]
    columns: list[Column[Any]]
    read: Callable[["Work", date, date], Rows]
    gather: Callable[[Rows], Rows]
    chart: Callable[[str, Rows], Chart]
    unit: str = ""
    species: Callable[[Any], str] | None = None
    dated: bool = True

    def say(self, value: Fraction) -> str:
        """A value of the chart for people."""
        return f"{number(value)}\u00a0{self.unit}" if self.unit else number(value)


class ReportLists(QObject):
    """Makes the reports; a QObject for the sake of its words."""

    def __init__(self, bench: "Bench", parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench
        self.charts = ReportCharts(bench, self)

    def every(self) -> tuple[Report, ...]:
        """All reports in the order they are offered."""
        return (
            *self._of_the_kill(),
            self._of_cut_out(),
            self._of_made(),
            self._of_hours(),
            self._of_the_shop(),
        )

    def _of_the_kill(self) -> tuple[Report, ...]:
        def teaches() -> str:
            return self.tr("Animals killed in these days stand here once the rail has them.")

        charts = self.charts
        weekly: list[tuple[str, Callable[[], str], Any, str]] = [
            ("pounds", lambda: self.tr("Pounds by week"), charts.pounds_by_week, "lb"),
            ("head", lambda: self.tr("Head by week"), charts.head_by_week, ""),
        ]
        return (
            *(
                Report(
                    key,
                    name,
                    teaches,
                    self._weeks(),
                    lambda work, start, end: work.reports.killed(start, end),
                    by_week,
                    chart,
                    unit,
                    lambda row: row.species,
                )
                for key, name, chart, unit in weekly
            ),
            Report(
                "hanging",
                lambda: self.tr("Hanging weights"),
                teaches,
                self._hanging(),
                lambda work, start, end: work.reports.killed(start, end),
                tuple,
                charts.hanging,
                species=lambda row: row.species,
            ),
        )

    def _of_cut_out(self) -> Report:
        return Report(
            "cut_out",
            lambda: self.tr("Cut-out by species and producer"),
            lambda: self.tr(
                "A lot stands here when every order of it is wrapped and every carcass has "
                "its hot weight."
            ),
            self._cut_out(),
            lambda work, start, end: work.reports.packed(start, end),
            cut_out,
            self.charts.cut_out,
            "%",
            lambda row: row.species,
        )

    def _of_made(self) -> Report:
        return Report(
            "made",
            lambda: self.tr("Expected against made"),
            lambda: self.tr(
                "A cut stands here once the block has ticked its carcass and the order is wrapped."
            ),
            self._made(),
            lambda work, start, end: work.reports.made(start, end),
            made_together,
            self.charts.made,
            "lb",
            lambda row: row.species,
        )

    def _of_hours(self) -> Report:
        return Report(
            "block",
            lambda: self.tr("Block hours"),
            lambda: self.tr(
                "Booked hours come from the minutes a side in the kill calendar's week, the "
                "others from the block's ticks."
            ),
            self._block(),
            lambda work, start, end: work.reports.block(start, end),
            together,
            self.charts.block,
            "h",
        )

    def _of_the_shop(self) -> Report:
        return Report(
            "sitting",
            lambda: self.tr("Unpaid or not fetched"),
            lambda: self.tr("Every wrapped order is paid and fetched."),
            self._sitting(),
            lambda work, _start, _end: work.reports.sitting(self.bench.today()),
            tuple,
            self.charts.sitting,
            species=lambda row: row.species,
            dated=False,
        )

    def _day(self, day: date | None) -> str:
        return "" if day is None else date_text(day, self.bench.words.language)

    def _date(self, title: Callable[[], str], day: Callable[[Any], date | None]) -> Column[Any]:
        return Column(
            "day", title, lambda row: self._day(day(row)), kind="date", sort=day, width=160
        )

    def _species(self, *, stretch: bool = False) -> Column[Any]:
        return Column(
            "species",
            lambda: self.tr("Animal"),
            lambda row: self.charts.species(row.species),
            width=130,
            stretch=stretch,
        )

    def _weeks(self) -> list[Column[KillWeek]]:
        return [
            self._date(lambda: self.tr("Week of"), lambda row: row.monday),
            self._species(stretch=True),
            count_column("head", lambda: self.tr("Head"), lambda row: row.head),
            count_column("weighed", lambda: self.tr("Weighed"), lambda row: row.weighed, 100),
            pounds_column("hot", lambda: self.tr("Hot weight"), lambda row: row.hot_ng, 130),
            pounds_column(
                "mean",
                lambda: self.tr("Mean"),
                lambda row: row.hot_ng // row.weighed if row.weighed else None,
                120,
            ),
        ]

    def _hanging(self) -> list[Column[Killed]]:
        return [
            self._date(lambda: self.tr("Killed"), lambda row: row.day),
            Column("tag", lambda: self.tr("Tag"), lambda row: row.tag, width=110),
            self._species(),
            Column("who", lambda: self.tr("Producer"), lambda row: row.producer, stretch=True),
            count_column("lot", lambda: self.tr("Lot"), lambda row: row.lot_number),
            pounds_column("hot", lambda: self.tr("Hot weight"), lambda row: row.hot_ng, 130),
        ]

    def _cut_out(self) -> list[Column[CutOut]]:
        return [
            Column("who", lambda: self.tr("Producer"), lambda row: row.producer, stretch=True),
            self._species(),
            count_column("lots", lambda: self.tr("Lots"), lambda row: row.lots),
            count_column("head", lambda: self.tr("Head"), lambda row: row.head),
            pounds_column("hot", lambda: self.tr("Hot weight"), lambda row: row.hot_ng, 130),
            pounds_column("packed", lambda: self.tr("Packed"), lambda row: row.packed_ng, 130),
            _percent("percent", lambda: self.tr("Packed of hot"), lambda row: row.per_mille),
        ]

    def _made(self) -> list[Column[CutMade]]:
        return [
            self._species(),
            Column(
                "cut",
                lambda: self.tr("Cut"),
                lambda row: self.charts.cut(row.species, row.cut),
                stretch=True,
            ),
            count_column("lots", lambda: self.tr("Lots"), lambda row: row.lots),
            pounds_column("table", lambda: self.tr("Expected"), lambda row: row.expected_ng, 130),
            pounds_column("made", lambda: self.tr("Made"), lambda row: row.made_ng, 130),
            _percent("percent", lambda: self.tr("Made of expected"), lambda row: row.per_mille),
        ]

    def _block(self) -> list[Column[BlockWeek]]:
        return [
            self._date(lambda: self.tr("Week of"), lambda row: row.monday),
            count_column("count", lambda: self.tr("Carcasses"), lambda row: row.carcasses, 120),
            _hours("booked", lambda: self.tr("Booked"), lambda row: row.reckoned),
            _hours("ticked", lambda: self.tr("First to last tick"), lambda row: row.ticked),
        ]

    def _sitting(self) -> list[Column[Sitting]]:
        return [
            count_column("number", lambda: self.tr("Order"), lambda row: row.number),
            Column("who", lambda: self.tr("Owner"), lambda row: row.owner, stretch=True),
            Column("phone", lambda: self.tr("Phone"), lambda row: row.phone, width=140),
            self._species(),
            self._date(lambda: self.tr("Wrapped"), lambda row: row.since),
            count_column("days", lambda: self.tr("Days"), lambda row: row.days),
            count_column("left", lambda: self.tr("Packages here"), _left, 130),
            money_column("due", lambda: self.tr("Due"), lambda row: row.due_cents or None),
        ]


def _left(row: Sitting) -> int | None:
    return row.packages_left or None


def _percent(
    key: str, title: Callable[[], str], per_mille: Callable[[Any], int | None]
) -> Column[Any]:
    def show(row: object) -> Figure:
        found = per_mille(row)
        return Figure("") if found is None else Figure(f"{found // 10}.{found % 10}", "%")

    return Column(key, title, show, kind="figure", sort=per_mille, width=160)


def _hours(key: str, title: Callable[[], str], minutes: Callable[[Any], int]) -> Column[Any]:
    def show(row: object) -> Figure:
        return Figure(number(hours(minutes(row))), "h")

    return Column(key, title, show, kind="figure", sort=minutes, width=150)
