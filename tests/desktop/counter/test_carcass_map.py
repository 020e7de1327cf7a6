"""The drawing has every primal that is on the side, apart from one another, and leads to it."""

import pytest
from PySide6.QtGui import QPainterPath
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.carcass_map import WIDTH_OF_TWO, CarcassMap, SideShown
from desktop.counter.carcass_shapes import HEIGHT, WIDTH, shapes
from desktop.counter.side_marks import held_primals, side_marks, sides_apart
from desktop.look.patterns import Mark
from shared.carcass.anatomy import catalogue, species
from shared.carcass.carcass import Holding
from shared.cutting.order import Amount, Choice
from shared.shop.lots import LotShare, NewLot
from tests.db.examples import KILL_DAY, booked, customer, lot_of_halves, lot_of_one
from tests.desktop.counter.opened_counter import desk_of, focused, with_order

# No place of their own on the outside of a side.
LEAST_SEEN = 60.0  # of 30,000: a seam between two regions
NOT_DRAWN = {"fat", "skin", "variety", "trim", "carcass", "head_and_hide"}


@pytest.mark.parametrize("kind", species())
def test_every_primal_of_the_side_is_drawn(kind: str) -> None:
    drawn = shapes(kind)
    assert drawn, "every species has a drawing of its own"
    assert set(drawn) == set(catalogue(kind).primals) - NOT_DRAWN
    for path in drawn.values():
        box = path.boundingRect()
        assert 0 <= box.left() < box.right() <= WIDTH
        assert 0 <= box.top() < box.bottom() <= HEIGHT


@pytest.mark.parametrize("kind", species())
def test_no_primal_lies_over_another(kind: str) -> None:
    drawn = list(shapes(kind).items())
    for at, (name, path) in enumerate(drawn):
        for other, its in drawn[at + 1 :]:
            assert area(path.intersected(its)) < LEAST_SEEN, f"{name} over {other}"


def area(path: QPainterPath) -> float:
    """The area of a shape, by the shoelace formula."""
    whole = 0.0
    for polygon in path.toFillPolygons():
        corners = [polygon.at(at) for at in range(polygon.count())]
        pairs = zip(corners, corners[1:] + corners[:1], strict=True)
        whole += abs(sum(one.x() * two.y() - two.x() * one.y() for one, two in pairs)) / 2
    return whole


def test_a_click_unfolds_the_primal(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    place.order.map.picked.emit("loin")
    assert place.order.table.unfolded == "loin"
    assert focused() is place.order.table


def test_an_animal_without_a_drawing_has_no_map(qtbot: QtBot) -> None:
    carcass = CarcassMap()
    qtbot.addWidget(carcass)
    carcass.show_primals("heron", [SideShown("", {"leg": Mark.OPEN})], {"leg": "Leg"}, "leg")
    assert carcass.isHidden()
    assert carcass.primal_at(carcass.rect().center().toPointF()) == ""


def test_two_sides_are_drawn_where_they_are_cut_differently(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_one(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    desk = desk_of(place)
    assert not sides_apart(desk)
    desk.add(
        [
            Choice(0, 1, "whole_ham", Amount("pieces", 1)),
            Choice(0, 1, "ham_steak", Amount("slices", 3)),
        ]
    )
    place.order.show_again()
    assert sides_apart(desk)
    assert place.order.map.width() == WIDTH_OF_TWO
    assert side_marks(desk, 1)["ham"] is Mark.SETTLED
    assert side_marks(desk, 2)["ham"] is Mark.OPEN, "the ends of the second ham"


def test_a_forequarter_has_no_round(qtbot: QtBot, bench: Bench) -> None:
    held = [Holding(0, 1, "fore"), Holding(0, 1, "hind"), Holding(0, 2, "fore")]
    held.append(Holding(0, 2, "hind"))
    quarters = tuple(
        LotShare(number, None, holdings=(one,)) for number, one in enumerate(held, start=1)
    )
    with bench.store.work(bench.person, bench.station) as work:
        owner = customer(work)
        lot = booked(work, NewLot("beef", 1, KILL_DAY, owner.id, quarters))
        work.commit()
    place = with_order(qtbot, bench, lot)
    fore = held_primals(desk_of(place))
    assert {"chuck", "rib", "brisket", "plate"} <= fore
    assert not {"round", "sirloin", "short_loin"} & fore
    assert "round" not in {row.primal for row in place.order.table.rows.rows()}
