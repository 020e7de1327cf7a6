"""Labels scanned at the wrap: the package is chosen to be voided, boxed, or found in its order."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.find_box import FindBox
from desktop.wrap.place import WrapPlace
from shared.marking.gs1 import FNC1, ElementString, package_elements
from shared.marking.serial import package_serial
from shared.shop.hand_overs import Boxed
from shared.shop.packages import PackageMade
from shared.shop.people import SignedOn
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_place import opened, weigh


@pytest.fixture
def place(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> WrapPlace:
    """Three packages of ground pork of the first order; a second order waits."""
    order_on_the_table(store, signed)
    order_on_the_table(store, signed)
    made = opened(qtbot, bench)
    made.lines.choose(2)
    for pounds in ("1", "1.02", "0.98"):
        weigh(made, pounds)
    qtbot.waitUntil(lambda: not bench.work.busy())
    return made


def kept(store: Store, order_id: int = 1) -> tuple[PackageMade, ...]:
    with store.read() as work:
        return work.packages.of_order(order_id)


def gs1(order: int, package: PackageMade) -> str:
    serial = f"{order}-{package.label_number}"
    found = package_elements(
        "98898765432106", package.net, date(2026, 3, 2), lot="1", serial=serial
    )
    assert isinstance(found, ElementString)
    return found.raw


def scan(line: QLineEdit, code: str) -> None:
    """As a scanner types: FNC1 is Ctrl and ]."""
    line.clear()
    for letter in code:
        if letter == FNC1:
            QTest.keyClick(line, Qt.Key.Key_BracketRight, Qt.KeyboardModifier.ControlModifier)
        else:
            QTest.keyClicks(line, letter)
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_a_scanned_package_is_the_one_made_void(
    place: WrapPlace, store: Store, messages: RecordedMessages
) -> None:
    middle = kept(store)[1]
    for code in (gs1(1, middle), package_serial(1, middle.label_number)):
        place.side.table.choose(0)
        scan(place.scan.field.line, code)
        chosen = place.side.table.chosen()
        assert isinstance(chosen, PackageMade)
        assert chosen.id == middle.id
        assert place.scan.field.is_empty()
    messages.answers = ["torn"]
    place.void_package()
    assert [one.void for one in kept(store)] == ["", "torn", ""]
    scan(place.scan.field.line, gs1(1, middle))
    assert "is void" in place.scan.field.complaint.text()


def test_a_package_of_another_order_brings_its_order(
    qtbot: QtBot, bench: Bench, place: WrapPlace, store: Store
) -> None:
    number = place.orders.value()
    middle = kept(store)[1]
    other = next(one.id for one in place.work.orders() if one.id != number)
    place.orders.set_value(other)
    place.refresh()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert place.wrapping is not None
    assert place.wrapping.order.id == other
    scan(place.scan.field.line, gs1(1, middle))
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert place.wrapping.order.id == number
    chosen = place.side.table.chosen()
    assert isinstance(chosen, PackageMade)
    assert chosen.id == middle.id


def test_only_what_is_scanned_goes_into_the_box(place: WrapPlace, store: Store) -> None:
    first, _, last = kept(store)
    place.show_boxes()
    dialog = place.boxes
    for one in (first, last):
        scan(dialog.scan.line, gs1(1, one))
    rows = dialog.loose.rows
    assert rows.data(rows.index(0, 1)) == "2 of 3 in"
    dialog.try_it()
    with store.read() as work:
        assert work.hand_overs.places(1) == {first.id: Boxed("1", ""), last.id: Boxed("1", "")}
    scan(dialog.scan.line, package_serial(2, 77))
    assert "order 2" in dialog.scan.complaint.text()
    dialog.reject()


def test_the_search_takes_a_scanned_label(qtbot: QtBot, store: Store, place: WrapPlace) -> None:
    def find(text: str) -> object:
        with store.read() as work:
            return work.search.find(text)

    box = FindBox(find)  # pyright: ignore[reportArgumentType]
    qtbot.addWidget(box)
    with qtbot.waitSignal(box.chosen) as heard:
        type_into(box, gs1(1, kept(store)[0]).split(FNC1)[0])
        QTest.keyClick(box, Qt.Key.Key_BracketRight, Qt.KeyboardModifier.ControlModifier)
        QTest.keyClicks(box, gs1(1, kept(store)[0]).split(FNC1)[1])
        QTest.keyClick(box, Qt.Key.Key_Return)
    assert heard.args is not None
    assert (heard.args[0].kind, heard.args[0].id) == ("order", 1)
