"""A group as numbers: what one unit takes of a cell in several ways is one amount."""

from dataclasses import replace

from shared.carcass.carcass import SideWeights
from shared.cutting.capacity import SURE
from shared.cutting.demand import Row, demand
from shared.cutting.plan import compiled, shop_of
from shared.cutting.problem import Part, Problem, problem
from shared.cutting.run_packing import Piece
from shared.cutting.strip import Strip as Packing
from shared.cutting.take import Take
from tests.shared.cutting.tiny_lot import carcass, catalogue, choice, lot, pounds

WAYS = compiled(catalogue())
EVEN = carcass(chilled=(SideWeights(pounds(100)), SideWeights(pounds(100))))
UNEVEN = carcass(chilled=(SideWeights(pounds(100)), SideWeights(pounds(110))))


def test_what_is_taken_of_a_cell_in_several_ways_is_added_up() -> None:
    one = choice(1, "chops", "pieces", 1)
    (option, *_) = demand(one, shop_of(lot(one), WAYS)).options
    cell, other = (0, 1, "back", 1, 1), (0, 1, "back", 1, 2)
    take = Take((), ((cell, 3, 10), (other, 1, 5), (cell, 4, 10)))
    given = problem([Row(1, 2, [replace(option, takes={SURE: take})])], SURE, WAYS)
    (part,) = given.rows[0][1]
    assert (part.cells, given.there) == (((0, 7), (1, 1)), [10, 5])
    assert given.room(part, given.empty(), 2) == 1


def test_sides_of_one_weight_share_what_is_tried() -> None:
    one = choice(1, "chops", "pieces", 1)
    for herd, same in ((EVEN, True), (UNEVEN, False)):
        question = replace(lot(one, sides=2), carcasses=(herd,))
        rows = demand(one, shop_of(question, WAYS)).rows
        first, second = problem(rows, SURE, WAYS).packings
        assert (first is second) is same


def test_what_lies_is_what_was_added() -> None:
    one = choice(1, "chops", "pieces", 3)
    given = problem(demand(one, shop_of(lot(one, sides=2), WAYS)).rows, SURE, WAYS)
    first, second = given.rows[0][1]
    by_hand = given.added(given.added(given.empty(), first, 1), second, 2)
    assert given.lying({0: (1, 2)}) == by_hand
    assert given.layouts(((1, 2),)) is not None


def test_a_unit_with_two_pieces_on_one_strip_has_room_for_both() -> None:
    # Of 4 and 5 on one strip of 20 two units fit, of 7 on another of 15 two; with 3 there one.
    packings = [
        Packing([Piece(1, ((0, 20),), 4, 0), Piece(1, ((0, 20),), 5, 0)]),
        Packing([Piece(1, ((0, 15),), 7, 0), Piece(1, ((0, 15),), 3, 0)]),
    ]
    unit, other = Part(((0, 0), (0, 1), (1, 0)), (), -1), Part(((1, 1),), (), -1)
    given = Problem(packings, [(0, 1, 0), (0, 1, 1)], [], [(9, (unit, other))])
    empty = given.empty()
    assert given.room(unit, empty, 9) == 2
    assert given.room(unit, given.added(empty, unit, 1), 9) == 1
    assert given.room(unit, given.added(empty, other, 1), 9) == 1
    assert given.room(unit, given.added(empty, other, 3), 9) == 0
