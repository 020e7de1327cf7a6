"""One lamb from the telephone to the paid bill, through the window and by the keyboard alone."""

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction
from typing import TypeVar

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.line_row import Tick
from desktop.block.place import BlockPlace
from desktop.counter.book_dialog import BookDialog
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.place import CounterPlace
from desktop.main_window import MainWindow
from desktop.office.place import OfficePlace
from desktop.places import Place
from desktop.preview import Preview
from desktop.rail.check_in import CheckInDialog
from desktop.rail.place import RailPlace
from desktop.wrap.place import WrapPlace
from shared.billing.rates import Charge, RateCard
from shared.shop.details import ShopDetails
from shared.shop.orders import Order
from shared.shop.states import OrderState
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.stories.keyboard import Keyboard

Key = Qt.Key
OWNER = "Jørgen & Łucja <O'Neil>"
RATES = RateCard(
    "lamb",
    "Lamb",
    date(2026, 1, 1),
    ("lamb",),
    charges=(
        Charge("kill", "per_head", Fraction(4_500)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(125)),
    ),
)
SHOP = ShopDetails(name="Millrace Hollow Meats", address="410 Ferry Lane\nMillrace Hollow")
PlaceKind = TypeVar("PlaceKind", bound=Place)


class Story:
    """The window, the keyboard before it, and what the records say meanwhile."""

    def __init__(self, qtbot: QtBot, bench: Bench, window: MainWindow) -> None:
        self.qtbot = qtbot
        self.bench = bench
        self.window = window
        self.keys = Keyboard(qtbot)

    def go(self, key: Qt.Key, kind: type[PlaceKind]) -> PlaceKind:
        """To another place by its function key."""
        self.keys.at(self.window)
        self.keys.press(key)
        place = self.window.place()
        assert isinstance(place, kind)
        return place

    def order(self) -> Order:
        with self.bench.store.read() as work:
            (row,) = work.orders.list()
            order = work.orders.get(row.id)
        assert order is not None
        return order

    def until(self, state: OrderState) -> None:
        self.qtbot.waitUntil(lambda: self.order().state == state)

    def close_paper(self) -> None:
        """Escape from the paper that opened."""
        self.qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), Preview))
        paper = QApplication.activeModalWidget()
        assert isinstance(paper, Preview)
        assert paper.pdf.startswith(b"%PDF")
        self.keys.at(paper)
        self.keys.press(Key.Key_Escape)
        self.qtbot.waitUntil(lambda: QApplication.activeModalWidget() is None)

    def book(self) -> None:
        counter = self.go(Key.Key_F2, CounterPlace)
        self.keys.ctrl(Key.Key_N)
        dialog = counter.dialog
        assert isinstance(dialog, BookDialog)
        self.keys.at(dialog)
        self.keys.fill(dialog.species, "lamb")
        self.keys.fill(dialog.producer, f"{OWNER} 555 010 0101")
        self.keys.fill(dialog.booked, "62 lb")
        self.keys.fill(dialog.owners[0], f"{OWNER} 555 010 0101")
        self.keys.ctrl(Key.Key_Return)
        self.keys.at(self.window)

    def take_the_order(self) -> None:
        """All of it as the house usually cuts, and settled."""
        self.keys.press(Key.Key_F9)
        self.keys.ctrl(Key.Key_Return)

    def weigh(self) -> None:
        """Checked in, weighed alive and dressed, accepted and hung."""
        rail = self.go(Key.Key_F3, RailPlace)
        self.keys.press(Key.Key_Return)
        dialog = rail.dialog
        assert isinstance(dialog, CheckInDialog)
        self.keys.at(dialog)
        self.keys.fill(dialog.tag, "9")
        self.keys.ctrl(Key.Key_Return)
        self.keys.at(self.window)
        for weight in ("128 lb", "64 lb"):
            type_into(self.keys.focused(), weight)
            self.keys.press(Key.Key_Return)
        self.keys.press(Key.Key_Space)
        self.keys.press(Key.Key_Space)

    def release(self) -> None:
        self.go(Key.Key_F2, CounterPlace)
        self.keys.ctrl(Key.Key_Return)
        self.until("released")
        self.close_paper()

    def cut(self) -> None:
        """The sheet read, the carcass started, each line ticked, and done."""
        self.go(Key.Key_F4, BlockPlace)
        self.keys.press(Key.Key_Return)
        for _ in range(40):
            if self.order().state == "cut":
                return
            ticking = isinstance(self.keys.focused(), Tick)
            self.keys.press(Key.Key_Return if ticking else Key.Key_Space)
        raise AssertionError("the carcass is never cut")

    def wrap(self) -> int:
        """A package of each line; how many."""
        wrap = self.go(Key.Key_F5, WrapPlace)
        self.qtbot.waitUntil(lambda: wrap.wrapping is not None)
        wrapping = wrap.wrapping
        assert wrapping is not None
        self.keys.tab_to(wrap.lines)
        count = 0
        for at in range(len(wrapping.lines)):
            if at:
                self.keys.press(Key.Key_Down)
            self.keys.press(Key.Key_Return)
            type_into(self.keys.focused(), "3.25 lb")
            self.keys.press(Key.Key_Return)
            self.keys.press(Key.Key_Escape)
            count += 1
        asked = self.bench.messages
        assert isinstance(asked, RecordedMessages)
        asked.answers.append("the story packs one of each line")
        self.keys.ctrl(Key.Key_Return)
        self.until("ready")
        assert not asked.answers, "one package of a line isn't all that was planned"
        return count

    def bill(self) -> None:
        office = self.go(Key.Key_F6, OfficePlace)
        self.qtbot.waitUntil(office.bills.side.issue.isEnabled)
        self.keys.ctrl(Key.Key_Return)
        self.qtbot.waitUntil(lambda: bool(self.bills()))
        if QApplication.activeModalWidget() is not None:
            self.close_paper()
        self.keys.at(self.window)
        self.qtbot.waitUntil(lambda: office.bills.side.sums["due"].text() == "$125.00")
        self.keys.press(Key.Key_F8)
        self.keys.at(office.bills.money_dialog)
        self.keys.ctrl(Key.Key_Return)

    def bills(self) -> tuple[int, ...]:
        with self.bench.store.read() as work:
            return tuple(one.total_cents for one in work.bills.of_order(self.order().id))

    def hand_over(self) -> None:
        now = self.bench.now() + timedelta(hours=25)  # the shop asks for 24 in the freezer
        self.bench.now = lambda: now
        counter = self.go(Key.Key_F2, CounterPlace)
        self.keys.press(Key.Key_F8)
        dialog = counter.dialog
        assert isinstance(dialog, HandOverDialog)
        self.keys.at(dialog)
        assert not dialog.held, dialog.frost.text()
        self.keys.ctrl(Key.Key_Return)


@pytest.fixture
def story(qtbot: QtBot, bench: Bench) -> Story:
    with bench.store.work(bench.person, bench.station) as work:
        work.shop.save(replace(SHOP, version=work.shop.details().version))
        work.rates.save(RATES)
        work.commit()
    window = MainWindow(bench)
    qtbot.addWidget(window)
    window.enter("counter")
    window.show()
    return Story(qtbot, bench, window)


def test_one_lamb_from_the_telephone_to_the_paid_bill(story: Story) -> None:
    story.book()
    assert story.order().owner == OWNER
    story.take_the_order()
    assert story.order().state == "settled"
    assert len(story.order().choices) == 10
    story.weigh()
    with story.bench.store.read() as work:
        (animal,) = work.animals.list()
    assert (animal.tag, animal.state) == ("9", "hanging")
    story.release()
    story.cut()
    made = story.wrap()
    with story.bench.store.read() as work:
        assert len(work.packages.of_order(story.order().id)) == made > 5
    story.bill()
    # $45 a head and 64 lb at $1.25
    assert story.bills() == (12_500,)
    story.hand_over()
    order = story.order()
    assert order.state == "handed_over"
    assert order.closed_at is not None
    with story.bench.store.read() as work:
        assert work.payments.balance(order.id).due == 0
