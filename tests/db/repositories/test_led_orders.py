"""An order cut as another says: its lines are set aside and come back, and who may lead whom."""

from fractions import Fraction

from db.unit_of_work import Work
from shared.carcass.carcass import Holding
from shared.shop.holdings import half, split_quarter
from shared.shop.leading import divides_with, lead_fault
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.orders import Order
from shared.shop.problems import Refused, StaleEdit, UndoRefused
from tests.db.examples import (
    GROUND,
    KILL_DAY,
    booked,
    customer,
    line,
    order_of,
    package,
    settled,
)


def divided(work: Work) -> Lot:
    """A beef: side 1 is divided by Anna, Bert and Cora, side 2 is Dora's alone."""
    names = ("Anna Berg", "Bert Iversen", "Cora Lind", "Dora Moe")
    ids = [customer(work, name, f"(555) 010-010{at}").id for at, name in enumerate(names)]
    part = (
        Holding(0, 1, "", Fraction(1, 2)),
        Holding(0, 1, "", Fraction(1, 4)),
        Holding(0, 1, "", Fraction(1, 4)),
    )
    shares = [LotShare(at + 1, ids[at], holdings=(part[at],)) for at in range(3)]
    shares.append(LotShare(4, ids[3], holdings=half(0, 2)))
    return booked(work, NewLot("beef", 1, KILL_DAY, ids[0], tuple(shares)))


def led(work: Work, lot: Lot, share: int, leader: int | None) -> Order | StaleEdit | Refused:
    order = order_of(work, lot, share)
    return work.orders.lead(order.id, leader, version=order.version)


def code(found: object) -> str:
    assert isinstance(found, Refused), found
    return found.code


def leaders(work: Work, lot: Lot) -> list[int | None]:
    now = work.lots.get(lot.id)
    assert now is not None
    return [one.leader for one in now.shares]


def test_its_lines_are_set_aside_and_it_is_kept_who_did_it(work: Work) -> None:
    lot = divided(work)
    order = order_of(work, lot, 2)
    mine = line(work, order, GROUND)
    made = led(work, lot, 2, 1)
    assert isinstance(made, Order)
    assert made.choices == ()
    assert leaders(work, lot) == [None, 1, None, None]
    assert [one.leader for one in work.lots.question(lot.id).shares] == [None, 1, None, None]
    assert [one.kind for one in work.orders.changes(order.id)] == ["add", "remove"]
    kept = next(one for one in work.changes.of("order", order.id) if one.what == "led")
    assert kept.person == "Test"
    assert code(work.orders.add_line(order.id, GROUND)) == "led"
    assert code(work.orders.add_lines(order.id, [GROUND])) == "led"
    assert work.orders.undo(order.id, 0) == UndoRefused("led")
    assert isinstance(led(work, lot, 2, None), Order)
    work.orders.undo(order.id, 0)
    assert order_of(work, lot, 2).choices == (mine,)


def test_who_may_not_lead_or_be_led(work: Work) -> None:
    lot = divided(work)
    assert code(led(work, lot, 2, 4)) == "not_together"
    assert code(led(work, lot, 4, 1)) == "not_together"
    assert code(led(work, lot, 1, 1)) == "not_together"
    assert code(led(work, lot, 1, 9)) == "not_together"
    assert isinstance(led(work, lot, 2, 1), Order)
    assert code(led(work, lot, 3, 2)) == "leader_led"
    assert code(led(work, lot, 1, 3)) == "leads_others"
    assert isinstance(led(work, lot, 3, 1), Order)
    assert leaders(work, lot) == [None, 1, 1, None]


def test_one_read_before_another_wrote_is_not_written(work: Work) -> None:
    lot = divided(work)
    order = order_of(work, lot, 2)
    assert isinstance(work.orders.lead(order.id, 1, version=order.version), Order)
    assert isinstance(work.orders.lead(order.id, None, version=order.version), StaleEdit)
    assert leaders(work, lot)[1] == 1


def test_released_it_asks_for_a_new_sheet_of_both(work: Work) -> None:
    lot = divided(work)
    one, two = order_of(work, lot, 1), order_of(work, lot, 2)
    line(work, one, GROUND)
    line(work, two, GROUND)
    for each in (one, two):
        settled(work, each.id)
    work.orders.release(lot.id, [one.id, two.id], snapshot="{}", pdf=b"%PDF")
    assert isinstance(led(work, lot, 2, 1), Order)
    assert order_of(work, lot, 1).changed_since_sheet
    assert order_of(work, lot, 2).changed_since_sheet
    assert not order_of(work, lot, 4).changed_since_sheet
    work.orders.release(lot.id, [one.id, two.id], snapshot="{}", pdf=b"%PDF")
    assert not order_of(work, lot, 2).changed_since_sheet
    assert isinstance(led(work, lot, 2, None), Order)
    assert order_of(work, lot, 1).changed_since_sheet
    assert order_of(work, lot, 2).changed_since_sheet


def test_it_is_too_late_once_something_is_cut_or_wrapped(work: Work) -> None:
    lot = divided(work)
    one = order_of(work, lot, 1)
    theirs = line(work, one, GROUND)
    work.orders.mark_made(one.id, theirs.line)
    assert code(led(work, lot, 2, 1)) == "cut_already"
    work.orders.mark_made(one.id, theirs.line, made=False)
    package(work, one, theirs)
    assert code(led(work, lot, 2, 1)) == "cut_already"
    assert isinstance(led(work, lot, 3, 2), Order)
    assert leaders(work, lot) == [None, None, 2, None]


def test_only_who_divides_exactly_the_same_goes_together() -> None:
    both = LotShare(1, None, holdings=split_quarter(0, 1) + split_quarter(0, 2))
    one = LotShare(2, None, holdings=split_quarter(0, 1))
    fore = Holding(0, 1, "fore", Fraction(1, 2))
    hind = Holding(0, 1, "hind", Fraction(1, 2))
    same = LotShare(3, None, holdings=(fore, hind))
    other = LotShare(4, None, holdings=split_quarter(1, 1))
    shares = (both, one, same, other)
    assert divides_with(shares, 2) == (3,)
    assert divides_with(shares, 1) == ()
    assert divides_with(shares, 4) == ()
    assert lead_fault(shares, 3, 2) == ""
    assert lead_fault(shares, 4, 2) == "not_together"
