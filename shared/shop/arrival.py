"""What is seen and said when an animal comes: condition, age, statements, deer, holds."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Literal

from shared.carcass import thirty_months
from shared.carcass.carcass import Regime

Condition = Literal["", "sound", "lame", "down", "dead"]
AgeBy = Literal["", "teeth", "papers", "said"]
Keep = Literal["", "keep", "leave"]
Meat = Literal["", "apart", "batch"]
HoldKind = Literal["disease_test", "other"]
LossHow = Literal["condemned", "trimmed", "discarded"]
ArrivalCaution = Literal[
    "dead",
    "down_inspected",
    "down_custom",
    "not_healthy",
    "drugs",
    "not_stated",
    "age_not_shown",
    "feed",
]
CONDITIONS: tuple[Condition, ...] = ("sound", "lame", "down", "dead")
FEED_AFTER = timedelta(hours=24)


@dataclass(frozen=True, slots=True)
class Arrival:
    """The facts of an arrival; "" and None are not said. `age_said` is who told the age.

    `withdrawn_drugs` True: whoever `statement_of` names says that every withdrawal time is over;
    `drugs` are those given. `at`, `person`, `station` come from the store.
    """

    condition: Condition = ""
    note: str = ""
    age_by: AgeBy = ""
    age_said: str = ""
    penned_at: datetime | None = None
    healthy: bool | None = None
    withdrawn_drugs: bool | None = None
    drugs: str = ""
    statement_of: str = ""
    at: datetime | None = None
    person: str = ""
    station: str = ""


@dataclass(frozen=True, slots=True)
class DeerIntake:
    """Whose deer it is, by which license and game tag, and what is to be kept of it.

    `signed_by`: who agreed in writing that the meat goes into a batch with others'.
    """

    hunter: str = ""
    license: str = ""
    game_tag: str = ""
    killed_on: date | None = None
    county: str = ""
    cape: Keep = ""
    head: Keep = ""
    antlers: Keep = ""
    meat: Meat = ""
    signed_by: str = ""
    at: datetime | None = None
    person: str = ""
    station: str = ""


@dataclass(frozen=True, slots=True)
class Hold:
    """An animal is held for something (`held`), or what ended it: a result, a release."""

    kind: HoldKind
    held: bool
    reason: str
    at: datetime | None = None
    person: str = ""
    station: str = ""


def arrival_cautions(
    species: str, regime: Regime, arrival: Arrival, now: datetime
) -> tuple[ArrivalCaution, ...]:
    """What must be said beside these facts, the gravest first; none of it is a verdict.

    Dead and disabled animals: 9 CFR 309.2 and 309.3. Residues: 9 CFR 309.16. Age not shown is cut
    as 30 months and over: 9 CFR 310.22. Water in every pen, and feed where held over 24 hours: 9
    CFR 313.2(e). The numbers but 310.22 are from memory, so they
    are not shown.

    A cow that can't walk, inspected, penned at 7:00 the day before, at 8:00: ("down_inspected",
    "not_stated", "age_not_shown", "feed").
    """
    found: list[ArrivalCaution] = []
    if arrival.condition == "dead" and species != "deer":
        found.append("dead")
    if arrival.condition == "down":
        found.append("down_inspected" if regime == "inspected" else "down_custom")
    if arrival.healthy is False:
        found.append("not_healthy")
    if arrival.withdrawn_drugs is False:
        found.append("drugs")
    if species != "deer" and None in (arrival.healthy, arrival.withdrawn_drugs):
        found.append("not_stated")
    if thirty_months.holds_for(species) and not arrival.age_by:
        found.append("age_not_shown")
    if arrival.penned_at is not None and now - arrival.penned_at > FEED_AFTER:
        found.append("feed")
    return tuple(found)


def deer_missing(intake: DeerIntake) -> tuple[str, ...]:
    """Fields of an intake a state asks for that are empty, and the writing a batch needs.

    License, tag, day and county of the kill filled in, meat to a batch, nobody signed:
    ("signed_by",).
    """
    asked: dict[str, object] = {
        "hunter": intake.hunter,
        "license": intake.license,
        "game_tag": intake.game_tag,
        "killed_on": intake.killed_on,
        "county": intake.county,
    }
    missing = [field for field, value in asked.items() if not value]
    if intake.meat == "batch" and not intake.signed_by:
        missing.append("signed_by")
    return tuple(missing)


def standing(holds: Sequence[Hold]) -> tuple[Hold, ...]:
    """Holds that still stand: of each kind the last row, where it holds.

    Held for the test, then released: none.
    """
    last = {one.kind: one for one in holds}
    return tuple(one for one in last.values() if one.held)
