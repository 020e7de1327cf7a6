"""What the reports read of one hog in halves: 93.5 and 96.25 lb hot, 27.71 lb packed a half."""

from datetime import date, timedelta

import pytest

from db.problems import ReadStopped
from db.store import Store
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.people import SignedOn
from shared.shop.reports import Killed, LotPacked
from shared.units import Weight
from tests.db.examples import at_the_block
from tests.db.repositories.test_counted import by_count
from tests.desktop.office.ready_orders import handed_over
from tests.store_fixture import Clock

FIRST, LAST = date(2020, 1, 1), date(2030, 12, 31)


def ng(pounds: str) -> int:
    return Weight.from_pounds(pounds).nanograms


def test_the_kill_is_read_with_its_hot_weight_as_it_stands(store: Store, signed: SignedOn) -> None:
    handed_over(store, signed)
    with store.read() as work:
        (found,) = work.reports.killed(FIRST, LAST)
        day = found.day
        assert work.reports.killed(day, day) == (found,)
        assert work.reports.killed(day + timedelta(days=1), LAST) == ()
    assert isinstance(found, Killed)
    assert (found.species, found.hot_ng) == ("pork", ng("189.75"))


def test_a_lot_is_packed_once_every_order_of_it_is_wrapped(store: Store, signed: SignedOn) -> None:
    handed_over(store, signed)
    with store.read() as work:
        (found,) = work.reports.packed(FIRST, LAST)
        owner = work.reports.killed(FIRST, LAST)[0].producer
    assert found == LotPacked("pork", owner, 1, ng("189.75"), ng("55.42"))


def test_a_cut_is_made_beside_what_the_table_foretold(store: Store, signed: SignedOn) -> None:
    order = handed_over(store, signed)
    with store.work(signed.person, signed.station) as work:
        animal = work.lots.get(order.lot_id)
        assert animal is not None
        packages = work.packages.of_lot(order.lot_id)
        line = min(one.line for one in packages if one.order_id == order.id)
        expected = [(order.id, line, "ham", ng("20"), ng("189.75"))]
        work.yields.expect(animal.animals[0].id, expected)
        work.commit()
    with store.read() as work:
        (found,) = work.reports.made(FIRST, LAST)
    assert (found.species, found.cut, found.lots) == ("pork", "ham", 1)
    assert (found.expected_ng, found.made_ng, found.per_mille) == (ng("20"), ng("18.25"), 913)


def test_what_is_wrapped_and_not_paid_or_fetched_sits(store: Store, signed: SignedOn) -> None:
    order = handed_over(store, signed)
    with store.read() as work:
        found = work.reports.sitting()
        mine = next(one for one in found if one.order_id == order.id)
        packages = work.hand_overs.left(order.id)
    assert len(found) == 2
    assert (mine.packages_left, mine.due_cents, mine.days) == (3, 0, 0)
    with store.work(signed.person, signed.station) as work:
        work.hand_overs.give(order.id, packages)
        work.commit()
    with store.read() as work:
        left = [one.order_id for one in work.reports.sitting()]
        later = work.reports.sitting(work.now.date() + timedelta(days=9))
    assert order.id not in left
    assert [one.days for one in later] == [9]


def test_counted_packages_are_here_and_leave_a_lot_out_of_the_cut_out(
    store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    with store.work(signed.person, signed.station) as work:
        by_count(work)
        line = order.choices[0]
        with at_the_block(work, order.id):
            made = work.counted.add(NewCount(order.id, line.line, line.cut, "Ham", 12))
        assert isinstance(made, CountedPackages)
        assert work.reports.packed(FIRST, LAST) == ()
        here = {one.order_id: one.packages_left for one in work.reports.sitting()}
        assert here[order.id] == 15
        (row,) = [one for one in work.orders.list() if one.id == order.id]
        assert row.packages == 15
        work.hand_overs.give(order.id, [], counted_ids=[made.id])
        here = {one.order_id: one.packages_left for one in work.reports.sitting()}
        assert here[order.id] == 3


def test_a_carcass_at_the_block_takes_from_its_first_to_its_last_tick(
    store: Store, signed: SignedOn, clock: Clock
) -> None:
    order = handed_over(store, signed)
    with store.read() as work:
        lot = work.lots.get(order.lot_id)
        assert lot is not None
    for _ in range(2):
        with store.work(signed.person, signed.station) as work:
            work.block.tick(lot.animals[0].id, [(1, 1, "")], made=True)
            work.commit()
        clock.pass_by(minutes=25)
    with store.read() as work:
        today = work.now.astimezone().date()
        (found,) = work.reports.block(today - timedelta(days=1), today)
    assert (found.ticked, found.carcasses, found.reckoned) == (25, 1, 0)


def test_a_long_read_stops_when_it_is_told_to(store: Store) -> None:
    count = (
        "WITH RECURSIVE up(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM up WHERE n < 30000000) "
        "SELECT max(n) FROM up"
    )
    asked: list[int] = []

    def stopped() -> bool:
        asked.append(1)
        return len(asked) > 3

    with pytest.raises(ReadStopped), store.read(stopped) as work:
        work._desk.connection.exec_driver_sql(count)
    assert 4 <= len(asked) < 10
    with store.read() as work:
        assert work.reports.killed(FIRST, LAST) == ()


def test_orders_are_open_while_the_books_have_something_on_them(
    store: Store, signed: SignedOn
) -> None:
    order = handed_over(store, signed)
    with store.read() as work:
        (found,) = work.books.open_orders()
    assert (found.id, found.due_cents) == (order.id, -5000)
    with store.work(signed.person, signed.station) as work:
        work.payments.take(order.id, "refund", "check", 5000, "given back")
        work.commit()
    with store.read() as work:
        assert work.books.open_orders() == ()
