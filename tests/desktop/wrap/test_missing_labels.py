"""Packages whose label was never printed: marked, printed by one key under the same numbers."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.wrap.place import WrapPlace
from shared.shop.packages import NewPackage, without_label
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_one_stroke import Printed, kept
from tests.desktop.wrap.test_place import opened, weigh
from tests.printing.rasterised import pages_of


def shown(place: WrapPlace) -> list[str]:
    model = place.side.table.rows
    return [str(model.data(model.index(at, 1))) for at in range(model.rowCount())]


def print_missing(place: WrapPlace) -> None:
    QTest.keyClick(place.side.table, Qt.Key.Key_F9, Qt.KeyboardModifier.ControlModifier)


def test_what_was_stored_before_the_program_was_killed_is_printed_by_one_key(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    order = order_on_the_table(store, signed)
    with store.work(signed.person, signed.station) as work:  # kept, and never printed
        for pounds in (101, 102):
            new = NewPackage(order.id, 3, "ground_pork", "Ground pork", Weight(pounds, "lb", -2))
            work.packages.add(new)
        work.commit()
    printer = Printed(monkeypatch, bench)
    place = opened(qtbot, bench)
    assert shown(place) == ["no label yet: Ground pork"] * 2
    assert place.side.missing.isVisible()
    assert "2" in place.side.missing.text()
    print_missing(place)
    print_missing(place)  # impatient: they are on their way
    qtbot.waitUntil(lambda: not bench.work.busy() and not place.side.missing.isVisible())
    (pdf,) = printer.sent
    pages = pages_of(pdf)
    assert [f"package {at + 1}" in page for at, page in enumerate(pages)] == [True, True]
    assert shown(place) == ["Ground pork"] * 2
    assert without_label(kept(store, order.id)) == ()
    print_missing(place)
    assert place.side.said.text() == "No label is left to be printed."


def test_a_printer_gone_for_a_while_leaves_its_packages_marked(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
    messages: RecordedMessages,
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    printer = Printed(monkeypatch, bench)
    place.lines.choose(2)
    said: list[str] = []
    place.work.said.connect(said.append)
    for gone, pounds in ((False, "1.01"), (True, "1.02"), (True, "1.03"), (False, "1.04")):
        printer.gone = gone
        before = len(said)
        weigh(place, pounds)
        qtbot.waitUntil(lambda before=before: not bench.work.busy() and len(said) > before)
    missing = without_label(kept(store, order.id))
    assert [one.label_number for one in missing] == [2, 3]
    assert sorted(shown(place)) == ["Ground pork"] * 2 + ["no label yet: Ground pork"] * 2
    printer.gone = True
    print_missing(place)
    qtbot.waitUntil(lambda: "still without" in said[-1])
    assert place.side.missing.isVisible()
    place.said.connect(said.append)
    messages.answers = ["the ham and the bacon go with the owner's brother"]
    place.mark_ready()
    assert said[-1].endswith("Packages of order 1 without a label yet: 2.")


def test_what_has_no_label_printer_is_shown_and_marked_once_it_is_printed(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, monkeypatch: pytest.MonkeyPatch
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    weigh(place, "1.01")
    assert place.side.missing.isVisible()
    printer = Printed(monkeypatch, bench)
    monkeypatch.setattr(bench.printers, "usual", lambda _kind: "")
    print_missing(place)
    qtbot.waitUntil(lambda: place.work.preview is not None)
    preview = place.work.preview
    assert preview is not None
    preview.printer.set_value("Roll")
    preview.print_it()
    qtbot.waitUntil(lambda: not place.side.missing.isVisible())
    assert len(printer.sent) == 1
    assert without_label(kept(store, order.id)) == ()
