"""The block by keyboard: open, read the sheet, start, tick every line, finish."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.cutting import Step
from desktop.block.place import BlockPlace
from desktop.block.step_view import BoxedWords, StepView
from desktop.look import theme
from desktop.look.space import column
from desktop.look.theme import Theme
from shared.carcass.carcass import Gone
from shared.shop.states import AnimalState, OrderState
from tests.db import examples
from tests.desktop.audit import unnamed
from tests.desktop.block.hog import PDF, hanging, release, two_hogs
from tests.desktop.recorded_messages import RecordedMessages


@pytest.fixture
def block(qtbot: QtBot, bench: Bench) -> BlockPlace:
    hanging(bench)
    return shown(qtbot, bench)


def shown(qtbot: QtBot, bench: Bench) -> BlockPlace:
    place = BlockPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    qtbot.waitExposed(place)
    place.activateWindow()
    place.first_focus().setFocus()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is place.first_focus())
    return place


def press(key: Qt.Key = Qt.Key.Key_Return) -> None:
    focused = QApplication.focusWidget()
    assert focused is not None
    QTest.keyClick(focused, key)


def states(bench: Bench) -> tuple[AnimalState, list[OrderState]]:
    with bench.store.read() as work:
        animal = work.animals.get(1)
        assert animal is not None
        return animal.state, [one.state for one in work.orders.of_lot(1)]


def begin(block: BlockPlace) -> None:
    """Open the carcass, read its sheet if it is new, start."""
    press()
    if block.view.unread():
        press(Qt.Key.Key_Space)
    press(Qt.Key.Key_Space)


def step(block: BlockPlace) -> Step:
    cutting = block.view.cutting
    assert cutting is not None
    return cutting.steps[block.view.at - 1]


def test_a_carcass_is_cut_by_keyboard(block: BlockPlace, bench: Bench) -> None:
    press()
    assert block.view.main.text() == "I have &read sheet 1"
    press(Qt.Key.Key_Space)
    with bench.store.read() as work:
        assert [one.acknowledged for one in work.orders.of_lot(1)] == [1, 1]
    assert block.view.main.text() == "&Start cutting"
    press(Qt.Key.Key_Space)
    assert states(bench)[0] == "on_block"
    cutting = block.view.cutting
    assert cutting is not None
    for at in range(1, len(cutting.steps) + 1):
        assert block.view.at == at
        for _ in cutting.steps[at - 1].lines:
            press()
        press(Qt.Key.Key_Space)
    assert states(bench) == ("cut", ["cut", "cut"])
    with bench.store.read() as work:
        assert all(one.made for each in work.orders.of_lot(1) for one in each.choices)
    assert block.table.rows.rowCount() == 0


def test_steps_go_by_side_in_cutting_order(block: BlockPlace) -> None:
    begin(block)
    cutting = block.view.cutting
    assert cutting is not None
    primals = [(one.side, one.primal) for one in cutting.steps if one.primal]
    assert primals == [(1, "ham"), (1, "loin"), (2, "ham"), (2, "loin")]


def test_what_differs_is_large_in_a_box_and_notes_are_shown(block: BlockPlace) -> None:
    begin(block)
    assert block.view.view.rows[0].tick.height() >= 64
    press(Qt.Key.Key_PageDown)
    chops = block.view.view.rows[0]
    assert chops.differs
    assert "1¼" in chops.large.text()
    press(Qt.Key.Key_PageDown)
    steaks = block.view.view.rows[0]
    assert steaks.note.text() == "no salt on these"
    assert steaks.large.text().startswith("4 ")
    assert "Bert Iversen" in steaks.small.text()


def test_a_tick_is_kept_and_taken_back(block: BlockPlace, bench: Bench) -> None:
    begin(block)
    line = step(block).lines[0][0][2]

    def made() -> bool:
        with bench.store.read() as work:
            return next(
                one.made
                for each in work.orders.of_lot(1)
                for one in each.choices
                if one.line == line
            )

    tick = block.view.view.rows[0].tick
    tick.click()
    assert made()
    tick.click()
    assert not made()


def test_finishing_with_lines_not_ticked_asks(
    block: BlockPlace, bench: Bench, messages: RecordedMessages
) -> None:
    begin(block)
    cutting = block.view.cutting
    assert cutting is not None
    messages.answers = [False, True]
    for _ in cutting.steps:
        press(Qt.Key.Key_PageDown)
    assert states(bench)[0] == "on_block"
    press(Qt.Key.Key_PageDown)
    assert len(messages.asked) == 2
    assert states(bench) == ("cut", ["cut", "cut"])
    assert block.table.rows.rowCount() == 0
    assert QApplication.focusWidget() is block  # not whatever comes next in the window


def test_after_the_last_step_the_keyboard_is_on_the_list(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    two_hogs(bench)
    block = shown(qtbot, bench)
    begin(block)
    cutting = block.view.cutting
    assert cutting is not None
    messages.answers = [True]
    for _ in range(len(cutting.steps) + 1):
        press(Qt.Key.Key_PageDown)
        if messages.asked:
            break
    assert block.table.rows.rowCount() == 1
    assert QApplication.focusWidget() is block.table


def test_a_new_sheet_is_read_before_the_knife_goes_on(block: BlockPlace, bench: Bench) -> None:
    begin(block)
    with bench.store.work(bench.person, bench.station) as work:
        lot = work.lots.get(1)
        assert lot is not None
        release(work, lot, 1, 2)
        work.commit()
    block.refresh()
    assert block.view.at == 0
    assert block.view.main.text() == "I have &read sheet 2"
    press(Qt.Key.Key_PageDown)
    with bench.store.read() as work:
        assert [one.acknowledged for one in work.orders.of_lot(1)] == [2, 2]
    assert block.view.at == 0


def test_cautions_come_first(qtbot: QtBot, bench: Bench) -> None:
    hanging(bench, 1)
    with bench.store.work(bench.person, bench.station) as work:
        work.animals.record_loss(1, Gone("jowl", 2, None, "abscess"))
        work.commit()
    block = shown(qtbot, bench)
    press()
    said = block.view.view.sentences()
    assert "Gone: jowl, side 2, all of it. Abscess" in said
    assert "Not released: Bert Iversen. Leave that part whole." in said
    boxed = [one.text() for one in block.view.view.findChildren(BoxedWords)]
    assert boxed == said[: len(boxed)]  # above the rest, and not by colour alone
    assert {"Gone: jowl, side 2, all of it. Abscess", *said[1:2]} <= set(boxed) < set(said)
    cutting = block.view.cutting
    assert cutting is not None
    assert {line.share for one in cutting.steps for _, line in one.lines} == {1}


def test_only_the_released_order_becomes_cut(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    hanging(bench, 1)
    block = shown(qtbot, bench)
    begin(block)
    cutting = block.view.cutting
    assert cutting is not None
    messages.answers = [True]
    for _ in cutting.steps:
        press(Qt.Key.Key_PageDown)
    assert states(bench) == ("cut", ["cut", "open"])


def test_nothing_stands_in_the_list_before_it_is_released(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_one(work)
        examples.weighed(work, examples.arrived(work, lot), "205")
        examples.moved(work, 1, "passed", "hanging")
        work.commit()
    block = shown(qtbot, bench)
    assert block.table.rows.rowCount() == 0
    assert block.empty.isVisible()


def test_the_sheet_is_shown_as_it_was_released(block: BlockPlace) -> None:
    press()
    QTest.keyClick(block.view, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    preview = block.preview
    assert preview is not None
    assert preview.pdf == PDF
    assert preview.windowTitle() == "Block sheet 1, lot 1"


def test_an_order_of_two_carcasses_is_cut_with_the_last(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    two_hogs(bench)
    block = shown(qtbot, bench)
    for done in ("released", "cut"):
        begin(block)
        cutting = block.view.cutting
        assert cutting is not None
        for each in cutting.steps:
            for _ in each.lines:
                press()
            press(Qt.Key.Key_Space)
        assert states(bench)[1] == [done]
        with bench.store.read() as work:
            made = [one.made for one in work.orders.of_lot(1)[0].choices]
        assert made == [done == "cut"]
    assert messages.asked == []


def test_buttons_are_large_and_everything_has_a_name(block: BlockPlace) -> None:
    begin(block)
    assert block.view.back.height() >= 64
    assert block.view.main.height() >= 64
    assert unnamed(block) == []


def test_a_half_finished_line_is_still_ticked_after_a_restart(
    qtbot: QtBot, block: BlockPlace, bench: Bench
) -> None:
    begin(block)
    block.view.view.rows[0].tick.click()
    with bench.store.read() as work:
        assert len(work.block.ticks(1)) == 1
    again = shown(qtbot, bench)
    again.show_carcass(1, 1)
    assert again.view.view.rows[0].tick.isChecked()
    again.view.view.rows[0].tick.click()
    with bench.store.read() as work:
        assert work.block.ticks(1) == frozenset()
        assert not any(one.changed_since_sheet for one in work.orders.of_lot(1))


def test_a_change_at_the_counter_shows_at_once_and_is_read_before_going_on(
    block: BlockPlace, bench: Bench
) -> None:
    begin(block)
    at = block.view.at
    with bench.store.work(bench.person, bench.station) as work:
        order = work.orders.of_lot(1)[1]
        ham = next(one for one in order.choices if one.cut == "ham_steak")
        work.orders.change_line(order.id, replace(ham, note="rind off"))
        work.commit()
    block.look_again()
    said = " ".join(block.view.view.sentences())
    assert "rind off" in said
    assert block.view.main.text() == "I have &read the changes"
    assert not block.view.view.rows
    block.view.main.click()
    assert block.view.at == at
    assert block.view.view.rows
    block.look_again()
    assert block.view.view.sentences() == []


def test_a_long_note_is_read_to_its_end_before_it_counts_as_read(
    qtbot: QtBot, bench: Bench
) -> None:
    lot = hanging(bench)
    with bench.store.work(bench.person, bench.station) as work:
        order = examples.order_of(work, lot)
        note = "Ring me before the ribs. " * 40
        work.orders.save_note(order.id, note, None, version=order.version)
        work.commit()
    place = shown(qtbot, bench)
    press()
    qtbot.waitUntil(place.view.view.more)
    assert place.view.main.text() == "&Read on"
    for _ in range(40):
        if place.view.view.more():
            assert place.view.unread()
            place.view.main.click()
    assert place.view.main.text() == "I have &read sheet 1"
    place.view.main.click()
    assert not place.view.unread()


def test_what_the_table_foretold_is_kept_when_the_carcass_is_cut(
    block: BlockPlace, bench: Bench, messages: RecordedMessages
) -> None:
    begin(block)
    cutting = block.view.cutting
    assert cutting is not None
    messages.answers.append(True)  # nothing is ticked, and it is cut all the same
    block.view.go(len(cutting.steps))
    block.view.main.click()
    assert states(bench)[0] == "cut"
    with bench.store.work(bench.person, bench.station) as work:
        for order in work.orders.of_lot(1):
            work.orders.move(order.id, "ready", version=order.version)
            for one in order.choices:
                examples.package(work, order, one, "10")
        made = {one.code for one in work.yields.made("pork")}
    assert made == {"whole_ham", "ham_steak", "centre_chop"}


def test_owners_are_read_in_large_type_on_a_small_screen(
    qtbot: QtBot, bench: Bench, qapp: QApplication, worn: Theme
) -> None:
    hanging(bench)
    theme.apply(qapp, Theme(worn.roles, 125, worn.family))
    place = shown(qtbot, bench)
    place.resize(1366, 620)
    QApplication.processEvents()
    table = place.table
    keys = [one.key for one in table.rows.columns]
    wide = {key: table.columnWidth(at) for at, key in enumerate(keys)}
    assert sum(wide.values()) <= table.viewport().width()
    assert wide["owners"] >= 250


def test_long_cautions_end_where_they_end(qtbot: QtBot) -> None:
    """Heights reckoned for a narrower page once left screens with nothing on them to read."""
    view = StepView()
    qtbot.addWidget(view)
    view.resize(1306, 438)
    view.show()
    view.show_sentences([("contested", ["Side 1, chuck backbone can't be kept. " * 6] * 8)])
    page = view.widget()
    assert page is not None
    qtbot.waitUntil(lambda: page.width() > 1000 and page.height() > 438)
    assert page.height() == page.heightForWidth(page.width())


def test_the_keyboard_is_not_taken_from_who_types_elsewhere(
    qtbot: QtBot, bench: Bench, block: BlockPlace
) -> None:
    """The block looks now and then for changes; a space typed in the bar ticked a line."""
    begin(block)
    focused = QApplication.focusWidget()
    assert focused is not None
    assert block.isAncestorOf(focused)
    window = QWidget()
    qtbot.addWidget(window)
    elsewhere = QLineEdit(window)
    down = column(window)
    down.addWidget(elsewhere)
    down.addWidget(block)
    window.show()
    window.activateWindow()
    elsewhere.setFocus()
    qtbot.waitUntil(elsewhere.hasFocus)
    block.retranslate()
    block.refresh()
    assert elsewhere.hasFocus()
    block.hide()
    block.retranslate()
    assert elsewhere.hasFocus()
    block.setParent(None)
