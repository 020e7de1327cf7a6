"""Conflicts: irreducible, found newest first, and told where and with what numbers."""

import random
from fractions import Fraction
from unittest.mock import patch

import pytest

from shared.cutting import settled
from shared.cutting.answer import Where
from shared.cutting.conflict import split_up
from shared.cutting.conflict_place import ranges
from shared.cutting.demand import Demand, demand
from shared.cutting.order import Question
from shared.cutting.plan import compiled, plan, shop_of
from shared.cutting.run_packing import Piece
from shared.cutting.standing import Standing, stands
from shared.cutting.ways import Ways
from tests.shared.cutting.tiny_lot import SAW, catalogue, choice, inches, lot, pounds

WAYS = compiled(catalogue())


def demands(question: Question) -> list[Demand]:
    shop = shop_of(question, WAYS)
    return [demand(one, shop) for one in question.choices]


def test_whole_ham_and_steaks_meet_in_the_centre() -> None:
    question = lot(choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 6))
    (found,) = plan(question, catalogue()).conflicts
    assert found.kind == "length"
    assert found.where == Where(0, 1, "ham", "centre", "meat", "ham_centre")
    steaks = 6 * inches("3/4") + 5 * SAW  # 4 13/16 in
    assert steaks == inches("77/16")
    assert found.rivals == ((1, Fraction(inches("19/4"))), (2, Fraction(steaks)))
    assert found.asked == inches("19/4") + steaks
    assert found.expected == inches("19/4")
    assert found.most == int(Fraction(inches("19/4")) * 21 / 20 / 3175) * 3175


def test_one_line_too_many_says_what_it_needs_of_both_sides() -> None:
    (found,) = plan(lot(choice(1, "chops", "slices", 80), sides=2), catalogue()).conflicts
    assert found.where == Where(0, 0, "back", "blade", "meat", last="sirloin")
    assert found.asked == 80 * inches("3/4") + 78 * SAW
    # 5 % more, each stretch rounded down to 1/64 in: 7 22/64 twice, 11 35/64 and 5 16/64.
    assert (found.expected, found.most) == (inches("60"), 2 * inches("2015/64"))


def test_parts_off_the_runs_are_told_as_fractions() -> None:
    question = lot(choice(1, "brisket_half", "pieces", 1), choice(2, "brisket", "pieces", 1))
    (found,) = plan(question, catalogue()).conflicts
    assert (found.kind, found.where.part) == ("share", "brisket")
    assert (found.asked, found.expected) == (Fraction(3, 2), 1)


def test_a_line_refused_alone_says_why() -> None:
    thin = plan(lot(choice(1, "chops", "slices", 3, thickness=inches("1/4"))), catalogue())
    assert (thin.conflicts[0].kind, thin.conflicts[0].most) == ("thickness", inches("3/8"))
    assert plan(lot(choice(1, "nothing_such")), catalogue()).conflicts[0].kind == "amount"
    assert plan(lot(choice(1, "chops", "slices", 0)), catalogue()).conflicts[0].kind == "amount"


def test_conflicts_are_found_one_after_another_and_the_rest_stands() -> None:
    question = lot(
        choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 2),
        choice(3, "half_ham", "pieces", 1), choice(4, "chops", "slices", 45),
    )  # fmt: skip
    found = plan(question, catalogue())
    assert [one.lines for one in found.conflicts] == [(1, 2), (1, 3), (4,)]
    assert [one.line for one in found.lines] == [1]


@pytest.mark.parametrize(
    "lines",
    [
        [("whole_ham", 1), ("ham_steaks", 3), ("half_ham", 1), ("ham_ends", 1)],
        [("chops", 20), ("t_bones", 9), ("boneless_chops", 14), ("rib_roast", 1)],
        [("half_ham", 1), ("ham_ends", 2), ("ham_steaks", 4), ("grind_ham", 1)],
        [("tenderloin", 1), ("chops", 30), ("loin_roast", 1), ("saddle", 1)],
    ],
)
@pytest.mark.parametrize("sides", [1, 2])
def test_dropping_any_line_of_a_conflict_frees_the_others(
    lines: list[tuple[str, int]], sides: int
) -> None:
    numbered = enumerate(lines, start=1)
    question = lot(*[choice(n, cut, "pieces", count) for n, (cut, count) in numbered], sides=sides)
    bound = [one for one in demands(question) if one.refusal is None]
    sets, standing = split_up(bound, WAYS)
    assert stands(standing, WAYS)
    for conflict in sets:
        assert not stands(conflict, WAYS)
        for one in conflict:
            assert stands([other for other in conflict if other is not one], WAYS)


def test_too_little_trim_is_a_conflict_of_the_trim_alone() -> None:
    # The loose lean of a side is 10 lb at 80 %, so 8 lb lean and 2 lb fat.
    ground = choice(2, "ground", "pounds", share=1)
    ground = choice(2, "ground", amount=ground.amount.__class__("pounds", weight=pounds(18)))
    (found,) = plan(lot(choice(1, "whole_ham"), ground), catalogue()).conflicts
    assert (found.kind, found.lines) == ("trim", (2,))
    ten = pounds(10).nanograms
    assert (found.asked, found.expected) == (pounds(18).nanograms, ten)
    assert found.most == ten * Fraction(105, 100)


def test_what_falls_apart_without_the_newest_may_stand_at_lengths_of_its_own() -> None:
    # Made up, since no order is known of which all parts stand, but at no one set of lengths.
    question = lot(
        choice(1, "boneless_chops", "slices", 8),
        choice(2, "back_ribs"),
        choice(3, "chops", "slices", 30),
        choice(4, "ham_steaks", "slices", 2),
    )
    apart = settled.stand

    def never_both(lines: list[Demand], ways: Ways) -> Standing | None:
        return apart(lines, ways) if len(lines) == 1 else None

    before = plan(question, catalogue())
    assert [one.lines for one in before.conflicts] == [(2, 3)]
    with patch.object(settled, "stand", never_both):
        assert plan(question, catalogue()) == before


def test_a_piece_lies_on_all_stretches_it_touches_and_a_fixed_one_on_each() -> None:
    # Of stretches of 5, 4, 0 and 6: between 5 and 10 the second to the fourth.
    assert [*ranges(Piece(1, ((5, 10),), 3, 0), (0, 5, 9, 9, 15))] == [(1, 3)]
    assert [*ranges(Piece(1, ((5, 10),), 5, 0), (0, 5, 9, 9, 15))] == [
        (1, 3),
        (1, 1),
        (2, 2),
        (3, 3),
    ]
    assert not [*ranges(Piece(1, (), 5, 0), (0, 5, 9))]
    draw = random.Random(4)
    for _ in range(300):
        bounds = (0, *sorted(draw.randint(1, 12) for _ in range(4)))
        lo, hi = sorted((draw.randint(0, 14), draw.randint(0, 14)))
        on = [n for n, end in enumerate(bounds[1:]) if bounds[n] < hi and end > lo]
        found = [*ranges(Piece(1, ((lo, hi),), -1, 0), bounds)]
        assert found == ([(on[0], on[-1])] if on else [])
