"""What would work for owners who lost something: planned on a worker, of the orders as they are."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.price import cards_of
from shared.billing.bill import make_bill
from shared.billing.lot import billed_lot
from shared.billing.problems import BillingProblem
from shared.cutting.forecast import forecast
from shared.cutting.plan import Planner, plan
from shared.cutting.remedy import remedies
from shared.money import money_text
from shared.shop.calls import Offered

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from db.store import Store
    from db.unit_of_work import Work
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Remedy
    from shared.cutting.order import Question
    from shared.shop.calls import ToRing
    from shared.shop.lots import Lot
    from shared.shop.news import News

PARTLY = ("part_gone", "block", "age")  # of an animal lost whole nothing is left to cut otherwise


@dataclass(frozen=True, slots=True)
class Ways:
    """The ways out of one news, as values: spoken in the reader's language when they are shown.

    `cents` is what each would change of the owner's bill, by the estimate; None where the shop's
    rates can't price it.
    """

    question: "Question"
    catalogue: "Catalogue"
    remedies: "tuple[Remedy, ...]"
    cents: "tuple[int | None, ...]" = ()


def wanted(rows: "Sequence[ToRing]") -> "dict[int, tuple[News, ...]]":
    """By lot, the news of which ways out are to be planned: lines fall, and no sentence is kept."""
    found: dict[int, tuple[News, ...]] = {}
    for row in rows:
        mine = tuple(
            one
            for one in row.news
            if one.kind in PARTLY and not one.remedies and any(x.how == "falls" for x in one.lost)
        )
        if mine:
            found[row.order.lot_id] = (*found.get(row.order.lot_id, ()), *mine)
    return found


def ways_out(store: "Store", lots: "Mapping[int, tuple[News, ...]]") -> dict[int, Ways | None]:
    """By news, what would work now; None where its lines stand again or nothing works.

    Run it on a worker. Each lot is planned once, with the choices it has now, so that nothing is
    offered for an order that was changed since.
    """
    from shared.shop.usual import shop_catalogue

    found: dict[int, Ways | None] = {}
    for lot_id, news in lots.items():
        with store.read() as work:  # one unit a lot, so that nobody waits for all of them
            at_block = any(one.state == "on_block" for one in work.animals.of_lot(lot_id))
            question = work.lots.question(lot_id, at_block=at_block or None)
            known = shop_catalogue(news[0].species, work.usual.ways(news[0].species))
            lot = work.lots.get(lot_id)
            priced = None if lot is None else _Priced(lot, known, work)
        planner = Planner(known)
        answer = planner.answer(question)
        fell = {line.line for one in news for line in one.lost}
        standing = {line for one in answer.conflicts for line in one.lines}
        offered = remedies(question, answer, known, planner) if fell & standing else ()
        of_line = {
            line: ways
            for conflict, ways in zip(answer.conflicts, offered, strict=False)
            for line in conflict.lines
        }
        for one in news:
            mine = (way for line in one.lost for way in of_line.get(line.line, ()))
            ways = tuple(dict.fromkeys(mine))
            cents = () if priced is None else priced.changes(question, one.order_id, ways)
            found[one.id] = Ways(question, known, ways, cents) if ways else None
    return found


class _Priced:
    """What a way out changes of an owner's bill, by the estimate the counter shows."""

    def __init__(self, lot: "Lot", catalogue: "Catalogue", work: "Work") -> None:
        self._lot, self._catalogue = lot, catalogue
        self._cards = cards_of(lot, work)
        self._own = work.yields.used(lot.species)
        self._graded = work.cooler.meat_factor(lot.id)

    def changes(
        self, question: "Question", order_id: int, ways: "Sequence[Remedy]"
    ) -> tuple[int | None, ...]:
        """Cents more or less than the order comes to as it stands, what was lost left out."""
        share = next(one.number for one in self._lot.shares if one.order_id == order_id)
        now = self._total(question, share)
        found: list[int | None] = []
        for way in ways:
            changed = {edit.line: edit.choice for edit in way.edits}
            choices = [changed.get(one.line, one) for one in question.choices]
            kept = tuple(one for one in choices if one is not None)
            then = self._total(replace(question, choices=kept), share)
            found.append(None if now is None or then is None else then - now)
        return tuple(found)

    def _total(self, question: "Question", share: int) -> int | None:
        if self._cards is None:
            return None
        expected = forecast(
            question, plan(question, self._catalogue), self._catalogue, self._own, self._graded
        )
        billed = billed_lot(question, self._catalogue, self._cards, forecast=expected)
        if isinstance(billed, BillingProblem):
            return None
        bill = make_bill(replace(billed, producer=self._lot.producer), share)
        return None if isinstance(bill, BillingProblem) else bill.total_cents


def offers(ways: Ways, words: "Words") -> tuple[Offered, ...]:
    """The ways out as they are said, each with its change of the bill; kept with the call."""
    told = _said(ways, words)
    cents = ways.cents or (None,) * len(told)
    found: dict[str, Offered] = {}
    for one, change in zip(told, cents, strict=True):
        found.setdefault(one, Offered(one, change))
    return tuple(found.values())


def offer_words(offer: Offered) -> str:
    """An offer with its price: "Leave out the ham. ($12.40 less, estimated)"."""
    if not offer.cents:
        return offer.offer
    more = QCoreApplication.translate("News", "{offer} ({amount} more, estimated)")
    less = QCoreApplication.translate("News", "{offer} ({amount} less, estimated)")
    text = more if offer.cents > 0 else less
    return text.format(offer=offer.offer, amount=money_text(abs(offer.cents)))


def ways_words(ways: Ways, words: "Words") -> tuple[str, ...]:
    """The ways out in words, a sentence each; of a line that stands there twice once."""
    return tuple(dict.fromkeys(_said(ways, words)))


def _said(ways: Ways, words: "Words") -> tuple[str, ...]:
    from printing.words import sentences  # read only when something is lost

    return tuple(
        sentences.remedy(one, ways.question, ways.catalogue, words) for one in ways.remedies
    )
