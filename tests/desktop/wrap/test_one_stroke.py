"""Eighty equal tubes in one stroke: eighty numbers and labels, one PDF, void together."""

from io import BytesIO

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.printers import PrintProblem
from desktop.work import slow_turns
from shared.shop.packages import PackageMade, of_one_stroke
from shared.shop.people import SignedOn
from shared.units import NG_PER_LB
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_place import opened, press
from tests.store_fixture import Clock

TUBES = 80


class Printed:
    """A label printer that keeps what it was sent, or is gone."""

    def __init__(
        self, monkeypatch: pytest.MonkeyPatch, bench: Bench, *, gone: bool = False
    ) -> None:
        self.sent: list[bytes] = []
        self.gone = gone
        monkeypatch.setattr(bench.printers, "names", lambda: ["Roll"])
        monkeypatch.setattr(bench.printers, "usual", lambda _kind: "Roll")
        monkeypatch.setattr(bench.printers, "send", self.send)

    def send(self, pdf: bytes, printer: str, _copies: int = 1) -> PrintProblem | None:
        if self.gone:
            return PrintProblem("gone", printer)
        self.sent.append(pdf)
        return None


def kept(store: Store, order_id: int) -> tuple[PackageMade, ...]:
    with store.read() as work:
        return work.packages.of_order(order_id)


@pytest.mark.timed
def test_eighty_tubes_are_one_entry_eighty_numbers_and_one_print(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    assert unnamed(place) == []
    printer = Printed(monkeypatch, bench)
    place.lines.choose(2)
    type_into(place.strip.equal.line, str(TUBES))
    type_into(place.strip.weight.line, "1")
    with slow_turns() as slow:
        press(place.strip.weight.line, Qt.Key.Key_Return)
        qtbot.waitUntil(lambda: bool(printer.sent))
        qtbot.waitUntil(lambda: not bench.work.busy())
    assert slow == []
    made = kept(store, order.id)
    assert [one.label_number for one in made] == list(range(1, TUBES + 1))
    assert sum(one.net.nanograms for one in made) == TUBES * NG_PER_LB
    (pdf,) = printer.sent
    pages = PdfReader(BytesIO(pdf)).pages
    assert len(pages) == TUBES
    assert f"package {TUBES}" in pages[-1].extract_text()
    assert place.strip.equal.is_empty()  # the next one is weighed alone again
    shown = place.lines.chosen()
    assert shown is not None
    assert shown.packages == TUBES


def test_a_printer_that_is_gone_loses_no_package(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    Printed(monkeypatch, bench, gone=True)
    said: list[str] = []
    place.work.said.connect(said.append)
    place.lines.choose(2)
    type_into(place.strip.equal.line, "12")
    type_into(place.strip.weight.line, "1")
    press(place.strip.weight.line, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: bool(said))
    assert said == ["Packages 1\u201312 kept, but Roll printed no label; Ctrl+F9 prints it."]
    assert len(kept(store, order.id)) == 12
    place.side.table.choose(0)
    QTest.keyClick(place.side.table, Qt.Key.Key_F9, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: place.work.preview is not None)
    assert place.work.preview is not None
    assert "1\u201312" in place.work.preview.windowTitle()
    place.work.preview.close()


@pytest.mark.parametrize(("all_of_it", "left"), [(True, 1), (False, 3)])
def test_a_stroke_is_made_void_whole_or_by_the_one(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    messages: RecordedMessages,
    clock: Clock,
    all_of_it: bool,
    left: int,
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    for equal in ("", "3"):  # one alone, then three in one stroke
        type_into(place.strip.equal.line, equal)
        type_into(place.strip.weight.line, "1")
        press(place.strip.weight.line, Qt.Key.Key_Return)
        clock.pass_by(seconds=4)
    messages.answers = [all_of_it, "wrong casing"]
    place.side.table.choose(0)
    place.void_package()
    made = kept(store, order.id)
    assert sum(not one.void for one in made) == left
    assert not made[0].void
    assert {one.void for one in made if one.void} == {"wrong casing"}
    assert len(of_one_stroke(made[0], made)) == 1
    type_into(place.strip.weight.line, "1")
    press(place.strip.weight.line, Qt.Key.Key_Return)
    assert kept(store, order.id)[-1].label_number == 5  # a void package's number stays taken


def test_none_and_too_many_are_refused(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    for equal in ("0", "201", "1.5"):
        type_into(place.strip.equal.line, equal)
        type_into(place.strip.weight.line, "1")
        press(place.strip.weight.line, Qt.Key.Key_Return)
        assert place.strip.equal.problem()
    assert kept(store, order.id) == ()


def test_two_strokes_of_one_moment_and_weight_stay_two(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """The test's clock stands still: by moment, line and weight the five would be one stroke."""
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    for equal in ("2", "3"):
        type_into(place.strip.equal.line, equal)
        type_into(place.strip.weight.line, "1")
        press(place.strip.weight.line, Qt.Key.Key_Return)
    made = kept(store, order.id)
    assert len({one.made_at for one in made}) == 1
    assert [one.stroke for one in made] == [1, 1, 3, 3, 3]
    assert [one.label_number for one in of_one_stroke(made[4], made)] == [3, 4, 5]
