"""Packages: numbered once, void with a reason, counted by line."""

from db.unit_of_work import Work
from shared.shop.packages import CountRow, NewPackage, PackageMade
from shared.shop.problems import Refused
from shared.units import Weight
from tests.db.examples import GROUND, line, lot_of_halves, order_of, package


def test_a_package_carries_owner_weight_and_number(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot, 2)
    ground = line(work, order, GROUND)
    made = work.packages.add(
        NewPackage(
            order.id,
            ground.line,
            "ground",
            "Ground pork",
            Weight(102, "lb", -2),
            tare=Weight(2, "lb", -2),
            pieces=1,
            finishes=("seasoned",),
        )
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
    assert work.packages.add(odd) == Refused("reason_missing")
    reason = NewPackage(anna.id, 0, "soup_bones", "Soup bones", Weight(3, "lb"), reason="asked")
    assert isinstance(work.packages.add(reason), PackageMade)
    strange = NewPackage(bert.id, ham.line, "whole_ham", "Ham", Weight(3, "lb"))
    assert work.packages.add(strange) == Refused("not_on_order", {"line": "1"})
    empty = NewPackage(anna.id, ham.line, "whole_ham", "Ham", Weight(0, "lb"))
    assert work.packages.add(empty) == Refused("not_positive")


def test_counts_are_by_line_and_exact(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham, ground = line(work, order), line(work, order, GROUND)
    package(work, order, ham)
    for net in ("1.02", "0.98", "1"):
        work.packages.add(
            NewPackage(order.id, ground.line, "ground", "Ground", Weight.from_pounds(net), pieces=1)
        )
    assert work.packages.counts(order.id) == (
        CountRow(1, "whole_ham", "Whole ham", 1, 0, Weight(1625, "lb", -2).nanograms),
        CountRow(2, "ground", "Ground", 3, 3, Weight(3, "lb").nanograms),
    )
