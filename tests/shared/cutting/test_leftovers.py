"""What takes the rest, what stays open, and what is told about it."""

from fractions import Fraction

from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import SAW, catalogue, choice, inches, lot


def test_the_rest_starts_after_the_last_kerf() -> None:
    found = plan(
        lot(choice(1, "chops", "slices", 10), choice(2, "boneless_chops", "rest")), catalogue()
    )
    rest = next(one for one in found.lines if one.line == 2)
    assert rest.start == 10 * (inches("3/4") + SAW)
    assert rest.end == inches("30")
    # 21 7/8 in at 3/4 in with a knife.
    assert rest.count == 29


def test_every_free_interval_is_taken() -> None:
    found = plan(lot(choice(1, "back_ribs"), choice(2, "chops", "rest")), catalogue())
    assert [(one.start, one.end) for one in found.lines if one.line == 2] == [
        (0, inches("7")),
        (inches("18"), inches("30")),
    ]


def test_rests_come_in_line_order_and_the_second_is_told() -> None:
    found = plan(lot(choice(1, "brisket_half", "rest"), choice(2, "brisket", "rest")), catalogue())
    assert [(one.line, one.count) for one in found.lines] == [(1, 2)]
    assert [(one.code, one.line) for one in found.cautions] == [("rest_twice", 2)]


def test_nothing_left_is_a_caution_and_no_refusal() -> None:
    found = plan(lot(choice(1, "whole_ham"), choice(2, "ham_steaks", "rest")), catalogue())
    assert found.verdict == "sure"
    assert [(one.code, one.line) for one in found.cautions] == [("rest_empty", 2)]
    little = plan(
        lot(
            choice(1, "ham_steaks", "slices", 6, thickness=inches("11/16")),
            choice(2, "ham_steaks", "rest"),
        ),
        catalogue(),
    )
    assert [(one.code, one.line) for one in little.cautions] == [("rest_under_one_piece", 2)]


def test_open_parts_are_what_nobody_settled() -> None:
    found = plan(
        lot(choice(1, "ham_steaks", "slices", 2), choice(2, "brisket_half", "pieces", 1)),
        catalogue(),
    )
    fractions = {one.part: one.fraction for one in found.open_parts}
    steaks = 2 * (inches("3/4") + SAW)
    assert fractions["ham_centre"] == Fraction(inches("19/4") - steaks, inches("19/4"))
    assert fractions["brisket"] == Fraction(1, 2)
    assert fractions["heart"] == Fraction(1, 2)  # of the animal: one of two sides
    assert fractions["meat_rib"] == 1


def test_a_sheet_can_be_closed() -> None:
    closed = lot(
        choice(1, "chops", "slices", 12), choice(2, "boneless_chops", "rest"),
        choice(3, "tenderloin", "rest"), choice(4, "grind_ham", "rest"), choice(5, "brisket"),
    )  # fmt: skip
    left = {one.part for one in plan(closed, catalogue()).open_parts}
    assert left == {"bone_rib", "bone_loin", "bone_sirloin", "heart"}
