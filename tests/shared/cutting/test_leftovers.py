"""What takes the rest, what stays open, and what is told about it."""

from dataclasses import replace
from fractions import Fraction

from shared.carcass import anatomy
from shared.carcass.carcass import Holding
from shared.cutting.plan import plan
from tests.bench.crowded import question_of
from tests.bench.full_orders import full_order
from tests.shared.cutting.tiny_lot import SAW, catalogue, choice, inches, lot, shared


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


def test_a_divided_side_can_be_closed() -> None:
    """Three owners of a ham of 13 in, each a third: nobody's kerf and no rounding stays open."""
    mine = (Holding(0, 1, "", Fraction(1, 3)),)
    closed = shared(
        choice(1, "ham_steaks", "slices", 1), choice(2, "grind_ham", "rest"),
        choice(3, "ham_steaks", "slices", 1, share=2), choice(4, "grind_ham", "rest", share=2),
        choice(5, "grind_ham", "rest", share=3),
        holdings=(mine, mine, mine),
    )  # fmt: skip
    answer = plan(closed, catalogue())
    assert answer.verdict == "sure"
    assert {one.part for one in answer.open_parts if one.part.startswith("ham")} == set()
    steaks_only = replace(closed, choices=(closed.choices[0],))
    left = [one for one in plan(steaks_only, catalogue()).open_parts if one.part == "ham_centre"]
    assert len(left) == 3
    # A third of 4 3/4 in, for the first owner less the steak of 3/4 in; the kerf isn't open either.
    assert sum([one.fraction for one in left]) <= 1 - Fraction(inches("3/4"), inches("19/4"))


def test_what_is_left_of_a_cut_taken_whole_is_none_of_it() -> None:
    """The leg gives its hock: what is left of it is no whole ham with the shank on."""
    choices = [
        {"line": 1, "share": 1, "cut": "whole_picnic", "amount": "all"},
        {"line": 2, "share": 1, "cut": "whole_ham", "amount": "rest"},
        {"line": 3, "share": 1, "cut": "hock", "amount": {"pieces": 1}},
    ]
    order: dict[str, object] = {
        "steelyard_order": 1, "species": "pork", "catalogue_version": 1,
        "carcasses": [{"skin": "scalded", "hot": [{"whole": "95 lb"}, {"whole": "95 lb"}]}],
        "shares": [{"number": 1, "owner": "A", "holdings": [{"carcass": 1, "side": 1}]}],
        "choices": choices,
    }  # fmt: skip
    answer = plan(question_of(order), anatomy.catalogue("pork"))
    assert [one.count for one in answer.lines if one.cut == "whole_ham"] == [0]
    assert ("rest_under_one_piece", 2) in [(one.code, one.line) for one in answer.cautions]
    order["choices"] = choices[:2]
    answer = plan(question_of(order), anatomy.catalogue("pork"))
    assert [one.count for one in answer.lines if one.cut == "whole_ham"] == [1]


def test_half_of_an_odd_length_leaves_nothing_open() -> None:
    """Two owners of a side of 401 1/2 lb and all its club steaks: one unit was left between."""
    order: dict[str, object] = {
        "steelyard_order": 1, "species": "beef", "catalogue_version": 1,
        "carcasses": [{"hot": [{"whole": "401.5 lb"}, {"whole": "398.25 lb"}]}],
        "shares": [
            {"number": n, "owner": f"Family {n}",
             "holdings": [{"carcass": 1, "side": 1, "fraction": "1/2"}]}
            for n in (1, 2)
        ],
        "choices": [
            {"line": n, "share": n, "cut": "club_steak", "amount": "all", "thickness": "3/4 in"}
            for n in (1, 2)
        ],
    }  # fmt: skip
    answer = plan(question_of(order), anatomy.catalogue("beef"))
    assert answer.verdict == "sure"
    assert not [one for one in answer.open_parts if one.part.endswith("_club")]


def test_full_orders_of_divided_sides_leave_nothing_open() -> None:
    """Each owner grinds what is open; kept from release by a millionth of a shank once."""
    beef, stood = anatomy.catalogue("beef"), 0
    for number in range(8):
        form = ("split halves", "quarters of every side")[number % 2]
        answer = plan(question_of(full_order(f"closed {number}", form)), beef)
        if answer.verdict != "cant":
            stood += 1
            assert answer.open_parts == ()
    assert stood > 2
