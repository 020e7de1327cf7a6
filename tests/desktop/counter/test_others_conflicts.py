"""What another owner of the lot asked that can't be: named as his, and no hindrance to settle."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.place import CounterPlace
from desktop.counter.release import why_not
from shared.cutting.order import Amount, Choice
from shared.units import LENGTH_UNITS_PER_INCH
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, with_order

HAM = Choice(0, 1, "whole_ham", Amount("pieces", 1))
STEAKS = Choice(0, 1, "ham_steak", Amount("slices", 6), thickness=LENGTH_UNITS_PER_INCH * 3 // 4)


def half_a_hog_each(qtbot: QtBot, bench: Bench) -> CounterPlace:
    """Share 1 asks a whole ham and steaks of the same ham; share 2 has all of his as usual."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    place = with_order(qtbot, bench, lot)
    assert desk_of(place).add([HAM, STEAKS]) is None
    place.order.chips.step(1)
    assert desk_of(place).fill_usual() > 0
    place.order.show_again()
    qtbot.waitUntil(lambda: not bench.work.busy())
    return place


def test_anothers_conflict_is_named_as_his_and_his_lines_are_not_offered_here(
    qtbot: QtBot, bench: Bench
) -> None:
    place = half_a_hog_each(qtbot, bench)
    his, mine = (one.owner for one in desk_of(place).orders)
    assert his != mine
    assert place.order.panel.spoken()[0].startswith(f"{his}: ")
    assert place.order.panel.remedies == ()
    place.order.chips.step(1)
    assert not place.order.panel.spoken()[0].startswith(f"{his}: ")
    qtbot.waitUntil(lambda: bool(place.order.panel.remedies), timeout=5_000)


def test_an_owner_settles_though_another_asked_what_cant_be_but_no_sheet_is_made(
    qtbot: QtBot, bench: Bench
) -> None:
    place = half_a_hog_each(qtbot, bench)
    desk, words = desk_of(place), bench.words
    his = desk.orders[0].owner
    assert desk.answer.verdict == "cant"
    assert why_not(desk, words, settling=True) == ""
    place.order.wanted.emit("main")
    assert desk.order.state == "settled", place.order.refusal.text()
    place.order.wanted.emit("main")
    assert desk.order.state == "settled"
    said = f"Not all of it can be had of what {his} asked: that comes first."
    assert place.order.refusal.text() == said
    desk.show(desk.orders[0].id)
    assert why_not(desk, words, settling=True).startswith("It can't all be had yet")
