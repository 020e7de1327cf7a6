"""Packages: numbered once, void with a reason, counted by line."""

from db.unit_of_work import Work
from shared.shop.orders import Order
from shared.shop.packages import CountRow, NewPackage, PackageMade, without_label
from shared.shop.problems import Refused
from shared.shop.states import OrderState
from shared.units import Weight
from tests.db.examples import (
    GROUND,
    at_the_block,
    line,
    lot_of_halves,
    order_of,
    package,
    settled,
)


def added(work: Work, new: NewPackage) -> PackageMade | Refused:
    with at_the_block(work, new.order_id):
        return work.packages.add(new)


def test_a_package_carries_owner_weight_and_number(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot, 2)
    ground = line(work, order, GROUND)
    made = added(
        work,
        NewPackage(
            order.id,
            ground.line,
            "ground",
            "Ground pork",
            Weight(102, "lb", -2),
            tare=Weight(2, "lb", -2),
            pieces=1,
            finishes=("seasoned",),
        ),
    )
    assert isinstance(made, PackageMade)
    assert (made.label_number, made.owner, made.share, made.lot_id) == (
        1,
        "Bert Iversen",
        2,
        lot.id,
    )
    assert (made.net, made.tare, made.finishes) == (
        Weight(102, "lb", -2),
        Weight(2, "lb", -2),
        ("seasoned",),
    )
    assert (made.made_at, made.person, made.station) == (work.now, "Test", "Bench")
    assert work.packages.by_label(1) == made
    assert work.packages.by_label(2) is None


def test_a_label_is_handed_to_the_printer_once_and_the_rest_are_known(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ground = line(work, order, GROUND)
    first, second, third = (package(work, order, ground, net) for net in ("1.01", "1.02", "1.03"))
    assert [one.labelled_at for one in (first, second, third)] == [None, None, None]
    assert work.packages.labelled([first.id]) == 1
    assert work.packages.labelled([first.id, second.id]) == 1
    work.packages.void(third.id, "torn")
    assert without_label(work.packages.of_order(order.id)) == ()
    kept = work.packages.get(first.id)
    assert kept is not None
    assert kept.labelled_at == work.now


def test_a_void_package_is_kept_and_its_number_not_used_again(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    first = package(work, order, ham)
    assert work.packages.void(first.id, " ") == Refused("reason_missing")
    void = work.packages.void(first.id, "torn")
    assert isinstance(void, PackageMade)
    assert (void.void, void.voided_by, void.voided_at) == ("torn", "Test", work.now)
    assert work.packages.void(first.id, "again") == Refused("already_void")
    second = package(work, order, ham, "16.2")
    assert second.label_number == 2
    assert work.packages.of_order(order.id) == (void, second)
    assert work.packages.of_order(order.id, void=False) == (second,)
    assert work.packages.of_lot(order.lot_id, void=False) == (second,)


def test_a_package_on_no_line_needs_a_reason(work: Work) -> None:
    lot = lot_of_halves(work)
    anna, bert = order_of(work, lot, 1), order_of(work, lot, 2)
    ham = line(work, anna)
    odd = NewPackage(anna.id, 0, "soup_bones", "Soup bones", Weight(3, "lb"))
    assert added(work, odd) == Refused("reason_missing")
    reason = NewPackage(anna.id, 0, "soup_bones", "Soup bones", Weight(3, "lb"), reason="asked")
    assert isinstance(added(work, reason), PackageMade)
    strange = NewPackage(bert.id, ham.line, "whole_ham", "Ham", Weight(3, "lb"))
    assert added(work, strange) == Refused("not_on_order", {"line": "1"})
    empty = NewPackage(anna.id, ham.line, "whole_ham", "Ham", Weight(0, "lb"))
    assert added(work, empty) == Refused("not_positive")


def test_counts_are_by_line_and_exact(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham, ground = line(work, order), line(work, order, GROUND)
    package(work, order, ham)
    for net in ("1.02", "0.98", "1"):
        added(
            work,
            NewPackage(
                order.id, ground.line, "ground", "Ground", Weight.from_pounds(net), pieces=1
            ),
        )
    assert work.packages.counts(order.id) == (
        CountRow(1, "whole_ham", "Whole ham", 1, 0, Weight(1625, "lb", -2).nanograms),
        CountRow(2, "ground", "Ground", 3, 3, Weight(3, "lb").nanograms),
    )


def test_only_an_order_at_the_block_or_cut_takes_packages(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    new = NewPackage(order.id, ham.line, ham.cut, "Whole ham", Weight.from_pounds("16.25"))
    assert work.packages.add(new) == Refused("not_open", {"state": "open"})
    settled(work, order.id)
    assert work.packages.add_equal(new, 80) == Refused("not_open", {"state": "settled"})
    work.orders.release(order.lot_id, (order.id,), snapshot="{}", pdf=b"%PDF sheet")
    assert isinstance(work.packages.add(new), PackageMade)
    moved(work, order.id, "cut")
    assert isinstance(work.packages.add(new), PackageMade)
    moved(work, order.id, "ready")
    assert work.packages.add_equal(new, 80) == Refused("not_open", {"state": "ready"})
    moved(work, order.id, "cut", "one was left in smoke")
    made = work.packages.add(new)
    assert isinstance(made, PackageMade)
    assert made.label_number == 3  # what is refused takes no number


def moved(work: Work, order_id: int, to: OrderState, reason: str = "") -> None:
    order = work.orders.get(order_id)
    assert order is not None
    assert isinstance(work.orders.move(order_id, to, reason=reason, version=order.version), Order)
