"""Lines that share no lane and no part stay apart; what a choice becomes in whole numbers."""

from fractions import Fraction

import pytest

from shared.cutting.demand import Demand, demand
from shared.cutting.groups import groups
from shared.cutting.order import Amount, Question
from shared.cutting.plan import compiled, plan, shop_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot, pounds

WAYS = compiled(catalogue())


def demands(question: Question) -> list[Demand]:
    shop = shop_of(question, WAYS)
    return [demand(one, shop) for one in question.choices]


def _grouped(*cuts: str) -> list[list[int]]:
    lines = [choice(n, cut, "pieces", 1) for n, cut in enumerate(cuts, start=1)]
    return [[one.choice.line for one in group] for group in groups(demands(lot(*lines)), WAYS)]


def test_lanes_keep_lines_apart_and_slices_join_them() -> None:
    assert _grouped("boneless_chops", "back_ribs", "whole_ham") == [[1], [2], [3]]
    assert _grouped("boneless_chops", "back_ribs", "chops", "whole_ham") == [[1, 2, 3], [4]]


def test_rows_ask_for_units_of_options_in_order() -> None:
    (half,) = demands(lot(choice(1, "half_ham", "pieces", 3), sides=2))
    (row,) = half.rows
    assert row.need == 3
    assert [(one.side, one.ways[0].way.code) for one in row.options] == [
        (1, "butt_half"), (1, "shank_half"), (2, "butt_half"), (2, "shank_half"),
    ]  # fmt: skip
    (everything,) = demands(lot(choice(1, "half_ham"), sides=2))
    assert [(one.need, len(one.options)) for one in everything.rows] == [(1, 1), (1, 1)]


def test_pins_are_rows_of_their_own() -> None:
    (pinned,) = demands(lot(choice(1, "chops", "slices", 9, pinned=((0, 2, 4),)), sides=2))
    assert [(one.need, [it.side for it in one.options]) for one in pinned.rows] == [
        (4, [2]),
        (5, [1]),
    ]


@pytest.mark.parametrize(
    ("amount", "kind"),
    [
        (Amount("pieces", count=0), "amount"),
        (Amount("fraction", fraction=Fraction(3, 2)), "amount"),
        (Amount("fraction"), "amount"),
        (Amount("pounds", weight=pounds(0)), "amount"),
    ],
)
def test_amounts_that_mean_nothing_are_refused(amount: Amount, kind: str) -> None:
    found = plan(lot(choice(1, "chops", amount=amount)), catalogue())
    assert [one.kind for one in found.conflicts] == [kind]


def test_ways_that_are_none_of_the_cut_are_refused() -> None:
    found = plan(lot(choice(1, "chops", "slices", 2, way="sideways")), catalogue())
    assert [one.kind for one in found.conflicts] == ["amount"]
    named = plan(lot(choice(1, "half_ham", "pieces", 1, way="shank_half")), catalogue())
    assert [one.way for one in named.lines] == ["shank_half"]
