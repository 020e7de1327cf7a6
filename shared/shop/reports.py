"""What the Office's reports add up: by week, by producer, by cut; pure values, no clock."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta

WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True)
class Killed:
    """One animal killed: its day, whose it was and what it hung, hot, in nanograms."""

    day: date
    tag: str
    species: str
    producer: str
    lot_number: int
    hot_ng: int | None


@dataclass(frozen=True, slots=True)
class KillWeek:
    """A week's kill of a species; `weighed` head have the pounds, `head` may be more."""

    monday: date
    species: str
    head: int
    weighed: int
    hot_ng: int


@dataclass(frozen=True, slots=True)
class LotPacked:
    """A lot whose orders are all wrapped: what hung and what its packages weigh."""

    species: str
    producer: str
    head: int
    hot_ng: int
    packed_ng: int


@dataclass(frozen=True, slots=True)
class CutOut:
    """A producer's lots of a species together."""

    species: str
    producer: str
    lots: int
    head: int
    hot_ng: int
    packed_ng: int

    @property
    def per_mille(self) -> int:
        """Packages over hanging weight in thousandths, rounded half up: 500 lb of 800 are 625."""
        return (2000 * self.packed_ng + self.hot_ng) // (2 * self.hot_ng)


@dataclass(frozen=True, slots=True)
class CutMade:
    """A cut over all wrapped orders of a span: what the table foretold and what was packed."""

    species: str
    cut: str
    lots: int
    expected_ng: int
    made_ng: int

    @property
    def per_mille(self) -> int | None:
        """Made over expected in thousandths, rounded half up; None where nothing was expected."""
        if not self.expected_ng:
            return None
        return (2000 * self.made_ng + self.expected_ng) // (2 * self.expected_ng)


@dataclass(frozen=True, slots=True)
class Cutting:
    """One carcass under the knife: the moments of its first and last tick on a day."""

    first: datetime
    last: datetime


@dataclass(frozen=True, slots=True)
class BlockWeek:
    """A week at the block, in minutes.

    `reckoned` is what is booked, by the minutes a side that the shop entered in its calendar;
    `ticked` what passed from the first to the last tick of each carcass, pauses within it too.
    """

    monday: date
    reckoned: int
    ticked: int
    carcasses: int


@dataclass(frozen=True, slots=True)
class Sitting:
    """A wrapped order that is unpaid or not fetched."""

    order_id: int
    number: int
    owner: str
    phone: str
    species: str
    since: date | None
    days: int
    packages_left: int
    due_cents: int


def monday_of(day: date) -> date:
    """The Monday of a day's week: Wednesday 25 November 2026 is in the week of the 23rd."""
    return day - timedelta(days=day.weekday())


def by_week(killed: Iterable[Killed]) -> tuple[KillWeek, ...]:
    """Head and pounds by week and species, in order.

    Two beeves killed on Tuesday, one weighed at 700 lb: head 2, weighed 1, 700 lb.
    """
    found: dict[tuple[date, str], list[int]] = {}
    for one in killed:
        sums = found.setdefault((monday_of(one.day), one.species), [0, 0, 0])
        sums[0] += 1
        if one.hot_ng is not None:
            sums[1] += 1
            sums[2] += one.hot_ng
    return tuple(KillWeek(*key, *sums) for key, sums in sorted(found.items()))


def cut_out(lots: Iterable[LotPacked]) -> tuple[CutOut, ...]:
    """Lots together by species and producer; what has no hanging weight is left out."""
    found: dict[tuple[str, str], list[int]] = {}
    for one in lots:
        if one.hot_ng <= 0:
            continue
        sums = found.setdefault((one.species, one.producer), [0, 0, 0, 0])
        for at, more in enumerate((1, one.head, one.hot_ng, one.packed_ng)):
            sums[at] += more
    return tuple(CutOut(*key, *sums) for key, sums in sorted(found.items()))


def minutes_of(cuttings: Iterable[Cutting]) -> int:
    """Minutes from first to last tick, added up: 8:00 to 9:30 and 9:40 to 10:10 are 120."""
    seconds = sum(int((one.last - one.first).total_seconds()) for one in cuttings)
    return (seconds + 30) // 60


def together(pieces: Iterable[BlockWeek]) -> tuple[BlockWeek, ...]:
    """Weeks that were read in two pieces, at a month's end, as one."""
    found: dict[date, list[int]] = {}
    for one in pieces:
        sums = found.setdefault(one.monday, [0, 0, 0])
        for at, more in enumerate((one.reckoned, one.ticked, one.carcasses)):
            sums[at] += more
    return tuple(BlockWeek(monday, *sums) for monday, sums in sorted(found.items()))


def made_together(pieces: Iterable[CutMade]) -> tuple[CutMade, ...]:
    """Cuts that were read in several spans as one each; a lot is in one span only."""
    found: dict[tuple[str, str], list[int]] = {}
    for one in pieces:
        sums = found.setdefault((one.species, one.cut), [0, 0, 0])
        for at, more in enumerate((one.lots, one.expected_ng, one.made_ng)):
            sums[at] += more
    return tuple(CutMade(*key, *sums) for key, sums in sorted(found.items()))


def weeks(start: date, end: date) -> Iterator[date]:
    """The Mondays of the weeks that the days from start to end (within) lie in."""
    monday = monday_of(start)
    while monday <= end:
        yield monday
        monday += WEEK


def months(start: date, end: date) -> tuple[tuple[date, date], ...]:
    """The span in pieces of a calendar month, first to last, each with its end within.

    From 20 January to 3 March 2026: to 31 January, February, to 3 March.
    """
    found: list[tuple[date, date]] = []
    while start <= end:
        following = (start.replace(day=1) + timedelta(days=32)).replace(day=1)
        last = min(end, following - timedelta(days=1))
        found.append((start, last))
        start = following
    return tuple(found)
