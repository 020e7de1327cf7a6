"""Numbers side by side: what is taken of each field is seen in its top."""

import random

from shared.cutting.side_by_side import SideBySide


def test_the_worked_number() -> None:
    # Of 5 and 3 side by side 2 and 3 may be taken, 2 and 4 may not.
    fields = SideBySide([10, 10])
    there = fields.joined([5, 3]) | fields.tops
    assert (there - fields.joined([2, 3])) & fields.tops == fields.tops
    assert (there - fields.joined([2, 4])) & fields.tops != fields.tops
    assert fields.least([fields.joined([5, 3]), fields.joined([2, 4])]) == fields.joined([2, 3])


def test_every_field_is_on_its_own() -> None:
    draw, short = random.Random(4), 0
    for _ in range(500):
        most = [draw.randint(0, 1000) for _ in range(draw.randint(0, 6))]
        fields = SideBySide(most)
        there = [draw.randint(0, one) for one in most]
        taken = [draw.randint(0, one) for one in most]
        left = (fields.joined(there) | fields.tops) - fields.joined(taken)
        for place, (a, b) in enumerate(zip(there, taken, strict=True)):
            top = 1 << fields.width * place + fields.width - 1
            assert bool(left & top) is (a >= b)
            short += a < b
        others = [[draw.randint(0, one) for one in most] for _ in range(3)]
        least = fields.joined([min(column) for column in zip(*others, strict=True)])
        assert fields.least([fields.joined(one) for one in others]) == least
    assert short > 300


def test_of_nothing_the_least_is_nothing() -> None:
    assert SideBySide([]).tops == 0
    assert SideBySide([7]).least([]) == 0
