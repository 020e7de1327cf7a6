"""News of orders: to tell until somebody was spoken to."""

from datetime import timedelta

from db.store import Store
from db.unit_of_work import Work
from shared.shop.news import LostLine, News
from tests.db import examples
from tests.store_fixture import Clock


def test_news_is_told_by_the_first_call_that_spoke(store: Store, work: Work, clock: Clock) -> None:
    lot = examples.lot_of_halves(work)
    animal = examples.arrived(work, lot)
    order = examples.order_of(work, lot, 2)
    lost = (LostLine(4, "whole_ham", "falls"),)
    given = News(order.id, animal.id, "part_gone", "pork", "114", "ham", "abscess", lost, ("r",))
    work.news.add(given)
    work.calls.log(order.id, "message")
    person, station = work.person, work.station
    ((told,),) = work.news.to_tell().values()
    assert (told.lost, told.remedies, told.tag, told.told_at) == (lost, ("r",), "114", None)
    work.commit()
    clock.pass_by(days=1)
    with store.work(person, station) as later:
        later.calls.log(order.id, "spoke")
        assert later.news.to_tell() == {}
        (after,) = later.news.of_order(order.id)
        assert after.told_at == later.now


def test_an_order_with_news_is_rung_in_any_state_until_somebody_spoke(work: Work) -> None:
    lot = examples.lot_of_halves(work)
    animal = examples.arrived(work, lot)
    order = examples.order_of(work, lot, 1)
    examples.line(work, order)
    examples.settled(work, order.id)
    day = lot.day - timedelta(days=30)
    assert work.calls.to_ring(day) == ()
    work.news.add(News(order.id, animal.id, "part_gone", "pork", "114", "ham", "abscess"))
    (row,) = work.calls.to_ring(day)
    assert (row.order.id, row.about, row.news[0].reason) == (order.id, ("loss",), "abscess")
    work.calls.log(order.id, "no_answer")
    assert len(work.calls.to_ring(day)) == 1
    work.calls.log(order.id, "spoke")
    assert work.calls.to_ring(day) == ()
