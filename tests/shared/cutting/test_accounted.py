"""Accounts of split shares: a line that can't be made leaves no room behind for others."""

from dataclasses import replace

from shared.carcass import anatomy
from shared.cutting.accounted import Accounted
from shared.cutting.capacity import SURE
from shared.cutting.demand import Row, demand
from shared.cutting.plan import Planner, compiled, plan, shop_of
from shared.cutting.take import Take
from tests.bench.crowded import question_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot

WAYS = compiled(catalogue())
HALF = [{"carcass": 1, "side": 2, "fraction": "1/2"}]


def test_rows_have_the_room_that_they_themselves_bring() -> None:
    # The account holds 7 1/2 in, or 8 in where a row brings eight slices of 1 in: 15 in all.
    one = choice(1, "chops", "pieces", 1)
    (option, *_) = demand(one, shop_of(lot(one), WAYS)).options
    cell, other = (0, 1, "back", 1, 1), (0, 1, "back", 1, 2)
    rows = [
        Row(n, 1, [replace(option, takes={SURE: Take((), ((cell, 2, there), (other, 1, 9)))})])
        for n, there in ((1, 15), (2, 16))
    ]
    whole = Accounted(rows, SURE, WAYS)
    assert whole.varies
    assert whole.of([0, 1]).there == whole.of([1]).there == [16, 9]
    assert whole.of([0]).there == [15, 9]
    assert whole.of([0]) is whole.of([0])
    same = Accounted(rows[:1], SURE, WAYS)
    assert not same.varies
    assert same.of([0]).there == [15, 9]


def test_thick_slices_that_cannot_be_leave_the_account_as_it_was() -> None:
    # Half of a side uncut and one arm steak fit only where an opened steak of 5 in made the
    # shoulder's account longer, by turn; 13 1/2 lb of those can't be.
    order = {
        "steelyard_order": 1,
        "species": "deer",
        "catalogue_version": 1,
        "settings": {"cut_alike": False},
        "carcasses": [
            {
                "tag": "574",
                "hot": [{"fore": "15.2 lb", "hind": "23.6 lb"}, {"whole": "30.0 lb"}],
                "age": "under_30",
                "skin": "scalded",
            }
        ],
        "shares": [
            {"number": 1, "owner": "Owner 1", "holdings": HALF},
            {"number": 2, "owner": "Owner 2", "holdings": HALF},
            {"number": 3, "owner": "Owner 3", "holdings": [{"carcass": 1, "side": 1}]},
        ],
        "choices": [
            {"line": 3, "share": 1, "cut": "uncut_side", "amount": "all"},
            {
                "line": 8,
                "share": 1,
                "cut": "arm_steak",
                "amount": {"pounds": "13.5 lb"},
                "thickness": "2 1/2 in",
                "finishes": ["butterflied"],
            },
            {"line": 14, "share": 1, "cut": "arm_steak", "amount": {"slices": 1}},
        ],
    }
    question, deer = question_of(order), anatomy.catalogue("deer")
    answer = plan(question, deer)
    assert [one.lines for one in answer.conflicts] == [(8,), (3, 14)]
    assert {one.line for one in answer.lines} == {3}
    assert Planner(deer).answer(question) == answer
