"""A beef of two wrapped by keyboard: a wrong line, a printer that is gone, a program killed.

At the end every label number is accounted for: in a box or void; the brisket is in cure; and every
package that stands had its label printed once.
"""

import re
from collections import Counter
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store, open_store
from desktop.bench import Bench
from desktop.fields import FormDialog
from desktop.main_window import MainWindow
from desktop.wrap.batch_dialogs import BeginBatch, CureFacts, PutMeatIn
from desktop.wrap.place import WrapPlace
from shared.curing.waiting import in_cure
from shared.cutting.order import Amount, Choice, Package
from shared.shop.orders import Order
from shared.shop.packages import without_label
from shared.shop.people import SignedOn
from shared.units import LENGTH_UNITS_PER_INCH, Weight
from tests.db.examples import arrived, line, lot_of_halves, moved, order_of, settled, weighed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.wrap.test_batches_dialog import BACON
from tests.desktop.wrap.test_one_stroke import Printed
from tests.printing.rasterised import pages_of
from tests.store_fixture import Clock
from tests.stories.keyboard import Keyboard

Key = Qt.Key
PLAIN, CTRL = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ControlModifier
STEAKS, BRISKET, GROUND = 0, 1, 2  # rows of the table
MISSING = (6, 7, 8)  # labels that were not printed when the program was killed
CHOICES = (
    Choice(0, 0, "rib_steak", Amount("all"), thickness=LENGTH_UNITS_PER_INCH),
    Choice(0, 0, "brisket_half", Amount("all"), finishes=("cured_smoked",)),
    Choice(0, 0, "ground_beef", Amount("rest"), package=Package(weight=Weight(1, "lb"))),
)


def cut_beef(store: Store, signed: SignedOn) -> tuple[Order, Order]:
    """Anna's side and Bert's of one beef, cut; the shop, and its recipe."""
    with store.work(signed.person, signed.station) as work:
        shop = work.shop.details()
        work.shop.save(replace(shop, name="Oak Lane Meats", address="4 Oak Lane\nOakfield"))
        work.recipes.save(replace(BACON, name="House brisket"))
        lot = lot_of_halves(work, "beef")
        animal = arrived(work, lot)
        for side in (1, 2):
            weighed(work, animal, "340", side=side)
        moved(work, animal.id, "passed", "hanging", "on_block", "cut")
        ids: list[int] = []
        for share in (1, 2):
            order = order_of(work, lot, share)
            for choice in CHOICES:
                line(work, order, choice)
            ids.append(settled(work, order.id).id)
        work.orders.release(lot.id, ids, snapshot="{}", pdf=b"%PDF sheet")
        found: list[Order] = []
        for one in ids:
            order = work.orders.get(one)
            assert order is not None
            done = work.orders.move(one, "cut", version=order.version)
            assert isinstance(done, Order)
            found.append(done)
        work.commit()
    return found[0], found[1]


class Table:
    """The wrapping table of a running program, and who works at it."""

    def __init__(self, qtbot: QtBot, bench: Bench) -> None:
        self.qtbot, self.bench = qtbot, bench
        self.window = MainWindow(bench)
        qtbot.addWidget(self.window)
        self.window.enter("wrap")
        self.window.show()
        self.keys = Keyboard(qtbot)
        self.keys.at(self.window)
        place = self.window.place()
        assert isinstance(place, WrapPlace)
        self.place = place
        self.rest()

    def rest(self) -> None:
        """Until nothing is read or printed any more."""
        self.qtbot.waitUntil(lambda: not self.bench.work.busy())
        self.qtbot.waitUntil(lambda: self.place.wrapping is not None)

    def order(self, order: Order) -> None:
        """F7 and the order's number."""
        self.keys.press(Key.Key_F7)
        self.keys.ctrl(Key.Key_A)
        self.keys.type(str(order.number))
        self.keys.press(Key.Key_Return)
        shown = self.place
        self.qtbot.waitUntil(
            lambda: shown.wrapping is not None and shown.wrapping.order.id == order.id
        )
        self.keys.tab_to(shown.lines)

    def wrap(self, row: int, *weights: str) -> None:
        """Packages of a line: to it by the arrows, Enter, and each weight with Enter."""
        lines = self.place.lines
        while (here := lines.currentIndex().row()) != row:
            self.keys.press(Key.Key_Down if here < row else Key.Key_Up)
        self.keys.press(Key.Key_Return)
        for weight in weights:
            self.keys.type(weight)
            self.keys.press(Key.Key_Return)
            self.rest()
        self.keys.press(Key.Key_Escape)

    def void_newest(self) -> None:
        """By Tab to the packages, the newest is void; back to the lines."""
        self.keys.tab_to(self.place.side.table)
        self.keys.press(Key.Key_Home)
        self.keys.tab_to(self.place.side.void)
        self.keys.press(Key.Key_Space)
        self.keys.tab_to(self.place.lines)

    def cure(self, order: Order, weight: str) -> None:
        """The brisket begins its cure."""
        self.keys.ctrl(Key.Key_B)
        batches = self.place.batches
        self.keys.at(batches)
        put = {"order": str(order.number), "line": "Brisket", "weight": weight}
        for key, held, kind, fields in (
            (Key.Key_N, CTRL, BeginBatch, {"recipe": "House brisket"}),
            (Key.Key_F8, PLAIN, PutMeatIn, put),
            (Key.Key_F9, PLAIN, CureFacts, {"cure": "0.05 lb"}),
        ):
            self.keys.press(key, held)
            dialog = batches.dialog
            assert isinstance(dialog, kind)
            self._fill(dialog, fields)
            self.keys.at(batches)
        self.keys.ctrl(Key.Key_Return)
        self.keys.press(Key.Key_Escape)
        self.keys.at(self.window)

    def pack(self, box: str) -> None:
        """F11: all that lies loose into a box."""
        self.keys.press(Key.Key_F11)
        boxes = self.place.boxes
        self.keys.at(boxes)
        self.keys.fill(boxes.box, box)
        self.keys.fill(boxes.place, "Freezer 2")
        self.keys.ctrl(Key.Key_Return)
        self.rest()
        while QApplication.activeModalWidget() is boxes:
            self.keys.press(Key.Key_Escape)
        self.keys.at(self.window)

    def _fill(self, dialog: FormDialog, fields: dict[str, str]) -> None:
        self.keys.at(dialog)
        for name, text in fields.items():
            self.keys.fill(getattr(dialog, name), text)
        self.keys.ctrl(Key.Key_Return)
        assert QApplication.activeModalWidget() is not dialog, dialog.refusal.text()


def numbers(printed: list[bytes]) -> Counter[int]:
    """How often each package's label was printed, read from the papers; boxes are left out."""
    pages = [page for pdf in printed for page in pages_of(pdf)]
    found = [re.search(r"Order \d+, package (\d+)", page) for page in pages]
    return Counter(int(one[1]) for one in found if one)


def until_it_was_killed(
    table: Table,
    anna: Order,
    printer: Printed,
    messages: RecordedMessages,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A wrong line taken back, brisket into cure, the printer gone, and then the program."""
    table.order(anna)
    table.wrap(STEAKS, "2.15", "2.20")
    table.wrap(STEAKS, "1.02")  # ground, on the wrong line
    messages.answers.append("wrong line")
    table.void_newest()
    table.wrap(GROUND, "1.02", "0.98")
    table.cure(anna, "4.5 lb")
    printer.gone = True
    table.wrap(GROUND, "1.01", "1.03")
    with monkeypatch.context() as killed:  # kept, and the program is gone before its label is
        killed.setattr(table.bench.work, "run", lambda *_, **__: None)
        table.wrap(GROUND, "1.04")
    table.window.close()
    table.bench.store.close()


def after_it(table: Table, anna: Order, bert: Order, printer: Printed) -> None:
    """The labels that are missing, what is left of Anna's, all of Bert's, and a box for each."""
    printer.gone = False
    table.order(anna)
    rows = table.place.side.table.rows
    said = [str(rows.data(rows.index(at, 1))) for at in range(rows.rowCount())]
    assert [one.startswith("no label yet") for one in said] == [True] * 3 + [False] * 5
    table.keys.press(Key.Key_F9, CTRL)
    qtbot, sent = table.qtbot, printer.sent
    qtbot.waitUntil(lambda: set(MISSING) <= set(numbers(sent)))
    table.rest()
    table.wrap(GROUND, "1.00")
    table.pack("1")
    table.order(bert)
    table.wrap(STEAKS, "2.30")
    table.wrap(GROUND, "1.05", "0.95")
    table.pack("2")
    table.window.close()


def test_every_package_is_in_a_box_void_or_in_cure(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    store_path: Path,
    clock: Clock,
    signed: SignedOn,
    messages: RecordedMessages,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    anna, bert = cut_beef(store, signed)
    printer = Printed(monkeypatch, bench)
    until_it_was_killed(Table(qtbot, bench), anna, printer, messages, monkeypatch)
    again = replace(bench, store=open_store(store_path, keep_copies=False, clock=clock))
    after_it(Table(qtbot, again), anna, bert, printer)
    with again.store.read() as work:
        made = {one.id: one for of in (anna, bert) for one in work.packages.of_order(of.id)}
        boxed = {at for of in (anna, bert) for at in work.hand_overs.places(of.id)}
        waits = in_cure(anna.lot_id, work.batches.of_lot(anna.lot_id))
    again.store.close()
    everything = list(range(1, 13))
    assert sorted(one.label_number for one in made.values()) == everything
    void = {one.id for one in made.values() if one.void}
    assert [made[one].label_number for one in void] == [3]
    assert boxed | void == set(made)
    assert boxed & void == set()
    assert waits == {anna.choices[BRISKET].line}
    assert without_label(made.values()) == ()
    assert numbers(printer.sent) == dict.fromkeys(everything, 1)
