"""Ground and seasoned lines: seasoning, what is ground in, and what a leaner grind gives."""

from fractions import Fraction

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.choice_words import finish_words
from desktop.counter.line_dialog import LineDialog, blank_choice
from desktop.counter.place import CounterPlace
from shared.cutting.grinds import grinds_for
from shared.cutting.order import Added
from shared.units import pounds_text
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.desktop.counter.test_order_view import halves


def dialog_for(qtbot: QtBot, bench: Bench, cut: str) -> tuple[CounterPlace, LineDialog]:
    place = with_order(qtbot, bench, halves(bench))
    desk = desk_of(place)
    desk.fill_usual()
    choice = next((one for one in desk.order.choices if one.cut == cut), None)
    place.order.dialogs.ask_line(
        desk, choice or blank_choice(desk.catalogue, cut, desk.share), (cut,)
    )
    dialog = place.order.dialog
    assert dialog is not None
    return place, dialog


def test_only_what_is_drawn_from_trim_asks_for_it(qtbot: QtBot, bench: Bench) -> None:
    _place, ham = dialog_for(qtbot, bench, "ham_steak")
    assert not ham.stock.isVisibleTo(ham)
    assert not ham.seasoning.isVisibleTo(ham)


def test_the_pounds_at_each_lean_are_told(qtbot: QtBot, bench: Bench) -> None:
    place, dialog = dialog_for(qtbot, bench, "ground_pork")
    said, desk = dialog.ground.gives.text(), desk_of(place)
    line = next(one.line for one in desk.order.choices if one.cut == "ground_pork")
    for one in grinds_for(desk.answer, line, 1, desk.catalogue.leanest):
        if one.most_ng:
            assert f"{int(one.lean * 100)} %: {pounds_text(one.most_ng)}" in said


def test_fat_is_ground_in(qtbot: QtBot, bench: Bench) -> None:
    _place, dialog = dialog_for(qtbot, bench, "ground_pork")
    assert not dialog.part.isVisibleTo(dialog)
    dialog.stock.set_text("pork fat")
    dialog.stock.changed.emit()
    assert dialog.part.isVisibleTo(dialog)
    dialog.part.set_text("10")
    dialog.try_it()
    assert dialog.result_choice is not None
    assert dialog.result_choice.added == Added("pork_fat", Fraction(1, 10))


def test_a_batch_has_its_seasoning(qtbot: QtBot, bench: Bench) -> None:
    place, dialog = dialog_for(qtbot, bench, "bulk_sausage")
    assert dialog.seasoning.isVisibleTo(dialog)
    dialog.seasoning.set_text("mild sage")
    dialog.try_it()
    choice = dialog.result_choice
    assert choice is not None
    assert choice.seasoning == "mild sage"
    assert "mild sage" in finish_words(choice, desk_of(place).catalogue, bench.words)
