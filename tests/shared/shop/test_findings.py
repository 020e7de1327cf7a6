"""A line as the block cut it, for the plan of what is left."""

from shared.cutting.order import Amount, Choice
from shared.shop.findings import Finding, as_cut
from shared.units import LENGTH_UNITS_PER_INCH

INCH = LENGTH_UNITS_PER_INCH
ASKED = Choice(
    3, 1, "t_bone_steak", Amount("slices", 8), thickness=INCH * 5 // 4,
    pinned=((0, 1, 4), (0, 2, 4)),
)  # fmt: skip


def test_eight_asked_five_came_out_of_one_side_at_an_inch() -> None:
    made = as_cut(ASKED, Finding(7, "cut_otherwise", 1, "t_bone_steak", 3, 5, INCH, reason="slip"))
    assert (made.thickness, made.amount, made.pinned) == (
        INCH,
        Amount("slices", 9),
        ((0, 1, 5), (0, 2, 4)),
    )


def test_a_line_that_takes_all_changes_its_thickness_only() -> None:
    everything = Choice(3, 1, "t_bone_steak", Amount("all"), thickness=INCH)
    told = Finding(7, "cut_otherwise", 1, "t_bone_steak", 3, 5, INCH // 2, reason="slip")
    made = as_cut(everything, told)
    assert (made.thickness, made.amount) == (INCH // 2, Amount("all"))


def test_a_side_it_was_not_planned_on_changes_no_count() -> None:
    told = Finding(7, "cut_otherwise", 2, "t_bone_steak", 3, 5, None, reason="slip", index=1)
    assert as_cut(ASKED, told) == ASKED
