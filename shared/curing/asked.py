"""Fresh or cured: the cuts of which it must be said, and the lines that leave it open."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from shared.carcass.catalogue import Catalogue

FRESH = "fresh"
# They say how a cut is shaped and nothing of what is done to its meat.
SHAPED = ("tied", "frenched", "sliced")


def fresh_or_cured(catalogue: "Catalogue", cut: str) -> bool:
    """Whether a cut may be had fresh and cured by the species' file: a whole ham, not bacon."""
    found = catalogue.cuts.get(cut)
    if found is None or FRESH not in found.finishes:
        return False
    return any(catalogue.finishes[one].cured for one in found.finishes)


def left_open(catalogue: "Catalogue", cut: str, finishes: "Sequence[str]") -> bool:
    """Whether a line says neither fresh nor cured of a whole piece or roast that may be either.

    A whole ham that is tied and no more leaves it open; seasoned it is fresh. Chops and slices of
    which nothing is said are fresh (common practice, no source).
    """
    if not fresh_or_cured(catalogue, cut) or catalogue.cuts[cut].kind not in ("whole", "roast"):
        return False
    return all(one in SHAPED for one in finishes)


def usual_finish(catalogue: "Catalogue", cut: str) -> tuple[str, ...]:
    """What a cut is offered with: as it is made, a sausage seasoned, or as the usual has it.

    Fresh or cured is as the house's usual has the primal: a belly as its bacon, () if unsaid.
    """
    made = catalogue.cuts[cut].usual_finishes if cut in catalogue.cuts else ()
    if made:
        return made
    if not fresh_or_cured(catalogue, cut):
        return ()
    found = catalogue.cuts[cut]
    for usual in catalogue.usual:
        for one in usual.finishes:
            said = one == FRESH or catalogue.finishes[one].cured
            if usual.primal == found.primal and said and one in found.finishes:
                return (one,)
    return ()


def not_to_be_cured(catalogue: "Catalogue", cut: str, finishes: "Sequence[str]") -> bool:
    """Whether a line of a cut that may be cured doesn't say so: a batch with a cure asks first."""
    found = catalogue.cuts.get(cut)
    if found is None or any(catalogue.finishes[one].cured for one in finishes):
        return False
    return any(catalogue.finishes[one].cured for one in found.finishes)
