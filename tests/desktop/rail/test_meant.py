"""From an order to the rail: the animal that still has to be seen to, and how many there are."""

from datetime import date

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.main_window import MainWindow
from desktop.rail.meant import meant, meant_words
from desktop.rail.place import RailPlace
from shared.shop.holdings import whole
from shared.shop.lots import Lot, LotShare, NewLot
from tests.db import examples

DAY = date(2026, 3, 2)
HUNG = ("passed", "hanging")


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """Four hogs: three are Anna's, the fourth is Bert's; of hers the first hangs."""
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = examples.customer(work), examples.customer(work, "Bert Iversen")
        held = (*whole(0), *whole(1), *whole(2))
        shares = (LotShare(1, anna.id, holdings=held), LotShare(2, bert.id, holdings=whole(3)))
        made = examples.booked(work, NewLot("pork", 4, DAY, anna.id, shares))
        first = examples.arrived(work, made, "201", 0)
        examples.weighed(work, first, "190")
        examples.moved(work, first.id, *HUNG)
        examples.arrived(work, made, "203", 2)
        work.commit()
    return made


def order_id(bench: Bench, lot: Lot, share: int) -> int:
    with bench.store.read() as work:
        return examples.order_of(work, lot, share).id


def tags(bench: Bench, order: int, chosen: int = 0) -> list[str]:
    return [one.tag for one in meant(bench, order, chosen)]


def test_what_is_here_comes_before_what_is_booked_and_what_hangs(bench: Bench, lot: Lot) -> None:
    anna = order_id(bench, lot, 1)
    assert tags(bench, anna) == ["203", "", "201"]
    assert meant_words(meant(bench, anna), bench.words) == (
        "3 animals are this order's: tag 203 (arrived) is shown; "
        "also animal 2 (booked), tag 201 (hanging)."
    )
    (fourth,) = meant(bench, order_id(bench, lot, 2))
    assert fourth.index == 3
    assert meant(bench, 4711) == ()


def test_the_one_chosen_at_the_rail_stays_until_it_hangs(bench: Bench, lot: Lot) -> None:
    anna = order_id(bench, lot, 1)
    assert tags(bench, anna, lot.animals[1].id) == ["", "203", "201"]
    assert tags(bench, anna, lot.animals[0].id) == ["203", "", "201"]


def test_where_all_hang_the_newest_is_meant(bench: Bench, lot: Lot) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        last = examples.arrived(work, lot, "202", 1)
        for animal_id in (last.id, lot.animals[2].id):
            animal = work.animals.get(animal_id)
            assert animal is not None
            examples.weighed(work, animal, "190")
            examples.moved(work, animal_id, *HUNG)
        work.commit()
    assert tags(bench, order_id(bench, lot, 1)) == ["203", "202", "201"]


def test_f3_from_an_order_shows_its_animal_and_tells_of_the_others(
    qtbot: QtBot, bench: Bench, lot: Lot
) -> None:
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.show()
    window.enter("rail")
    rail = window.place()
    assert isinstance(rail, RailPlace)
    window.enter("counter")
    window.places["counter"].show_order(  # pyright: ignore[reportAttributeAccessIssue]
        lot.id, order_id(bench, lot, 1)
    )
    window.bar.places.wanted.emit("rail")
    seen = rail.panel.seen
    assert seen is not None
    assert seen.animal.tag == "203"
    assert rail.table.chosen() is not None
    assert window.status.text().startswith("3 animals are this order's: tag 203")
    window.enter("counter")
    window.places["counter"]._back()  # pyright: ignore[reportAttributeAccessIssue]
    rail.table.choose(0)
    chosen = rail.table.chosen()
    window.bar.places.wanted.emit("rail")
    assert rail.table.chosen() == chosen
