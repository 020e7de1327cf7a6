"""Ways of cutting are offered by number, the house's usual first, primal by primal."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.ways_offered import MOST, more_than_offered, next_to_do, offers, to_do
from shared.carcass.carcass import Holding
from shared.cutting.order import Amount, Choice
from shared.shop.lots import LotShare, NewLot
from tests.db.examples import booked, customer, lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, pressed, with_order
from tests.desktop.counter.test_order_view import halves

CTRL = Qt.KeyboardModifier.ControlModifier


def test_the_house_s_usual_is_offered_first(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, halves(bench)))
    (first, *others) = offers(desk, "loin")
    assert first.usual
    assert [one.cut for one in first.choices] == ["country_ribs", "centre_chop", "sirloin_roast"]
    assert [one.number for one in others] == list(range(2, len(others) + 2))
    assert len(others) < MOST
    assert not any(one.usual for one in others)


def test_enter_on_each_primal_cuts_a_usual_half_hog(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    keys = 0
    while desk_of(place).open_parts() or to_do(desk_of(place), "trim"):
        pressed(Qt.Key.Key_Return)
        keys += 1
        assert keys <= 12, "a usual order takes a dozen keys"
    walked = [one.cut for one in desk_of(place).order.choices]
    place.order.undo()
    for _ in range(keys - 1):
        place.order.undo()
    assert desk_of(place).order.choices == ()
    pressed(Qt.Key.Key_F9)
    assert sorted(one.cut for one in desk_of(place).order.choices) == sorted(walked)


def test_a_number_takes_that_way_and_goes_on_to_the_next(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    table = place.order.table
    table.go_to("belly")
    offer = table.offer(2)
    assert offer is not None
    pressed(Qt.Key.Key_2)
    (line,) = desk_of(place).order.choices
    assert line.cut == offer.choices[0].cut
    assert table.unfolded == ("belly" if to_do(desk_of(place), "belly") else "hocks")


def test_only_what_may_take_the_open_part_is_offered(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk = desk_of(place)
    desk.add([Choice(0, 1, "bacon", Amount("all"))])
    cuts = {one.choices[0].cut for one in offers(desk, "belly")}
    assert "spareribs" in cuts
    assert "bacon" not in cuts


def test_space_shows_the_ways_of_what_is_settled(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    pressed(Qt.Key.Key_F9)
    table = place.order.table
    table.go_to("ham")
    assert not any(row.offer for row in table.rows.rows())
    pressed(Qt.Key.Key_Space)
    assert [row.offer.number for row in table.rows.rows() if row.offer][:2] == [1, 2]
    pressed(Qt.Key.Key_Space)
    assert not any(row.offer for row in table.rows.rows())


def test_the_next_to_ask_goes_round(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, halves(bench)))
    assert next_to_do(desk, "jowl") == "butt"
    assert next_to_do(desk, "trim") == "jowl"
    desk.fill_usual()
    assert next_to_do(desk, "trim") == ""


def test_what_has_no_number_is_told_and_found_by_name(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, "beef")
        work.commit()
    place = with_order(qtbot, bench, lot)
    desk = desk_of(place)
    more = more_than_offered(desk, "chuck")
    assert len(offers(desk, "chuck")) == MOST
    assert more > 0
    assert f"{more} more cuts" in place.order.panel.reading.text()
    assert "Enter takes 1" in place.order.panel.reading.text()
    assert more_than_offered(desk, "flank") == 0


def test_an_order_opens_where_something_is_open(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lamb = lot_of_halves(work, "lamb")
        beef = lot_of_halves(work, "beef")
        work.commit()
    place = with_order(qtbot, bench, lamb)
    pressed(Qt.Key.Key_Down)
    pressed(Qt.Key.Key_Down)
    place.show_order(beef.id, beef.shares[0].order_id)
    desk = desk_of(place)
    assert place.order.table.unfolded == next_to_do(desk, "")
    assert to_do(desk, place.order.table.unfolded)
    row = place.order.table.chosen()
    assert row is not None
    assert (row.primal, row.line, row.offer) == (place.order.table.unfolded, 0, None)


def test_who_has_a_forequarter_is_offered_nothing_of_the_hind(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = customer(work, "Anna Berg"), customer(work, "Bert Iversen")
        shares = (
            LotShare(1, anna.id, holdings=(Holding(0, 1, "fore"),)),
            LotShare(2, bert.id, holdings=(Holding(0, 1, "hind"), Holding(0, 2))),
        )
        lot = booked(work, NewLot("beef", 1, bench.today(), bert.id, shares))
        work.commit()
    fore = desk_of(with_order(qtbot, bench, lot, share=1))
    whole = [one.choices[0].cut for one in offers(fore, "carcass")]
    assert "fore_quarter" in whole
    assert "hind_quarter" not in whole
    rest = desk_of(with_order(qtbot, bench, lot, share=2))
    assert "hind_quarter" in [one.choices[0].cut for one in offers(rest, "carcass")]


def test_an_order_opens_on_what_stops_it_else_on_what_is_open(qtbot: QtBot, bench: Bench) -> None:
    lot = halves(bench)
    place = with_order(qtbot, bench, lot)
    desk, table = desk_of(place), place.order.table
    order_id = desk.order.id

    def opened_on() -> str:
        place.show_order(lot.id, order_id)
        return table.unfolded

    assert opened_on() == "jowl", "nothing is asked: the first that is open"
    desk.add([Choice(0, 1, "jowl_bacon", Amount("all"))])
    assert opened_on() == "butt"
    desk.add([Choice(0, 1, "short_shank_ham", Amount("all"))])
    assert opened_on() == "ham", "fresh or cured isn't said"
    desk.add([Choice(0, 1, "ham_steak", Amount("slices", 6))])
    assert opened_on() == "ham"
    assert desk_of(place).answer.conflicts
    desk_of(place).add([Choice(0, 1, "coppa", Amount("all"), finishes=("seasoned",))])
    desk_of(place).add([Choice(0, 1, "whole_butt", Amount("all"), finishes=("smoked",))])
    assert opened_on() == "butt", "of two that can't stand the first in cutting order"


def test_a_settled_order_opens_on_its_first_primal(qtbot: QtBot, bench: Bench) -> None:
    lot = halves(bench)
    place = with_order(qtbot, bench, lot)
    pressed(Qt.Key.Key_F9)
    place.show_order(lot.id, desk_of(place).order.id)
    assert place.order.table.unfolded == "jowl"
    assert not desk_of(place).open_parts()
