"""Checks that a species file makes sense: nothing is lost, nothing is taken that isn't there.

The reader says whether the file can be read; this says whether the carcass in it adds up. A fault
names a place in the file, so that it can be mended there.
"""

import re
from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations, pairwise

from shared.carcass import thirty_months
from shared.carcass.catalogue import (
    Batch,
    Catalogue,
    Cut,
    Part,
    PartTake,
    Run,
    RunTake,
    Stretch,
    Way,
)
from shared.carcass.fault import Fault, information, wrong
from shared.carcass.neighbour_check import neighbour_faults
from shared.carcass.usual_check import usual_faults

__all__ = ["Fault", "check", "parts_of_way"]

_FIGURES = ("lean", "fat", "bone", "skin")


def check(catalogue: Catalogue) -> tuple[Fault, ...]:
    """Every fault of a catalogue; `level` "information" tells of something handled, not wrong.

    Worked number: parts of 0.6 and 0.3 of a side give one fault "shares", asked 1, found 9/10.
    """
    checks = (
        _shares,
        _fore_share,
        _make_up,
        _stretches,
        _places,
        _ends,
        _ways,
        _cuts,
        _names,
        _vertebrae,
        _sources,
        _run_order,
        _crossing_lanes,
        _neighbours,
        usual_faults,
    )
    return tuple(fault for one in checks for fault in one(catalogue))


def parts_of_way(catalogue: Catalogue, way: Way) -> tuple[tuple[Part, Fraction], ...]:
    """Every part the largest piece of a way can take, with the fraction of it."""
    taken = [
        (catalogue.parts[one.part], one.share) for one in way.parts if one.part in catalogue.parts
    ]
    if way.run is not None and way.run.run in catalogue.runs:
        taken.extend(_parts_of_run(catalogue, way.run))
    return tuple(taken)


def _parts_of_run(catalogue: Catalogue, take: RunTake) -> Iterator[tuple[Part, Fraction]]:
    run = catalogue.runs[take.run]
    for stretch in _window(run, take):
        share = Fraction(1)
        if stretch.code == take.first:
            share = take.first_share
        if stretch.code == take.last:
            share = min(share, take.last_share)
        for lane in take.lanes:
            part = catalogue.part_at(run.code, stretch.code, lane)
            if part is not None:
                yield part, share


def _window(run: Run, take: RunTake) -> tuple[Stretch, ...]:
    """The stretches of a take; none where an end of it isn't on the run."""
    codes = [one.code for one in run.stretches]
    if take.first not in codes or take.last not in codes:
        return ()
    return run.stretches[codes.index(take.first) : codes.index(take.last) + 1]


def _shares(catalogue: Catalogue) -> Iterator[Fault]:
    """What hangs adds up to the side.

    Of a part that comes one to an animal half hangs on each side: 1 % of the carcass is 2 % of
    a side, and half of that counts, so it counts 1 % beside the side's own parts.
    """
    total = sum((one.share for one in catalogue.parts.values() if one.counted), Fraction(0))
    if total != 1:
        yield wrong("shares", "part", "1", total)
    for part in catalogue.parts.values():
        if part.share <= 0:
            yield wrong("share", f"part {part.code}", "above nothing", part.share)


def _fore_share(catalogue: Catalogue) -> Iterator[Fault]:
    """The forequarter's published share lies within five points of what its parts come to.

    A quarter that wasn't weighed apart is taken by the first and cut by the second. Worked
    number: beef has 55 % from Purdue beside 53 % of its parts.
    """
    counted = [one for one in catalogue.parts.values() if one.counted and one.quarter]
    fore = sum((one.share for one in counted if one.quarter == "fore"), Fraction(0))
    if counted and abs(catalogue.ranges.fore_share - fore) > Fraction(1, 20):
        yield wrong("fore_share", "ranges", fore, catalogue.ranges.fore_share)


def _make_up(catalogue: Catalogue) -> Iterator[Fault]:
    for part in catalogue.parts.values():
        total = part.lean + part.fat + part.bone + part.skin
        if total != 1:
            yield wrong("make_up", f"part {part.code}", "1", total)


def _stretches(catalogue: Catalogue) -> Iterator[Fault]:
    seen: set[str] = set()
    for run in catalogue.runs.values():
        for stretch in run.stretches:
            place = f"run {run.code} stretch {stretch.code}"
            if stretch.code in seen:
                yield wrong("stretch_twice", place, "each stretch once", stretch.code)
            seen.add(stretch.code)
            if stretch.length <= 0:
                yield wrong("length", place, "above nothing", stretch.length)
            if not 0 <= stretch.band < 1:
                yield wrong("band", place, "from 0 to under 1", stretch.band)
            if not any(catalogue.part_at(run.code, stretch.code, lane) for lane in run.lanes):
                yield wrong("stretch_empty", place, "a part", "none")


def _run_order(catalogue: Catalogue) -> Iterator[Fault]:
    """A run goes from the head end to the tail: fore before hind, its ribs in one row."""
    for run in catalogue.runs.values():
        place = f"run {run.code}"
        quarters = [one.quarter for one in run.stretches]
        if quarters != sorted(quarters, key=("fore", "", "hind").index):
            yield wrong("run_order", place, "fore before hind", " ".join(quarters))
        ribbed = [one.ribs > 0 for one in run.stretches]
        if sum(one != two for one, two in pairwise([False, *ribbed, False])) > 2:
            yield wrong("rib_order", place, "ribs in one row", "a gap between them")


def _neighbours(catalogue: Catalogue) -> Iterator[Fault]:
    taken = {
        cut.code: {
            part.code: share for way in cut.ways for part, share in parts_of_way(catalogue, way)
        }
        for cut in catalogue.cuts.values()
    }
    return neighbour_faults(catalogue, taken)


def _places(catalogue: Catalogue) -> Iterator[Fault]:
    taken: dict[tuple[str, str, str], str] = {}
    for part in catalogue.parts.values():
        if not (part.run or part.stretch or part.lane):
            continue
        place, cell = f"part {part.code}", (part.run, part.stretch, part.lane)
        run = catalogue.runs.get(part.run)
        if run is None or part.lane not in run.lanes or not _has(run, part.stretch):
            yield wrong("no_place", place, "a run, a stretch and a lane", " ".join(cell))
        if part.per != "side":
            yield wrong("animal_on_run", place, "side", part.per)
        if cell in taken:
            yield wrong("two_parts", place, "one part in a place", taken[cell])
        taken[cell] = part.code
        if run is not None and _has(run, part.stretch):
            quarter = run.stretches[run.place(part.stretch)].quarter
            if quarter != part.quarter:
                yield wrong("quarter", place, quarter, part.quarter)


def _has(run: Run, stretch: str) -> bool:
    return any(one.code == stretch for one in run.stretches)


def _ends(catalogue: Catalogue) -> Iterator[Fault]:
    """Every part ends in a cut, in a pool or in a named loss."""
    ended = {
        part.code
        for cut in catalogue.cuts.values()
        for way in cut.ways
        for part, _ in parts_of_way(catalogue, way)
    }
    for part in catalogue.parts.values():
        if part.code not in ended and not part.by_nature_trim and not part.loss:
            yield wrong("no_end", f"part {part.code}", "a cut, a pool or a loss", "none")


def _ways(catalogue: Catalogue) -> Iterator[Fault]:
    for cut in catalogue.cuts.values():
        codes = [way.code for way in cut.ways]
        if len(set(codes)) != len(codes):
            yield wrong("way_twice", f"cut {cut.code}", "each way once", " ".join(codes))
        for way in cut.ways:
            place = f"cut {cut.code} way {way.code}"
            if way.run is not None:
                yield from _run_take(catalogue, way.run, place)
            for take in way.parts:
                yield from _part_take(catalogue, take, place)
            yield from _taken_twice(catalogue, way, place)
            yield from _trims(catalogue, cut, way, place)


def _run_take(catalogue: Catalogue, take: RunTake, place: str) -> Iterator[Fault]:
    run = catalogue.runs.get(take.run)
    if run is None:
        yield wrong("no_run", place, "a run", take.run)
        return
    strange = [lane for lane in take.lanes if lane not in run.lanes]
    if strange or not take.lanes:
        yield wrong("no_lane", place, ", ".join(run.lanes), ", ".join(take.lanes))
        return
    window = _window(run, take)
    if not window:
        yield wrong("no_window", place, f"stretches of {run.code}", f"{take.first} {take.last}")
        return
    for name, share in (("first_share", take.first_share), ("last_share", take.last_share)):
        if not 0 < share <= 1:
            yield wrong(name, place, "above 0, 1 at most", share)
    full = [
        all(catalogue.part_at(run.code, one.code, lane) for lane in take.lanes) for one in window
    ]
    if not any(full) or (take.size == "whole" and not all(full)):
        yield wrong("lane_empty", place, "a part in every lane", f"{take.first} {take.last}")


def _part_take(catalogue: Catalogue, take: PartTake, place: str) -> Iterator[Fault]:
    part = catalogue.parts.get(take.part)
    if part is None:
        yield wrong("no_part", place, "a part", take.part)
    elif not 0 < take.share <= 1 or (part.run and take.share != 1):
        yield wrong("part_share", place, "1" if part.run else "above 0, 1 at most", take.share)


def _taken_twice(catalogue: Catalogue, way: Way, place: str) -> Iterator[Fault]:
    codes = [part.code for part, _ in parts_of_way(catalogue, way)]
    for code in sorted({code for code in codes if codes.count(code) > 1}):
        yield wrong("taken_twice", place, "each part once", code)


def _trims(catalogue: Catalogue, cut: Cut, way: Way, place: str) -> Iterator[Fault]:
    """A cut gives back no more bone, fat, lean or skin than its pieces hold."""
    taken = parts_of_way(catalogue, way)
    whole = sum((part.share * share for part, share in taken), Fraction(0))
    if not whole:
        return
    for figure in _FIGURES:
        there = sum((getattr(part, figure) * part.share * share for part, share in taken), 0)
        trimmed: Fraction = getattr(cut.trimming, figure)
        if trimmed > there / whole:
            yield wrong(f"trims_{figure}", place, f"{there / whole} at most", trimmed)


def _cuts(catalogue: Catalogue) -> Iterator[Fault]:
    for cut in catalogue.cuts.values():
        place, trim = f"cut {cut.code}", cut.trimming
        total = trim.lean + trim.fat + trim.bone + trim.skin + trim.loss
        if total > 1:
            yield wrong("trimming", place, "1 at most", total)
        if (cut.kind == "pool") == bool(cut.ways):
            yield wrong("ways", place, "ways, or pools and no ways", len(cut.ways))
        if (cut.kind == "pool") != bool(cut.pools):
            yield wrong("pools", place, "pools for a pool cut only", ", ".join(cut.pools))
        if cut.default_amount not in cut.amounts:
            yield wrong("default_amount", place, ", ".join(cut.amounts), cut.default_amount)
        others = [code for code in cut.usual_finishes if code not in cut.finishes]
        if others:
            yield wrong("usual_finishes", place, ", ".join(cut.finishes), ", ".join(others))
        boneless = [code for code in cut.finishes if _is_boneless(catalogue, code)]
        if cut.keeps_bone and boneless:
            yield wrong("finishes", place, "boneless meat", ", ".join(boneless))
        batch = cut.batch
        if batch is not None and (cut.kind != "pool" or not _of_bags(batch)):
            yield wrong("batch", place, "bags of a pool cut", batch.smallest.text())
        sliced = any(way.run is not None and way.run.size == "slice" for way in cut.ways)
        if sliced and not _thick_enough(cut):
            yield wrong("thickness", place, f"at least {cut.least_thickness}", cut.thickness)
        if cut.package_pieces is not None and cut.package_weight is not None:
            yield wrong("package", place, "by pieces or by weight", cut.package_pieces)


def _is_boneless(catalogue: Catalogue, finish: str) -> bool:
    return finish in catalogue.finishes and catalogue.finishes[finish].boneless


def _of_bags(batch: Batch) -> bool:
    """Whether the least batch is one bag or several whole ones."""
    bag, least = batch.bag.exact_nanograms, batch.smallest.exact_nanograms
    return bag > 0 and least >= bag and least % bag == 0


def _thick_enough(cut: Cut) -> bool:
    if cut.thickness is None or cut.least_thickness is None:
        return False
    return cut.thickness >= cut.least_thickness > 0


def _names(catalogue: Catalogue) -> Iterator[Fault]:
    for part in catalogue.parts.values():
        if part.primal not in catalogue.primals:
            yield wrong("no_primal", f"part {part.code}", "a primal", part.primal)
    for cut in catalogue.cuts.values():
        place = f"cut {cut.code}"
        if cut.primal not in catalogue.primals:
            yield wrong("no_primal", place, "a primal", cut.primal)
        for name in cut.neighbours:
            if name not in catalogue.cuts or name == cut.code:
                yield wrong("no_neighbour", place, "another cut", name)
        for name in cut.finishes:
            if name not in catalogue.finishes:
                yield wrong("no_finish", place, "a finish", name)


def _vertebrae(catalogue: Catalogue) -> Iterator[Fault]:
    for part in catalogue.parts.values():
        if part.srm_from_30_months and not thirty_months.holds_for(catalogue.species):
            yield wrong("srm_not_cattle", f"part {part.code}", "cattle", catalogue.species)
        if part.srm_from_30_months and not part.bone:
            yield wrong("srm_without_bone", f"part {part.code}", "bone", part.bone)


def _sources(catalogue: Catalogue) -> Iterator[Fault]:
    """Each figure names its source: keys of [sources], then, after a colon, what else is known."""
    for place, source in _all_sources(catalogue):
        keys = [key.strip() for key in re.split(r"[:;]", source)[0].split(",")]
        for key in keys:
            if key not in catalogue.sources:
                yield wrong("no_source", place, "a key of [sources]", source)
    ranges = catalogue.ranges.sources
    for figure in ("dressing_usual", "dressing_possible", "shrink", "hang_days", "fore_share"):
        if not ranges.get(figure, ranges.get("", "")):
            yield wrong("no_source", f"ranges {figure}", "a source", "none")


def _all_sources(catalogue: Catalogue) -> Iterator[tuple[str, str]]:
    for run in catalogue.runs.values():
        for stretch in run.stretches:
            yield f"run {run.code} stretch {stretch.code}", stretch.source
    for part in catalogue.parts.values():
        for figure, source in _part_sources(part):
            yield f"part {part.code} {figure}", source
    for cut in catalogue.cuts.values():
        yield f"cut {cut.code}", cut.source
        if cut.batch is not None:
            yield f"cut {cut.code} batch", cut.batch.source
        trim = cut.trimming
        if trim.lean or trim.fat or trim.bone or trim.skin or trim.loss:
            yield f"cut {cut.code} trimming", trim.source
    for finish in catalogue.finishes.values():
        yield f"finish {finish.code}", finish.source


def _part_sources(part: Part) -> Iterator[tuple[str, str]]:
    """Share and make-up; lean, fat, bone and skin are one figure, since they add up to 1."""
    every = part.sources.get("", "")
    make_up = part.sources.get("lean", every)
    yield "share", part.sources.get("share", every)
    for figure in _FIGURES:
        if getattr(part, figure):
            yield figure, part.sources.get(figure, make_up)


def _crossing_lanes(catalogue: Catalogue) -> Iterator[Fault]:
    """Three takes that meet two by two in lanes, but not all in one.

    Sums per lane would pass a set of these that can't be laid out; the search lays pieces out
    one by one, so it is told, not refused.
    """
    takes: dict[str, set[frozenset[str]]] = {}
    for cut in catalogue.cuts.values():
        for way in cut.ways:
            if way.run is not None:
                takes.setdefault(way.run.run, set()).add(frozenset(way.run.lanes))
    for run, sets in takes.items():
        for one, two, three in combinations(sorted(sets, key=sorted), 3):
            if one & two and two & three and one & three and not one & two & three:
                named = " | ".join("+".join(sorted(lanes)) for lanes in (one, two, three))
                yield information("crossing_lanes", f"run {run}", "a lane in common", named)
