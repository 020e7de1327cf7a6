"""Lines that can't stand together: irreducible sets, what they fight over, and the numbers."""

from collections.abc import Sequence
from fractions import Fraction

from shared.cutting.answer import Conflict, Where
from shared.cutting.conflict_place import clearest
from shared.cutting.demand import Demand, Row
from shared.cutting.growing import Growing
from shared.cutting.standing import stands
from shared.cutting.ways import Ways


def split_up(
    group: list[Demand], ways: Ways, fallen: bool = False, growing: Growing | None = None
) -> tuple[list[list[Demand]], list[Demand]]:
    """Irreducible conflicts of a group that can't stand, and what stands without their newest.

    Line after line is added to those that stand. One that can't be is in a conflict with some of
    them; it is set aside and the search goes on. `fallen`: all can't stand, as is known;
    `growing`: all lines, of which none stands yet.
    """
    lines = sorted(group, key=lambda one: one.choice.line)
    growing = growing or Growing(lines, ways)
    found: list[list[Demand]] = []
    for one in lines:
        others = growing.add(one)
        if others is not None:
            found.append([*others, one])
    assert found or not fallen, "a group that can't stand has a line that doesn't join the others"
    return found, growing.standing


def told(lines: Sequence[Demand], ways: Ways) -> Conflict:
    """The conflict of an irreducible set: the place that is most clearly overfull, in numbers.

    Worked number: whole ham and 6 ham steaks at 3/4 in with 1/16 in kerf on one side: where is
    the ham centre of that side, there 5 1/8 in; the ham takes 5 1/8 in, the steaks 4 13/16 in,
    asked 9 15/16 in.
    """
    numbers = tuple(sorted(one.choice.line for one in lines))
    best = clearest(lines, ways)
    kind = "" if best is None else best.kind
    if any(one.choice.pinned for one in lines) and _stand_without_pins(lines, ways):
        kind = "pinned"
    if best is None:
        nothing = Fraction(0)
        return Conflict(numbers, kind or "whole", Where(0, 0), nothing, nothing, nothing)
    asked, expected, most = [
        Fraction(one, best.unit) for one in (best.asked, best.expected, best.most)
    ]
    return Conflict(numbers, kind, best.where, asked, expected, most, best.amounts())


def refused(one: Demand) -> Conflict:
    """The conflict of a line that was refused before any search."""
    why = one.refusal
    assert why is not None
    return Conflict(
        (one.choice.line,),
        why.kind,
        Where(why.carcass, why.side, part=why.part),
        why.asked,
        why.there,
        why.there,
    )


def _stand_without_pins(lines: Sequence[Demand], ways: Ways) -> bool:
    loose: list[Demand] = []
    for one in lines:
        if one.choice.pinned and one.choice.amount.kind not in ("all", "fraction"):
            need = sum([row.need for row in one.rows])
            rows = [Row(one.choice.line, need, list(one.options))]
            loose.append(Demand(one.choice, one.cut, one.options, rows))
        else:
            loose.append(one)
    return stands(loose, ways)
