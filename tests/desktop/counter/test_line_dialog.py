"""A cut looked for at the counter by what its customer calls it."""

import time

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView
from pytestqt.qtbot import QtBot

from desktop.counter.line_dialog import LineDialog, blank_choice, ways_of_cutting
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.cutting.order import Amount
from shared.units import Weight
from tests.desktop.fields.test_choice import offered_below
from tests.desktop.typing_in import type_into

SLOT_MS = 50
CTRL = Qt.KeyboardModifier.ControlModifier


def asked(qtbot: QtBot, species: str, language: str) -> LineDialog:
    """A line asked for any cut, nothing typed yet."""
    known, words = catalogue(species), Words(language, strict=True)
    cuts = ways_of_cutting(known, "")
    dialog = LineDialog(known, words, blank_choice(known, cuts[0], 1), cuts)
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    dialog.cut.line.setFocus()
    dialog.cut.line.selectAll()
    return dialog


@pytest.mark.parametrize(
    ("species", "language", "typed", "offered"),
    [
        (
            "beef",
            "en",
            "prime rib",
            [
                "standing rib roast, chine on · prime rib",
                "rib roast, chine off · prime rib",
                "boneless ribeye roast · boneless prime rib",
            ],
        ),
        ("pork", "en", "trot", ["foot · trotter"]),
        ("beef", "en", "arrach", ["inside skirt · arrachera de adentro"]),
        ("lamb", "es", "chuletitas", ["chuleta de costilla · chuletita"]),
        ("pork", "es", "hígado de puerco", ["hígado"]),
    ],
)
def test_the_list_shows_the_cuts_name_and_what_it_was_found_by(
    qtbot: QtBot, species: str, language: str, typed: str, offered: list[str]
) -> None:
    dialog = asked(qtbot, species, language)
    type_into(dialog.cut.line, typed)
    assert offered_below(dialog.cut)[: len(offered)] == offered


def test_what_means_one_cut_is_taken_and_put_down_under_its_own_name(qtbot: QtBot) -> None:
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "hamburger")
    assert dialog.cut.value() == "ground_beef"
    assert dialog.lean.isVisibleTo(dialog), "the fields are those of ground beef"
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Tab)
    assert dialog.cut.text() == "ground beef"
    dialog.try_it()
    assert dialog.result_choice is not None
    assert dialog.result_choice.cut == "ground_beef"


@pytest.mark.parametrize(
    ("cut", "typed", "amount"),
    [
        ("ground_beef", "25 lb", Amount("pounds", weight=Weight(25, "lb"))),
        ("ground_beef", "25", Amount("pounds", weight=Weight(25, "lb"))),
        ("rib_steak", "8", Amount("slices", 8)),
        ("rib_steak", "12 lb", Amount("pounds", weight=Weight(12, "lb"))),
    ],
)
@pytest.mark.parametrize("key", [Qt.Key.Key_Tab, None])
def test_how_much_may_be_typed_as_a_number(
    qtbot: QtBot, cut: str, typed: str, amount: Amount, key: Qt.Key | None
) -> None:
    """What was "25 lb" was not among the choices; "so many pounds" had to be chosen first."""
    dialog = asked(qtbot, "beef", "en")
    dialog.show_choice(blank_choice(catalogue("beef"), cut, 1))
    dialog.kind.focus()
    type_into(dialog.kind.line, typed)
    if key is not None:
        QTest.keyClick(dialog.kind.line, key)
        assert dialog.kind.complaint.text() == ""
    dialog.try_it()
    assert dialog.result_choice is not None
    assert dialog.result_choice.amount == amount


def test_what_means_several_is_picked_from_the_list(qtbot: QtBot) -> None:
    """Down and Enter in the list below take the cut, and the line holds its own name."""
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "osso")
    assert dialog.cut.value() == "shank_slices"
    dialog.cut.line.selectAll()
    type_into(dialog.cut.line, "delmonico")
    assert dialog.cut.value() is None
    popup = _popup(dialog)
    assert popup.isVisible()
    QTest.keyClick(popup, Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Down)
    second = popup.currentIndex().data().split(" · ")[0]
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert dialog.cut.text() == second
    at = [words for _, words in _named(dialog)].index(second)
    assert dialog.cut.value() == dialog.cut.values[at]
    assert dialog.thickness.isVisibleTo(dialog), "the fields are those of a steak"
    dialog.cut.line.selectAll()
    type_into(dialog.cut.line, "prime rib")
    QTest.keyClick(popup, Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert dialog.cut.text() == "standing rib roast, chine on"
    assert not dialog.thickness.isVisibleTo(dialog), "a roast was asked ¾ in thick"


def test_ctrl_enter_keeps_the_line_while_a_list_is_open(qtbot: QtBot) -> None:
    """The list of cuts had the key and shut itself; what Down had chosen of it is taken first."""
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "hamburger")
    assert _popup(dialog).isVisible()
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Return, CTRL)
    assert dialog.result_choice is not None
    assert dialog.result_choice.cut == "ground_beef"
    assert not dialog.isVisible()

    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "delmonico")
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Down)
    first = _popup(dialog).currentIndex().data().split(" · ")[0]
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Enter, CTRL)
    assert dialog.result_choice is not None
    assert (dialog.result_choice.cut, first) in _named(dialog)
    fresh = asked(qtbot, "beef", "en")
    fresh.show_choice(blank_choice(catalogue("beef"), dialog.result_choice.cut, 1))
    fresh.try_it()
    assert dialog.result_choice == fresh.result_choice, "the fields were those of another cut"


def test_ctrl_enter_of_what_may_be_several_keeps_nothing_and_says_so(qtbot: QtBot) -> None:
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "delmonico")
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Return, CTRL)
    assert dialog.isVisible()
    assert dialog.result_choice is None
    assert "type a little more" in dialog.cut.complaint.text()
    assert not _popup(dialog).isVisible(), "it lay over what was said"


def test_ctrl_enter_keeps_the_line_while_the_choices_are_unfolded(qtbot: QtBot) -> None:
    """F4 unfolds a field; Down to another, and Ctrl+Enter takes that one and keeps the line."""
    dialog = asked(qtbot, "beef", "en")
    dialog.show_choice(blank_choice(catalogue("beef"), "rib_steak", 1))
    dialog.kind.focus()
    dialog.kind.box.showPopup()
    view = dialog.kind.box.view()
    assert view.isVisible()
    assert dialog.kind.value() == "all"
    at = dialog.kind.values.index("slices")
    view.setCurrentIndex(dialog.kind.box.model().index(at, 0))
    QTest.keyClick(view, Qt.Key.Key_Return, CTRL)
    assert dialog.result_choice is not None
    assert dialog.result_choice.amount == Amount("slices", 1)
    assert not view.isVisible()


def test_a_name_that_says_the_finish_asks_for_it(qtbot: QtBot) -> None:
    """Corned beef put a fresh half brisket on the order."""
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "corned")
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Down)
    QTest.keyClick(_popup(dialog), Qt.Key.Key_Return)
    assert dialog.cut.text() == "half brisket"
    dialog.try_it()
    assert dialog.result_choice is not None
    assert dialog.result_choice.finishes == ("corned",)
    dialog.cut.line.selectAll()
    type_into(dialog.cut.line, "packer")
    assert dialog.cut.value() == "packer_brisket"
    assert not dialog.finishes["corned"].isChecked(), "asked by its own name it is fresh"


def test_one_is_picked_by_the_mouse(qtbot: QtBot) -> None:
    dialog = asked(qtbot, "pork", "en")
    type_into(dialog.cut.line, "boston")
    popup = _popup(dialog)
    index = popup.model().index(1, 0)
    chosen = index.data().split(" · ")[0]
    QTest.mouseClick(
        popup.viewport(),
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        popup.visualRect(index).center(),
    )
    assert dialog.cut.text() == chosen
    cut = dialog.cut.value()
    assert cut is not None
    dialog.try_it()
    assert dialog.result_choice == blank_choice(catalogue("pork"), cut, 1)


def test_what_may_be_several_is_said_with_their_own_names(qtbot: QtBot) -> None:
    dialog = asked(qtbot, "beef", "en")
    type_into(dialog.cut.line, "burger")
    assert dialog.cut.value() is None
    assert dialog.cut.show_problem() == (
        "“burger” may be ground beef or ground beef patties; type a little more."
    )


@pytest.mark.timed
def test_each_key_is_answered_at_once(qtbot: QtBot) -> None:
    """Reading the other names, first of all, and what is typed as no name at all."""
    dialog = asked(qtbot, "beef", "en")
    slowest = 0.0
    for letter in "xyzzyq chamorro":
        before = time.thread_time()
        type_into(dialog.cut.line, letter)
        slowest = max(slowest, time.thread_time() - before)
    assert slowest * 1000 < SLOT_MS


def _popup(dialog: LineDialog) -> QAbstractItemView:
    completer = dialog.cut.line.completer()
    assert completer is not None
    popup = completer.popup()
    assert isinstance(popup, QAbstractItemView)
    return popup


def _named(dialog: LineDialog) -> list[tuple[str, str]]:
    return [(code, dialog.cut.box.itemText(at)) for at, code in enumerate(dialog.cut.values)]
