"""Taking a cut order: what can't be had is said in words, ways out are taken by one key."""

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QFocusEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.place import CounterPlace
from desktop.panels.heading import Words
from shared.cutting.order import Amount, Choice
from shared.shop.lots import Lot
from shared.units import LENGTH_UNITS_PER_INCH
from tests.db.examples import lot_of_halves, lot_of_one
from tests.desktop.counter.opened_counter import desk_of, focused, pressed, typed, with_order

CTRL = Qt.KeyboardModifier.ControlModifier
ALT = Qt.KeyboardModifier.AltModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


def halves(bench: Bench) -> Lot:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        work.commit()
    return lot


def whole_hog(bench: Bench) -> Lot:
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_one(work)
        work.commit()
    return lot


def ask(qtbot: QtBot, place: CounterPlace, cut: str, amount: str, count: str) -> None:
    """On the table: type the cut's name, choose the amount, Enter; all by keyboard."""
    QTest.keyClicks(place.order.table, cut[0])
    QApplication.processEvents()
    dialog = place.order.dialog
    assert dialog is not None
    qtbot.waitUntil(dialog.isActiveWindow)
    assert focused() in (dialog.cut.line, dialog.cut.box)
    typed(cut[1:])
    typed(amount)
    if count:
        typed(count, Qt.Key.Key_Return)
    else:
        pressed(Qt.Key.Key_Return)
    assert not dialog.isVisible(), dialog.grid.problems()
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)


def test_the_letter_that_opens_the_line_stays_before_what_is_typed_on(
    qtbot: QtBot, bench: Bench
) -> None:
    """The dialog selected that letter as it opened, and the second one replaced it."""
    place = with_order(qtbot, bench, halves(bench))
    QTest.keyClicks(place.order.table, "w")
    QApplication.processEvents()
    dialog = place.order.dialog
    assert dialog is not None
    qtbot.waitUntil(dialog.isActiveWindow)
    for widget in (dialog.cut.box, dialog.cut.line):
        focus = QFocusEvent(QEvent.Type.FocusIn, Qt.FocusReason.TabFocusReason)
        QApplication.sendEvent(widget, focus)  # as a dialog does that opens before it is active
    QTest.keyClicks(focused(), "hole pic")
    assert dialog.cut.text() == "whole pic"
    pressed(Qt.Key.Key_Tab)
    pressed(Qt.Key.Key_Backtab)
    assert dialog.cut.line.selectedText() == dialog.cut.text() != ""


def test_a_whole_ham_and_ham_steaks_of_half_a_hog_are_refused_by_name(
    qtbot: QtBot, bench: Bench
) -> None:
    place = with_order(qtbot, bench, halves(bench))
    ask(qtbot, place, "whole ham, shank on", "so many pieces", "1")
    assert desk_of(place).answer.verdict != "cant"
    ask(qtbot, place, "ham steak", "so many slices", "6")
    assert [one.cut for one in desk_of(place).order.choices] == ["whole_ham", "ham_steak"]
    assert desk_of(place).answer.verdict == "cant"
    said = place.order.panel.spoken()[0].replace("\u00a0", " ")
    assert "ham" in said
    assert "6 ham steaks" in said
    assert "4 13/16" in said, "what 6 steaks of 3/4 in with 1/16 in kerf need"


def test_a_way_out_is_taken_by_one_key(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    steaks = Choice(
        0, 1, "ham_steak", Amount("slices", 6), thickness=LENGTH_UNITS_PER_INCH * 3 // 4
    )
    desk_of(place).add([Choice(0, 1, "whole_ham", Amount("pieces", 1)), steaks])
    place.order.show_again()
    qtbot.waitUntil(lambda: bool(place.order.panel.remedies), timeout=5_000)
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)
    place.order.table.setFocus()
    pressed(Qt.Key.Key_1, ALT)
    assert desk_of(place).answer.conflicts == ()
    assert desk_of(place).order.choices != ()


def test_the_ways_out_stand_below_their_conflict_not_below_all_of_them(
    qtbot: QtBot, bench: Bench
) -> None:
    place = with_order(qtbot, bench, halves(bench))
    both = [("whole_ham", 1), ("ham_steak", 6), ("bacon", 0), ("fresh_side", 0)]
    desk_of(place).add(
        [Choice(0, 1, cut, Amount("pieces" if n == 1 else "slices", n)) for cut, n in both[:2]]
        + [Choice(0, 1, cut, Amount("all")) for cut, _ in both[2:]]
    )
    place.order.show_again()
    assert len(desk_of(place).answer.conflicts) == 2
    qtbot.waitUntil(lambda: bool(place.order.panel.remedies), timeout=5_000)
    layout = place.order.panel._list  # the order on the screen, top to bottom
    top = [item.widget() for at in range(3) if (item := layout.itemAt(at)) is not None]
    assert isinstance(top[0], Words)
    assert top[0].property("role") == "contested"
    assert isinstance(top[1], Words)
    assert top[1].text().startswith("What would work")
    assert top[2] is not None
    assert isinstance(top[2].findChild(QPushButton), QPushButton)


def test_the_way_out_of_a_line_that_stands_twice_is_said_once(qtbot: QtBot, bench: Bench) -> None:
    """Either of two hams of one leg may go: the same sentence stood under two numbers."""
    place = with_order(qtbot, bench, halves(bench))
    desk_of(place).add([Choice(0, 1, "whole_ham", Amount("pieces", 1)) for _ in range(2)])
    place.order.show_again()
    panel = place.order.panel
    qtbot.waitUntil(lambda: bool(panel.remedies), timeout=5_000)
    said = [one.accessibleName() for one in panel.findChildren(QPushButton) if one.text().isdigit()]
    assert len(said) == len(set(said)) == len(panel.remedies)
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)
    place.order.table.setFocus()
    pressed(Qt.Key.Key_1, ALT)
    assert desk_of(place).answer.conflicts == ()
    assert sum(one.cut == "whole_ham" for one in desk_of(place).order.choices) == 1


def test_a_whole_hog_with_both_plans_one_leg_each(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, whole_hog(bench))
    desk = desk_of(place)
    desk.add(
        [
            Choice(0, 1, "whole_ham", Amount("pieces", 1)),
            Choice(0, 1, "ham_steak", Amount("slices", 6)),
        ]
    )
    assert desk.answer.verdict != "cant"
    sides = {line.cut: line.side for line in desk.answer.lines}
    assert set(sides) == {"whole_ham", "ham_steak"}
    assert {sides["whole_ham"], sides["ham_steak"]} == {1, 2}


def test_the_usual_fills_what_is_open_and_is_taken_back_at_once(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    assert desk_of(place).open_parts()
    pressed(Qt.Key.Key_F9)
    filled = [one.cut for one in desk_of(place).order.choices]
    assert desk_of(place).open_parts() == ()
    assert {"bacon", "centre_chop", "ground_pork", "short_shank_ham"} <= set(filled)
    pressed(Qt.Key.Key_Z, CTRL)
    assert desk_of(place).order.choices == ()
    pressed(Qt.Key.Key_Z, CTRL | SHIFT)
    assert [one.cut for one in desk_of(place).order.choices] == filled


def test_the_usual_leaves_what_the_owner_chose(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk_of(place).add([Choice(0, 1, "ham_steak", Amount("slices", 4))])
    place.order.show_again()
    pressed(Qt.Key.Key_F9)
    assert desk_of(place).order.choices[0].amount == Amount("slices", 4)
    assert desk_of(place).answer.conflicts == ()
    assert desk_of(place).open_parts() == ()


def test_up_and_down_unfold_the_primal_they_reach(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    pressed(Qt.Key.Key_F9)
    table = place.order.table
    loin = desk_of(place).catalogue.primals.index("loin")
    for _ in range(40):
        if table.unfolded == "loin":
            break
        pressed(Qt.Key.Key_Down)
    assert table.unfolded == "loin"
    shown = [row for row in table.rows.rows() if row.line]
    assert {row.primal for row in shown} == {"loin"}
    assert len(shown) == 3, "country ribs, chops and sirloin roast"
    assert table.rows.row(loin).primal == "loin"


def test_del_takes_a_line_off_and_enter_changes_it(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    desk_of(place).add([Choice(0, 1, "ham_steak", Amount("slices", 4))])
    (line,) = desk_of(place).order.choices
    place.order.show_again(line.line)
    pressed(Qt.Key.Key_Return)
    dialog = place.order.dialog
    assert dialog is not None
    dialog.count.set_text("5")
    dialog.thickness.set_text("1/8")
    dialog.try_it()
    assert dialog.isVisible()
    assert "thicker" in dialog.thickness.problem()
    dialog.thickness.set_text("1 in")
    dialog.try_it()
    (line,) = desk_of(place).order.choices
    assert line.amount == Amount("slices", 5)
    assert line.thickness == LENGTH_UNITS_PER_INCH
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)
    place.order.table.setFocus()
    assert focused() is place.order.table
    pressed(Qt.Key.Key_Delete)
    assert desk_of(place).order.choices == ()


def test_the_other_owner_is_a_key_away(qtbot: QtBot, bench: Bench) -> None:
    place = with_order(qtbot, bench, halves(bench))
    assert desk_of(place).order.owner == "Anna Berg"
    pressed(Qt.Key.Key_Right, ALT)
    assert desk_of(place).order.owner == "Bert Iversen"
