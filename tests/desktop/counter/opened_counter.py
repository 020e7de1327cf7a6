"""A counter on the screen, and what a person does there, for the tests of its parts."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.order_desk import OrderDesk
from desktop.counter.place import CounterPlace
from shared.shop.lots import Lot
from tests.desktop.typing_in import type_into


def opened(qtbot: QtBot, bench: Bench) -> CounterPlace:
    """The place as the window enters it."""
    place = CounterPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.refresh()
    place.show()
    place.activateWindow()
    qtbot.waitUntil(place.isActiveWindow)
    place.first_focus().setFocus()
    listed(qtbot, bench)
    return place


def listed(qtbot: QtBot, bench: Bench) -> None:
    """Wait for the list of orders, which a worker reads."""
    qtbot.waitUntil(lambda: not bench.work.busy())


def with_order(qtbot: QtBot, bench: Bench, lot: Lot, share: int = 1) -> CounterPlace:
    """The place with an order of a lot open."""
    place = opened(qtbot, bench)
    order_id = next(one.order_id for one in lot.shares if one.number == share)
    place.show_order(lot.id, order_id)
    return place


def desk_of(place: CounterPlace) -> OrderDesk:
    """The order that lies on the counter."""
    assert place.order.desk is not None
    return place.order.desk


def focused() -> QWidget:
    """What has the keyboard."""
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


def typed(text: str, key: Qt.Key = Qt.Key.Key_Tab) -> None:
    """Type into what has the keyboard, then a key."""
    type_into(focused(), text)
    QTest.keyClick(focused(), key)


def pressed(key: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    """A key to what has the keyboard."""
    QTest.keyClick(focused(), key, held)
