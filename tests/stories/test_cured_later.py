"""Half a hog fetched and billed fresh; its bacon comes out of the smoke later, on a second bill."""

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.place import CounterPlace
from desktop.fields import FormDialog
from desktop.main_window import MainWindow
from desktop.office.place import OfficePlace
from desktop.preview import Preview
from desktop.wrap.batch_dialogs import BeginBatch, CureFacts, PutMeatIn, WeighOut
from desktop.wrap.place import WrapPlace
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from tests.desktop.office.ready_orders import RATES
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_batches_dialog import BACON
from tests.stories.keyboard import Keyboard

Key = Qt.Key


class Table:
    """The window and who works at it; one order."""

    def __init__(self, qtbot: QtBot, bench: Bench, order: Order) -> None:
        self.qtbot, self.bench, self._id = qtbot, bench, order.id
        self.window = MainWindow(bench)
        qtbot.addWidget(self.window)
        self.window.enter("wrap")
        self.window.show()
        self.keys = Keyboard(qtbot)

    @property
    def order(self) -> Order:
        with self.bench.store.read() as work:
            found = work.orders.get(self._id)
        assert found is not None
        return found

    def wrap(self) -> WrapPlace:
        self.keys.at(self.window)
        self.keys.press(Key.Key_F5)
        place = self.window.place()
        assert isinstance(place, WrapPlace)
        self.qtbot.waitUntil(lambda: not self.bench.work.busy() and place.wrapping is not None)
        return place

    def on_the_table(self, place: WrapPlace) -> str:
        """The state of the order as the table shows it, once it was read again."""
        busy = self.bench.work.busy() or place.wrapping is None
        return "" if busy or place.wrapping is None else place.wrapping.order.state

    def pack(self, place: WrapPlace, line: int, weight: str) -> None:
        self.keys.at(self.window)
        place.lines.choose(line)
        place.lines.setFocus()
        self.keys.press(Key.Key_Return)
        type_into(self.keys.focused(), weight)
        self.keys.press(Key.Key_Return)
        self.keys.press(Key.Key_Escape)

    def ready(self, place: WrapPlace) -> None:
        self.qtbot.waitUntil(lambda: not self.bench.work.busy())
        self.keys.at(self.window)
        place.lines.setFocus()
        self.keys.ctrl(Key.Key_Return)
        self.qtbot.waitUntil(lambda: self.order.state == "ready")

    def cure(self, place: WrapPlace) -> None:
        """The bacon begins its cure."""
        place.show_batches()
        batches = place.batches
        assert batches is not None
        self.keys.at(batches)
        for key, modifier, kind, fields in (
            (Key.Key_N, Qt.KeyboardModifier.ControlModifier, BeginBatch, {"recipe": "House bacon"}),
            (
                Key.Key_F8,
                Qt.KeyboardModifier.NoModifier,
                PutMeatIn,
                {"order": "Anna", "line": "Bacon", "weight": "8.5 lb"},
            ),
            (Key.Key_F9, Qt.KeyboardModifier.NoModifier, CureFacts, {"cure": "0.05 lb"}),
        ):
            self.keys.press(key, modifier)
            dialog = batches.dialog
            assert isinstance(dialog, kind)
            self.fill(dialog, fields)
            self.keys.at(batches)
        self.keys.ctrl(Key.Key_Return)
        self.keys.press(Key.Key_Escape)

    def weigh_out(self, place: WrapPlace, weight: str) -> None:
        """Through the smoke, and weighed."""
        place.show_batches()
        batches = place.batches
        assert batches is not None
        self.keys.at(batches)
        self.keys.ctrl(Key.Key_Return)
        self.keys.ctrl(Key.Key_Return)
        dialog = batches.dialog
        assert isinstance(dialog, WeighOut)
        self.fill(dialog, {"weight": weight})
        self.keys.at(batches)
        self.keys.press(Key.Key_Escape)

    def fill(self, dialog: FormDialog, fields: dict[str, str]) -> None:
        self.keys.at(dialog)
        for name, text in fields.items():
            self.keys.fill(getattr(dialog, name), text)
        self.keys.ctrl(Key.Key_Return)
        assert QApplication.activeModalWidget() is not dialog, dialog.refusal.text()

    def bill(self) -> tuple[tuple[int, ...], str]:
        """Issued and paid; every bill of the order in cents, and what the panel notes."""
        self.keys.at(self.window)
        self.keys.press(Key.Key_F6)
        office = self.window.place()
        assert isinstance(office, OfficePlace)
        office.bills.choose(self._id)
        self.qtbot.waitUntil(office.bills.side.issue.isEnabled)
        notes, before = office.bills.side.notes.text(), len(self.bills())
        self.keys.ctrl(Key.Key_Return)
        self.qtbot.waitUntil(lambda: len(self.bills()) > before and not self.bench.work.busy())
        if isinstance(QApplication.activeModalWidget(), Preview):
            self.keys.press(Key.Key_Escape)
        self.keys.at(self.window)
        self.keys.press(Key.Key_F8)
        self.keys.at(office.bills.money_dialog)
        self.keys.ctrl(Key.Key_Return)
        return self.bills(), notes

    def bills(self) -> tuple[int, ...]:
        with self.bench.store.read() as work:
            return tuple(one.total_cents for one in work.bills.of_order(self._id))

    def hand_over(self) -> str:
        """All that is frozen leaves; what comes later."""
        now = self.bench.now() + timedelta(hours=25)
        self.bench.now = lambda: now
        self.keys.at(self.window)
        self.keys.press(Key.Key_F2)
        counter = self.window.place()
        assert isinstance(counter, CounterPlace)
        counter.show_order(self.order.lot_id, self._id)
        counter.order.table.setFocus()
        self.keys.press(Key.Key_F8)
        dialog = counter.dialog
        assert isinstance(dialog, HandOverDialog)
        waits = dialog.waits.text()
        self.keys.at(dialog)
        assert not dialog.held, dialog.frost.text()
        self.keys.ctrl(Key.Key_Return)
        return waits


@pytest.fixture
def table(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> Table:
    order = order_on_the_table(store, signed)
    with store.work(signed.person, signed.station) as work:
        work.rates.save(RATES)
        work.recipes.save(BACON)
        work.commit()
    return Table(qtbot, bench, order)


def test_bacon_that_was_in_cure_comes_on_a_second_bill(
    table: Table, messages: RecordedMessages
) -> None:
    """Its charge stood on no bill: it was nothing on the first, and what was nothing was kept."""
    place = table.wrap()
    table.pack(place, 0, "18.25 lb")
    table.pack(place, 2, "2.05 lb")
    table.cure(place)
    table.ready(place)
    bills, notes = table.bill()
    # half of $60 and 95 lb at $0.70
    assert bills == (9_650,)
    assert "further bill" in notes
    assert "in cure" in table.hand_over()
    assert table.order.state == "ready"

    place = table.wrap()
    place.lines.choose(1)
    place.lines.setFocus()
    table.keys.press(Key.Key_Return)
    assert "only what came out of a batch" in place.strip.complaint.text()  # not out of it yet
    table.weigh_out(place, "7.6 lb")
    table.qtbot.waitUntil(lambda: place.wrapping is not None and bool(place.wrapping.came_out))
    table.pack(place, 1, "7.41 lb")
    assert table.order.state == "ready"
    place.lines.choose(0)
    place.lines.setFocus()
    table.keys.press(Key.Key_Return)
    assert "only what came out of a batch" in place.strip.complaint.text()
    # 7.41 lb at $0.95 is $7.0395
    assert table.bill() == ((9_650, 704), "")
    assert "batch" not in table.hand_over()
    assert table.order.state == "handed_over"
