"""A small shop and the people in it: the window, the keyboard before it, what the records say."""

from dataclasses import replace
from datetime import date, timedelta
from fractions import Fraction
from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.line_row import Tick
from desktop.block.place import BlockPlace
from desktop.counter.book_dialog import BookDialog
from desktop.counter.order_desk import OrderDesk
from desktop.counter.place import CounterPlace
from desktop.fields import FormDialog
from desktop.main_window import MainWindow
from desktop.places import Place
from desktop.preview import Preview
from desktop.rail.check_in import CheckInDialog
from desktop.rail.loss import LossDialog
from desktop.rail.place import RailPlace
from desktop.wrap.place import WrapPlace
from shared.billing.rates import Charge, RateCard
from shared.shop.details import ShopDetails
from shared.shop.orders import Order
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.stories.keyboard import Keyboard

Key = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier
SHOP = ShopDetails(name="Millrace Hollow Meats", address="410 Ferry Lane\nMillrace Hollow")
BEEF = RateCard(
    "beef",
    "Beef",
    date(2026, 1, 1),
    ("beef",),
    charges=(
        Charge("kill", "per_head", Fraction(9_501), falls_to="producer"),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(85)),
    ),
)
MOST_TURNS = 400
PlaceKind = TypeVar("PlaceKind", bound=Place)
DialogKind = TypeVar("DialogKind", bound=QWidget)


class OneShop:
    """What a person does in each place of the shop, by keys and the fields that open."""

    def __init__(self, qtbot: QtBot, bench: Bench, *cards: RateCard) -> None:
        with bench.store.work(bench.person, bench.station) as work:
            work.shop.save(replace(SHOP, version=work.shop.details().version))
            for card in cards or (BEEF,):
                work.rates.save(card)
            work.commit()
        self.qtbot = qtbot
        self.bench = bench
        self.window = MainWindow(bench)
        qtbot.addWidget(self.window)
        self.window.enter("counter")
        self.window.show()
        self.keys = Keyboard(qtbot)
        self.papers: list[bytes] = []

    def go(self, key: Qt.Key, kind: type[PlaceKind]) -> PlaceKind:
        """To another place by its function key."""
        self.keys.at(self.window)
        self.keys.press(key)
        place = self.window.place()
        assert isinstance(place, kind)
        return place

    def later(self, hours: int) -> None:
        """The clock goes on."""
        now = self.bench.now() + timedelta(hours=hours)
        self.bench.now = lambda: now

    def orders(self) -> tuple[Order, ...]:
        """Every order of the shop, in the order they were booked."""
        with self.bench.store.read() as work:
            found = [work.orders.get(row.id) for row in work.orders.list(sort="number")]
        return tuple(one for one in found if one is not None)

    def order(self, owner: str) -> Order:
        """The order of the owner whose name begins so."""
        return next(one for one in self.orders() if one.owner.startswith(owner))

    @property
    def counter(self) -> CounterPlace:
        """The Counter, where it is in front."""
        place = self.window.place()
        assert isinstance(place, CounterPlace)
        return place

    @property
    def desk(self) -> OrderDesk:
        """The order that lies on the counter."""
        desk = self.counter.order.desk
        assert desk is not None
        return desk

    def close_paper(self) -> bytes:
        """Escape from the paper that opened; what is on it."""
        self.qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), Preview))
        paper = QApplication.activeModalWidget()
        assert isinstance(paper, Preview)
        assert paper.pdf.startswith(b"%PDF")
        over = paper.parentWidget()
        self.keys.at(paper)
        self.keys.press(Key.Key_Escape)
        self.qtbot.waitUntil(lambda: QApplication.activeModalWidget() is not paper)
        assert over is not None
        self.keys.at(over.window())
        self.papers.append(paper.pdf)
        return paper.pdf

    def take_in(self) -> None:
        """Ctrl+Enter in a dialog, which then is gone."""
        dialog = QApplication.activeModalWidget()
        self.keys.ctrl(Key.Key_Return)
        if QApplication.activeModalWidget() is dialog:
            assert isinstance(dialog, FormDialog)
            wrong = [(one.label.text(), said) for one, said in dialog.grid.problems()]
            raise AssertionError(f"{dialog.refusal.text()} {wrong}")
        self.keys.at(self.window)

    # ---- Counter

    def book(self, animal: str, producer: str, shared: str, owners: list[str], **more: str) -> int:
        """A booking by Ctrl+N; the lot's id. An owner "" is left to be named."""
        counter = self.go(Key.Key_F2, CounterPlace)
        self.keys.ctrl(Key.Key_N)
        dialog = counter.dialog
        assert isinstance(dialog, BookDialog)
        self.keys.at(dialog)
        self.keys.fill(dialog.species, animal)
        if "head" in more:
            self.keys.fill(dialog.head, more["head"])
        self.keys.fill(dialog.producer, producer)
        if "kind" in more:
            self.keys.fill(dialog.regime, more["kind"])
        self.keys.fill(dialog.shares, shared)
        if "deposit" in more:
            self.keys.fill(dialog.deposit, more["deposit"])
        for field, owner in zip(dialog.owners, owners, strict=False):
            if owner:
                self.keys.fill(field, owner)
        self.keys.ctrl(Key.Key_Return)
        assert dialog.lot is not None, (dialog.refusal.text(), dialog.grid.problems())
        if "deposit" not in more:
            self.keys.at(self.window)
        return dialog.lot.id

    def turn_to(self, owner: str) -> None:
        """The order of an owner of the lot that lies on the counter."""
        counter = self.go(Key.Key_F2, CounterPlace)
        order = self.order(owner)
        if counter.order.desk is None or counter.order.desk.lot.id != order.lot_id:
            counter.show_order(order.lot_id, order.id)
        counter.order.table.setFocus()
        for _ in range(20):
            if self.desk.order.id == order.id:
                return
            self.keys.press(Key.Key_Right, ALT)
        raise AssertionError(f"Alt+Right never comes to {owner}")

    def take(self, find: str, **fields: str) -> None:
        """A line by letters of its cut's name, then its fields by their names."""
        order = self.counter.order
        order.table.setFocus()
        self.keys.type(find[:1])
        dialog = order.dialog
        assert dialog is not None
        self.keys.at(dialog)
        self.keys.type(find[1:])
        for name, text in fields.items():
            self.keys.fill(getattr(dialog, name), text)
        self.take_in()

    def usual(self) -> None:
        """F9: what is open is cut as the house usually does."""
        self.counter.order.table.setFocus()
        self.keys.press(Key.Key_F9)

    def settle(self) -> str:
        """Ctrl+Enter; why it wasn't settled, or ""."""
        self.counter.order.table.setFocus()
        self.keys.ctrl(Key.Key_Return)
        return self.counter.order.refusal.text() if self.desk.order.state == "open" else ""

    def release(self, owner: str) -> bytes:
        """Ctrl+Enter on a settled order: its sheet."""
        self.turn_to(owner)
        assert self.desk.order.state == "settled"
        self.keys.ctrl(Key.Key_Return)
        self.qtbot.waitUntil(
            lambda: self.order(owner).state == "released" or bool(self.counter.order.refusal.text())
        )
        assert self.order(owner).state == "released", self.counter.order.refusal.text()
        return self.close_paper()

    def said(self) -> list[str]:
        """What the panel says of the order that lies on the counter."""
        return [self.desk.answer.verdict, *self.counter.order.panel.spoken()]

    # ---- Rail

    def check_in(self, tag: str, **fields: str) -> RailPlace:
        """The next animal of the list is checked in."""
        rail = self.go(Key.Key_F3, RailPlace)
        rail.table.setFocus()
        at = next(n for n, row in enumerate(rail.table.rows.rows()) if row.state == "booked")
        rail.table.choose(at)
        self.keys.press(Key.Key_Return)
        dialog = rail.dialog
        assert isinstance(dialog, CheckInDialog)
        self.keys.at(dialog)
        self.keys.fill(dialog.tag, tag)
        for name, text in fields.items():
            field = getattr(dialog, name, None) or getattr(dialog.facts, name)
            self.keys.fill(field, text)
        self.take_in()
        return rail

    def weigh(self, *weights: str) -> None:
        """Weights into the field that has the focus, Enter after each."""
        for weight in weights:
            type_into(self.keys.focused(), weight)
            self.keys.press(Key.Key_Return)

    def lose(self, rail: RailPlace, **fields: str) -> None:
        """F9: a part is gone."""
        self.keys.press(Key.Key_F9)
        dialog = rail.dialog
        assert isinstance(dialog, LossDialog)
        self.keys.at(dialog)
        self.qtbot.waitUntil(lambda: not self.bench.work.busy())
        for name, text in fields.items():
            self.keys.fill(getattr(dialog, name), text)
        self.take_in()

    # ---- Block

    def on_block(self) -> BlockPlace:
        """The first carcass of the block's list is opened, its sheet read and begun."""
        block = self.go(Key.Key_F4, BlockPlace)
        block.table.setFocus()
        self.keys.press(Key.Key_Return)
        view = block.view
        assert view.cutting is not None
        for _ in range(6):
            if view.cutting is not None and view.cutting.animal.state == "on_block":
                return block
            self.keys.press(Key.Key_Space)
        raise AssertionError("the carcass is never begun")

    def cut(self, block: BlockPlace) -> None:
        """Every line ticked, until the carcass is cut."""
        view = block.view
        for _ in range(MOST_TURNS):
            if block.stack.currentWidget() is not view:
                return
            ticking = isinstance(self.keys.focused(), Tick)
            self.keys.press(Key.Key_Return if ticking else Key.Key_Space)
        raise AssertionError("the carcass is never cut")

    # ---- Wrap

    def wrap(self, owner: str, weight: str = "3.25 lb", most: int = 99) -> int:
        """A package of each line of the order, or of so many; how many."""
        wrap = self.go(Key.Key_F5, WrapPlace)
        order = self.order(owner)
        self.qtbot.waitUntil(lambda: not self.bench.work.busy())
        self.keys.press(Key.Key_F7)
        self.keys.ctrl(Key.Key_A)
        self.keys.press(Key.Key_Delete)
        self.keys.type(str(order.number))
        self.keys.press(Key.Key_Return)
        self.qtbot.waitUntil(
            lambda: wrap.wrapping is not None and wrap.wrapping.order.id == order.id
        )
        assert wrap.wrapping is not None
        self.keys.tab_to(wrap.lines)
        count = 0
        for at in range(min(len(wrap.wrapping.lines), most)):
            wrap.lines.choose(at)
            wrap.lines.setFocus()
            self.keys.press(Key.Key_Return)
            self.weigh(weight)
            self.keys.press(Key.Key_Escape)
            count += 1
        asked = self.bench.messages
        assert isinstance(asked, RecordedMessages)
        asked.answers.append("the story packs one of each line")
        self.keys.ctrl(Key.Key_Return)
        self.qtbot.waitUntil(lambda: self.order(owner).state == "ready")
        assert not asked.answers, "one package of a line isn't all that was planned"
        return count
