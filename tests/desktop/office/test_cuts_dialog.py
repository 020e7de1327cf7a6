"""The single cuts a charge is limited to, found by what the trade calls them."""

import time

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.office.charge_cuts import cuts_offered
from desktop.office.cuts_dialog import CutsDialog
from printing.words import Words
from shared.carcass.anatomy import species
from tests.desktop.typing_in import type_into

SLOT_MS = 50


def opened(qtbot: QtBot, bench: Bench, animals: tuple[str, ...]) -> CutsDialog:
    dialog = CutsDialog(
        bench,
        cuts_offered(animals, bench.words),
        (),
        lambda codes: ", ".join(codes),
        lambda _codes: None,
    )
    qtbot.addWidget(dialog)
    dialog.open()
    qtbot.waitUntil(dialog.isActiveWindow)
    return dialog


def shown(dialog: CutsDialog) -> list[str]:
    rows = dialog.table.rows
    return [str(rows.index(at, 0).data()) for at in range(rows.rowCount())]


@pytest.mark.parametrize(
    ("language", "animals", "typed", "first"),
    [
        ("en", ("beef",), "prime rib", "standing rib roast, chine on · prime rib"),
        ("en", ("pork",), "trotters", "foot · trotter"),
        ("en", ("pork", "beef"), "bacon", "bacon"),
        ("es", ("lamb",), "chuletitas", "chuleta de costilla · chuletita"),
        ("es", ("pork",), "higado", "hígado"),
        ("en", ("beef",), "osso bucco", "shank slice · osso buco"),
    ],
)
def test_a_cut_is_found_as_at_the_counter(
    qtbot: QtBot, bench: Bench, language: str, animals: tuple[str, ...], typed: str, first: str
) -> None:
    """At the counter prime rib was found, and in the card's own list nothing was called so."""
    bench.words = Words(language, strict=True)
    dialog = opened(qtbot, bench, animals)
    type_into(dialog.wanted.line, typed)
    assert first in shown(dialog)[:2]
    assert dialog.refusal.text() == ""
    QTest.keyClick(dialog.wanted.line, Qt.Key.Key_Return)
    assert len(dialog.chosen) == 1
    dialog.wanted.set_value(None)
    dialog.wanted.changed.emit()
    assert not any(" · " in one for one in shown(dialog))


def test_kind_and_animal_still_find_it(qtbot: QtBot, bench: Bench) -> None:
    dialog = opened(qtbot, bench, ("pork", "beef"))
    type_into(dialog.wanted.line, "roasts beef")
    assert len(shown(dialog)) > 10
    dialog.wanted.line.selectAll()
    type_into(dialog.wanted.line, "zzz")
    assert shown(dialog) == []
    assert "is called" in dialog.refusal.text()


@pytest.mark.timed
def test_each_key_is_answered_at_once_with_every_animal(qtbot: QtBot, bench: Bench) -> None:
    dialog = opened(qtbot, bench, tuple(species()))
    qtbot.waitUntil(lambda: not bench.work.busy())
    slowest = 0.0
    for letter in "delmonico":
        begun = time.perf_counter()
        type_into(dialog.wanted.line, letter)
        slowest = max(slowest, time.perf_counter() - begun)
    assert slowest * 1000 <= SLOT_MS


def test_the_name_it_was_found_by_has_room_behind_the_cuts_own(qtbot: QtBot, bench: Bench) -> None:
    """In Spanish "· Boston butt" was cut off, and so why the cut was there."""
    bench.words = Words("es", strict=True)
    dialog = opened(qtbot, bench, ("pork", "beef"))
    type_into(dialog.wanted.line, "boston")
    table = dialog.table
    longest = max(shown(dialog), key=table.fontMetrics().horizontalAdvance)
    assert longest.endswith("Boston butt")
    assert table.fontMetrics().horizontalAdvance(longest) < table.columnWidth(0) - 16
