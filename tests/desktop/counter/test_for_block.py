"""Cattle of an age nobody knows: planned both ways at the counter, as over for the block's sheet.

9 CFR 310.22: from 30 months on the backbone goes to nobody, so nothing is sawn through it.
"""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.place import CounterPlace
from desktop.counter.release import make_sheet, sheet_asked, why_not
from desktop.shell.stored_papers import sheet_paper
from shared.carcass.carcass import Age
from shared.cutting.order import Amount, Choice
from shared.units import LENGTH_UNITS_PER_INCH
from tests.db import examples
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.printing.rasterised import pages_of

T_BONES = Choice(0, 1, "t_bone_steak", Amount("slices", 6), thickness=LENGTH_UNITS_PER_INCH)
STRIPS = Choice(0, 1, "strip_steak", Amount("slices", 6), thickness=LENGTH_UNITS_PER_INCH)


def beef(qtbot: QtBot, bench: Bench, first: Choice, age: Age, *, killed: bool) -> CounterPlace:
    """Anna's whole beef: those steaks, the rest as usual."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_one(work, species="beef")
        (animal,) = work.animals.of_lot(lot.id)
        work.animals.arrive(animal.id, tag="14", age=age, version=animal.version)
        if killed:
            for side in (1, 2):
                examples.weighed(work, animal, "380", side=side)
        work.commit()
    place = with_order(qtbot, bench, lot)
    assert desk_of(place).add([first]) is None
    assert desk_of(place).fill_usual() > 0
    place.order.show_again()
    qtbot.waitUntil(lambda: not bench.work.busy())
    return place


SAID = (
    "Tag 14: the age isn't known, and the block cuts it as 30 months and over. Then it can't give "
    "T-bone steaks. Say its age at the Rail (F3), or ask for what needs no backbone."
)


def test_before_the_kill_it_is_planned_both_ways_but_no_sheet_is_released(
    qtbot: QtBot, bench: Bench
) -> None:
    place = beef(qtbot, bench, T_BONES, "unknown", killed=False)
    desk = desk_of(place)
    assert desk.answer.conflicts == ()
    assert "age_unknown" in {one.code for one in desk.answer.cautions}
    place.order.wanted.emit("main")
    assert desk.order.state == "settled", place.order.refusal.text()
    place.order.wanted.emit("main")
    assert desk.order.state == "settled"
    said = place.order.refusal.text()
    assert said.startswith("Tag 14: the age isn't known, and the block cuts it as 30 months")
    assert "T-bone steaks" in said.split("can't give ")[1]
    assert "Say its age at the Rail (F3)" in said
    assert sheet_asked(desk, bench).question.settings.at_block


def test_killed_without_an_age_the_counter_shows_what_the_block_will(
    qtbot: QtBot, bench: Bench
) -> None:
    desk = desk_of(beef(qtbot, bench, T_BONES, "unknown", killed=True))
    assert {one.kind for one in desk.answer.conflicts} == {"srm"}
    assert why_not(desk, bench.words, settling=True) == SAID
    assert why_not(desk, bench.words) == SAID


def test_what_a_sheet_asks_stands_at_the_block_and_each_side_says_the_age(
    qtbot: QtBot, bench: Bench
) -> None:
    desk = desk_of(beef(qtbot, bench, STRIPS, "unknown", killed=True))
    assert desk.move("settled") is None
    assert why_not(desk, bench.words) == ""
    asked = sheet_asked(desk, bench)
    assert asked.question.settings.at_block
    pages = pages_of(make_sheet(asked))
    for side in ("Side 1", "Side 2"):
        page = " ".join(next(one for one in pages if side in one).split())
        assert "AGE NOT KNOWN. Cut as 30 months and over" in page
    text = "\n".join(pages)
    assert "trip steak" in text
    assert "T-bone steak" not in text
    assert "orterhouse" not in text


def test_known_to_be_under_t_bones_are_on_the_sheet_of_both_sides(
    qtbot: QtBot, bench: Bench
) -> None:
    desk = desk_of(beef(qtbot, bench, T_BONES, "under_30", killed=True))
    assert desk.move("settled") is None
    assert why_not(desk, bench.words) == ""
    text = "\n".join(pages_of(make_sheet(sheet_asked(desk, bench))))
    assert "T-bone steak" in text
    assert "AGE NOT KNOWN" not in text


def test_a_draft_of_the_sheet_says_on_each_side_what_the_age_brings_down(
    qtbot: QtBot, bench: Bench
) -> None:
    both = Choice(0, 1, "t_bone_steak", Amount("all"), thickness=LENGTH_UNITS_PER_INCH)
    desk = desk_of(beef(qtbot, bench, both, "unknown", killed=False))
    pages = pages_of(sheet_paper(bench.store, desk.lot.number, bench.words))
    for side, where in (("Side 1", "Both sides"), ("Side 2", "Side 2")):
        page = " ".join(next(one for one in pages if side in one).split())
        assert "AGE NOT KNOWN. Cut as 30 months and over" in page
        assert f"Can't be kept. {where}: all as T-bone steak at 1 in; " in page
