"""Boxes at the wrap: closed with what lies loose, labels printed and printed again."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.wrap.boxes_dialog import BoxesDialog
from desktop.wrap.place import WrapPlace
from shared.shop.hand_overs import Boxed
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_one_stroke import Printed
from tests.desktop.wrap.test_place import opened, weigh
from tests.printing.rasterised import text_of


@pytest.fixture
def place(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> WrapPlace:
    """A ham and two packages of ground pork, weighed and lying loose."""
    order_on_the_table(store, signed)
    made = opened(qtbot, bench)
    weigh(made, "18.5")
    made.lines.choose(2)
    weigh(made, "1")
    weigh(made, "1.02")
    qtbot.waitUntil(lambda: not bench.work.busy())
    return made


def shown(place: WrapPlace) -> BoxesDialog:
    QTest.keyClick(place.lines, Qt.Key.Key_F11)
    assert place.boxes.isVisible()
    return place.boxes


def lying(store: Store) -> dict[int, Boxed]:
    with store.read() as work:
        return dict(work.hand_overs.places(1))


def test_a_box_is_closed_and_its_label_printed(
    qtbot: QtBot, bench: Bench, store: Store, place: WrapPlace, monkeypatch: pytest.MonkeyPatch
) -> None:
    printer = Printed(monkeypatch, bench)
    dialog = shown(place)
    assert unnamed(dialog) == []
    assert [one.name for one in dialog.loose.rows.rows()] == ["Whole ham, shank on", "Ground pork"]
    dialog.loose.choose(0)
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    dialog.loose.setFocus()
    QTest.keyClick(dialog.loose, Qt.Key.Key_Space)  # the ham doesn't fit
    dialog.place.set_value("Freezer 2")
    dialog.try_it()
    qtbot.waitUntil(lambda: bool(printer.sent))
    text = text_of(printer.sent[0])
    for told in ("NOT FOR SALE", "Box 1", "Anna Berg", "2 packages, 2.02", "Freezer 2"):
        assert told in text
    assert "ham" not in text
    assert set(lying(store).values()) == {Boxed("1", "Freezer 2")}
    assert len(lying(store)) == 2
    assert dialog.isVisible()  # for the next one
    assert dialog.box.text() == "2"
    assert dialog.place.text() == "Freezer 2"
    dialog.try_it()
    qtbot.waitUntil(lambda: len(printer.sent) == 2)
    assert "Whole ham" in text_of(printer.sent[1])
    dialog.try_it()
    assert "no package lies loose" in dialog.refusal.text()
    dialog.reject()


def test_a_printer_that_is_gone_leaves_the_box_closed_and_its_label_at_hand(
    qtbot: QtBot, bench: Bench, store: Store, place: WrapPlace, monkeypatch: pytest.MonkeyPatch
) -> None:
    Printed(monkeypatch, bench, gone=True)
    dialog = shown(place)
    dialog.try_it()
    qtbot.waitUntil(dialog.told.isVisible)
    assert "no label was printed; F9" in dialog.told.text()
    assert len(lying(store)) == 3
    dialog.boxes.choose(0)
    dialog.show_label()
    qtbot.waitUntil(lambda: dialog.preview is not None)
    assert dialog.preview is not None
    dialog.preview.close()
    dialog.reject()


def test_one_name_stands_in_one_place(bench: Bench, store: Store, place: WrapPlace) -> None:
    dialog = shown(place)
    dialog.loose.choose(0)
    dialog.toggle()
    dialog.place.set_value("Freezer 2")
    dialog.try_it()
    dialog.box.set_value("1")
    dialog.place.set_value("Locker 9")
    dialog.try_it()
    assert "stands elsewhere" in dialog.refusal.text()
    assert len(lying(store)) == 2
    dialog.place.set_value("Freezer 2")
    dialog.try_it()
    assert len(lying(store)) == 3
    dialog.reject()


def test_esc_asks_only_where_something_typed_is_not_packed(
    bench: Bench, store: Store, place: WrapPlace
) -> None:
    dialog = shown(place)
    dialog.place.line.setFocus()
    type_into(dialog.place.line, "Freezer 2")
    dialog.loose.choose(0)
    dialog.toggle()
    dialog.reject()
    assert dialog.isVisible(), "typed and not packed yet"
    assert "not kept" in dialog.refusal.text()
    dialog.try_it()
    assert len(lying(store)) == 2
    dialog.loose.choose(0)
    dialog.toggle()
    dialog.reject()
    assert dialog.isVisible(), "told to stay out, which is lost"
    dialog.toggle()
    dialog.reject()
    assert not dialog.isVisible(), "all that was typed is packed"
