"""The list of orders, read by a worker: what is shown stays until there is something newer."""

from collections.abc import Callable, Generator
from contextlib import AbstractContextManager, contextmanager
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot
from sqlalchemy import update

from db.store import Store
from db.tables.orders import Orders
from db.unit_of_work import Work
from desktop.bench import Bench
from desktop.counter.place import CounterPlace
from desktop.work import slow_turns
from shared.shop.holdings import half
from shared.shop.lots import LotShare, NewLot
from tests.bench.find import fill
from tests.db.examples import KILL_DAY, booked, customer, lot_of_halves, lot_of_one
from tests.desktop.counter.opened_counter import desk_of, focused, listed, opened, pressed

MANY = 100_000


def owners(place: CounterPlace) -> list[str]:
    return [row.owner for row in place.list.table.rows.rows()]


@pytest.fixture
def held(monkeypatch: pytest.MonkeyPatch) -> Event:
    """Whatever is read waits until this is set."""
    may_read = Event()
    may_read.set()
    read: Callable[..., AbstractContextManager[Work]] = Store.read

    @contextmanager
    def late(store: Store, stopped: Callable[[], bool] | None = None) -> Generator[Work]:
        assert stopped is None or may_read.wait(5)
        with read(store, stopped) as work:
            yield work

    monkeypatch.setattr(Store, "read", late)
    return may_read


def two_halves(bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot_of_halves(work)
        work.commit()


def test_what_was_found_stays_until_the_newest_is_there(
    qtbot: QtBot, bench: Bench, held: Event
) -> None:
    two_halves(bench)
    place = opened(qtbot, bench)
    both = owners(place)
    held.clear()
    for letter in "bert":
        QTest.keyClicks(focused(), letter)
    qtbot.wait(20)
    assert owners(place) == both == ["Anna Berg", "Bert Iversen"]
    held.set()
    listed(qtbot, bench)
    assert owners(place) == ["Bert Iversen"]


def test_enter_waits_for_what_was_typed(qtbot: QtBot, bench: Bench, held: Event) -> None:
    """The row chosen so far is another's: Enter right behind the letters must not open that."""
    two_halves(bench)
    place = opened(qtbot, bench)
    chosen = place.list.table.chosen()
    assert chosen is not None
    assert chosen.owner == "Anna Berg"
    held.clear()
    QTest.keyClicks(focused(), "bert")
    pressed(Qt.Key.Key_Return)
    assert place.order.desk is None
    held.set()
    listed(qtbot, bench)
    assert desk_of(place).order.owner == "Bert Iversen"


def test_typing_on_after_enter_opens_nothing(qtbot: QtBot, bench: Bench, held: Event) -> None:
    two_halves(bench)
    place = opened(qtbot, bench)
    held.clear()
    QTest.keyClicks(focused(), "ber")
    pressed(Qt.Key.Key_Return)
    QTest.keyClicks(focused(), "t")
    held.set()
    listed(qtbot, bench)
    assert place.order.desk is None
    assert owners(place) == ["Bert Iversen"]


def test_going_on_to_another_place_after_enter_opens_nothing_behind_ones_back(
    qtbot: QtBot, bench: Bench, held: Event
) -> None:
    two_halves(bench)
    place = opened(qtbot, bench)
    held.clear()
    QTest.keyClicks(focused(), "bert")
    pressed(Qt.Key.Key_Return)
    place.hide()
    held.set()
    listed(qtbot, bench)
    assert place.order.desk is None


def test_the_first_booking_shows_the_list(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    assert focused() is place.list.begin
    two_halves(bench)
    place.list.refresh()
    listed(qtbot, bench)
    assert focused() is place.list.search.line
    assert owners(place) == ["Anna Berg", "Bert Iversen"]


def test_with_no_order_open_the_closed_ones_can_be_seen(qtbot: QtBot, bench: Bench) -> None:
    """Once the last was fetched there was no way to them but Ctrl+F."""
    place = opened(qtbot, bench)
    listed(qtbot, bench)
    assert not place.list.ended.isVisible(), "a new shop has none"
    two_halves(bench)
    with bench.store.work(bench.person, bench.station) as work:
        done = update(Orders).values(state="handed_over", closed_at=bench.now())
        work._connection.execute(done)  # pyright: ignore[reportPrivateUsage]
        work.commit()
    place.list.refresh()
    listed(qtbot, bench)
    assert focused() is place.list.begin
    qtbot.waitUntil(place.list.ended.isVisible)
    place.list.ended.setFocus()
    pressed(Qt.Key.Key_Space)
    listed(qtbot, bench)
    assert owners(place) == ["Anna Berg", "Bert Iversen"]
    assert focused() is place.list.search.line


@pytest.mark.timed
def test_no_letter_holds_the_window_up_at_a_hundred_thousand_orders(
    qtbot: QtBot, bench: Bench
) -> None:
    """One letter alone is found in nearly every name: the query takes longer than a turn may."""
    fill(bench.store, MANY)
    place = opened(qtbot, bench)
    qtbot.waitUntil(lambda: len(owners(place)) == 500)
    pressed(Qt.Key.Key_Down)
    with slow_turns() as slow:
        for letter in "baden":
            QTest.keyClicks(focused(), letter)
            qtbot.wait(10)
        listed(qtbot, bench)
        for _ in "baden":
            pressed(Qt.Key.Key_Backspace)
            qtbot.wait(30)
        listed(qtbot, bench)
    assert len(owners(place)) == 500
    assert slow == []


def test_where_nothing_is_found_it_says_so_and_where_it_may_be(qtbot: QtBot, bench: Bench) -> None:
    two_halves(bench)
    place = opened(qtbot, bench)
    assert not place.list.none.isVisible()
    QTest.keyClicks(focused(), "zzz")
    qtbot.waitUntil(place.list.none.isVisible)
    assert place.list.none.text() == "No open order has “zzz”. It may be among the closed ones."
    place.list.closed.click()
    qtbot.waitUntil(lambda: place.list.none.text() == "No order has “zzz”.")
    place.list.search.line.clear()
    place.list.search.changed.emit()
    qtbot.waitUntil(lambda: not place.list.none.isVisible())


def test_an_order_to_be_named_stands_under_the_producers_name(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        anna = customer(work)
        shares = (LotShare(1, anna.id, holdings=half(0, 1)), LotShare(2, None, holdings=half(0, 2)))
        booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares))
        lot_of_one(work, "Cora Dahl")
        work.commit()
    place = opened(qtbot, bench)
    QTest.keyClicks(focused(), "berg")
    qtbot.waitUntil(lambda: len(owners(place)) == 2)
    rows = place.list.table.rows
    shown = {rows.index(at, 1).data() for at in range(2)}
    assert shown == {"Anna Berg", "to be named (Anna Berg)"}
    told = {rows.index(at, 1).data(Qt.ItemDataRole.ToolTipRole) for at in range(2)}
    assert told == shown  # a long name is cut off in its column
