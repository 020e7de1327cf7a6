"""Labels on their way to the printer when the program ended: nobody knows, so it is asked."""

import json
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.preview import Preview
from desktop.wrap.on_their_way import NAME, OnTheirWay
from desktop.wrap.place import WrapPlace
from desktop.wrap.wrapping import Wrapping
from shared.shop.packages import NewPackage, PackageMade, without_label
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_one_stroke import Printed, kept
from tests.desktop.wrap.test_place import opened, weigh
from tests.printing.rasterised import pages_of


def on_disk(bench: Bench) -> dict[str, dict[str, str]]:
    paths = list(Path(bench.paths.journal).glob("station-*.json"))
    if not paths:
        return {}
    (path,) = paths
    found: dict[str, dict[str, str]] = json.loads(path.read_text(encoding="utf-8"))
    return found


def weighed(store: Store, signed: SignedOn, order_id: int) -> tuple[PackageMade, ...]:
    """Two packages of which the store knows no label."""
    with store.work(signed.person, signed.station) as work:
        for pounds in (101, 102):
            new = NewPackage(order_id, 3, "ground_pork", "Ground pork", Weight(pounds, "lb", -2))
            work.packages.add(new)
        work.commit()
    return kept(store, order_id)


@pytest.fixture
def place(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> WrapPlace:
    """The wrap after a start: label 1 was on its way when the program ended, 2 never was."""
    order = order_on_the_table(store, signed)
    first, _ = weighed(store, signed, order.id)
    before = OnTheirWay(bench.journal)
    before.begin([first])
    before.written()
    assert on_disk(bench)[NAME] == {str(first.id): str(first.label_number)}
    return opened(qtbot, bench)


@pytest.fixture
def watched(bench: Bench, monkeypatch: pytest.MonkeyPatch) -> tuple[Printed, list[dict[str, str]]]:
    """A printer, and what was on the disk of labels on their way each time it was sent some."""
    printer = Printed(monkeypatch, bench)
    seen: list[dict[str, str]] = []

    def send(pdf: bytes, to: str, copies: int = 1) -> object:
        seen.append(on_disk(bench).get(NAME, {}))
        return printer.send(pdf, to, copies)

    monkeypatch.setattr(bench.printers, "send", send)
    return printer, seen


def print_missing(qtbot: QtBot, bench: Bench, place: WrapPlace) -> None:
    """Ctrl+F9, until no label is missing any more."""
    QTest.keyClick(place.side.table, Qt.Key.Key_F9, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not bench.work.busy() and not place.side.missing.isVisible())


def test_opened_again_it_says_which_label_may_be_printed(place: WrapPlace) -> None:
    said = place.side.said.text()
    assert "went to the printer: 1. " in said
    assert "Look before you stick one" in said


def test_found_on_its_package_it_is_printed_no_second_time(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    place: WrapPlace,
    messages: RecordedMessages,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    printer = Printed(monkeypatch, bench)
    messages.answers = [False]
    print_missing(qtbot, bench, place)
    assert "can't know whether" in messages.asked[0]
    (pdf,) = printer.sent
    (page,) = pages_of(pdf)
    assert "package 2" in page
    assert without_label(kept(store, 1)) == ()
    assert NAME not in bench.journal.names()
    assert place.side.said.text() == ""


def test_not_found_it_is_printed_under_its_number(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    place: WrapPlace,
    messages: RecordedMessages,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    printer = Printed(monkeypatch, bench)
    messages.answers = [True]
    print_missing(qtbot, bench, place)
    (pdf,) = printer.sent
    assert len(pages_of(pdf)) == 2
    assert NAME not in bench.journal.names()


def test_it_is_on_the_disk_before_the_printer_has_it_and_gone_once_it_answered(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    watched: tuple[Printed, list[dict[str, str]]],
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    printer, seen = watched
    place.lines.choose(2)
    weigh(place, "1.01")
    qtbot.waitUntil(lambda: bool(printer.sent) and not bench.work.busy())
    assert list(seen[0].values()) == ["1"]
    bench.journal.wait_written()
    assert NAME not in on_disk(bench)
    assert place.side.said.text() == ""


def shown(qtbot: QtBot, bench: Bench, place: WrapPlace) -> Preview:
    """The label of the chosen package on the screen, by F9."""
    QTest.keyClick(place.side.table, Qt.Key.Key_F9)
    qtbot.waitUntil(lambda: place.work.preview is not None and not bench.work.busy())
    assert place.work.preview is not None
    place.work.preview.printer.set_value("Roll")
    return place.work.preview


@pytest.mark.parametrize("closed", [False, True])
def test_a_label_printed_from_the_preview_is_noted_the_same(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    watched: tuple[Printed, list[dict[str, str]]],
    closed: bool,
) -> None:
    """On the disk before the printer has it, gone once it answered, kept though one looks away."""
    order = order_on_the_table(store, signed)
    one, two = weighed(store, signed, order.id)
    place = opened(qtbot, bench)
    place.side.choose(two.id)
    preview = shown(qtbot, bench, place)
    preview.print_it()
    assert [each.id for each in place.work.missing(_wrapping(place))] == [one.id]
    if closed:
        preview.close()
    qtbot.waitUntil(lambda: not bench.work.busy())
    printer, seen = watched
    assert len(printer.sent) == 1
    assert seen == [{str(two.id): str(two.label_number)}]
    bench.journal.wait_written()
    assert NAME not in on_disk(bench)
    assert without_label(kept(store, order.id)) == (one,)


def test_a_label_the_preview_could_not_print_is_still_missing_and_in_no_doubt(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    watched: tuple[Printed, list[dict[str, str]]],
) -> None:
    order = order_on_the_table(store, signed)
    one, two = weighed(store, signed, order.id)
    place = opened(qtbot, bench)
    place.side.choose(two.id)
    watched[0].gone = True
    preview = shown(qtbot, bench, place)
    preview.print_it()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert preview.isVisible()
    assert "Roll is gone" in preview.said.text()
    assert preview.print_button.isEnabled()
    assert NAME not in bench.journal.names()
    assert {each.id for each in place.work.missing(_wrapping(place))} == {one.id, two.id}


def test_one_printed_again_from_the_preview_is_in_no_doubt(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    watched: tuple[Printed, list[dict[str, str]]],
) -> None:
    """Its label came out once and is on record: nobody is asked about it after a kill."""
    order = order_on_the_table(store, signed)
    one, _two = weighed(store, signed, order.id)
    with store.work(signed.person, signed.station) as work:
        work.packages.labelled([one.id])
        work.commit()
    place = opened(qtbot, bench)
    place.side.choose(one.id)
    shown(qtbot, bench, place).print_it()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert len(watched[0].sent) == 1
    assert watched[1] == [{}]


def _wrapping(place: WrapPlace) -> Wrapping:
    assert place.wrapping is not None
    return place.wrapping
