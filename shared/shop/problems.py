"""What the store answers when something asked of it can't be done; values, never sentences."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime


@dataclass(frozen=True, slots=True)
class StaleEdit:
    """Someone else changed it since it was read: who, and when. Nothing was written."""

    subject: str
    id: int
    asked: int
    found: int
    by: str
    at: datetime | None


@dataclass(frozen=True, slots=True)
class MoveRefused:
    """A state that can't follow. Codes: "no_such_move", "reason_missing", "on_hold"."""

    code: str
    start: str
    end: str


@dataclass(frozen=True, slots=True)
class Refused:
    """The shop's rules say no: a code and what it is about."""

    code: str
    data: Mapping[str, str] = field(default_factory=dict[str, str])


@dataclass(frozen=True, slots=True)
class UndoRefused:
    """Codes: "nothing", "changed_by_another" (`by` names who), "released", "led"."""

    code: str
    by: str = ""


@dataclass(frozen=True, slots=True)
class NotClosed:
    """Why an order can't be closed: "not_handed_over", "not_billed", "balance"."""

    codes: tuple[str, ...]
