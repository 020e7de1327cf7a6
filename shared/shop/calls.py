"""Calls about orders: who must be rung about what, what came of it, and what if nobody answers."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from shared.shop.lists import OrderRow
from shared.shop.news import News

Outcome = Literal["no_answer", "message", "spoke"]
WithoutAnswer = Literal["usual", "hang", "ring"]
About = Literal["no_cut_sheet", "not_settled", "inspection", "loss"]


@dataclass(frozen=True, slots=True)
class CallRules:
    """Cut sheets are due `due_days` after the kill; without an answer the house does this.

    "usual": what is open is cut as the house usually does. "hang": it keeps hanging. "ring":
    the owner is rung again.
    """

    due_days: int = 3
    without_answer: WithoutAnswer = "ring"
    version: int = 0


@dataclass(frozen=True, slots=True)
class Call:
    """One call, as it was made."""

    id: int
    order_id: int
    outcome: Outcome
    note: str
    at: datetime
    person: str
    station: str


@dataclass(frozen=True, slots=True)
class ToRing:
    """An order whose owner must be rung: by when, what about, the last call, and what was lost."""

    order: OrderRow
    due: date
    about: tuple[About, ...]
    last: Call | None
    calls: int
    news: tuple[News, ...] = ()
