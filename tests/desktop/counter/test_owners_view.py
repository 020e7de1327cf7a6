"""Owners side by side: who has answered, what they must agree on, whom to ring."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.owners_rows import (
    answer_of,
    calls,
    matters,
    owners_rows,
    primals_of,
    spoken_of,
    whole_rows,
)
from desktop.counter.side_marks import held_primals
from desktop.look.patterns import Mark
from printing.words import Words
from shared.carcass.carcass import Holding
from shared.cutting.order import Amount, Choice
from shared.shop.lots import Lot, LotShare, NewLot
from shared.units import LENGTH_UNITS_PER_INCH
from tests.db.examples import KILL_DAY, booked, customer
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, focused, pressed, with_order
from tests.desktop.counter.test_lead_dialog import beef
from tests.desktop.counter.test_order_table import shown_whole
from tests.desktop.counter.test_order_view import halves, whole_hog

CTRL = Qt.KeyboardModifier.ControlModifier
PHONES = {1: "(555) 010-0123", 2: "(555) 010-0456"}


def test_who_has_answered_and_whom_to_ring(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, halves(bench)))
    first, second = desk.orders
    assert [answer_of(desk, one)[1] for one in desk.orders] == [Mark.OPEN, Mark.OPEN]
    with bench.store.read() as work:
        phones = work.orders.phones(desk.lot.id)
    assert len(calls(desk, phones)) == 2
    desk.fill_usual()
    assert [answer_of(desk, one)[1] for one in desk.orders] == [Mark.TIGHT, Mark.OPEN]
    jowl = next(one for one in desk.order.choices if desk.catalogue.cuts[one.cut].primal == "jowl")
    desk.remove(jowl.line)
    assert answer_of(desk, desk.orders[0]) == ("open primals: 1", Mark.OPEN)
    desk.undo()
    desk.move("settled")
    assert answer_of(desk, desk.orders[0]) == ("settled", Mark.SETTLED)
    (ring,) = calls(desk, phones)
    assert ring == "Bert Iversen, (555) 010-0456: nothing yet"
    assert (first.owner, second.owner) == ("Anna Berg", "Bert Iversen")


def test_the_lines_of_one_primal_stand_beside_each_other(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, halves(bench)))
    inch = LENGTH_UNITS_PER_INCH
    desk.add([Choice(0, 1, "centre_chop", Amount("rest"), thickness=inch)])
    desk.show(desk.orders[1].id)
    desk.add([Choice(0, 2, "centre_chop", Amount("slices", 6), thickness=inch * 3 // 4)])
    rows = owners_rows(desk, "loin", bench.words)
    assert rows[0].cells == (("half, side 1", Mark.PLAIN), ("half, side 2", Mark.PLAIN))
    (mine, mark), (theirs, _) = rows[2].cells
    assert (mine, mark) == ("center-cut chop, bone in, 1\u00a0in", Mark.SETTLED)
    assert theirs == "center-cut chop, bone in, ¾\u00a0in"
    assert rows[3].cells[1][0].strip().startswith("6 slices")
    assert ("open", Mark.OPEN) in [cell for row in rows for cell in row.cells]


def test_what_can_t_be_is_for_all_to_see(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, halves(bench)))
    desk.add([Choice(0, 1, "whole_ham", Amount("pieces", 1)) for _ in range(2)])
    ((said, mark),) = matters(desk, bench.words)
    assert mark is Mark.CONTESTED
    assert "ham" in said
    with bench.store.read() as work:
        ring = calls(desk, work.orders.phones(desk.lot.id))
    assert ring[0].startswith("Anna Berg, (555) 010-0123: what can't be cut")


def test_the_keyboard_goes_along_owners_and_primals(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    pressed(Qt.Key.Key_O, CTRL)
    owners = place.order.owners.table
    assert owners is not None
    assert focused() is owners
    assert unnamed(place.order) == []
    before = place.order.table.unfolded
    pressed(Qt.Key.Key_Down)
    assert place.order.table.unfolded != before
    pressed(Qt.Key.Key_Up)
    assert place.order.table.unfolded == before
    pressed(Qt.Key.Key_Right)
    assert owners.at == 1
    pressed(Qt.Key.Key_Return)
    assert desk_of(place).order.owner == "Bert Iversen"
    assert not place.order.stage.side_by_side()
    assert focused() is place.order.table
    pressed(Qt.Key.Key_O, CTRL)
    pressed(Qt.Key.Key_Escape)
    assert not place.order.stage.side_by_side()


def test_one_owner_has_nobody_beside_him(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, whole_hog(bench))
    pressed(Qt.Key.Key_O, CTRL)
    assert not place.order.stage.side_by_side()
    assert place.order.refusal.text() == "This animal has one owner."


def test_side_by_side_begins_where_an_owner_has_something(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk = desk_of(place)
    empty = next(one for one in held_primals(desk) if not spoken_of(desk, one))
    place.order.table.go_to(empty)
    pressed(Qt.Key.Key_O, CTRL)
    assert spoken_of(desk, place.order.owners.primal)


def quarters(bench: Bench) -> Lot:
    """A beef in two quarters and a half, three owners."""
    with bench.store.work(bench.person, bench.station) as work:
        owners = [customer(work, name).id for name in ("Siobhán Ní Mhurchadha", "Gus", "Anneliese")]
        held = (Holding(0, 1, "fore"), Holding(0, 1, "hind"), Holding(0, 2))
        shares = tuple(
            LotShare(at, owner, holdings=(one,))
            for at, (owner, one) in enumerate(zip(owners, held, strict=True), start=1)
        )
        lot = booked(work, NewLot("beef", 1, KILL_DAY, owners[0], shares))
        work.commit()
    return lot


def test_the_keys_go_along_what_any_owner_has(qtbot: QtBot, bench: Bench) -> None:
    """Who has the forequarter saw no primal of the hindquarter of the others."""
    place = with_order(qtbot, bench, quarters(bench))
    desk = desk_of(place)
    assert "round" not in held_primals(desk)
    pressed(Qt.Key.Key_O, CTRL)
    seen = [place.order.owners.primal]
    for _ in range(20):
        pressed(Qt.Key.Key_Down)
        if place.order.owners.primal == seen[-1]:
            break
        seen.append(place.order.owners.primal)
    assert seen == [one for one in desk.catalogue.primals if one in seen] == primals_of(desk)
    assert "round" in seen
    assert "chuck" in seen


def test_space_shows_all_primals_and_enter_opens_the_order_there(
    qtbot: QtBot, bench: Bench
) -> None:
    place = with_order(qtbot, bench, quarters(bench))
    desk = desk_of(place)
    desk.fill_usual()
    place.order.show_again()
    pressed(Qt.Key.Key_O, CTRL)
    owners = place.order.owners
    assert owners.table is not None
    pressed(Qt.Key.Key_Space)
    rows = owners.table.rows.rows()
    assert [row.primal for row in rows if row.primal] == primals_of(desk)
    chuck = next(row for row in rows if row.primal == "chuck")
    assert chuck.cells[0][0].count(";") >= 2, "every cut of it"
    assert chuck.cells[0][1] is Mark.SETTLED
    assert chuck.cells[1] == ("", Mark.PLAIN), "who has the hindquarter has nothing of it"
    assert chuck.cells[2] == ("open", Mark.OPEN)
    while owners.primal != "round":
        pressed(Qt.Key.Key_Down)
    pressed(Qt.Key.Key_Right)
    at = owners.table.currentIndex()
    assert owners.table.rows.row(at.row()).primal == "round"
    assert owners.table.at == 1
    pressed(Qt.Key.Key_Return)
    assert desk_of(place).order.owner == "Gus"
    assert place.order.table.unfolded == "round"


def test_no_cell_is_cut_off_at_1366(qtbot: QtBot, bench: Bench) -> None:
    bench.words = Words("es", strict=True)
    place = with_order(qtbot, bench, quarters(bench))
    desk = desk_of(place)
    for order in desk.orders:
        desk.show(order.id)
        desk.fill_usual()
    place.order.show_again()
    pressed(Qt.Key.Key_O, CTRL)
    table = place.order.owners.table
    assert table is not None
    assert not place.order.map.isVisible(), "its room is the owners'"
    for _ in range(2):
        for _ in primals_of(desk):
            QApplication.processEvents()
            for at, row in enumerate(table.rows.rows()):
                for place_, (text, _mark) in enumerate(row.cells, start=1):
                    assert shown_whole(table, at, place_, text), text
            pressed(Qt.Key.Key_Down)
        pressed(Qt.Key.Key_Space)


def test_who_is_cut_as_another_says_is_shown_so(qtbot: QtBot, bench: Bench) -> None:
    desk = desk_of(with_order(qtbot, bench, beef(bench), share=2))
    assert desk.lead(1) is None
    leader = desk.orders[0].owner
    for rows in (owners_rows(desk, "rib", bench.words), whole_rows(desk, bench.words)):
        rib = next(row for row in rows if row.primal == "rib")
        assert rib.cells[0][0].startswith("boneless ribeye steak")
        assert rib.cells[1] == (f"as {leader} says", Mark.PLAIN)


def test_a_cell_without_a_mark_takes_no_line_for_one(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, quarters(bench))
    pressed(Qt.Key.Key_O, CTRL)
    table = place.order.owners.table
    assert table is not None
    QApplication.processEvents()
    assert table.rows.row(0).what == "Has"
    assert table.rowHeight(0) == table.verticalHeader().defaultSectionSize()
