"""The drawing has every primal that is on the side, apart from one another, and leads to it."""

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.carcass_shapes import HEIGHT, WIDTH, shapes
from shared.carcass.anatomy import catalogue
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import focused, with_order

# No place of their own on the outside of a side.
NOT_DRAWN = {"fat", "skin", "variety", "trim", "carcass"}


@pytest.mark.parametrize("species", ["pork", "beef"])
def test_every_primal_of_the_side_is_drawn(species: str) -> None:
    drawn = shapes(species)
    assert set(drawn) == set(catalogue(species).primals) - NOT_DRAWN
    for path in drawn.values():
        box = path.boundingRect()
        assert 0 <= box.left() < box.right() <= WIDTH
        assert 0 <= box.top() < box.bottom() <= HEIGHT


@pytest.mark.parametrize("species", ["pork", "beef"])
def test_no_primal_lies_over_another(species: str) -> None:
    drawn = list(shapes(species).items())
    for at, (name, path) in enumerate(drawn):
        for other, its in drawn[at + 1 :]:
            common = path.intersected(its).boundingRect()
            assert common.width() * common.height() < 60, f"{name} over {other}"


def test_a_click_unfolds_the_primal(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    place.order.map.picked.emit("loin")
    assert place.order.table.unfolded == "loin"
    assert focused() is place.order.table
