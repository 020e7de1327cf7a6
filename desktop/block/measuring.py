"""What a cutter measures: one stretch of a run, or a whole primal that is several."""

from typing import TYPE_CHECKING

from shared.carcass.carcass import Measured

if TYPE_CHECKING:
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue

WHOLE = "primal."


def stretches_of(catalogue: "Catalogue", primal: str) -> tuple[tuple[str, int], ...]:
    """The stretches of one run that a primal fills, with their lengths by the table.

    Of the run it has most of; a beef's short loin is the club, T-bone and porterhouse ends.
    """
    best: tuple[tuple[str, int], ...] = ()
    for run in catalogue.runs.values():
        inside = {
            part.stretch
            for part in catalogue.parts.values()
            if part.run == run.code and part.primal == primal
        }
        found = tuple((one.code, one.length) for one in run.stretches if one.code in inside)
        if len(found) > len(best):
            best = found
    return best


def measurable(catalogue: "Catalogue", words: "Words") -> list[tuple[str, bool, str]]:
    """Whole primals of several stretches, then every stretch: code, whether whole, its name."""
    whole = [
        (f"{WHOLE}{one}", True, "")
        for one in catalogue.primals
        if len(stretches_of(catalogue, one)) > 1
    ]
    single = dict.fromkeys(one.code for run in catalogue.runs.values() for one in run.stretches)
    species = catalogue.species
    return whole + [(one, False, words.name(species, f"stretch.{one}")) for one in single]


def measured(catalogue: "Catalogue", what: str, side: int, length: int) -> tuple[Measured, ...]:
    """The stretches of what was measured; a whole primal is divided as the table has it.

    Worked number: a short loin of 15 in whose ends are 3, 6 and 6 in by the table, measured at
    13½ in, is 2.7, 5.4 and 5.4 in; what doesn't come out even goes to the last.
    """
    if not what.startswith(WHOLE):
        return (Measured(what, side, length),)
    places = stretches_of(catalogue, what.removeprefix(WHOLE))
    table = sum(one for _, one in places)
    lengths = [length * one // table for _, one in places]
    lengths[-1] += length - sum(lengths)
    return tuple(Measured(code, side, one) for (code, _), one in zip(places, lengths, strict=True))


def place_name(what: str, species: str, words: "Words") -> str:
    """What was measured, in words."""
    return words.name(species, what if what.startswith(WHOLE) else f"stretch.{what}")
