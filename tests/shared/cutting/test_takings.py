"""What options that take the rest have taken, turn by turn."""

from shared.cutting.occupied import Occupied
from shared.cutting.take import Lane
from shared.cutting.takings import Reach, Taking, Takings

LANE: Lane = ((0, 1, 0), 0)
OTHER: Lane = ((0, 1, 0), 1)


def _shown(takings: Takings, base: Occupied, turn: int) -> Occupied:
    there = Occupied(base.denominator, base.split)
    takings.show(there, base, Reach((), (LANE, OTHER), (), (), ((1, *LANE),), 1), turn)
    return there


def test_a_turn_sees_what_groups_and_earlier_turns_took() -> None:
    base = Occupied(1, split=True, lanes={LANE: ((0, 5),)}, accounts={(1, *LANE): 5})
    takings = Takings()
    takings.put(0, Taking([(LANE, (5, 8))], [((1, *LANE), 3)], []))
    takings.put(2, Taking([(LANE, (8, 9))], [((1, *LANE), 1)], []))
    there = _shown(takings, base, 2)
    assert there.lanes == {LANE: ((0, 5), (5, 8)), OTHER: ()}
    assert there.accounts == {(1, *LANE): 8}
    assert _shown(takings, base, 0).lanes == {LANE: ((0, 5),), OTHER: ()}


def test_what_a_turn_took_before_is_gone() -> None:
    takings = Takings()
    first = Taking([(LANE, (5, 8)), (LANE, (9, 10))], [], [])
    assert takings.put(0, first) is None
    assert takings.put(0, Taking([(OTHER, (0, 1))], [], [])) == first
    base, every = (
        Occupied(1, split=False),
        Occupied(1, split=False, lanes={LANE: ((5, 8), (9, 10))}),
    )
    takings.write(base, every, {LANE, OTHER})
    assert every.lanes == {OTHER: ((0, 1),)}
