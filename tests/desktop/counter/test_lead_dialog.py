"""An owner is cut as another of the same side says: asked by a dialog, shown, taken back."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.history_dialog import history
from desktop.counter.lead_dialog import LeadDialog
from desktop.counter.order_rows import rows_of
from desktop.counter.place import CounterPlace
from desktop.counter.release import why_not
from printing import confirmation
from shared.cutting.order import Amount, Choice
from shared.shop.lots import Lot
from tests.db.examples import arrived, line, moved, order_of, settled, weighed
from tests.db.repositories.test_led_orders import divided
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import desk_of, with_order
from tests.printing.pages import pages

CTRL = Qt.KeyboardModifier.ControlModifier
STEAKS = Choice(0, 0, "ribeye_steak", Amount("all"))


def beef(bench: Bench) -> Lot:
    """Anna (share 1) and Bert (share 2) have asked for their rib as steaks."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = divided(work)
        animal = arrived(work, lot)
        moved(work, animal.id, "weighed", "passed")
        weighed(work, animal, "700")
        for share in (1, 2):
            line(work, order_of(work, lot, share), STEAKS)
        work.commit()
    return lot


def asked(qtbot: QtBot, place: CounterPlace) -> LeadDialog:
    """Ctrl+G on the table."""
    QTest.keyClick(place.order.table, Qt.Key.Key_G, CTRL)
    dialog = place.order.dialogs.shown
    assert isinstance(dialog, LeadDialog)
    qtbot.waitUntil(dialog.isVisible)
    return dialog


def led(qtbot: QtBot, bench: Bench) -> CounterPlace:
    place = with_order(qtbot, bench, beef(bench), share=2)
    dialog = asked(qtbot, place)
    dialog.says.set_value(1)
    dialog.try_it()
    return place


def test_it_is_cut_as_another_says_and_ctrl_z_brings_its_lines_back(
    qtbot: QtBot, bench: Bench
) -> None:
    place = with_order(qtbot, bench, beef(bench), share=2)
    desk = desk_of(place)
    mine = desk.order.choices
    dialog = asked(qtbot, place)
    assert unnamed(dialog) == []
    assert "(1)" in dialog.lead.text()
    dialog.says.set_value(1)
    dialog.try_it()
    assert (desk.leader, desk.order.choices) == (1, ())
    assert "cut as Anna Berg says" in place.order.heading.text()
    told = next(one for one in history(bench, desk) if one.what == "how it is cut")
    assert (told.was, told.became) == ("on its own", "as share 1 says")
    place.order.undo()
    assert (desk.leader, desk.order.choices) == (None, mine)
    place.order.redo()
    assert (desk.leader, desk.order.choices) == (1, ())
    dialog = asked(qtbot, place)
    assert dialog.says.value() == 1
    dialog.says.set_value(0)
    dialog.try_it()
    assert desk.leader is None


def test_it_shows_the_leaders_lines_with_its_own_part_and_changes_none(
    qtbot: QtBot, bench: Bench
) -> None:
    place = led(qtbot, bench)
    desk = desk_of(place)
    theirs = desk.says.choices[0]
    whole, mine = desk.forecast.line(theirs.line), desk.part(theirs.line)
    assert whole is not None
    assert mine is not None
    assert whole.packages.mid > 2
    assert 0 < mine.packages.mid < whole.packages.mid
    leaders = desk.dealt.of_share(1)[0]
    assert leaders.packages.mid + mine.packages.mid == whole.packages.mid
    assert leaders.finished.mid + mine.finished.mid == whole.finished.mid
    shown = next(row for row in rows_of(desk, "rib", bench.words) if row.line)
    assert (shown.line, shown.offer) == (theirs.line, None)
    place.order.edit(shown)
    assert place.order.refusal.text().startswith("It is cut as another owner says")
    assert place.order.dialog is None
    place.order.remove(theirs.line)
    assert desk.says.choices == (theirs,)
    QTest.keyClicks(place.order.table, "r")
    QApplication.processEvents()
    assert place.order.dialog is None


def test_his_confirmation_says_that_ones_lines(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    made: list[bytes] = []

    place = led(qtbot, bench)
    real = confirmation.confirmation

    def watched(*args: object, **named: object) -> bytes:
        made.append(real(*args, **named))  # pyright: ignore
        return made[-1]

    monkeypatch.setattr(confirmation, "confirmation", watched)
    QTest.keyClick(place.order.table, Qt.Key.Key_P, CTRL)
    qtbot.waitUntil(lambda: QApplication.activeModalWidget() is not None)
    paper = QApplication.activeModalWidget()
    assert paper is not None
    paper.close()
    text = " ".join(pages(made[0]))
    assert "Bert Iversen" in text
    assert "ribeye steak" in text


def test_it_goes_to_the_block_after_the_one_who_says(qtbot: QtBot, bench: Bench) -> None:
    place = led(qtbot, bench)
    desk = desk_of(place)
    assert why_not(desk, bench.words, settling=True) == ""
    assert desk.move("settled") is None
    assert why_not(desk, bench.words) == "Anna Berg says how it is cut: settle that."
    with bench.store.work(bench.person, bench.station) as work:
        settled(work, desk.says.id)
        work.commit()
    desk.load()
    assert not why_not(desk, bench.words).startswith("Anna Berg says")


def test_a_leader_and_an_owner_of_a_whole_side_are_refused(qtbot: QtBot, bench: Bench) -> None:
    place = led(qtbot, bench)
    desk = desk_of(place)
    desk.show(order_id(desk.lot, 3))
    dialog = asked(qtbot, place)
    dialog.says.set_value(2)
    dialog.try_it()
    assert dialog.refusal.text().startswith("That owner's order is cut as another says")
    dialog.reject()
    desk.show(order_id(desk.lot, 4))
    QTest.keyClick(place.order.table, Qt.Key.Key_G, CTRL)
    assert place.order.refusal.text().startswith("No other owner divides")


def order_id(lot: Lot, share: int) -> int:
    return next(one.order_id for one in lot.shares if one.number == share)
