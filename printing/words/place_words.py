"""A place on the carcass, in words: "Side 1, ham center"."""

from collections.abc import Sequence

from printing.words import Words
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Where
from shared.cutting.order import Question


def place_text(where: Where, question: Question, catalogue: Catalogue, words: Words) -> str:
    """Which carcass (where there are several), which side, which part; with a capital letter."""
    several = len(question.carcasses) > 1
    parts: list[str] = []
    if several and (where.side or _of_one_carcass(where, catalogue)):
        parts.append(_carcass(where.carcass, question, words))
    if where.side:
        parts.append(words.say("place.side", side=where.side))
    elif _of_one_carcass(where, catalogue):
        parts += [] if parts else [words.say("place.animal")]
    else:
        parts.append(words.say("place.sides" if several else "place.both"))
    spot = spot_text(where, catalogue, words)
    return capital(", ".join([*parts, spot] if spot else parts))


def sides_text(carcass: int, sides: Sequence[int], question: Question, words: Words) -> str:
    """One side or both of a carcass, named where there are several: "Side 1", "Both sides"."""
    parts = [_carcass(carcass, question, words)] if len(question.carcasses) > 1 else []
    both = len(sides) > 1
    parts.append(words.say("place.both") if both else words.say("place.side", side=sides[0]))
    return capital(", ".join(parts))


def spot_text(where: Where, catalogue: Catalogue, words: Words) -> str:
    """The part or stretch alone: "ham center", "from the blade end to the sirloin"; "" if none."""
    species = catalogue.species
    if where.part:
        family = "part" if where.part in catalogue.parts else "pool"
        return words.name(species, f"{family}.{where.part}")
    if not where.stretch:
        for family in ("run", "part", "lane"):
            if where.run and words.has(f"{family}.{where.run}", species):
                return words.name(species, f"{family}.{where.run}")
        return ""
    first = words.name(species, f"stretch.{where.stretch}")
    spot = first
    if where.last:
        last = words.name(species, f"stretch.{where.last}")
        spot = words.say("place.reach", first=first, last=last)
    run = catalogue.runs.get(where.run)
    if where.lane and run is not None and where.lane != run.lanes[0]:
        lane = words.name(species, f"lane.{where.lane}")
        spot = words.say("place.lane", lane=lane, spot=spot)
    return spot


def capital(text: str) -> str:
    """The text with a capital letter first."""
    return text[:1].upper() + text[1:]


def _of_one_carcass(where: Where, catalogue: Catalogue) -> bool:
    part = catalogue.parts.get(where.part)
    nothing = not where.part and not where.run
    return nothing or (part is not None and part.per == "animal")


def _carcass(index: int, question: Question, words: Words) -> str:
    tag = question.carcasses[index].tag if index < len(question.carcasses) else ""
    if tag:
        return words.say("place.tag", number=index + 1, tag=tag)
    return words.say("place.carcass", number=index + 1)
