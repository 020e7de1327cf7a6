"""What a row of the order says of its lines: contested, to agree on, or settled."""

from dataclasses import replace

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.order_rows import rows_of
from desktop.counter.place import CounterPlace
from desktop.look.patterns import Mark
from shared.cutting.order import Amount, Choice
from tests.db.examples import lot_of_halves
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.desktop.counter.test_lead_dialog import beef


def primal_rows(place: CounterPlace, bench: Bench) -> dict[str, tuple[Mark, str]]:
    return {
        row.primal: (row.mark, row.amount)
        for row in rows_of(desk_of(place), "", bench.words)
        if row.mark is not Mark.PLAIN
    }


def test_only_what_is_in_the_conflict_is_contested(qtbot: QtBot, bench: Bench) -> None:
    """The chuck lies on the run of the T-bones; it is had whatever becomes of the tenderloin."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work, "beef")
        work.commit()
    place = with_order(qtbot, bench, lot)
    desk = desk_of(place)
    assert desk.fill_usual() > 0
    assert desk.add([Choice(0, 1, "whole_tenderloin", Amount("all"))]) is None
    place.order.show_again()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert desk.answer.verdict == "cant"
    rows = primal_rows(place, bench)
    assert rows["short_loin"] == (Mark.CONTESTED, "contested")
    assert rows["chuck"] == (Mark.SETTLED, "settled")


def test_what_the_owners_must_agree_on_is_no_settled_row(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, beef(bench), share=2)
    desk = desk_of(place)
    assert primal_rows(place, bench)["rib"][0] is not Mark.TIGHT
    steaks = desk.order.choices[0]
    assert desk.change(replace(steaks, cut="ribeye_roast")) is None
    assert desk.answer.questions
    assert primal_rows(place, bench)["rib"] == (Mark.OPEN, "open"), "the back ribs come first"
    assert desk.fill_usual() > 0
    assert primal_rows(place, bench)["rib"] == (Mark.TIGHT, "to agree")
