"""Every way of every cut, worked out once for a species: indices and masks for the planner.

Nothing here depends on a carcass or an order. A lane is one bit of a run's mask; a span is a
range of stretches (first and last, both within) in which all lanes a way takes are filled.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import count
from math import lcm
from typing import TYPE_CHECKING, NamedTuple

from shared.carcass.catalogue import Catalogue, Cut, Part, Pool, Run, RunTake, Way

if TYPE_CHECKING:
    from shared.cutting.run_packing import Piece
    from shared.cutting.strip import Strip

Span = tuple[int, int]
Reach = tuple[int, int, tuple[Span, ...]]
Gives = tuple[tuple[int, int, int], ...]  # a pool's place in POOLS, or LOST, and a fraction
POOLS: tuple[Pool, ...] = ("lean", "fat", "bones", "skin", "offal")
LOST = len(POOLS)


@dataclass(frozen=True, slots=True)
class OnRun:
    """A run take with its run, lanes (bits) and stretches as numbers; `number` is its own.

    `partial`: it stops inside its first or last stretch.
    """

    take: RunTake
    run: int
    lanes: int
    first: int
    last: int
    spans: tuple[Span, ...]
    number: int
    partial: bool


@dataclass(frozen=True, slots=True)
class OffRun:
    """A part take: `part` stands alone; `run` is -1, or the run its whole stretch lies on."""

    part: Part
    share: Fraction
    run: int = -1
    lane: int = 0
    stretch: int = -1


@dataclass(frozen=True, slots=True)
class WayPlan:
    """One way of a cut, compiled. `parts` are all parts it may take, run lanes included.

    `animal`: it takes only what comes one to an animal. `single`: it is made of one side.
    """

    cut: Cut
    way: Way
    place: int
    on_run: OnRun | None
    off_run: tuple[OffRun, ...]
    parts: tuple[Part, ...]
    animal: bool
    single: bool


class WayPrint(NamedTuple):
    """Bits of what a way takes of a side and is charged for; whether it takes of the animal."""

    of: "WayPlan"
    bits: int
    charged: int
    of_animal: bool


@dataclass(frozen=True, slots=True)
class Ways:
    """A species compiled: runs in a fixed order, ways by cut, parts by place.

    `at[run][stretch]` holds (lane bit, part) for each filled lane. `denominator` makes every
    share of a part that a way takes a whole number. `bound_parts` are those that age or skin
    can forbid; `may_be_open` those of a side with run, lane and stretch (-1, 0, -1 off the runs),
    `open_spots` their numbers by run and lane, or by the code of a part that stands alone.
    `filled[run][lane]` are the stretches a lane is filled on; `joined` says that a way needs it.
    `takes_nature` are cuts that take what is trim by nature, `singles` those that take what comes
    one to an animal and is divided, with (way, part). `gives` and `gives_back` are
    fractions that go to the pools, by part and by cut. `of_side` are a side's parts, each with its
    share of the weight, `parts_of` what a cut takes in any way. `reaches`, `owned` and `prints`
    are memory: the stretches of each run take that lie in some quarters, the ways of a cut on one
    side that need no other quarter, and what a way takes as bits. `strips` are the strips a
    planner asked before, where it remembers.
    """

    catalogue: Catalogue
    runs: tuple[Run, ...]
    run_place: dict[str, int]
    at: tuple[tuple[tuple[tuple[int, Part], ...], ...], ...]
    by_cut: dict[str, tuple[WayPlan, ...]]
    denominator: int
    bound_parts: tuple[Part, ...]
    may_be_open: tuple[tuple[Part, int, int, int], ...]
    open_spots: dict[tuple[int, int] | str, tuple[int, ...]]
    open_of_animal: tuple[Part, ...]
    nature: tuple[Part, ...]
    takes_nature: frozenset[str]
    singles: dict[str, tuple[tuple[str, str], ...]]
    filled: tuple[dict[int, tuple[int, ...]], ...]
    joined: bool
    gives: dict[str, Gives]
    gives_back: dict[str, Gives | None]
    of_side: tuple[tuple[str, int, int], ...] = ()
    parts_of: dict[str, frozenset[str]] = field(default_factory=lambda: {}, compare=False)
    reaches: dict[tuple[int, frozenset[str]], Reach | None] = field(
        default_factory=lambda: {}, compare=False
    )

    owned: dict[tuple[str, frozenset[str]], tuple[WayPlan, ...]] = field(
        default_factory=lambda: {}, compare=False
    )
    prints: dict[int, WayPrint] = field(default_factory=lambda: {}, compare=False)
    strips: "dict[tuple[Piece, ...], Strip] | None" = None

    def lane_names(self, run: int, mask: int) -> tuple[str, ...]:
        """The lanes of a mask, in the run's order."""
        return tuple(name for bit, name in enumerate(self.runs[run].lanes) if mask >> bit & 1)


def compile_ways(catalogue: Catalogue) -> Ways:
    """Compile a catalogue; takes some milliseconds, once for a species."""
    runs = tuple(catalogue.runs.values())
    place = {run.code: index for index, run in enumerate(runs)}
    at = tuple(_filled(catalogue, run) for run in runs)
    numbers = count()
    by_cut = {
        code: _ways_of(cut, runs, place, at, catalogue, numbers)
        for code, cut in catalogue.cuts.items()
    }
    bound = tuple(
        part for part in catalogue.parts.values() if part.srm_from_30_months or part.needs_skin
    )
    open_ones = [
        part for part in catalogue.parts.values() if not part.by_nature_trim and not part.loss
    ]
    may_be_open = tuple(_placed(part, runs, place) for part in open_ones if part.per == "side")
    return Ways(
        catalogue,
        runs,
        place,
        at,
        by_cut,
        _denominator(by_cut),
        bound,
        may_be_open,
        _spots(may_be_open),
        tuple(part for part in open_ones if part.per == "animal"),
        tuple(part for part in catalogue.parts.values() if part.by_nature_trim),
        _takes_nature(by_cut),
        _singles(by_cut),
        tuple(_stretches_by_lane(stretches) for stretches in at),
        any(way.sides == "joined" for cut in catalogue.cuts.values() for way in cut.ways),
        {code: _gives(part) for code, part in catalogue.parts.items()},
        {code: _gives_back(cut) for code, cut in catalogue.cuts.items()},
        _of_side(catalogue),
        {code: _parts_of(plans) for code, plans in by_cut.items()},
    )


def _parts_of(plans: Iterable[WayPlan]) -> frozenset[str]:
    return frozenset([part.code for plan in plans for part in plan.parts])


def _of_side(catalogue: Catalogue) -> tuple[tuple[str, int, int], ...]:
    return tuple(
        (part.code, part.share.numerator, part.share.denominator)
        for part in catalogue.parts.values()
        if part.per == "side"
    )


def _takes_nature(by_cut: dict[str, tuple[WayPlan, ...]]) -> frozenset[str]:
    return frozenset(
        code
        for code, plans in by_cut.items()
        if any(part.by_nature_trim for plan in plans for part in plan.parts)
    )


def _singles(by_cut: dict[str, tuple[WayPlan, ...]]) -> dict[str, tuple[tuple[str, str], ...]]:
    found: dict[str, tuple[tuple[str, str], ...]] = {}
    for code, plans in by_cut.items():
        mine = [
            (plan.way.code, part.code)
            for plan in plans
            for part in plan.parts
            if part.per == "animal" and part.divisible
        ]
        if mine:
            found[code] = tuple(mine)
    return found


def _denominator(by_cut: dict[str, tuple[WayPlan, ...]]) -> int:
    plans = [plan for plans in by_cut.values() for plan in plans]
    return lcm(1, *[take.share.denominator for plan in plans for take in plan.off_run])


def _gives(part: Part) -> Gives:
    """What of a part goes to which pool, as fractions of it, when it is given to the trim."""
    if part.primal == "variety":
        return ((POOLS.index("offal"), 1, 1),)
    return _pooled((part.lean, part.fat, part.bone, part.skin))


def _gives_back(cut: Cut) -> Gives | None:
    """What a cut gives back to the pools and the knife loses, as fractions of the weight taken.

    None for a cut that is given to the trim: that is reckoned part by part.
    """
    if cut.kind == "to_trim":
        return None
    given, lost = cut.trimming, cut.trimming.loss
    back = _pooled((given.lean, given.fat, given.bone, given.skin))
    return (*back, (LOST, lost.numerator, lost.denominator)) if lost else back


def _pooled(shares: tuple[Fraction, ...]) -> Gives:
    return tuple(
        (place, share.numerator, share.denominator) for place, share in enumerate(shares) if share
    )


def _stretches_by_lane(
    stretches: tuple[tuple[tuple[int, Part], ...], ...],
) -> dict[int, tuple[int, ...]]:
    """The stretches each lane of a run is filled on."""
    found: dict[int, tuple[int, ...]] = {}
    for place, filled in enumerate(stretches):
        for bit, _ in filled:
            found[bit] = (*found.get(bit, ()), place)
    return found


def _placed(part: Part, runs: tuple[Run, ...], place: dict[str, int]) -> tuple[Part, int, int, int]:
    if not part.run:
        return part, -1, 0, -1
    run = runs[place[part.run]]
    return part, place[part.run], 1 << run.lanes.index(part.lane), run.place(part.stretch)


def _spots(
    placed: tuple[tuple[Part, int, int, int], ...],
) -> dict[tuple[int, int] | str, tuple[int, ...]]:
    found: dict[tuple[int, int] | str, tuple[int, ...]] = {}
    for number, (part, run, lane, _) in enumerate(placed):
        spot = part.code if run < 0 else (run, lane)
        found[spot] = (*found.get(spot, ()), number)
    return found


def _filled(catalogue: Catalogue, run: Run) -> tuple[tuple[tuple[int, Part], ...], ...]:
    places: list[list[tuple[int, Part]]] = [[] for _ in run.stretches]
    for part in catalogue.parts.values():
        if part.run == run.code:
            places[run.place(part.stretch)].append((1 << run.lanes.index(part.lane), part))
    return tuple(tuple(sorted(one, key=lambda pair: pair[0])) for one in places)


def _ways_of(
    cut: Cut,
    runs: tuple[Run, ...],
    place: dict[str, int],
    at: tuple[tuple[tuple[tuple[int, Part], ...], ...], ...],
    catalogue: Catalogue,
    numbers: Iterator[int],
) -> tuple[WayPlan, ...]:
    ways = enumerate(cut.ways)
    return tuple([_way(cut, way, at_, runs, place, at, catalogue, numbers) for at_, way in ways])


def _way(
    cut: Cut,
    way: Way,
    number: int,
    runs: tuple[Run, ...],
    place: dict[str, int],
    at: tuple[tuple[tuple[tuple[int, Part], ...], ...], ...],
    catalogue: Catalogue,
    numbers: Iterator[int],
) -> WayPlan:
    on_run = None if way.run is None else _on_run(way.run, runs, place, at, next(numbers))
    off_run: list[OffRun] = []
    parts: list[Part] = []
    if on_run is not None:
        for stretch in range(on_run.first, on_run.last + 1):
            parts += [part for bit, part in at[on_run.run][stretch] if bit & on_run.lanes]
    for take in way.parts:
        part = catalogue.parts[take.part]
        parts.append(part)
        if part.run:
            run = runs[place[part.run]]
            off_run.append(
                OffRun(
                    part,
                    take.share,
                    place[part.run],
                    1 << run.lanes.index(part.lane),
                    run.place(part.stretch),
                )
            )
        else:
            off_run.append(OffRun(part, take.share))
    animal = on_run is None and all(off.part.per == "animal" for off in off_run)
    single = way.sides == "one" and not animal
    return WayPlan(cut, way, number, on_run, tuple(off_run), tuple(parts), animal, single)


def _on_run(
    take: RunTake,
    runs: tuple[Run, ...],
    place: dict[str, int],
    at: tuple[tuple[tuple[tuple[int, Part], ...], ...], ...],
    number: int,
) -> OnRun:
    index = place[take.run]
    run = runs[index]
    lanes = 0
    for name in take.lanes:
        lanes |= 1 << run.lanes.index(name)
    first, last = run.place(take.first), run.place(take.last)
    filled = [
        stretch for stretch in range(first, last + 1) if _mask(at[index][stretch]) & lanes == lanes
    ]
    partial = take.first_share != 1 or take.last_share != 1
    return OnRun(take, index, lanes, first, last, spans_of(filled), number, partial)


def spans_of(stretches: list[int]) -> tuple[Span, ...]:
    """Neighbouring stretches joined: [0, 1, 3] gives (0, 1) and (3, 3)."""
    spans: list[Span] = []
    for stretch in stretches:
        if spans and spans[-1][1] == stretch - 1:
            spans[-1] = (spans[-1][0], stretch)
        else:
            spans.append((stretch, stretch))
    return tuple(spans)


def _mask(filled: tuple[tuple[int, Part], ...]) -> int:
    mask = 0
    for bit, _ in filled:
        mask |= bit
    return mask
