"""Whether lines can stand together: sure, likely, tight or not at all."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from shared.cutting.answer import VERDICTS, Verdict
from shared.cutting.capacity import EXPECTED, MOST, SCENARIOS, SURE
from shared.cutting.demand import Demand, Row
from shared.cutting.groups import groups, rows_of
from shared.cutting.problem import Problem, Units, by_lane, problem, tried
from shared.cutting.search import possible, solve
from shared.cutting.take import Cell, Missing, Strip
from shared.cutting.ways import Ways

if TYPE_CHECKING:
    from shared.cutting.run_packing import Piece


@dataclass(slots=True)
class Standing:
    """A group that stands: with which lengths, and how many units of each row where."""

    demands: list[Demand]
    rows: list[Row]
    scenario: int
    given: Problem | None
    units: Units

    @property
    def verdict(self) -> Verdict:
        """sure, likely or tight."""
        return VERDICTS[self.scenario]


def stand(demands: list[Demand], ways: Ways) -> Standing | None:
    """The first lengths with which a group stands, with its plan; None where it can't."""
    rows = rows_of(demands)
    one_way = all(len(row.options) == 1 for row in rows)
    grew = False
    for scenario in SCENARIOS:
        if one_way:
            if _fits_one_way(rows, scenario, ways):
                units = tuple([(row.need,) for row in rows])
                return Standing(demands, rows, scenario, None, units)
            continue
        given = problem(rows, scenario, ways)
        given.memory.grew = grew
        units = solve(given)
        grew = given.memory.grew
        if units is not None:
            return Standing(demands, rows, scenario, given, units)
    return None


def _fits_one_way(rows: Sequence[Row], scenario: int, ways: Ways) -> bool:
    """Whether rows of one option each can be met: nothing is to be found, only to be added up.

    Worked number: of a ham of 9 1/2 in 6 steaks of 3/4 in with 1/16 in kerf take 4 13/16 in, and
    leave room for 5 more.
    """
    counts: dict[Strip, dict[Piece, int]] = {}
    cells: dict[Cell, tuple[int, int]] = {}
    for row in rows:
        option, need = row.options[0], row.need
        take = option.take(scenario, ways)
        if isinstance(take, Missing) or 0 <= option.cap < need:
            return False
        for strip, piece in take.pieces:
            mine = counts.setdefault(strip, {})
            mine[piece] = mine.get(piece, 0) + need
        for cell, amount, there in take.cells:
            used, most = cells.get(cell, (0, there))
            cells[cell] = (used + amount * need, max(most, there))
    if any(used > there for used, there in cells.values()):
        return False
    for mine in counts.values():
        for kinds in by_lane([*mine]):
            if not tried(tuple(kinds), ways).fits(tuple([mine[piece] for piece in kinds])):
                return False
    return True


def stands(demands: Sequence[Demand], ways: Ways) -> bool:
    """Whether lines can be cut together, whatever lengths it takes."""
    return all(_stand(rows_of(group), ways) for group in groups(demands, ways))


def _stand(rows: Sequence[Row], ways: Ways) -> bool:
    return any(
        possible(problem(rows, scenario, ways), range(len(rows)))
        for scenario in (MOST, EXPECTED, SURE)
    )


def with_up_to(
    found: Standing, asked: Sequence[Demand], ways: Ways
) -> tuple[Standing, list[tuple[Demand, int]]]:
    """Add the lines that ask for up to so many, in line order, the most that fits each.

    The lengths stay those of the group, so they never make it less sure. Gives the counts too.
    """
    counts: list[tuple[Demand, int]] = []
    if ways.strips is None:
        ways = replace(ways, strips={})
    lines, rows, given = found.demands, found.rows, found.given
    for demand in asked:
        low, high = 0, demand.up_to
        more = [*rows, Row(demand.choice.line, high, demand.options)]
        most = problem(more, found.scenario, ways)
        middle = high
        while low < high:
            if possible(_asking(most, len(rows), middle), range(len(more))):
                low = middle
            else:
                high = middle - 1
            middle = (low + high + 1) // 2
        if low:
            given = _asking(most, len(rows), low)
            rows = [*rows, Row(demand.choice.line, low, demand.options)]
            lines = [*lines, demand]
        counts.append((demand, low))
    if given is not None and given is not found.given:
        given.memory.grew |= found.given is not None and found.given.memory.grew
        units = solve(given)
        assert units is not None, "what is possible has a first assignment"
        found = Standing(lines, rows, found.scenario, given, units)
    return found, counts


def _asking(given: Problem, place: int, need: int) -> Problem:
    """The same problem with so many units asked of one row; what was tried stays known."""
    rows = list(given.rows)
    rows[place] = need, rows[place][1]
    return replace(given, rows=rows)
