"""Orders: states, release with its sheet and pins, acknowledgement, closing, lists."""

from dataclasses import replace
from datetime import date

from db.unit_of_work import Work
from shared.cutting.order import Choice
from shared.shop.holdings import half
from shared.shop.lots import LotShare, NewLot
from shared.shop.money import IssuedBill
from shared.shop.orders import Order
from shared.shop.papers import digest
from shared.shop.problems import MoveRefused, NotClosed, StaleEdit
from shared.shop.sheets import Sheet
from shared.shop.states import OrderState
from tests.db.examples import (
    KILL_DAY,
    arrived,
    booked,
    customer,
    issued_pdf,
    line,
    lot_of_halves,
    lot_of_one,
    order_of,
    package,
    settled,
)


def there(work: Work, order_id: int) -> Order:
    order = work.orders.get(order_id)
    assert order is not None
    return order


def stepped(work: Work, order_id: int, *states: OrderState) -> Order:
    for state in states:
        made = work.orders.move(order_id, state, version=there(work, order_id).version)
        assert isinstance(made, Order), made
    return there(work, order_id)


def released(work: Work, lot_id: int, *order_ids: int) -> Sheet:
    sheet = work.orders.release(lot_id, order_ids, snapshot='{"plan":1}', pdf=b"%PDF sheet")
    assert isinstance(sheet, Sheet), sheet
    return sheet


def test_release_keeps_the_sheet_whole_and_pins_its_lines(work: Work) -> None:
    lot = lot_of_halves(work)
    anna, bert = order_of(work, lot, 1), order_of(work, lot, 2)
    ham, other = line(work, anna), line(work, bert)
    settled(work, anna.id)
    settled(work, bert.id)
    sheet = work.orders.release(
        lot.id,
        [anna.id, bert.id],
        snapshot='{"plan":1}',
        pdf=b"%PDF sheet",
        pins={ham.line: ((0, 1, 1),), other.line: ((0, 2, 1),)},
    )
    assert isinstance(sheet, Sheet)
    assert (sheet.number, sheet.order_ids) == (1, (anna.id, bert.id))
    assert (sheet.person, sheet.released_at) == ("Test", work.now)
    now = there(work, anna.id)
    assert (now.state, now.sheet, now.acknowledged) == ("released", 1, 0)
    assert now.choices == (replace(ham, pinned=((0, 1, 1),)),)
    paper = work.papers.get(sheet.paper_id)
    assert paper is not None
    assert (paper.pdf, paper.snapshot) == (b"%PDF sheet", '{"plan":1}')
    assert paper.sha256 == digest('{"plan":1}')


def test_only_settled_orders_are_released(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    refused = MoveRefused("no_such_move", "open", "released")
    assert work.orders.release(lot.id, [order.id], snapshot="", pdf=b"") == refused
    settled(work, order.id)
    aside = work.orders.move(order.id, "released", version=there(work, order.id).version)
    assert aside == MoveRefused("no_such_move", "settled", "released")
    assert isinstance(work.orders.release(lot.id, [], snapshot="", pdf=b""), MoveRefused)


def test_a_change_after_release_asks_for_the_next_sheet(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    ham = line(work, order)
    settled(work, order.id)
    first = released(work, lot.id, order.id)
    work.orders.acknowledge(first.id)
    assert not there(work, order.id).changed_since_sheet
    changed = work.orders.change_line(order.id, replace(ham, note="short shank"))
    assert isinstance(changed, Choice)
    now = there(work, order.id)
    assert (now.state, now.changed_since_sheet, now.sheet) == ("released", True, 1)
    second = released(work, lot.id, order.id)
    now = there(work, order.id)
    assert (second.number, now.sheet, now.acknowledged) == (2, 2, 1)
    assert not now.changed_since_sheet
    noted = work.orders.acknowledge(second.id)
    assert (noted.acknowledged_by, noted.acknowledged_at) == ("Test", work.now)
    assert work.orders.acknowledge(second.id) == noted
    assert there(work, order.id).acknowledged == 2
    assert [one.number for one in work.orders.sheets(lot.id)] == [1, 2]


def test_acknowledging_an_old_sheet_does_not_turn_back(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    settled(work, order.id)
    first, second = released(work, lot.id, order.id), released(work, lot.id, order.id)
    work.orders.acknowledge(second.id)
    work.orders.acknowledge(first.id)
    assert there(work, order.id).acknowledged == 2


def test_note_and_due_day(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    noted = work.orders.save_note(order.id, "ring after six", date(2026, 3, 11), version=1)
    assert isinstance(noted, Order)
    assert (noted.note, noted.due, noted.version) == ("ring after six", date(2026, 3, 11), 2)
    late = work.orders.save_note(order.id, "no", None, version=1)
    assert isinstance(late, StaleEdit)
    assert (late.asked, late.found, late.by) == (1, 2, "Test")


def test_an_order_closes_when_handed_over_billed_and_paid(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    settled(work, order.id)
    released(work, lot.id, order.id)
    stepped(work, order.id, "cut", "ready")
    not_yet = work.orders.close(order.id, version=there(work, order.id).version)
    assert not_yet == NotClosed(("not_handed_over", "not_billed"))
    stepped(work, order.id, "handed_over")
    work.payments.take(order.id, "deposit", "cash", 5000)
    work.bills.issue(order.id, total_cents=12_345, snapshot="{}", pdf=issued_pdf)
    owing = work.orders.close(order.id, version=there(work, order.id).version)
    assert owing == NotClosed(("balance",))
    work.payments.take(order.id, "payment", "check", 7345, "no. 211")
    closed = work.orders.close(order.id, version=there(work, order.id).version)
    assert isinstance(closed, Order)
    assert closed.closed_at == work.now
    assert [one.id for one in work.orders.list(closed=True)] == [order.id]
    assert [one.share for one in work.orders.list(closed=False)] == [2]
    back = work.orders.move(order.id, "ready", reason="two boxes left here", version=closed.version)
    assert isinstance(back, Order)
    assert back.closed_at is None


def test_the_list_shows_money_packages_and_tags(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    arrived(work, lot)
    ham = line(work, order)
    package(work, order, ham)
    void = package(work, order, ham, "15.9")
    work.packages.void(void.id, "torn")
    work.payments.take(order.id, "deposit", "cash", 5000)
    bill = work.bills.issue(order.id, total_cents=12_345, snapshot="{}", pdf=issued_pdf)
    assert isinstance(bill, IssuedBill)
    work.bills.credit(bill.id, total_cents=345, reason="hook", snapshot="{}", pdf=issued_pdf)
    row = next(one for one in work.orders.list() if one.id == order.id)
    assert (row.lines, row.packages, row.tags) == (1, 1, "114")
    assert (row.billed_cents, row.due_cents, row.closed) == (12_000, 7_000, False)
    assert (row.owner, row.phone, row.day) == ("Anna Berg", "(555) 010-0123", lot.day)


def test_orders_are_found_and_sorted(work: Work) -> None:
    lots = [
        lot_of_one(work, name, date(2026, 3, day))
        for name, day in (("Cleo", 12), ("Ada", 11), ("Ben", 10))
    ]
    arrived(work, lots[0], "T-9")
    settled(work, order_of(work, lots[1]).id)
    assert [one.owner for one in work.orders.list()] == ["Ben", "Ada", "Cleo"]
    assert [one.owner for one in work.orders.list(sort="owner")] == ["Ada", "Ben", "Cleo"]
    assert [one.owner for one in work.orders.list(sort="number", descending=True)] == [
        "Ben",
        "Ada",
        "Cleo",
    ]
    assert [one.owner for one in work.orders.list(states=("settled",))] == ["Ada"]
    assert [one.owner for one in work.orders.list(text="t-9")] == ["Cleo"]
    assert [one.owner for one in work.orders.list(text="2")] == ["Ada"]
    assert len(work.orders.list(text="5550100123")) == 3
    assert work.orders.count(text="0100123") == 3
    assert [one.owner for one in work.orders.list(start=date(2026, 3, 11), limit=1)] == ["Ada"]
    assert [one.owner for one in work.orders.list(end=date(2026, 3, 10))] == ["Ben"]
    assert work.orders.get(99) is None


def test_an_order_of_nobody_yet_is_found_by_the_producers_name(work: Work) -> None:
    """By the name he has today; once it has an owner, by that one alone."""
    anna, bert = customer(work), customer(work, "Bert Iversen")
    shares = (LotShare(1, bert.id, holdings=half(0, 1)), LotShare(2, None, holdings=half(0, 2)))
    booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares))
    lot_of_one(work, "Cleo")
    found = work.orders.list(text="anna")
    assert [(one.share, one.owner, one.producer) for one in found] == [(2, "", "Anna Berg")]
    assert work.orders.count(text="Berg") == 1
    assert [one.share for one in work.orders.list(text="iversen")] == [1]
    other = customer(work, "Anne Berg-Holm")
    work.customers.join(anna.id, other.id)
    for name in ("Holm", "anna"):
        assert [one.producer for one in work.orders.list(text=name)] == ["Anne Berg-Holm"]


def test_earlier_orders_of_the_customer_and_of_whom_was_joined_into_them(work: Work) -> None:
    old = lot_of_one(work, "A. Berg", date(2025, 3, 10))
    lamb = lot_of_halves(work, "lamb", date(2025, 9, 1))
    now = lot_of_halves(work)
    owner, other = now.shares[0].customer_id, old.shares[0].customer_id
    assert owner is not None
    assert other is not None
    for lot in (old, lamb, now):
        line(work, order_of(work, lot))
    here = order_of(work, now)
    assert work.orders.earlier(here.id) == ()
    work.customers.join(other, owner)
    ((row, order),) = work.orders.earlier(here.id)
    assert (row.day, row.species, order.id) == (date(2025, 3, 10), "pork", order_of(work, old).id)
    assert [one.cut for one in order.choices] == ["whole_ham"]


def test_who_orders_for_the_first_time_has_none_earlier(work: Work) -> None:
    lot = lot_of_halves(work)
    assert work.orders.earlier(order_of(work, lot, 2).id) == ()


def test_the_phones_of_a_lot_s_owners(work: Work) -> None:
    lot = lot_of_halves(work)
    phones = work.orders.phones(lot.id)
    assert phones == {
        order_of(work, lot, 1).id: "(555) 010-0123",
        order_of(work, lot, 2).id: "(555) 010-0456",
    }
