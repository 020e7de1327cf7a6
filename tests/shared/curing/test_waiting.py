"""What of a batch an order still waits for, and the pounds of it that went in."""

from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

from shared.curing.batch import Batch, BatchState, PutIn
from shared.curing.waiting import in_cure, on_the_way, weighed_in
from shared.units import Weight

NOW = datetime(2026, 3, 2, 8, tzinfo=UTC)


def meat(line: int, pounds: int, *, lot: int = 1, void: str = "") -> PutIn:
    return PutIn(
        line, 1, 1, 1, 1, lot, 1, "Anna Berg", "pork", "custom", frozenset({0}), line, "bacon",
        Weight(pounds, "lb"), 1, NOW, "Test", void=void,
    )  # fmt: skip


def batch(state: BatchState, *put_in: PutIn) -> Batch:
    return Batch(1, 1, 1, "House bacon", "cured_smoked", state, put_in)


def test_a_line_waits_until_its_meat_is_out_and_packed() -> None:
    for state in ("gathering", "curing", "smoking"):
        assert in_cure(1, [batch(state, meat(6, 9))], {6}) == {6}
    done = batch("done", meat(6, 9), meat(7, 1))
    assert in_cure(1, [done]) == {6, 7}
    assert in_cure(1, [done], {6}) == {7}
    assert in_cure(1, [replace(done, state="packed")]) == frozenset()


def test_a_line_is_as_far_as_the_last_of_its_meat() -> None:
    """Its packages are told apart by the table; what is out, or out again, is on no way."""
    cure = batch("curing", meat(6, 9), meat(9, 2, void="wrong ham"))
    smoke = batch("smoking", meat(6, 4), meat(7, 1))
    done = batch("done", meat(8, 3))
    assert on_the_way(1, [smoke, cure, done]) == {6: "curing", 7: "smoking"}
    assert on_the_way(1, [cure, smoke]) == {6: "curing", 7: "smoking"}
    assert on_the_way(2, [cure, smoke, done]) == {}


def test_other_lots_and_what_was_taken_out_again_wait_for_nothing() -> None:
    mixed = batch("curing", meat(6, 9), meat(8, 5, lot=2), meat(9, 2, void="wrong ham"))
    assert in_cure(1, [mixed]) == {6}
    assert weighed_in(1, [mixed]) == {6: Fraction(9)}


def test_pounds_in_add_up_over_batches_and_wait_while_one_is_put_together() -> None:
    first, second = batch("curing", meat(6, 9)), batch("done", meat(6, 10))
    assert weighed_in(1, [first, second]) == {6: Fraction(19)}
    assert weighed_in(1, [first, replace(second, state="gathering")]) == {}
