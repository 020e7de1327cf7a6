"""What an owner must be told of an order: what inspection or trimming took, and what would work."""

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

NewsKind = Literal["part_gone", "condemned", "refused", "held", "block", "age"]
LostHow = Literal["falls", "less"]


@dataclass(frozen=True, slots=True)
class LostLine:
    """A line that falls, or of which there is less."""

    line: int
    cut: str
    how: LostHow


@dataclass(frozen=True, slots=True)
class News:
    """One thing to tell an owner. `remedies` are sentences that an earlier version kept with it.

    Now what would work is planned when the list to ring is read (`Ways`), and kept nowhere.

    `what` is the key of the name of what is gone (part.liver, primal.chuck), "" the animal; of
    the kind "age" the key of the age said (age.30_and_over), under which no lines fall any more.

    `told_at` is the first call after it in which somebody was spoken to; None: still to ring.
    """

    order_id: int
    animal_id: int
    kind: NewsKind
    species: str
    tag: str
    what: str = ""
    reason: str = ""
    lost: tuple[LostLine, ...] = ()
    remedies: tuple[str, ...] = ()
    id: int = 0
    at: datetime | None = None
    person: str = ""
    told_at: datetime | None = None


def standing(news: Sequence[News]) -> tuple[News, ...]:
    """An order's news, first to last, without what a later word on an animal's age overtook.

    Of each animal's ages the last is left; nothing, where it says that all can be had again and
    nobody was told that it couldn't.
    """
    gone: set[int] = set()
    for animal in {one.animal_id for one in news if one.kind == "age"}:
        ages = [one for one in news if one.kind == "age" and one.animal_id == animal]
        gone.update(one.id for one in ages[:-1])
        if not ages[-1].lost and all(one.told_at is None for one in ages):
            gone.add(ages[-1].id)
    return tuple(one for one in news if one.id not in gone)


def told_text(news: News) -> str:
    """What the store keeps of it, as canonical JSON."""
    return json.dumps(
        {
            "what": news.what,
            "reason": news.reason,
            "lost": [[one.line, one.cut, one.how] for one in news.lost],
            "remedies": list(news.remedies),
        },
        ensure_ascii=False,
        sort_keys=True,
    )
