"""Orders taken by keyboard alone, as fast as a call is spoken: the keys are counted and printed."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.book_dialog import BookDialog
from desktop.counter.order_desk import OrderDesk
from desktop.counter.place import CounterPlace
from desktop.main_window import MainWindow
from desktop.work import slow_turns
from shared.cutting.order import Amount
from shared.units import LENGTH_UNITS_PER_INCH
from tests.stories.keyboard import Keyboard

Key = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier
MOST_HALF_HOG = 150
MOST_WHOLE_BEEF = 600
MOST_ENTERS = 40


class Call:
    """One call: the window, the keyboard before it, and the order that lies on the counter."""

    def __init__(self, qtbot: QtBot, window: MainWindow) -> None:
        self.qtbot = qtbot
        self.window = window
        self.keys = Keyboard(qtbot)
        place = window.place()
        assert isinstance(place, CounterPlace)
        self.counter = place

    @property
    def desk(self) -> OrderDesk:
        assert self.counter.order.desk is not None
        return self.counter.order.desk

    def book(self, animal: str, weight: str, shared: str, owners: list[str]) -> None:
        self.keys.ctrl(Key.Key_N)
        dialog = self.counter.dialog
        assert isinstance(dialog, BookDialog)
        self.keys.at(dialog)
        self.keys.fill(dialog.species, animal)
        self.keys.fill(dialog.producer, owners[0])
        self.keys.fill(dialog.booked, weight)
        if shared:
            self.keys.fill(dialog.shares, shared)
        for field, owner in zip(dialog.owners, owners, strict=False):
            self.keys.fill(field, owner)
        self.keys.ctrl(Key.Key_Return)
        self.keys.at(self.window)

    def walk(self, until: Callable[[], bool]) -> None:
        """Enter on each primal, as the house usually cuts it, until something else is wanted."""
        for _ in range(MOST_ENTERS):
            if until():
                return
            row = self.counter.order.table.chosen()
            on_a_line = row is not None and row.line
            self.keys.press(Key.Key_PageDown if on_a_line else Key.Key_Return)
        raise AssertionError("the walk never comes there")

    def walk_to(self, primal: str) -> None:
        self.walk(lambda: self.counter.order.table.unfolded == primal)

    def walk_out(self) -> None:
        """Until nothing of this order is open and its trim is ground."""

        def done() -> bool:
            drawn = {self.desk.catalogue.cuts[one.cut].kind for one in self.desk.order.choices}
            return not self.desk.open_parts() and "pool" in drawn

        self.walk(done)

    def line(self, find: str, fill: Callable[[], None]) -> None:
        """A cut by letters of its name, then its fields."""
        self.keys.type(find[:1])
        dialog = self.counter.order.dialog
        assert dialog is not None
        self.keys.at(dialog)
        taken: list[bool] = []
        dialog.accepted.connect(lambda: taken.append(True))
        self.keys.type(find[1:])
        fill()
        self.keys.ctrl(Key.Key_Return)
        assert taken == [True]
        self.keys.at(self.window)

    def settle(self) -> None:
        self.keys.ctrl(Key.Key_Return)
        assert self.desk.order.state == "settled", self.counter.order.refusal.text()


@pytest.fixture
def call(qtbot: QtBot, bench: Bench) -> Call:
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.enter("counter")
    window.show()
    made = Call(qtbot, window)
    made.keys.at(window)
    return made


@pytest.mark.timed
def test_a_usual_half_hog_takes_at_most_150_keys(
    call: Call, capsys: pytest.CaptureFixture[str]
) -> None:
    """As usual, but inch-thick chops, five pounds of breakfast sausage, and a note."""
    call.book(
        "hog", "185 lb", "two halves", ["anna berg 555 010 0123", "bert iversen 555 010 0456"]
    )
    booked = call.keys.count
    with slow_turns() as slow:
        chops_as_wanted(call)
        call.walk_out()
        sausage(call)
        call.keys.press(Key.Key_F12)
        note = call.counter.order.dialogs.shown
        assert note is not None
        call.keys.at(note)
        call.keys.type("keep the hocks whole")
        call.keys.ctrl(Key.Key_Return)
        call.keys.at(call.window)
        call.settle()
    assert slow == []
    order = call.desk.order
    assert order.note == "keep the hocks whole"
    assert {one.cut for one in order.choices} >= {"bacon", "centre_chop", "ground_pork", "hock"}
    chops = next(one for one in order.choices if one.cut == "centre_chop")
    assert chops.thickness == LENGTH_UNITS_PER_INCH
    order_keys = call.keys.count - booked
    with capsys.disabled():
        print(f"\na usual half hog: {order_keys} keys, {call.keys.count} with its booking")  # noqa: T201
    assert order_keys <= MOST_HALF_HOG


def chops_as_wanted(call: Call) -> None:
    """Walk to the loin, take the usual there, and make the chops an inch thick."""
    call.walk_to("loin")
    call.keys.press(Key.Key_1)
    table = call.counter.order.table
    call.keys.press(Key.Key_PageUp)
    assert table.unfolded == "loin"
    chops = next(one.line for one in call.desk.order.choices if one.cut == "centre_chop")
    while (row := table.chosen()) is not None and row.line != chops:
        call.keys.press(Key.Key_Down)
    call.keys.press(Key.Key_Return)
    dialog = call.counter.order.dialog
    assert dialog is not None
    call.keys.at(dialog)
    call.keys.press(Key.Key_T, ALT)
    call.keys.type("1 in")
    call.keys.ctrl(Key.Key_Return)
    call.keys.at(call.window)


def sausage(call: Call) -> None:
    """Five pounds of bulk sausage out of the trim."""
    dialog_fields = call.counter.order

    def fill() -> None:
        dialog = dialog_fields.dialog
        assert dialog is not None
        call.keys.press(Key.Key_H, ALT)
        call.keys.type("so many pounds")
        call.keys.press(Key.Key_N, ALT)
        call.keys.type("5")

    call.line("bulk sausage", fill)
    line = next(one for one in call.desk.order.choices if one.cut == "bulk_sausage")
    assert line.amount.kind == "pounds"


@pytest.mark.timed
def test_a_whole_beef_with_four_owners_takes_at_most_600_keys(
    call: Call, capsys: pytest.CaptureFixture[str]
) -> None:
    """Four quarters, four owners one after the other, each with something of his own."""
    owners = [
        "anna berg 555 010 0123",
        "bert iversen 555 010 0456",
        "cleo dahl 555 010 0789",
        "dora ek 555 010 0321",
    ]
    call.book("beef", "740 lb", "four quarters", owners)
    booked = call.keys.count
    with slow_turns() as slow:
        for place in range(len(owners)):
            if place:
                call.keys.press(Key.Key_Right, ALT)
            assert call.desk.order.owner.casefold().startswith(owners[place].split()[0])
            wanted = "rib" if place % 2 == 0 else "round"
            call.walk_to(wanted)
            call.keys.press(Key.Key_2)
            call.walk_out()
            call.settle()
    assert slow == []
    assert [one.state for one in call.desk.orders] == ["settled"] * len(owners)
    assert call.desk.answer.verdict in ("sure", "likely")
    assert all(not call.desk.open_parts(one.share) for one in call.desk.orders)
    assert Amount("rest") in {one.amount for one in call.desk.order.choices}
    order_keys = call.keys.count - booked
    with capsys.disabled():
        print(f"\na beef of four: {order_keys} keys, {call.keys.count} with its booking")  # noqa: T201
    assert call.keys.count <= MOST_WHOLE_BEEF
