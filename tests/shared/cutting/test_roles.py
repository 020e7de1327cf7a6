"""What each line of an order is, and what is kept of it where other lines are made."""

from shared.cutting.demand import Demand, demand
from shared.cutting.order import Amount, Choice
from shared.cutting.plan import compiled, shop_of
from shared.cutting.roles import NOBODY, Roles, roles
from tests.shared.cutting.tiny_lot import catalogue, choice, lot, pounds

WAYS = compiled(catalogue())


def _demands(*choices: Choice) -> list[Demand]:
    shop = shop_of(lot(*choices), WAYS)
    return [demand(one, shop) for one in choices]


def _lines(demands: list[Demand]) -> list[int]:
    return [one.choice.line for one in demands]


def _roles(demands: list[Demand], last: Roles = NOBODY) -> Roles:
    return roles(demands, last, WAYS.takes_nature)


GROUND = choice(3, "ground", amount=Amount("pounds", weight=pounds(2)))


def test_each_line_has_its_role() -> None:
    found = _roles(
        _demands(choice(1, "chops", "slices", 4), choice(2, "ham_steaks", "rest"), GROUND)
    )
    assert (_lines(found.bound), _lines(found.resting), _lines(found.drawing)) == ([1], [2], [3])
    assert found.verdicts == {1: "sure", 2: "sure", 3: "sure"}


def test_other_lines_that_are_made_take_the_place_of_those_before() -> None:
    rest = choice(2, "ham_steaks", "rest")
    before = _demands(choice(1, "chops", "slices", 4), rest, GROUND, choice(4, "whole_ham"))
    first = _roles(before)
    assert _roles(list(before), first) is first
    after = [*_demands(choice(1, "chops", "slices", 6)), *before[1:]]
    then = _roles(after, first)
    assert then == _roles(after)
    assert then.bound[0] is after[0]
    assert then.resting is first.resting


def test_a_line_with_another_role_is_looked_at_with_all_others() -> None:
    before = _demands(choice(1, "chops", "slices", 4), choice(2, "ham_steaks", "rest"))
    after = [*_demands(choice(1, "chops", "rest")), before[1]]
    found = _roles(after, _roles(before))
    assert (_lines(found.bound), _lines(found.resting)) == ([], [1, 2])


def test_a_refused_line_cant() -> None:
    found = _roles(_demands(choice(1, "no_such_cut"), choice(2, "whole_ham")))
    assert (_lines(found.refused), _lines(found.bound)) == ([1], [2])
    assert found.verdicts == {1: "cant", 2: "sure"}
