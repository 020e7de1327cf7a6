"""The window: places by key, the search box, who works here, and what it remembers."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QTableView, QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.main_window import MainWindow
from desktop.place_list import ENTRIES
from desktop.places import Place
from shared.shop.customers import Customer
from tests.desktop.audit import out_of_reading_order, spoken_name, tab_order, unnamed
from tests.desktop.typing_in import type_into

KEYS = [entry.key for entry in ENTRIES]


@pytest.fixture
def window(qtbot: QtBot, bench: Bench) -> MainWindow:
    made = MainWindow(bench)
    qtbot.addWidget(made)
    made.enter("counter")
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def test_every_place_is_made_and_entered_by_its_keys(window: MainWindow) -> None:
    keys = [Qt.Key.Key_F2, Qt.Key.Key_F3, Qt.Key.Key_F4, Qt.Key.Key_F5, Qt.Key.Key_F6]
    for key, function_key in reversed(list(zip(KEYS, keys, strict=True))):
        QTest.keyClick(window, function_key)
        assert window.place().key == key
        assert window.bar.places.buttons[key].isChecked()
    for number, key in enumerate(KEYS, start=1):
        digit = Qt.Key(Qt.Key.Key_0.value + number)
        QTest.keyClick(window, digit, Qt.KeyboardModifier.ControlModifier)
        assert window.place().key == key


def test_a_place_that_is_not_shown_does_not_get_the_keyboard(window: MainWindow) -> None:
    """What a worker reads for a place one has left asked for it: a space was pressed unseen."""
    left = window.place()
    window.enter("office")
    window.focus_finder()
    assert left.findChildren(QTableView)
    for one in (window.finder, window.place().first_focus()):
        one.setFocus()
        assert one.hasFocus()
        left.findChildren(QTableView)[0].setFocus()
        assert not one.hasFocus()
        QApplication.processEvents()
        assert one.hasFocus()


def test_the_keyboard_is_never_nobodys(window: MainWindow) -> None:
    """A field that was locked with what is around it left none: no key of the place worked."""
    around = QWidget(window.place())
    inside = QLineEdit(around)
    around.show()
    inside.setFocus()
    assert inside.hasFocus()
    around.setEnabled(False)
    QApplication.processEvents()
    assert QApplication.focusWidget() is window.place().first_focus()
    window.place().setEnabled(False)
    QApplication.processEvents()
    assert QApplication.focusWidget() is window.bar.places.buttons["counter"]
    window.place().setEnabled(True)


def test_the_title_names_the_place(window: MainWindow) -> None:
    window.enter("rail")
    assert window.windowTitle() == "Rail · Steelyard"


@pytest.mark.parametrize("key", KEYS)
def test_all_that_takes_the_keyboard_has_a_name(window: MainWindow, key: str) -> None:
    window.enter(key)
    assert unnamed(window) == []


def test_the_least_screen_leaves_a_place_its_room(window: MainWindow) -> None:
    window.resize(1366, 696)
    assert window.size().width() == 1366
    assert window.size().height() == 696
    assert window.place().width() == 1366
    assert window.place().height() >= 620


def test_a_place_that_holds_unsaved_work_is_not_left(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(window.place(), "may_leave", lambda: False)
    QTest.keyClick(window, Qt.Key.Key_F3)
    assert window.place().key == "counter"
    assert window.bar.places.buttons["counter"].isChecked()
    window.close()
    assert window.isVisible()
    monkeypatch.undo()


def test_what_one_place_changes_the_others_read_when_entered(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.enter("rail")
    window.enter("counter")
    read: list[str] = []
    for place in window.places.values():
        monkeypatch.setattr(place, "refresh", lambda key=place.key: read.append(key))
    window.enter("rail")
    assert read == []
    window.places["rail"].changed.emit()
    window.enter("counter")
    window.enter("rail")
    assert read == ["counter"]


def test_a_place_is_given_what_to_open(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    window.enter("rail")
    opened: list[Target] = []
    monkeypatch.setattr(window.places["rail"], "open", opened.append)
    window.enter("counter")
    target = Target("rail", "animal", 7)
    window.places["counter"].go.emit(target)
    assert window.place().key == "rail"
    assert opened == [target]


def test_a_sentence_of_a_place_stands_on_the_status_line(window: MainWindow) -> None:
    window.place().said.emit("Hog 114 weighed.")
    assert window.status.text() == "Hog 114 weighed."


def test_the_search_box_finds_opens_and_gives_the_keyboard_back(
    window: MainWindow, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        ann = work.customers.add(Customer(name="Ann Hill", phone="555-010-0123"))
        work.customers.add(Customer(name="Annika Berg", phone="555-010-0199"))
        work.commit()
    assert isinstance(ann, Customer)
    opened: list[Target] = []
    monkeypatch.setattr(window.place(), "open", opened.append)
    QTest.keyClick(window, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert QApplication.focusWidget() is window.finder
    type_into(window.finder, "0123")
    QTest.keyClick(window.finder, Qt.Key.Key_Return)
    assert opened == [Target("counter", "customer", ann.id, None)]
    assert window.finder.text() == ""
    assert not window.finder.list.isVisible()


def test_arrows_walk_through_what_was_found_and_escape_leaves(
    qtbot: QtBot, window: MainWindow, bench: Bench
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        for name in ("Ann Hill", "Annika Berg"):
            work.customers.add(Customer(name=name))
        work.commit()
    window.focus_finder()
    type_into(window.finder, "ann")
    qtbot.waitUntil(window.finder.list.isVisible)
    assert [found.title for found in window.finder.finds()] == ["Ann Hill", "Annika Berg"]
    assert window.finder.list.currentIndex().row() == 0
    QTest.keyClick(window.finder, Qt.Key.Key_Down)
    assert window.finder.list.currentIndex().row() == 1
    QTest.keyClick(window.finder, Qt.Key.Key_Escape)
    assert not window.finder.list.isVisible()
    assert QApplication.focusWidget() is not window.finder


def test_who_works_here_is_on_the_bar_and_said_to_a_screen_reader(window: MainWindow) -> None:
    assert window.person.text() == "Test"
    assert spoken_name(window.person) == "Who is working: Test"
    assert window.station.text() == "Bench"


def test_closing_remembers_place_and_geometry(window: MainWindow, bench: Bench) -> None:
    window.enter("wrap")
    window.close()
    assert bench.settings.now.place == "wrap"
    assert bench.settings.now.window
    window.restore("zz not hex")
    window.restore(bench.settings.now.window)


def test_every_place_has_a_page_of_help(window: MainWindow) -> None:
    asked: list[str] = []
    window.help_wanted.connect(asked.append)
    for key in KEYS:
        window.enter(key)
        QTest.keyClick(window, Qt.Key.Key_F1)
    assert asked == KEYS


def test_places_are_places(window: MainWindow) -> None:
    for key in KEYS:
        window.enter(key)
        place = window.place()
        assert isinstance(place, Place)
        assert place.key == key
        assert place.title()


def test_tab_goes_round_the_bar_in_reading_order(window: MainWindow) -> None:
    window.mark.setFocus()
    order = tab_order(window)
    on_bar = [window.mark, window.bar.places.buttons["counter"], window.finder, window.person]
    assert [widget for widget in order if widget in on_bar] == on_bar
    assert out_of_reading_order(order[: order.index(window.person) + 1], window) == []


def test_the_arrows_go_between_the_places_on_the_bar(window: MainWindow) -> None:
    button = window.bar.places.buttons["counter"]
    button.setFocus()
    QTest.keyClick(button, Qt.Key.Key_Right)
    assert window.place().key == "rail"


def test_names_written_nearly_so_stand_under_a_heading_that_is_stepped_over(
    qtbot: QtBot, window: MainWindow, bench: Bench
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        for name in ("Anna Johnson", "Bert Jonson"):
            work.customers.add(Customer(name=name))
        work.commit()
    window.focus_finder()
    type_into(window.finder, "jonson")
    qtbot.waitUntil(window.finder.list.isVisible)
    assert [(one.title, one.near) for one in window.finder.finds()] == [
        ("Bert Jonson", False),
        ("Anna Johnson", True),
    ]
    rows = [window.finder.list.model().index(at, 0).data() for at in range(3)]
    assert rows[1] == "Near"
    QTest.keyClick(window.finder, Qt.Key.Key_Down)
    assert window.finder.list.currentIndex().row() == 2
    QTest.keyClick(window.finder, Qt.Key.Key_Down)
    assert window.finder.list.currentIndex().row() == 0
    type_into(window.finder, "iversn")
    QTest.keyClick(window.finder, Qt.Key.Key_Return)
    assert window.finder.finds() == []
    assert window.finder.list.isVisible()
    assert window.finder.list.model().index(0, 0).data() == "Nothing found"
    QTest.keyClick(window.finder, Qt.Key.Key_Down)
    QTest.keyClick(window.finder, Qt.Key.Key_Return)
    assert not window.finder.list.currentIndex().isValid(), "nothing was found, so nothing opens"
    assert window.finder.text() == "jonsoniversn"
