"""Whether rows can be met at all: the witness meets every row, also where rows are alike."""

import random
from dataclasses import replace

from shared.cutting.judge import Judge, Left
from shared.cutting.problem import Memory
from shared.cutting.search import met
from tests.shared.cutting.test_search import plain


def test_rows_that_are_alike_get_their_own_units() -> None:
    # 2 + 3 pieces of 4 on sides of 11 and 12: two and three, the first row from the first side.
    given = plain([11, 12], [(2, 4), (3, 4)])
    rows = (Left(0, 2, 0), Left(1, 3, 0))
    assert Judge(given).meet(given.empty(), rows) == {0: (2, 0), 1: (0, 3)}


def test_a_witness_can_be_laid_as_it_stands() -> None:
    draw, met = random.Random(5), 0
    for _ in range(200):
        lengths = [draw.randint(6, 14) for _ in range(3)]
        given = plain(lengths, [(draw.randint(1, 3), draw.choice([2, 3, 4])) for _ in range(5)])
        rows = tuple(Left(number, need, 0) for number, (need, _) in enumerate(given.rows))
        witness = Judge(given).meet(given.empty(), rows)
        if witness is None:
            continue
        met += 1
        units = tuple(witness[number] for number in range(len(given.rows)))
        assert [sum(made) for made in units] == [need for need, _ in given.rows]
        assert given.layouts(units) is not None
    assert 40 < met < 160


def test_what_is_remembered_is_true_of_other_counts_too() -> None:
    # A copy that asks for other counts keeps the memory: each answer is as of a problem made anew.
    draw, met = random.Random(8), 0
    for _ in range(60):
        lengths = [draw.randint(6, 14) for _ in range(3)]
        rows = [(draw.randint(1, 3), draw.choice([2, 3, 4, 5])) for _ in range(4)]
        kept = plain(lengths, rows)
        for _ in range(6):
            asked = [(draw.randint(1, 4), size) for _, size in rows]
            again = plain(lengths, asked)
            more = replace(kept, rows=[(need, parts) for (need, _), (_, parts) in
                                       zip(asked, kept.rows, strict=True)])  # fmt: skip
            lefts = tuple(Left(number, need, 0) for number, (need, _) in enumerate(asked))
            first = Judge(more).meet(more.empty(), lefts)
            assert (first is None) is (Judge(again).meet(again.empty(), lefts) is None)
            if first is not None:
                met += 1
                units = tuple(first[number] for number in range(len(rows)))
                assert [sum(made) for made in units] == [need for need, _ in asked]
                assert more.layouts(units) is not None
    assert 60 < met < 300


def test_a_hard_judgement_says_the_same() -> None:
    draw, seen = random.Random(9), {True: 0, False: 0}
    for _ in range(150):
        lengths = [draw.randint(6, 14) for _ in range(3)]
        rows = [(draw.randint(1, 4), draw.choice([2, 3, 4, 5])) for _ in range(4)]
        lefts = tuple(Left(number, need, 0) for number, (need, _) in enumerate(rows))
        one, other = plain(lengths, rows), plain(lengths, rows)
        found = Judge(one, hard=True).meet(one.empty(), lefts) is not None
        assert found is (Judge(other).meet(other.empty(), lefts) is not None)
        seen[found] += 1
    assert min(seen.values()) > 30


def test_what_was_hard_is_told_and_is_the_same_where_sums_come_first() -> None:
    # 7 of 3 and 2 of 5 don't fit on three sides of 10; one of 11 has no room, as is seen at once.
    hard, easy = plain([10, 10, 10], [(7, 3), (2, 5)]), plain([10, 10, 10], [(1, 11), (2, 5)])
    for given in (hard, easy):
        assert met(given, (0, 1)) is None
        assert met(replace(given, memory=Memory()), (0, 1), hard=True) is None
    assert hard.memory.was_hard
    assert not easy.memory.was_hard
    draw, seen = random.Random(12), set[tuple[bool, bool]]()
    for _ in range(200):
        lengths = [draw.randint(8, 14) for _ in range(3)]
        given = plain(lengths, [(draw.randint(2, 4), draw.choice([2, 3, 4])) for _ in range(4)])
        found = met(given, range(4))
        again = met(replace(given, memory=Memory()), range(4), hard=True)
        assert (found is None) == (again is None)
        seen.add((found is None, given.memory.was_hard))
    assert seen == {(False, False), (True, False), (True, True)}
