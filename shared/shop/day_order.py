"""The order in which a day's bookings are killed, and what a day's list tells of each."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from shared.carcass.carcass import Regime

SPECIES_IN_TURN = ("pork", "beef", "bison", "veal", "lamb", "goat", "deer")


@dataclass(frozen=True, slots=True)
class DayLot:
    """A booking as a day shows it. `over` says that an animal of it is 30 months and over.

    `unknown_age` counts the animals whose age nobody has said; `allergens` that its cut orders
    ask for a finish or seasoning with an allergen in it, or one where nobody has looked.
    """

    id: int
    number: int
    day: date
    species: str
    head: int
    producer: str
    phone: str = ""
    regime: Regime = "custom"
    over: bool = False
    unknown_age: int = 0
    allergens: bool = False
    keeps: str = ""
    note: str = ""
    version: int = 0


def in_turn(lots: Iterable[DayLot]) -> tuple[DayLot, ...]:
    """The bookings of each day in turn: what could spoil another's meat comes after it.

    Game last, since it comes in undressed of its hide from anywhere (good practice; no source).
    Inspected before custom-exempt, for 9 CFR 303.1(a)(2) wants them apart in place or time.
    Cattle of 30 months and over after the younger, so that tools that touched specified risk
    materials don't come to the younger ones (9 CFR 310.22(e) and (f)); an age nobody has said
    counts as over. Allergens last of what
    is left (sequencing as in FSIS's guidance on allergens, from memory). Then by animal and
    number. A custom hog and an inspected beef of 40 months: the beef first, being inspected.
    """
    return tuple(sorted(lots, key=_turn))


def _turn(lot: DayLot) -> tuple[object, ...]:
    known = lot.species in SPECIES_IN_TURN
    place = SPECIES_IN_TURN.index(lot.species) if known else len(SPECIES_IN_TURN)
    return (
        lot.day,
        lot.species == "deer",
        lot.regime == "custom",
        lot.over or bool(lot.species == "beef" and lot.unknown_age),
        lot.allergens,
        place,
        lot.number,
    )
