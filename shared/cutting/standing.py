"""Whether lines can stand together: sure, likely, tight or not at all."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shared.cutting.answer import VERDICTS, Verdict
from shared.cutting.capacity import EXPECTED, MOST, SCENARIOS, SURE
from shared.cutting.demand import Demand, Row
from shared.cutting.groups import groups, rows_of
from shared.cutting.plan_lines import Laid
from shared.cutting.search import Problem, Units, layouts, problem, solve
from shared.cutting.ways import Ways


@dataclass(slots=True)
class Standing:
    """A group that stands: with which lengths, and how many units of each row where."""

    demands: list[Demand]
    rows: list[Row]
    scenario: int
    given: Problem
    units: Units

    @property
    def verdict(self) -> Verdict:
        """sure, likely or tight."""
        return VERDICTS[self.scenario]


def stand(demands: list[Demand], ways: Ways) -> Standing | None:
    """The first lengths with which a group stands, with its plan; None where it can't."""
    rows = rows_of(demands)
    for scenario in SCENARIOS:
        given = problem(rows, scenario, ways)
        units = solve(given)
        if units is not None:
            return Standing(demands, rows, scenario, given, units)
    return None


def stands(demands: Iterable[Demand], ways: Ways) -> bool:
    """Whether lines can be cut together, whatever lengths it takes."""
    return all(_any_lengths(group, ways) for group in groups(list(demands), ways))


def _any_lengths(group: Sequence[Demand], ways: Ways) -> bool:
    rows = rows_of(group)
    return any(
        solve(problem(rows, scenario, ways)) is not None for scenario in (MOST, EXPECTED, SURE)
    )


def with_up_to(
    found: Standing, asked: Sequence[Demand], ways: Ways
) -> tuple[Standing, list[tuple[Demand, int]]]:
    """Add the lines that ask for up to so many, in line order, the most that fits each.

    The lengths stay those of the group, so they never make it less sure. Gives the counts too.
    """
    counts: list[tuple[Demand, int]] = []
    for demand in asked:
        best, low, high = found, 0, demand.up_to
        middle = high
        while low < high:
            rows = [*found.rows, Row(demand.choice.line, middle, demand.options)]
            given = problem(rows, found.scenario, ways)
            units = solve(given)
            if units is None:
                high = middle - 1
            else:
                low = middle
                best = Standing([*found.demands, demand], rows, found.scenario, given, units)
            middle = (low + high + 1) // 2
        counts.append((demand, low))
        found = best
    return found, counts


def lay_out(found: Standing, ways: Ways) -> Laid:
    """Where a standing group lies: at expected lengths where it can, else at its own."""
    for scenario in (EXPECTED, found.scenario):
        if scenario == EXPECTED and found.scenario == MOST:
            continue
        given = found.given if scenario == found.scenario else problem(found.rows, scenario, ways)
        laid = layouts(given, found.units)
        if laid is not None:
            return Laid(found.rows, found.units, given, laid, scenario)
    raise AssertionError("a group that stands can be laid out")
