"""Owners with long names: each keeps its room, on the chips and side by side."""

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.place import CounterPlace
from shared.carcass.carcass import Holding
from shared.shop.holdings import whole
from shared.shop.lots import LotShare, NewLot
from tests.db.examples import booked, customer
from tests.desktop.counter.opened_counter import with_order

LONG = "Anneliese Margarethe Weatherby-Holmström"
OTHER = "Cleopatra Vandersteen-O'Shaughnessy III"


@pytest.fixture
def place(qtbot: QtBot, bench: Bench) -> CounterPlace:
    """A beef of four, two of them with long names and one to be named."""
    with bench.store.work(bench.person, bench.station) as work:
        owners = [customer(work, name, "555 010 0123").id for name in (LONG, "Bert Iversen", OTHER)]
        quarters = (
            Holding(0, 1, "fore"),
            Holding(0, 1, "hind"),
            Holding(0, 2, "fore"),
            Holding(0, 2, "hind"),
        )
        shares = tuple(
            LotShare(number, owner, holdings=(quarter,))
            for number, (owner, quarter) in enumerate(
                zip([*owners, None], quarters, strict=True), start=1
            )
        )
        lot = booked(work, NewLot("beef", 1, bench.today(), owners[0], shares))
        work.commit()
    return with_order(qtbot, bench, lot)


def test_a_long_name_gives_way_and_its_state_stays(place: CounterPlace) -> None:
    chips = list(place.order.chips._chips.values())
    said = [chip.text() for chip in chips]
    assert said[0].startswith("Anneliese")
    assert said[0].endswith("…: open")
    assert said[1] == "Bert Iversen: open"
    assert said[3] == "to be named: open"
    assert all(chip.sizeHint().width() <= chip.width() for chip in chips)
    assert [chips[0].accessibleName(), chips[0].toolTip()] == [f"{LONG}: open"] * 2
    place.resize(1920, 980)
    assert [chip.text() for chip in chips] == [
        f"{LONG}: open",
        "Bert Iversen: open",
        f"{OTHER}: open",
        "to be named: open",
    ]


def test_four_owners_side_by_side_have_the_same_room(qtbot: QtBot, place: CounterPlace) -> None:
    place.order.show_side_by_side(shown=True)
    qtbot.wait(10)
    table = place.order.owners.table
    assert table is not None
    wide = [table.columnWidth(at) for at in range(1, 5)]
    assert max(wide) - min(wide) <= 1
    assert table.horizontalScrollBar().maximum() == 0


def test_the_and_of_two_owners_is_shown(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        owner = customer(work, "Abel & Fern Thackeray", "555 010 0123").id
        share = LotShare(1, owner, holdings=whole(0))
        lot = booked(work, NewLot("lamb", 1, bench.today(), owner, (share,)))
        work.commit()
    place = with_order(qtbot, bench, lot)
    (chip,) = place.order.chips._chips.values()
    assert chip.text() == "Abel && Fern Thackeray: open"  # a button shows && as one
    assert chip.shortcut().isEmpty()
    assert chip.accessibleName() == "Abel & Fern Thackeray: open"
