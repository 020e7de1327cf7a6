"""Ways of cutting are offered by number, the house's usual first, primal by primal."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.ways_offered import MOST, next_to_do, offers, to_do
from shared.cutting.order import Amount, Choice
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
