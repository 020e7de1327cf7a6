"""Every figure of a species with its source beside it, in the order of its file."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.carcass.catalogue import Catalogue, Cut, Part

FigureKind = Literal["weight", "length", "fraction", "percent_range", "days", "count"]
_MAKE_UP = ("lean", "fat", "bone", "skin")


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure: what it is of (`group`, `code`), which of it (`name`), its value, its source.

    `value` is exact: nanograms, lengths of 1/203,200 in, fractions, days or a count, as `kind`
    says; a range has a second value. `source` is the file's short text, `told` in full.
    """

    group: Literal["animal", "stretch", "part", "cut", "finish"]
    code: str
    name: str
    kind: FigureKind
    value: Fraction
    to: Fraction | None
    source: str
    told: str


def figures(catalogue: Catalogue, cut: str = "") -> tuple[Figure, ...]:
    """All figures of a species, or those of one cut and of the parts and stretches it takes.

    Worked example: of lamb's loin chop the stretch "loin" (6 1/2 in, derived), the parts loin,
    tenderloin and loin bone with share and make-up, and its trimming. KeyError: no such cut.
    """
    if cut:
        chosen = catalogue.cuts[cut]
        stretches, parts = _taken(catalogue, chosen)
        found = [one for one in _stretches(catalogue) if one.code in stretches]
        for code in parts:
            found.extend(_part(catalogue, catalogue.parts[code]))
        return (*found, *_cut(catalogue, chosen))
    found = [*_animal(catalogue), *_stretches(catalogue)]
    for part in catalogue.parts.values():
        found.extend(_part(catalogue, part))
    for one in catalogue.cuts.values():
        found.extend(_cut(catalogue, one))
    for finish in catalogue.finishes.values():
        found.append(
            _of(catalogue, "finish", finish.code, "yield", "fraction", finish.yield_, finish.source)
        )
    return tuple(found)


def told(catalogue: Catalogue, source: str) -> str:
    """A source in full: each key of [sources] by its text, what stands after a colon kept.

    Worked example: "IMPS, practice" of lamb gives both texts with "; " between.
    """
    keys, _, more = source.partition(":")
    full = [
        catalogue.sources.get(key.strip(), key.strip()) for key in keys.split(",") if key.strip()
    ]
    return "; ".join(full) + (f": {more.strip()}" if more.strip() else "")


def _of(
    catalogue: Catalogue,
    group: Literal["animal", "stretch", "part", "cut", "finish"],
    code: str,
    name: str,
    kind: FigureKind,
    value: Fraction | int,
    source: str,
) -> Figure:
    return Figure(group, code, name, kind, Fraction(value), None, source, told(catalogue, source))


def _animal(catalogue: Catalogue) -> Iterator[Figure]:
    """Dressing, shrink, hang days and forequarter; their sources are whole texts already."""
    ranges = catalogue.ranges

    def source(name: str) -> str:
        return ranges.sources.get(name, ranges.sources.get("", ""))

    for kind, (low, high) in ranges.dressing_usual.items():
        text = source("dressing_usual")
        name = f"dressing_usual.{kind}" if kind else "dressing_usual"
        yield Figure("animal", catalogue.species, name, "percent_range", low, high, text, text)
    low, high = ranges.dressing_possible
    text = source("dressing_possible")
    yield Figure(
        "animal", catalogue.species, "dressing_possible", "percent_range", low, high, text, text
    )
    for name, value in (("shrink", ranges.shrink), ("fore_share", ranges.fore_share)):
        yield Figure(
            "animal", catalogue.species, name, "fraction", value, None, source(name), source(name)
        )
    first, last = (Fraction(day) for day in ranges.hang_days)
    text = source("hang_days")
    yield Figure("animal", catalogue.species, "hang_days", "days", first, last, text, text)


def _stretches(catalogue: Catalogue) -> Iterator[Figure]:
    for run in catalogue.runs.values():
        for one in run.stretches:
            at = ("stretch", one.code)
            yield _of(catalogue, *at, "length", "length", one.length, one.source)
            yield _of(catalogue, *at, "band", "fraction", one.band, one.source)
            if one.ribs:
                yield _of(catalogue, *at, "ribs", "count", one.ribs, one.source)


def _part(catalogue: Catalogue, part: Part) -> Iterator[Figure]:
    every = part.sources.get("", "")
    make_up = part.sources.get("lean", every)
    share = part.sources.get("share", every)
    yield _of(catalogue, "part", part.code, "share", "fraction", part.share, share)
    for name in _MAKE_UP:
        value: Fraction = getattr(part, name)
        if value:
            source = part.sources.get(name, make_up)
            yield _of(catalogue, "part", part.code, name, "fraction", value, source)


def _cut(catalogue: Catalogue, cut: Cut) -> Iterator[Figure]:
    at = ("cut", cut.code)
    for name, length in (
        ("thickness", cut.thickness),
        ("least_thickness", cut.least_thickness),
    ):
        if length is not None:
            yield _of(catalogue, *at, name, "length", length, cut.source)
    for name, weight in (
        ("piece_weight", cut.piece_weight),
        ("package_weight", cut.package_weight),
    ):
        if weight is not None:
            yield _of(catalogue, *at, name, "weight", weight.nanograms, cut.source)
    if cut.package_pieces is not None:
        yield _of(catalogue, *at, "package_pieces", "count", cut.package_pieces, cut.source)
    if cut.lean_percent is not None:
        yield _of(catalogue, *at, "lean_percent", "fraction", cut.lean_percent, cut.source)
    for name in (*_MAKE_UP, "loss"):
        value: Fraction = getattr(cut.trimming, name)
        if value:
            yield _of(catalogue, *at, f"trimming.{name}", "fraction", value, cut.trimming.source)


def _taken(catalogue: Catalogue, cut: Cut) -> tuple[set[str], tuple[str, ...]]:
    """Stretches and parts a cut may take, in the order of the file."""
    stretches: set[str] = set()
    named = {take.part for way in cut.ways for take in way.parts}
    for way in cut.ways:
        take = way.run
        if take is None:
            continue
        run = catalogue.runs[take.run]
        span = run.stretches[run.place(take.first) : run.place(take.last) + 1]
        stretches |= {one.code for one in span}
        named |= {
            part.code
            for part in catalogue.parts.values()
            if part.run == run.code
            and part.lane in take.lanes
            and part.stretch in {one.code for one in span}
        }
    return stretches, tuple(code for code in catalogue.parts if code in named)
