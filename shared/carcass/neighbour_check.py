"""Checks that a cut knows its neighbours: another cut of the same meat, and one with less in it.

Remedies come from them: where two cuts fight over a part, the first thing a counter hand tries is
the same cut with that part left out.
"""

from collections.abc import Iterator, Mapping
from fractions import Fraction

from shared.carcass.catalogue import Catalogue, Cut
from shared.carcass.fault import Fault, wrong

_WITH_BONE = ("steaks", "roast", "whole")
_Taken = Mapping[str, Fraction]


def neighbour_faults(catalogue: Catalogue, taken: Mapping[str, _Taken]) -> Iterator[Fault]:
    """Cuts without a neighbour though others of the primal take their parts; bone and no less.

    `taken` is, of every cut, the parts it can take with the fraction of each. Worked example: a
    bone-in chop whose only neighbour is the bone-in roast of the same length is a fault where the
    file has a boneless chop.
    """
    for cut in catalogue.cuts.values():
        mine = taken[cut.code]
        others = [
            one
            for one in catalogue.cuts.values()
            if one.code != cut.code
            and one.primal == cut.primal
            and one.kind not in ("to_trim", "pool")
            and mine.keys() & taken[one.code].keys()
        ]
        if cut.kind in ("to_trim", "pool") or not others:
            continue
        place = f"cut {cut.code}"
        if not cut.neighbours:
            yield wrong("without_neighbour", place, others[0].code, "none")
        elif cut.kind in _WITH_BONE and _on_the_bone(catalogue, mine):
            others = [one for one in others if one.kind in _WITH_BONE]
            less = [one.code for one in others if leaves_out(catalogue, cut, one.code, taken)]
            if less and not set(less) & set(cut.neighbours):
                yield wrong("neighbours_keep_all", place, less[0], ", ".join(cut.neighbours))


def leaves_out(catalogue: Catalogue, cut: Cut, other: str, taken: Mapping[str, _Taken]) -> bool:
    """Whether another cut takes some of the same meat and leaves a part, or a side, of it."""
    if other not in catalogue.cuts:
        return False
    mine, theirs = taken[cut.code], taken[other]
    if not mine.keys() & theirs.keys():
        return False
    if any(theirs.get(part, 0) < share for part, share in mine.items()):
        return True
    return _sides(cut) > _sides(catalogue.cuts[other])


def _sides(cut: Cut) -> int:
    return min((1 if way.sides == "one" else 2 for way in cut.ways), default=1)


def _on_the_bone(catalogue: Catalogue, mine: _Taken) -> bool:
    return any(catalogue.parts[part].bone == 1 for part in mine)
