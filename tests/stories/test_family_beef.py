"""Four families share one beef in split quarters, from the booking to the books."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.report_dialog import ReportDialog
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.payment_dialog import PaymentDialog
from desktop.counter.weights_dialog import WeightsDialog
from desktop.office.bills_page import BillsPage
from desktop.office.place import OfficePlace
from desktop.rail.correction import CorrectionDialog
from shared.shop.calls import ToRing
from tests.desktop.recorded_messages import RecordedMessages
from tests.stories.one_shop import ALT, OneShop

Key = Qt.Key
FAMILIES = ("Abbott", "Bering", "Colby", "Dray")
OWNERS = [f"{one} family 555 010 01{at}1" for at, one in enumerate(FAMILIES, start=1)]


class Families:
    """The story, step by step."""

    def __init__(self, shop: OneShop, messages: RecordedMessages) -> None:
        self.shop = shop
        self.messages = messages

    def book(self) -> None:
        shop = self.shop
        shared = "four split quarters: each side shared by two"
        shop.book("beef", "Farmer Hale 555 010 0100", shared, OWNERS, deposit="100")
        paying = shop.counter.dialog
        assert isinstance(paying, PaymentDialog)
        shop.keys.at(paying)
        shop.keys.ctrl(Key.Key_Return)
        shop.close_paper()

    def order(self) -> None:
        """Abbott and Bering both want the hanger; Dray never answers."""
        shop = self.shop
        for cut in ("sliced liver", "hanging tender"):
            shop.take(cut)
        shop.usual()
        assert shop.settle() == ""
        shop.turn_to("Bering")
        shop.take("hanging tender")
        shop.usual()
        assert shop.settle().startswith("The owners have to agree first: change a line")
        shop.turn_to("Colby")
        shop.usual()
        assert shop.settle() == "", "what two others have between them is none of his"
        shop.turn_to("Bering")
        hanger = next(one.line for one in shop.desk.order.choices if one.cut == "hanging_tender")
        table = shop.counter.order.table
        table.go_to("variety")
        table.choose([one.line for one in table.rows.rows()].index(hanger))
        table.setFocus()
        shop.keys.press(Key.Key_Delete)
        assert shop.settle() == ""
        assert [one.state for one in shop.orders()] == ["settled"] * 3 + ["open"]

    def kill(self) -> None:
        """A liver and 9 lb of the clod are lost; side 2 was misread."""
        shop = self.shop
        rail = shop.check_in("41", age="under 30 months", age_by="teeth")
        shop.weigh("1290 lb", "397.5 lb", "389.25 lb")
        shop.lose(rail, part="liver", how="discarded by the plant", reason="flukes")
        shop.keys.press(Key.Key_F8)
        right = rail.dialog
        assert isinstance(right, CorrectionDialog)
        shop.keys.at(right)
        shop.keys.fill(right.weight, "396.25 lb")
        shop.keys.fill(right.reason, "misread")
        shop.take_in()
        shop.lose(rail, part="clod, arm end", side="Side 2", weight="9 lb", reason="abscess")
        shop.keys.press(Key.Key_Space)
        shop.keys.press(Key.Key_Space)

    def told(self) -> list[str]:
        """What each family is told the evening of the kill."""
        shop = self.shop
        shop.keys.ctrl(Key.Key_W)
        place = shop.window.place()
        weights = getattr(place, "dialog", None)
        assert isinstance(weights, WeightsDialog)
        shop.qtbot.waitUntil(lambda: bool(weights.table.rows.rows()))
        found: list[str] = []
        for at in range(len(weights.table.rows.rows())):
            weights.table.choose(at)
            found.append(weights.says.text().split(",")[0].replace("\u00a0", " "))
        shop.keys.at(weights)
        shop.keys.press(Key.Key_Escape)
        return found

    def rung(self) -> dict[str, str]:
        """Whom the list has, and what he is to be told."""
        shop = self.shop
        shop.turn_to("Abbott")
        shop.counter.ring()
        calls = shop.counter.dialog
        assert isinstance(calls, CallsDialog)
        shop.qtbot.waitUntil(lambda: not shop.bench.work.busy())
        found: dict[str, str] = {}
        for at, one in enumerate(calls.table.rows.rows()):
            assert isinstance(one, ToRing)
            calls.table.choose(at)
            found[one.order.owner.split()[0]] = calls.lost.text()
        shop.keys.at(calls)
        shop.keys.press(Key.Key_Escape)
        return found

    def mend(self) -> None:
        """Each takes the way out of his own; Dray is cut as the house usually does."""
        shop = self.shop
        for name in ("Abbott", "Colby"):
            shop.turn_to(name)
            panel = shop.counter.order.panel
            shop.qtbot.waitUntil(lambda shown=panel: bool(shown.remedies))
            shop.keys.press(Key.Key_1, ALT)
        shop.release("Abbott")
        assert [one.state for one in shop.orders()] == ["released"] * 3 + ["open"]
        shop.turn_to("Dray")
        shop.usual()
        assert shop.settle() == ""
        shop.release("Dray")

    def cut(self) -> None:
        shop = self.shop
        block = shop.on_block()
        for fields in (
            {
                "kind": "a length measured",
                "stretch": "all of the short loin",
                "side": "side 1",
                "length": "13 1/2",
            },
            {
                "kind": "something lost",
                "part": "top round",
                "side": "side 2",
                "weight": "9 lb",
                "reason": "abscess",
            },
        ):
            shop.keys.ctrl(Key.Key_R)
            report = block.dialog
            assert isinstance(report, ReportDialog)
            shop.keys.at(report)
            for name, text in fields.items():
                shop.keys.fill(getattr(report, name), text)
            shop.take_in()
        shop.cut(block)
        assert {one.state for one in shop.orders()} == {"cut"}

    def page(self, owner: str) -> BillsPage:
        """The Office, with the order of a family."""
        shop = self.shop
        office = shop.go(Key.Key_F6, OfficePlace)
        page, order = office.bills, shop.order(owner)
        page.choose(order.id)
        shop.qtbot.waitUntil(
            lambda: (
                page.billing is not None
                and page.billing.order.id == order.id
                and not shop.bench.work.busy()
            )
        )
        page.orders.setFocus()
        return page

    def issue(self, owner: str) -> str:
        """Ctrl+Enter on the bill shown; what is due then."""
        shop, page = self.shop, self.page(owner)
        shop.keys.ctrl(Key.Key_Return)
        shop.qtbot.waitUntil(lambda: page.billing is not None and not page.billing.has_next)
        shop.qtbot.waitUntil(lambda: not shop.bench.work.busy())
        if QApplication.activeModalWidget() is not None:
            shop.close_paper()
        return page.side.sums["due"].text()

    def pay(self, owner: str, amount: str) -> str:
        """F8: a part of it; what is due then."""
        shop, page = self.shop, self.page(owner)
        shop.keys.press(Key.Key_F8)
        money = page.money_dialog
        shop.keys.at(money)
        shop.keys.fill(money.amount, amount)
        shop.take_in()
        shop.qtbot.waitUntil(lambda: not shop.bench.work.busy())
        return page.side.sums["due"].text()

    def credit(self, owner: str, reason: str) -> str:
        shop, page = self.shop, self.page(owner)
        page.side.credit.click()
        credit = page.credit_dialog
        shop.keys.at(credit)
        shop.keys.fill(credit.reason, reason)
        shop.keys.ctrl(Key.Key_Return)
        shop.close_paper()
        shop.qtbot.waitUntil(lambda: not shop.bench.work.busy())
        return page.side.sums["due"].text()

    def totals(self) -> list[tuple[int | None, int]]:
        """Order and cents of every bill and credit, in the order they were issued."""
        with self.shop.bench.store.read() as work:
            rows = work.bills.list(limit=100)
        rows = sorted(rows, key=lambda one: one.id)
        return [
            (one.order_id, one.total_cents if one.credits is None else -one.total_cents)
            for one in rows
        ]

    def fetch(self, owner: str, *, leave: int = 0) -> HandOverDialog:
        """F8 at the Counter; so many products stay for a second pick-up."""
        shop = self.shop
        shop.turn_to(owner)
        shop.keys.press(Key.Key_F8)
        going = shop.counter.dialog
        assert isinstance(going, HandOverDialog)
        shop.keys.at(going)
        for at in range(leave):
            going.table.choose(at)
            going.table.setFocus()
            shop.keys.press(Key.Key_Space)
        shop.take_in()
        return going


@pytest.fixture
def families(qtbot: QtBot, bench: Bench, messages: RecordedMessages) -> Families:
    return Families(OneShop(qtbot, bench), messages)


def booked_to_cut(story: Families) -> None:
    """Booked, ordered, killed, told, mended, cut."""
    story.book()
    story.order()
    story.kill()
    assert story.messages.told == [
        "No longer stands for Abbott family: sliced liver.\n"
        "They stand on the counter's list to ring, with what would work.",
        "No longer stands for Colby family: bone-in arm roast.\n"
        "They stand on the counter's list to ring, with what would work.",
    ]
    heavy, light = ("Your share hangs at 198.75 lb", "Your share hangs at 198.125 lb")
    assert story.told() == [heavy, heavy, light, light]
    rung = story.rung()
    assert rung["Abbott"].startswith("Tag 41, liver (flukes): no sliced liver any more.")
    assert rung["Colby"].startswith("Tag 41, clod, arm end (abscess): no bone-in arm roast")
    assert (rung["Dray"], set(rung)) == ("", {"Abbott", "Colby", "Dray"})
    story.mend()
    story.cut()
    rung = story.rung()
    ran = "Tag 41, the block reports (short loin ran 13½ in, side 1): "
    assert f"{ran}less T-bone steak." in rung["Abbott"].replace("\u00a0", " ")
    assert rung["Dray"] == "Tag 41, top round (abscess): less top round steak."


def billed(story: Families) -> None:
    """Each family its share, the farmer the kill; one bill credited and made again."""
    shop = story.shop
    for name in FAMILIES:
        shop.wrap(name, most=2)
    assert [story.issue(one) for one in FAMILIES] == ["$68.94", "$168.94", "$168.41", "$168.40"]
    assert story.totals() == [(1, 16_894), (2, 16_894), (3, 16_841), (4, 16_840)]
    assert sum(cents for _, cents in story.totals()) == 67_469
    assert story.pay("Colby", "100") == "$68.41"
    assert story.pay("Colby", "68.41") == "$0.00"
    assert story.credit("Bering", "the wrong card") == "$0.00"
    assert story.issue("Bering") == "$168.94"
    page = story.page("Bering")
    page.side.producers.click()
    page.orders.setFocus()
    shop.keys.ctrl(Key.Key_Return)
    shop.qtbot.waitUntil(lambda: len(story.totals()) == 7)
    assert story.totals()[4:] == [(2, -16_894), (2, 16_894), (None, 9_501)]
    assert sum(cents for _, cents in story.totals()) == 67_469 + 9_501


def test_a_divided_side_comes_from_booking_to_books(families: Families) -> None:
    """397.5 and 396.25 lb at $0.85: $674.69; halves of the sides 198.75 and 198.125 lb.

    By weight 16,893.75 cents twice and 16,840.625 twice: rounded down 67,466, and the three
    cents left go to the largest rests, of the equal ones to the lower share.
    """
    story, shop = families, families.shop
    booked_to_cut(story)
    billed(story)
    story.pay("Abbott", "68.94")
    shop.later(30)
    assert story.fetch("Colby").closed
    assert story.fetch("Abbott", leave=1).partly
    assert shop.order("Abbott").state == "ready"
    assert story.fetch("Abbott").closed
    with shop.bench.store.read() as work:
        assert sum(work.books.balances().values()) == 0
        assert work.payments.balance(shop.order("Colby").id).due == 0
