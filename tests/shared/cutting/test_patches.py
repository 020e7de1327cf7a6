"""Lines that take the rest, patch by patch, and what is taken again where nothing moved."""

from collections.abc import Callable
from unittest.mock import patch as replaced

from shared.cutting import patches as module
from shared.cutting.connected import connected
from shared.cutting.demand import demand
from shared.cutting.order import Question
from shared.cutting.patches import patches, rest_of
from shared.cutting.plan import Planner, compiled, plan, shop_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot

WAYS = compiled(catalogue())


def test_what_touches_through_others_is_together() -> None:
    assert connected([["a", "b"], ["c"], ["b", "d"], ["c"]]) == [[0, 2], [1, 3]]
    assert connected(["a", "b", "ab", ""]) == [[0, 1, 2], [3]]


def _patches(*cuts: str) -> list[list[int]]:
    question = lot(*[choice(n, cut, "rest") for n, cut in enumerate(cuts, start=1)])
    shop = shop_of(question, WAYS)
    rests = [rest_of(demand(one, shop), WAYS) for one in question.choices]
    turns = [(rest, place) for rest in rests for place in range(len(rest.reach))]
    return [[rest.of.choice.line for rest, _ in one.turns] for one in patches(turns)]


def test_a_lane_in_common_makes_one_patch() -> None:
    assert _patches("boneless_chops", "back_ribs", "ham_steaks") == [[1], [2], [3]]
    assert _patches("boneless_chops", "ham_steaks", "back_ribs", "chops") == [[1, 3, 4], [2]]


def _taken_anew(planner: Planner, question: Question) -> list[int]:
    """The lines whose rest the planner takes anew for a question; its answer is as from scratch."""
    anew: set[int] = set()

    def noted(take: Callable[..., object]) -> Callable[..., object]:
        def noting(*given: object) -> object:
            anew.add(given[0].choice.line)  # pyright: ignore[reportAttributeAccessIssue]
            return take(*given)

        return noting

    with (
        replaced.object(module, "rest_of_option", noted(module.rest_of_option)),
        replaced.object(module, "rest_line", noted(module.rest_line)),
    ):
        answer = planner.answer(question)
    assert answer == plan(question, catalogue())
    return sorted(anew)


def test_only_where_something_moved_the_rest_is_taken_anew() -> None:
    rests = (choice(2, "chops", "rest"), choice(3, "ham_steaks", "rest"))
    planner = Planner(catalogue())
    before = lot(choice(1, "back_ribs"), *rests)
    assert _taken_anew(planner, before) == [2, 3]
    assert _taken_anew(planner, before) == []
    assert _taken_anew(planner, lot(choice(1, "boneless_chops", "slices", 4), *rests)) == [2]
    assert _taken_anew(planner, lot(choice(1, "half_ham", "pieces", 1), *rests)) == [2, 3]
    assert _taken_anew(planner, lot(*rests)) == [3]


def test_what_takes_before_is_taken_again_and_not_looked_for() -> None:
    # Bone-in chops and boneless ones take the rest of one lane: the second finds nothing; where
    # the first is gone, or made of less, only what that moved is looked for.
    planner = Planner(catalogue())
    ribs, boneless = choice(2, "back_ribs", "rest"), choice(3, "boneless_chops", "rest")
    assert _taken_anew(planner, lot(choice(1, "chops", "rest"), ribs, boneless)) == [1, 2, 3]
    assert _taken_anew(planner, lot(ribs, boneless)) == [2, 3]
