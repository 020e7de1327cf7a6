"""When a package counts as frozen, by the shop's own hours in the freezer."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

FreezeFrom = Literal["label", "place"]
FreezeState = Literal["frozen", "freezing", "not_in_freezer", "not_asked"]
MOST_HOURS = 240


@dataclass(frozen=True, slots=True)
class FreezerRules:
    """A package is frozen after `hours` in a freezer; 0: the shop doesn't ask.

    Where nobody said when a package went into a freezer, "label" counts from its label and
    "place" holds it back. 24 hours: farm pages tell people to freeze no more at a time than
    freezes through in a day (from memory).
    """

    hours: int = 24
    counted_from: FreezeFrom = "label"
    version: int = 0


@dataclass(frozen=True, slots=True)
class InFreezer:
    """Since when a package is in a freezer; None: somebody said that it is in none.

    `person` said so `at` a moment.
    """

    since: datetime | None
    person: str = ""
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Frozen:
    """Whether a package is frozen, and from when on it is; None where that isn't known."""

    state: FreezeState
    at: datetime | None = None

    @property
    def holds(self) -> bool:
        """Whether it is held: it is not frozen yet."""
        return self.state in ("freezing", "not_in_freezer")


def frozen(rules: FreezerRules, made: datetime, told: InFreezer | None, now: datetime) -> Frozen:
    """Whether a package is frozen now.

    Labelled on Monday at 10:00, put into a freezer at 16:00, 24 hours asked: frozen on Tuesday at
    16:00, freezing before that. With nothing told and "label": on Tuesday at 10:00.
    """
    if not rules.hours:
        return Frozen("not_asked")
    untold = made if rules.counted_from == "label" else None
    since = untold if told is None else told.since
    if since is None:
        return Frozen("not_in_freezer")
    at = since + timedelta(hours=rules.hours)
    return Frozen("frozen" if at <= now else "freezing", at)
