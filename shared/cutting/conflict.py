"""Lines that can't stand together: irreducible sets, what they fight over, and the numbers."""

from collections.abc import Sequence
from fractions import Fraction

from shared.cutting.answer import Conflict, Where
from shared.cutting.conflict_place import Place, places
from shared.cutting.demand import Demand, Row
from shared.cutting.groups import groups
from shared.cutting.standing import Together, stands
from shared.cutting.ways import Ways


def split_up(
    group: list[Demand], ways: Ways, fallen: bool = False
) -> tuple[list[list[Demand]], list[Demand]]:
    """Irreducible conflicts of a group that can't stand, and what stands without their newest.

    Lines are let go from the newest on until the others stand; the line that made the
    difference is in the conflict, and of the others each is let go that needn't be there. Then
    that newest line is set aside and the search goes on. `fallen`: all can't stand, as is known.
    """
    standing = sorted(group, key=lambda one: one.choice.line)
    together = Together(standing, ways)
    found: list[list[Demand]] = []
    place = 0  # the lines before it stand
    while (fallen and not found) or not together.stand(standing):
        place = _first_to_fall(standing, together, place)
        newest = standing[place]
        found.append(_shrunk(standing[:place], newest, together, ways))
        standing.pop(place)
    return found, standing


def _first_to_fall(lines: list[Demand], together: Together, standing: int) -> int:
    """The place of the line with which the lines up to it no longer stand; all together don't.

    The first `standing` of them do, as is known.
    """
    low, high = standing, len(lines)
    while high - low > 1:
        middle = (low + high) // 2
        if together.stand(lines[:middle]):
            low = middle
        else:
            high = middle
    return high - 1


def _shrunk(others: list[Demand], newest: Demand, together: Together, ways: Ways) -> list[Demand]:
    connected = next(
        group for group in groups([*others, newest], ways) if any(one is newest for one in group)
    )
    kept = [one for one in connected if one is not newest]
    for one in reversed(list(kept)):
        without = [other for other in kept if other is not one]
        if not together.stand([*without, newest]):
            kept = without
    return [*kept, newest]


def told(lines: Sequence[Demand], ways: Ways) -> Conflict:
    """The conflict of an irreducible set: the place that is most clearly overfull, in numbers.

    Worked number: whole ham and 6 ham steaks at 3/4 in with 1/16 in kerf on one side: where is
    the ham centre of that side, there 5 1/8 in; the ham takes 5 1/8 in, the steaks 4 13/16 in,
    asked 9 15/16 in.
    """
    numbers = tuple(sorted(one.choice.line for one in lines))
    best = max(places(lines, ways), key=Place.rank, default=None)
    kind = "" if best is None else best.kind
    if any(one.choice.pinned for one in lines) and _stand_without_pins(lines, ways):
        kind = "pinned"
    if best is None:
        nothing = Fraction(0)
        return Conflict(numbers, kind or "whole", Where(0, 0), nothing, nothing, nothing)
    asked, expected, most = Fraction(best.asked), Fraction(best.expected), Fraction(best.most)
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
