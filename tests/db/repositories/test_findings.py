"""The block in the store: ticks, what it read, its reports and their answers."""

from dataclasses import replace

import pytest
from sqlalchemy import update
from sqlalchemy.exc import IntegrityError

from db.tables.findings import BlockFindings
from db.unit_of_work import Work
from shared.cutting.order import Amount, Choice
from shared.shop.findings import BlockRules, Finding
from shared.shop.problems import Refused, StaleEdit
from shared.units import LENGTH_UNITS_PER_INCH, Weight
from tests.db import examples

INCH = LENGTH_UNITS_PER_INCH
STEAKS = Choice(0, 0, "ham_steak", Amount("slices", 8), thickness=INCH * 5 // 4)


def test_the_last_tick_of_a_place_holds(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    places = [(1, 4, ""), (2, 4, ""), (0, 5, "pool")]
    work.block.tick(animal.id, places, made=True)
    work.block.tick(animal.id, [(2, 4, "")], made=False)
    work.block.tick(animal.id, [], made=True)
    assert work.block.ticks(animal.id) == {(1, 4, ""), (0, 5, "pool")}
    assert work.block.ticks(animal.id + 1) == frozenset()


def test_what_the_block_has_read_is_the_last_change(work: Work) -> None:
    lot = examples.lot_of_halves(work)
    order = examples.order_of(work, lot)
    examples.line(work, order)
    examples.line(work, order, STEAKS)
    first, second = work.orders.changes(order.id)
    work.block.read(order.id, second.id)
    work.block.read(order.id, first.id)
    assert work.block.read_up_to([order.id]) == {order.id: second.id}


def test_a_report_needs_its_reason_or_its_length(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    assert work.block.report(Finding(animal.id, "lost", 1, "jowl")) == Refused("reason_missing")
    bare = Finding(animal.id, "measured", 1, "centre")
    assert work.block.report(bare) == Refused("length_missing")
    kept = work.block.report(replace(bare, length=13 * INCH + INCH // 2))
    assert isinstance(kept, Finding)
    assert (kept.tag, kept.species, kept.person, kept.length) == ("114", "pork", "Test", 2743200)


def test_a_mistake_of_ours_is_answered_once(work: Work) -> None:
    lot = examples.lot_of_halves(work)
    order = examples.order_of(work, lot, 2)
    line = examples.line(work, order, STEAKS)
    animal = examples.arrived(work, lot)
    weight = Weight(9, "lb")
    told = Finding(animal.id, "lost", 2, "ham", line.line, 0, None, weight, True, "dropped")
    kept = work.block.report(told)
    assert isinstance(kept, Finding)
    assert (kept.owner, kept.order_number, kept.weight) == ("Bert Iversen", order.number, weight)
    assert work.block.answer(kept.id, "credited", " ") == Refused("reason_missing")
    assert work.block.answer(kept.id, "credited", "credit 3") is None
    assert work.block.answer(kept.id, "no_credit", "why") == Refused("answered_already")
    assert [one.credit for one in work.block.list()] == ["credited"]


def test_a_report_is_never_changed(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    work.block.report(Finding(animal.id, "measured", 1, "centre", length=INCH))
    connection = work.block._desk.connection
    with pytest.raises(IntegrityError, match="rows are locked"):
        connection.execute(update(BlockFindings).values(length=2 * INCH))


def test_a_line_cut_otherwise_is_planned_so_and_stays_as_asked(work: Work) -> None:
    """8 steaks at 1¼ in, 4 a side; cut at 1 in, 5 came out of side 1: 9 at 1 in, 5 and 4."""
    lot = examples.lot_of_halves(work)
    order = examples.order_of(work, lot)
    line = examples.line(work, order, STEAKS)
    work.orders.pin(order.id, {line.line: ((0, 1, 4), (0, 2, 4))})
    animal = examples.arrived(work, lot)
    cut = Finding(animal.id, "cut_otherwise", 1, "ham_steak", line.line, 5, INCH, reason="slip")
    work.block.report(cut)
    (planned,) = work.lots.question(lot.id).choices
    assert (planned.thickness, planned.amount.count) == (INCH, 9)
    assert planned.pinned == ((0, 1, 5), (0, 2, 4))
    (asked,) = examples.order_of(work, lot).choices
    assert (asked.thickness, asked.amount.count) == (STEAKS.thickness, 8)


def test_rules_begin_off_and_two_can_not_write_over_each_other(work: Work) -> None:
    rules = work.block.rules()
    assert (rules.own_figures, rules.sheet_words) == (False, "window")
    kept = work.block.save_rules(replace(rules, own_figures=True, sheet_words="both"))
    assert isinstance(kept, BlockRules)
    assert kept.own_figures
    assert isinstance(work.block.save_rules(rules), StaleEdit)


def test_a_report_is_taken_back_once_and_never_beside_its_credit(work: Work) -> None:
    animal = examples.arrived(work, examples.lot_of_halves(work))
    told = [
        work.block.report(Finding(animal.id, "lost", 1, "jowl", ours=True, reason="dropped")),
        work.block.report(Finding(animal.id, "lost", 2, "jowl", ours=True, reason="dropped")),
    ]
    credited, wrong = (one for one in told if isinstance(one, Finding))
    assert work.block.answer(credited.id, "no_credit", "paid in ham") is None
    assert work.block.withdraw(credited, "wrong") == Refused("answered_already")
    assert work.block.withdraw(wrong, " ") == Refused("reason_missing")
    back = work.block.withdraw(wrong, "the other side")
    assert isinstance(back, Finding)
    assert back.withdrawn == "the other side"
    assert work.block.of_animal(animal.id)[1] == back
    assert work.block.withdraw(wrong, "again") == Refused("withdrawn_already")
    assert work.block.answer(wrong.id, "credited", "late") == Refused("withdrawn_already")
