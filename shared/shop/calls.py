"""Calls about orders: who must be rung about what, what came of it, and what if nobody answers."""

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Literal

from shared.shop.calendar import Waiting
from shared.shop.lists import OrderRow
from shared.shop.news import News

Outcome = Literal["no_answer", "message", "spoke"]
WithoutAnswer = Literal["usual", "hang", "ring"]
CountedFrom = Literal["kill", "block"]
About = Literal["no_cut_sheet", "not_settled", "inspection", "loss", "agree"]
MOST_DAYS = 60
MOST_CALLS = 20


@dataclass(frozen=True, slots=True)
class CallRules:
    """When cut sheets are due, from when owners are rung, and what the house does in the end.

    `counted_from` "kill": due `due_days` after the kill; "block": so many before it is cut.
    Reminders start `remind_days` before that. After `most_calls` calls in which nobody was spoken
    to, and past the day, `without_answer` holds. "usual": what is open is cut as the house
    usually does. "hang": it keeps hanging. "ring": the owner is rung again.
    """

    due_days: int = 3
    without_answer: WithoutAnswer = "ring"
    version: int = 0
    counted_from: CountedFrom = "kill"
    remind_days: int = 3
    most_calls: int = 3


def due_on(rules: CallRules, killed: date, hang: int) -> date:
    """The day a cut sheet is due; `hang` is the days from the kill to the block.

    Killed on March 9, due 3 days after: March 12. Hung for 14 days and due 3 days before the
    block: March 20. Never before the kill: pork hung 1 day is due on March 9.
    """
    if rules.counted_from == "kill":
        return killed + timedelta(days=rules.due_days)
    return killed + timedelta(days=max(hang - rules.due_days, 0))


def rules_fault(rules: CallRules) -> str:
    """Which figure of the rules can't be: "days", "remind" or "calls"; "" where all can."""
    if not 0 <= rules.due_days <= MOST_DAYS:
        return "days"
    if not 0 <= rules.remind_days <= MOST_DAYS:
        return "remind"
    return "" if 1 <= rules.most_calls <= MOST_CALLS else "calls"


@dataclass(frozen=True, slots=True)
class Offered:
    """A way out that an owner was told, in the words it was told in.

    `cents` is what his bill would change by, by the estimate of that day; None: not known.
    """

    offer: str
    cents: int | None = None


@dataclass(frozen=True, slots=True)
class Call:
    """One call, as it was made: who was told, and what was offered, where somebody was."""

    id: int
    order_id: int
    outcome: Outcome
    note: str
    at: datetime
    person: str
    station: str
    told_to: str = ""
    offered: tuple[Offered, ...] = ()


@dataclass(frozen=True, slots=True)
class ToRing:
    """An order whose owner must be rung: by when, what about, the last call, and what was lost.

    `silent` counts the calls since somebody was last spoken to. `in_the_end` is what the house
    does now that it has rung often enough, "" while it goes on ringing.
    """

    order: OrderRow
    due: date
    about: tuple[About, ...]
    last: Call | None
    calls: int
    news: tuple[News, ...] = ()
    silent: int = 0
    in_the_end: Literal["", "usual", "hang"] = ""


@dataclass(frozen=True, slots=True)
class PlaceFree:
    """Someone on the waiting list for whom there is a place now: on which day, at which number."""

    waiting: Waiting
    phone: str
    day: date


def silent_calls(calls: tuple[Call, ...]) -> int:
    """Calls since somebody was last spoken to: message, spoke, no answer, message is 2."""
    count = 0
    for one in calls:
        count = 0 if one.outcome == "spoke" else count + 1
    return count


def in_the_end(
    rules: CallRules, due: date, today: date, silent: int
) -> Literal["", "usual", "hang"]:
    """What the house does without an answer, once it was rung often enough and the day is past.

    3 calls nobody answered, due on March 12: on March 13 what the rules say, on March 12 nothing
    yet. A shop that rings until it gets an answer is never done.
    """
    if rules.without_answer == "ring" or silent < rules.most_calls or today <= due:
        return ""
    return rules.without_answer
