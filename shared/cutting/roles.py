"""What each line of an order is to the planner: made, taking the rest, drawing on the pools."""

from collections.abc import Collection
from typing import NamedTuple

from shared.cutting.answer import Verdict
from shared.cutting.demand import Demand
from shared.cutting.told_beside import has_something


class Roles(NamedTuple):
    """The lines of an order, all by line, and those of each role.

    `bound` must be met, or up to so many of them; `resting` take the rest (`halting` some of them
    only where all their pieces stand), `drawing` draw on the pools, `refused` were before any
    search. `noted` may have something told of them, whatever the plan. `natural` says that some
    take what is trim by nature. `verdicts` are those of lines that nothing else is known of.
    """

    all: list[Demand]
    bound: list[Demand]
    resting: list[Demand]
    halting: bool
    drawing: list[Demand]
    refused: list[Demand]
    noted: list[Demand]
    natural: bool
    verdicts: dict[int, Verdict]
    twice: dict[int, bool]


NOBODY = Roles([], [], [], False, [], [], [], False, {}, {})


def roles(demands: list[Demand], last: Roles, nature: Collection[str]) -> Roles:
    """The roles of some lines; as before where only lines that are made are others.

    `nature` are cuts that take what is trim by nature. Worked number: of 4 chops, bacon as the
    rest and 10 lb of sausage the first is bound, the second rests and the third draws.
    """
    if len(demands) == len(last.all):
        other = [pair for pair in zip(demands, last.all, strict=True) if pair[0] is not pair[1]]
        if not other:
            return last
        if all(_only_made(one, nature) and _only_made(it, nature) for one, it in other) and all(
            one.choice.line == it.choice.line for one, it in other
        ):
            new = {id(it): one for one, it in other}
            bound = [new.get(id(one), one) for one in last.bound]
            return last._replace(all=demands, bound=bound)
    stand = [one for one in demands if one.refusal is None]
    resting = [one for one in stand if one.rest]
    return Roles(
        demands,
        [one for one in stand if one.rows or one.up_to],
        resting,
        any(one.rows for one in resting),
        [one for one in stand if one.pool],
        [one for one in demands if one.refusal is not None],
        [one for one in demands if has_something(one)],
        any(one.cut.code in nature for one in demands),
        {one.choice.line: "sure" if one.refusal is None else "cant" for one in demands},
        {},
    )


def _only_made(one: Demand, nature: Collection[str]) -> bool:
    """Whether a line is bound and nothing else."""
    return (
        bool(one.rows or one.up_to)
        and one.refusal is None
        and not (one.rest or one.pool)
        and one.cut.code not in nature
        and not has_something(one)
    )
