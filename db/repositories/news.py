"""What owners must be told of their orders, and whether they were."""

import json
from collections.abc import Collection, Mapping
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import Row, Select, func, select

from db.desk import Desk
from db.repositories.ended_orders import ENDED
from db.tables.calls import Calls
from db.tables.lots import Animals, Lots
from db.tables.people import Persons
from db.tables.rail import OrderNews
from shared.shop.news import LostHow, LostLine, News, NewsKind, standing, told_text

if TYPE_CHECKING:
    from datetime import datetime


class NewsBook:
    """`work.news`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, news: News) -> None:
        """Keep one thing to tell."""
        self._desk.insert(
            OrderNews,
            {
                "order_id": news.order_id,
                "animal_id": news.animal_id,
                "kind": news.kind,
                "told": told_text(news),
                "at": self._desk.now,
                **self._desk.stamp,
            },
        )

    def of_order(self, order_id: int) -> tuple[News, ...]:
        """Everything there was to tell about an order, first to last."""
        return self.of_orders([order_id]).get(order_id, ())

    def to_tell(self) -> Mapping[int, tuple[News, ...]]:
        """By order, what nobody was spoken to about yet."""
        found = {order: standing(news) for order, news in self.of_orders(None).items()}
        taken_back = self._taken_back()
        left = {
            order: tuple(one for one in all_of if one.told_at is None and one.id not in taken_back)
            for order, all_of in found.items()
        }
        return {order: news for order, news in left.items() if news}

    def _taken_back(self) -> frozenset[int]:
        """News of a whole animal that went on after all: it came, or was refused by mistake."""
        rows = self._desk.connection.execute(
            select(OrderNews.id)
            .join(Animals, Animals.id == OrderNews.animal_id)
            .where(
                OrderNews.kind.in_(("condemned", "refused")),
                Animals.state.not_in((*ENDED, "held")),
            )
        )
        return frozenset(rows.scalars())

    def of_orders(self, order_ids: Collection[int] | None) -> Mapping[int, tuple[News, ...]]:
        """News by order, first to last, in one query; None: of every order."""
        asked = _asked()
        if order_ids is not None:
            asked = asked.where(OrderNews.order_id.in_(order_ids))
        found: dict[int, list[News]] = {}
        for row in self._desk.connection.execute(asked):
            found.setdefault(row.order_id, []).append(_news(row))
        return {order: tuple(news) for order, news in found.items()}


def _asked() -> Select[*tuple[Any, ...]]:
    """News with the animal it is of, and the first call after it that spoke with somebody."""
    told = (
        select(func.min(Calls.at))
        .where(
            Calls.order_id == OrderNews.order_id,
            Calls.outcome == "spoke",
            Calls.at >= OrderNews.at,
        )
        .scalar_subquery()
    )
    return (
        select(
            OrderNews.id,
            OrderNews.order_id,
            OrderNews.animal_id,
            OrderNews.kind,
            OrderNews.told,
            OrderNews.at,
            Lots.species,
            Animals.tag,
            Persons.name.label("person"),
            told.label("told_at"),
        )
        .join(Animals, Animals.id == OrderNews.animal_id)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Persons, Persons.id == OrderNews.person_id)
        .order_by(OrderNews.id)
    )


def _news(row: Row[*tuple[Any, ...]]) -> News:
    said = json.loads(row.told)
    return News(
        row.order_id,
        row.animal_id,
        cast("NewsKind", row.kind),
        row.species,
        row.tag,
        said["what"],
        said["reason"],
        tuple(LostLine(n, cut, cast("LostHow", how)) for n, cut, how in said["lost"]),
        tuple(said["remedies"]),
        row.id,
        row.at,
        row.person,
        cast("datetime | None", row.told_at),
    )
