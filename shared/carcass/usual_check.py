"""Checks the house's usual of a species: lines an order understands, and no part left open."""

from collections.abc import Iterator

from shared.carcass.catalogue import Catalogue, Cut, UsualLine
from shared.carcass.fault import Fault, wrong


def usual_faults(catalogue: Catalogue) -> Iterator[Fault]:
    """Faults of the usual lines, and parts that hang which the usual way leaves open."""
    settled: set[str] = set()
    for number, line in enumerate(catalogue.usual, start=1):
        place = f"usual {number} {line.cut}"
        cut = catalogue.cuts.get(line.cut)
        if cut is None:
            yield wrong("usual_cut", place, "a cut", line.cut)
            continue
        yield from _line(catalogue, line, cut, place)
        settled |= _parts(catalogue, cut)
    for part in catalogue.parts.values():
        if part.counted and part.code not in settled and not part.by_nature_trim and not part.loss:
            yield wrong("usual_leaves_open", f"part {part.code}", "a usual line", "none")


def _line(catalogue: Catalogue, line: UsualLine, cut: Cut, place: str) -> Iterator[Fault]:
    if line.primal not in catalogue.primals:
        yield wrong("no_primal", place, "a primal", line.primal)
    if line.amount not in cut.amounts:
        yield wrong("usual_amount", place, ", ".join(cut.amounts), line.amount)
    if (line.amount in ("pieces", "slices", "up_to", "at_least")) != (line.count > 0):
        yield wrong("usual_count", place, "a count where pieces are counted", line.count)
    least = cut.least_thickness
    if line.thickness is not None and (least is None or line.thickness < least):
        yield wrong("usual_thickness", place, "a thickness the cut can have", line.thickness)
    for finish in line.finishes:
        if finish not in cut.finishes:
            yield wrong("usual_finish", place, ", ".join(cut.finishes), finish)


def _parts(catalogue: Catalogue, cut: Cut) -> set[str]:
    """Parts a cut may take anything of."""
    found = {take.part for way in cut.ways for take in way.parts}
    for way in cut.ways:
        take = way.run
        run = catalogue.runs.get(take.run) if take is not None else None
        if take is None or run is None:
            continue
        codes = [one.code for one in run.stretches]
        if take.first in codes and take.last in codes:
            held = codes[codes.index(take.first) : codes.index(take.last) + 1]
            found |= {
                part.code
                for part in catalogue.parts.values()
                if part.run == run.code and part.stretch in held and part.lane in take.lanes
            }
    return found
