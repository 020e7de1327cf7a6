"""Rows met by sums: the first assignment is the first there is, also where sums pass others."""

import random
from itertools import product

import pytest

from shared.cutting import by_sums
from shared.cutting.by_sums import BySums
from shared.cutting.judge import Left
from shared.cutting.problem import Part, Problem, Witness
from shared.cutting.run_packing import Piece
from shared.cutting.strip import Strip
from tests.shared.cutting.test_search import plain


def lefts(given: Problem) -> list[Left]:
    return [Left(number, need, 0) for number, (need, _) in enumerate(given.rows)]


def by(given: Problem) -> BySums:
    return BySums(given, given.empty(), lefts(given))


def test_the_worked_numbers() -> None:
    # 3 pieces of 4 in and then 1 of 5 in on two sides of 10 in; 2 of 5 in can't be cut beside.
    given = plain([10, 10], [(3, 4), (1, 5)])
    assert by(given).first() == (True, {0: (2, 1), 1: (0, 1)})
    assert by(given).any().witness is not None
    assert by(plain([10, 10], [(3, 4), (2, 5)])).any() == (True, None)
    assert by(plain([10, 10], [(3, 4), (2, 5)])).first() == (True, None)


def test_a_witness_that_is_known_is_bettered() -> None:
    given = plain([10, 10], [(1, 4), (1, 5)])
    assert by(given).first({0: (0, 1), 1: (1, 0)}) == (True, {0: (1, 0), 1: (1, 0)})


def test_what_lies_there_already_counts() -> None:
    given = plain([10, 10], [(1, 4), (3, 4)])
    state = given.added(given.empty(), given.rows[0][1][0], 1)
    assert BySums(given, state, [Left(1, 3, 0)]).first() == (True, {1: (1, 2)})
    assert BySums(given, state, [Left(1, 4, 0)]).any() == (True, None)


def test_options_before_the_first_are_not_made() -> None:
    given = plain([10, 10], [(2, 4)])
    assert BySums(given, given.empty(), [Left(0, 2, 1)]).first() == (True, {0: (0, 2)})
    assert BySums(given, given.empty(), [Left(0, 3, 1)]).any() == (True, None)


@pytest.mark.parametrize("seed", range(4))
def test_every_small_case_is_as_trying_everything_says(seed: int) -> None:
    draw = random.Random(seed)
    seen, unlaid = {True: 0, False: 0}, 0
    for _ in range(250):
        given = _crossed(draw)
        first = _first_of_all(given)
        asked = by(given)
        decided = asked.first()
        assert decided.known
        assert decided.witness == first, given.rows
        unlaid += asked._unlaid > 0
        found = by(given).any()
        assert found.known
        assert (found.witness is None) is (first is None)
        if found.witness is not None:
            assert given.layouts(tuple(found.witness[row] for row in range(len(given.rows))))
        seen[first is not None] += 1
    assert min(seen.values()) > 40
    assert unlaid > 2


def test_it_gives_up_where_it_grows(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(by_sums, "STEPS", 2)
    given = plain([11, 12, 13], [(2, 4), (2, 3), (3, 5), (1, 2)])
    assert by(given).any() == (False, None)


def test_it_looks_closely_and_gives_up_where_little_can_be_laid(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(by_sums, "FEW", 1)
    draw, closely = random.Random(5), 0
    for _ in range(200):
        given = _crossed(draw)
        asked = by(given)
        assert asked.first() == (True, _first_of_all(given))
        closely += asked._unlaid > 0 and asked._closely
    assert closely > 3
    monkeypatch.setattr(by_sums, "UNLAID", 0)
    draw = random.Random(5)
    assert any(not by(_crossed(draw)).first().known for _ in range(200))


def test_waste_is_left_out_where_it_grows(monkeypatch: pytest.MonkeyPatch) -> None:
    # 96 in of pieces of 6, 8 and 9 in on 96 in: each side can be filled, but not all together.
    steps: list[int] = []
    for tight in (0, 1 << 30):
        monkeypatch.setattr(by_sums, "TIGHT", tight)
        asked = by(plain([22, 25, 23, 26], [(3, 8), (4, 9), (6, 6)]))
        assert asked.any() == (True, None)
        steps.append(asked._steps)
    assert steps[0] < steps[1]


def _first_of_all(given: Problem) -> Witness | None:
    ways = [
        [
            it
            for it in product(range(need, -1, -1), repeat=len(parts))
            if sum(it) == need
            and all(
                part.cap < 0 or units <= part.cap for units, part in zip(it, parts, strict=True)
            )
        ]
        for need, parts in given.rows
    ]
    for units in product(*ways):
        state = given.lying(dict(enumerate(units)))
        cells = zip(state.used, given.there, strict=True)
        fits = zip(given.packings, state.counts, strict=True)
        if all(a <= b for a, b in cells) and all(strip.fits(one) for strip, one in fits):
            return dict(enumerate(units))
    return None


def _crossed(draw: random.Random) -> Problem:
    """Two sides with kinds that share some lanes and windows, two to four rows, and a cell."""
    kinds: list[Piece] = []
    for _ in range(draw.randint(3, 5)):
        lo, size = draw.randint(0, 5), draw.randint(1, 4)
        hi = lo + size if draw.random() < 0.3 else draw.randint(lo + size, 12)
        kinds.append(Piece(draw.randint(1, 3), ((lo, hi),), size, draw.choice([0, 0, 1])))
    rows: list[tuple[int, tuple[Part, ...]]] = []
    for kind in range(len(kinds) - 1):
        cells = ((0, draw.randint(1, 2)),) if draw.random() < 0.3 else ()
        parts = [Part(((side, kind),), cells, -1) for side in range(2)]
        if draw.random() < 0.3:
            parts.append(Part(((0, kind), (1, len(kinds) - 1)), (), draw.choice([-1, 1])))
        rows.append((draw.randint(1, 3), tuple(parts)))
    return Problem([Strip(kinds) for _ in range(2)], [(0, 1, 0), (0, 2, 0)], [3], rows)
