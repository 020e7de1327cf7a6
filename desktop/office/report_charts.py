"""The charts of the Office's reports, made from the rows that the table shows."""

from collections.abc import Callable, Iterable, Sequence
from datetime import date
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.fields.dates import MONTHS
from printing.words.place_words import capital
from shared.shop.charts import MOST_LABELS, Chart, Series, ticks
from shared.shop.reports import (
    BlockWeek,
    CutMade,
    CutOut,
    Killed,
    KillWeek,
    Sitting,
    weeks,
)
from shared.units import NG_PER_LB

if TYPE_CHECKING:
    from desktop.bench import Bench

AGES = (7, 14, 30)
CLASSES = 13
ANIMALS = ("beef", "pork", "lamb", "goat", "deer", "bison", "veal")
"""Each has the colour and pattern of its place here, in every chart and on paper."""


class ReportCharts(QObject):
    """Makes the charts; a QObject for the sake of its words."""

    def __init__(self, bench: "Bench", parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench

    def species(self, code: str) -> str:
        """A species' name in the window's language."""
        return capital(self.bench.words.name(code, f"species.{code}"))

    def _of(self, code: str, values: Iterable[Fraction | None]) -> Series:
        """The bars of a species, which look the same in every report."""
        kind = ANIMALS.index(code) if code in ANIMALS else None
        return Series(self.species(code), tuple(values), kind)

    def cut(self, species: str, code: str) -> str:
        """A cut's name in the window's language."""
        return capital(self.bench.words.name(species, f"cut.{code}", 2))

    def week(self, monday: date) -> str:
        """A week as an axis names it: "Nov 23", in Spanish "23 nov"."""
        language = self.bench.words.language
        month = MONTHS[language][monday.month - 1]
        return f"{monday.day} {month}" if language == "es" else f"{month.title()} {monday.day}"

    def pounds_by_week(self, title: str, rows: Sequence[KillWeek]) -> Chart:
        """Pounds hanging, species on species."""
        return self._by_week(title, rows, lambda one: pounds(one.hot_ng))

    def head_by_week(self, title: str, rows: Sequence[KillWeek]) -> Chart:
        """Head killed, species on species."""
        return self._by_week(title, rows, lambda one: Fraction(one.head))

    def _by_week(
        self, title: str, rows: Sequence[KillWeek], value: Callable[[KillWeek], Fraction]
    ) -> Chart:
        mondays = _every_week(one.monday for one in rows)
        known = {(one.monday, one.species): value(one) for one in rows}
        series = tuple(
            self._of(code, (known.get((day, code)) for day in mondays))
            for code in sorted({one.species for one in rows})
        )
        return Chart(title, tuple(self.week(day) for day in mondays), series, stacked=True)

    def hanging(self, title: str, rows: Sequence[Killed]) -> Chart:
        """How many carcasses hang how much, in classes of one width."""
        weighed = [(one.species, one.hot_ng) for one in rows if one.hot_ng]
        edges = ticks(pounds(max((much for _, much in weighed), default=0)), CLASSES)
        step = int(edges[1] * NG_PER_LB)
        first = min((much for _, much in weighed), default=0) // step
        places = range(first, len(edges) - 1 if weighed else 0)
        counts: dict[tuple[str, int], int] = {}
        for code, much in weighed:
            at = min(much // step, len(edges) - 2)
            counts[code, at] = counts.get((code, at), 0) + 1
        series = tuple(
            self._of(code, (_or_none(counts.get((code, at))) for at in places))
            for code in sorted({code for code, _ in weighed})
        )
        labels = tuple(f"{number(edges[at])}–{number(edges[at + 1])} lb" for at in places)
        return Chart(title, labels, series, stacked=True, note=self.tr("Carcasses by weight"))

    def cut_out(self, title: str, rows: Sequence[CutOut]) -> Chart:
        """Packages in per cent of the hanging weight, a bar a producer."""
        codes = sorted({one.species for one in rows})
        names = list(dict.fromkeys(one.producer for one in rows))
        shown = names[:MOST_LABELS]
        known = {(one.producer, one.species): Fraction(one.per_mille, 10) for one in rows}
        series = tuple(
            self._of(code, (known.get((name, code)) for name in shown)) for code in codes
        )
        return Chart(title, tuple(shown), series, note=self._first(len(shown), len(names)))

    def made(self, title: str, rows: Sequence[CutMade]) -> Chart:
        """Pounds expected and pounds made, side by side, a pair a cut."""
        shown = rows[:MOST_LABELS]
        return Chart(
            title,
            tuple(self.cut(one.species, one.cut) for one in shown),
            (
                Series(self.tr("expected"), tuple(pounds(one.expected_ng) for one in shown)),
                Series(self.tr("made"), tuple(pounds(one.made_ng) for one in shown)),
            ),
            note=self._first(len(shown), len(rows)),
        )

    def block(self, title: str, rows: Sequence[BlockWeek]) -> Chart:
        """Hours booked and hours ticked, by week."""
        mondays = _every_week(one.monday for one in rows)
        known = {one.monday: one for one in rows}
        found = [known.get(day) for day in mondays]
        return Chart(
            title,
            tuple(self.week(day) for day in mondays),
            (
                Series(self.tr("booked"), tuple(one and hours(one.reckoned) for one in found)),
                Series(
                    self.tr("first to last tick"),
                    tuple(one and hours(one.ticked) for one in found),
                ),
            ),
        )

    def sitting(self, title: str, rows: Sequence[Sitting]) -> Chart:
        """Orders unpaid and orders not fetched, by the days they sit."""
        unpaid, here = [0] * (len(AGES) + 1), [0] * (len(AGES) + 1)
        for one in rows:
            age = sum(one.days > limit for limit in AGES)
            unpaid[age] += one.due_cents > 0
            here[age] += one.packages_left > 0
        labels = (
            self.tr("to {days} days").format(days=AGES[0]),
            self.tr("{first} to {last}").format(first=AGES[0] + 1, last=AGES[1]),
            self.tr("{first} to {last}").format(first=AGES[1] + 1, last=AGES[2]),
            self.tr("over {days} days").format(days=AGES[2]),
        )
        return Chart(
            title,
            labels,
            (
                Series(self.tr("unpaid"), tuple(map(Fraction, unpaid))),
                Series(self.tr("not fetched"), tuple(map(Fraction, here))),
            ),
            note=self.tr("Orders by the days since the last package"),
        )

    def _first(self, shown: int, there: int) -> str:
        if shown == there:
            return ""
        said = self.tr("The first {shown} of {all} in the table's order")
        return said.format(shown=shown, all=f"{there:,}")


def pounds(nanograms: int | None) -> Fraction:
    """Nanograms as exact pounds."""
    return Fraction(nanograms or 0, NG_PER_LB)


def hours(minutes: int) -> Fraction:
    """Minutes as exact hours."""
    return Fraction(minutes, 60)


def number(value: Fraction) -> str:
    """A value for people, at most one decimal: 1,830 and 12.5."""
    tenths = int((value * 20 + 1) // 2)
    whole, tenth = divmod(tenths, 10)
    return f"{whole:,}.{tenth}" if tenth else f"{whole:,}"


def _or_none(count: int | None) -> Fraction | None:
    return None if count is None else Fraction(count)


def _every_week(mondays: Iterable[date]) -> list[date]:
    """From the first week to the last, those without anything too."""
    known = sorted(set(mondays))
    return list(weeks(known[0], known[-1])) if known else []
