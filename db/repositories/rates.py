"""Rate cards, each with the day from which it holds; a card that was kept is never changed."""

from dataclasses import replace
from datetime import date
from functools import lru_cache

from sqlalchemy import false, select, update

from db.desk import Desk
from db.problems import StoreBug
from db.tables.rates import Charges, RateCards
from shared.billing.cards import card_from_text, card_text
from shared.billing.problems import BillingProblem
from shared.billing.rates import RateCard, card_for


class RateBook:
    """`work.rates`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def save(self, card: RateCard) -> RateCard:
        """Keep a card. A card changed is a new one; the old one stays for its bills, retired."""
        desk = self._desk
        desk.must_write()
        if card.id:
            desk.connection.execute(
                update(RateCards).where(RateCards.id == card.id).values(retired=True)
            )
        new = desk.insert(
            RateCards,
            {
                "code": card.code,
                "name": card.name,
                "holds_from": card.holds_from,
                "regime": card.regime,
                "rate_group": card.group,
                "card": card_text(card),
                "retired": False,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.add_rows(
            Charges,
            [
                {
                    "card_id": new,
                    "position": position,
                    "code": charge.code,
                    "basis": charge.basis,
                    "rate": charge.rate,
                    "minimum": charge.minimum,
                    "tax_rate": charge.tax_rate,
                    "falls_to": charge.falls_to,
                }
                for position, charge in enumerate(card.charges, start=1)
            ],
        )
        desk.record("rate_card", new, "saved", code=card.code, before=card.id or None)
        return next(one for one in self.all() if one.id == new)

    def retire(self, card_id: int, reason: str) -> None:
        """The card is used no more; bills made with it keep it."""
        self._desk.must_write()
        self._desk.connection.execute(
            update(RateCards).where(RateCards.id == card_id).values(retired=True)
        )
        self._desk.record("rate_card", card_id, "retired", reason)

    def all(self, *, retired: bool = False) -> tuple[RateCard, ...]:
        """The cards in use, by code and day; with the retired ones if asked."""
        found = select(RateCards.id, RateCards.card).order_by(
            RateCards.code, RateCards.holds_from, RateCards.id
        )
        if not retired:
            found = found.where(RateCards.retired == false())
        return tuple(_read(row[0], row[1]) for row in self._desk.connection.execute(found))

    def current(
        self, day: date, *, species: str = "", regime: str = "", group: str = ""
    ) -> RateCard | None:
        """The card that holds on that day for such an order, the most particular first."""
        return card_for(self.all(), day, species=species, regime=regime, group=group)


@lru_cache(maxsize=256)
def _read(card_id: int, text: str) -> RateCard:
    """The card of a text; kept, for a month's bills ask for the same few hundreds of times."""
    card = card_from_text(text)
    if isinstance(card, BillingProblem):
        raise StoreBug(f"rate card {card_id} can't be read: {card.code}")
    return replace(card, id=card_id)
