"""Kill days: how many animals each takes, the hooks they hang on, and what a day has left."""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from functools import cached_property
from typing import Literal

from shared.carcass.carcass import Regime, Skin

Places = Mapping[str, int]
FullCode = Literal["closed", "no_kill_day", "places", "hooks", "block"]
WaitState = Literal["waiting", "told", "booked", "gone"]

# Days an animal hangs before it is cut, where the shop says nothing. Beef 14 to 21 days of chill
# and aging (Beef Checkoff, "Your Beef Breakdown, Explained"); pork is cut as soon as it is
# chilled (general extension advice); lamb about a week or less (from memory); goat and deer as
# lamb (from memory).
USUAL_HANG: Mapping[str, int] = {"beef": 14, "pork": 1, "lamb": 7, "goat": 7, "deer": 7}
SIDES_A_HEAD: Mapping[str, int] = {"beef": 2, "pork": 2}
LOOK_AHEAD = 180


@dataclass(frozen=True, slots=True)
class Plan:
    """The shop's week and rooms. `week` tells places by species of each weekday, Monday 0.

    No week at all: the shop keeps no calendar, and every day takes what comes. `hooks` and
    `block_minutes` None: not counted. What the shop entered by species: `minutes_a_side`, and
    `minutes_a_cut`, what a line takes on each side by class of cut (see `block_minutes`).
    """

    week: Mapping[int, Places] = field(default_factory=dict[int, Places])
    hooks: int | None = None
    block_minutes: int | None = None
    hang: Places = field(default_factory=dict[str, int])
    minutes_a_side: Places = field(default_factory=dict[str, int])
    minutes_a_cut: Mapping[str, Mapping[str, int]] = field(
        default_factory=dict[str, Mapping[str, int]]
    )


@dataclass(frozen=True, slots=True)
class OtherDay:
    """A date that isn't as its weekday: closed (a holiday), or with other places."""

    day: date
    closed: bool
    note: str = ""
    places: Places = field(default_factory=dict[str, int])


@dataclass(frozen=True, slots=True)
class Booking:
    """What a booking takes: so many head of a species, killed on a day.

    `cut_minutes` is what its orders' lines take at the block; None: as the house's usual does.
    """

    day: date
    species: str
    head: int
    cut_minutes: int | None = None


@dataclass(frozen=True, slots=True)
class Full:
    """Why a booking doesn't fit: what there is, what is taken and what it needs, on which day."""

    code: FullCode
    day: date
    there: int = 0
    taken: int = 0
    needed: int = 0


@dataclass(frozen=True, slots=True)
class Comes:
    """How animals come, as the booking asks it."""

    skin: Skin = "unknown"
    regime: Regime = "custom"
    keeps: str = ""


@dataclass(frozen=True, slots=True)
class Waiting:
    """Who waits for a place; `customer` is the name for showing."""

    id: int
    customer_id: int
    customer: str
    species: str
    head: int
    from_day: date
    note: str
    state: WaitState
    version: int
    comes: Comes = Comes()


@dataclass(frozen=True)
class Filled:
    """The plan, the dates that are otherwise, and what is booked; each sum is made once.

    `usual` are the minutes the house's usual takes on a side, by species. Not `counted`: what
    the orders' lines take isn't known yet, and no minutes are told where the shop entered them.
    """

    plan: Plan
    others: Mapping[date, OtherDay]
    bookings: tuple[Booking, ...]
    usual: Places = field(default_factory=dict[str, int])
    counted: bool = True

    @cached_property
    def head(self) -> Mapping[tuple[date, str], int]:
        """Head booked of each species on each day."""
        found: dict[tuple[date, str], int] = defaultdict(int)
        for one in self.bookings:
            found[one.day, one.species] += one.head
        return found

    @cached_property
    def hooks(self) -> Mapping[date, int]:
        """Hooks taken on each day."""
        found: dict[date, int] = defaultdict(int)
        for (day, species), head in self.head.items():
            taken = hooks_of(species, head)
            for ahead in range(hang_days(self.plan, species)):
                found[day + timedelta(ahead)] += taken
        return found

    @cached_property
    def minutes(self) -> Mapping[date, int]:
        """Block minutes of what comes to the block on each day."""
        found: dict[date, int] = defaultdict(int)
        if self.plan.minutes_a_cut and not self.counted:
            return found
        for one in self.bookings:
            found[one.day + timedelta(hang_days(self.plan, one.species))] += self.needs(one)
        return found

    def needs(self, one: Booking) -> int:
        """Block minutes of a booking: its sides, and its lines or the house's usual.

        2 beeves at 90 minutes a side whose usual takes 21 more: 2 * 2 * (90 + 21) = 444.
        """
        sides = 2 * one.head
        cut = one.cut_minutes
        cut = sides * self.usual.get(one.species, 0) if cut is None else cut
        return sides * self.plan.minutes_a_side.get(one.species, 0) + cut


def hang_days(plan: Plan, species: str) -> int:
    """Days from the kill to the block: the shop's, or the usual.

    Beef: 14; killed on the 2nd, it is cut on the 16th.
    """
    return plan.hang.get(species, USUAL_HANG.get(species, 7))


def hooks_of(species: str, head: int) -> int:
    """Hooks taken: a side of beef or pork each, a whole lamb, goat or deer. 3 beeves: 6."""
    return SIDES_A_HEAD.get(species, 1) * head


def places_on(plan: Plan, others: Mapping[date, OtherDay], day: date) -> Places:
    """The places by species of a date. A closed date has none."""
    other = others.get(day)
    if other is not None:
        return {} if other.closed else other.places
    return plan.week.get(day.weekday(), {})


def left_on(filled: Filled, species: str, day: date) -> int:
    """Places left, none below 0. 12 pork places with 9 booked: 3."""
    there = places_on(filled.plan, filled.others, day).get(species, 0)
    return max(0, there - filled.head.get((day, species), 0))


def hooks_on(filled: Filled, day: date) -> int:
    """Hooks taken on a date, from the kill until the day before the block.

    A beef killed on the 2nd hangs 14 days: 2 hooks from the 2nd to the 15th, none on the 16th.
    """
    return filled.hooks.get(day, 0)


def minutes_on(filled: Filled, day: date) -> int:
    """Block minutes of what comes to the block on a date, as the shop entered them.

    Beef at 90 minutes a side, 2 head killed 14 days before: 2 * 2 * 90 = 360.
    """
    return filled.minutes.get(day, 0)


def why_full(filled: Filled, new: Booking) -> tuple[Full, ...]:
    """All that speaks against a booking; nothing when it fits or the shop keeps no calendar.

    12 pork places, 11 booked, 2 more asked: Full("places", there 12, taken 11, needed 2).
    """
    plan = filled.plan
    if not plan.week:
        return ()
    found = [*_places_full(filled, new)]
    need = hooks_of(new.species, new.head)
    if plan.hooks is not None:
        hanging = [new.day + timedelta(n) for n in range(hang_days(plan, new.species))]
        taken_on = [(hooks_on(filled, day), day) for day in hanging] or [(0, new.day)]
        worst = max(taken_on, key=lambda one: one[0])
        if worst[0] + need > plan.hooks:
            found.append(Full("hooks", worst[1], plan.hooks, worst[0], need))
    cutting = new.day + timedelta(hang_days(plan, new.species))
    minutes = filled.needs(new)
    if plan.block_minutes is not None and minutes:
        taken = minutes_on(filled, cutting)
        if taken + minutes > plan.block_minutes:
            found.append(Full("block", cutting, plan.block_minutes, taken, minutes))
    return tuple(found)


def _places_full(filled: Filled, new: Booking) -> tuple[Full, ...]:
    other = filled.others.get(new.day)
    if other is not None and other.closed:
        return (Full("closed", new.day, needed=new.head),)
    there = places_on(filled.plan, filled.others, new.day).get(new.species, 0)
    taken = filled.head.get((new.day, new.species), 0)
    if not there:
        return (Full("no_kill_day", new.day, 0, taken, new.head),)
    if taken + new.head > there:
        return (Full("places", new.day, there, taken, new.head),)
    return ()


def next_days(filled: Filled, new: Booking, count: int = 3) -> tuple[date, ...]:
    """The next days after `new.day` that can take it, at most half a year ahead."""
    if not filled.plan.week:
        return ()
    found: list[date] = []
    for ahead in range(1, LOOK_AHEAD + 1):
        day = new.day + timedelta(ahead)
        if not why_full(filled, replace(new, day=day)):
            found.append(day)
            if len(found) == count:
                break
    return tuple(found)
