"""Expected weight of all that a line asks for, as remedies compare it."""

from fractions import Fraction

from shared.cutting.capacity import EXPECTED
from shared.cutting.demand import Demand
from shared.cutting.piece_length import piece_length, window_ng
from shared.cutting.piece_weight import piece_ng
from shared.cutting.take import Missing, Option, Take
from shared.cutting.taken import Parts, Segment
from shared.cutting.ways import Ways
from shared.cutting.windows import window


class Asked:
    """Expected weights of lines; what one piece weighs where is reckoned once."""

    def __init__(self, ways: Ways) -> None:
        """Nothing is reckoned yet."""
        self._ways = ways
        self._each: dict[int, tuple[Option, Fraction]] = {}
        self._all: dict[int, tuple[Demand, int]] = {}

    def piece_ng(self, option: Option) -> Fraction:
        """Expected weight of one piece, nanograms."""
        known = self._each.get(id(option))
        if known is None:
            known = self._each[id(option)] = option, piece_ng(option, self._ways)
        return known[1]

    def ng(self, one: Demand) -> int:
        """Expected weight of all a line asks for, as `asked_ng` says it."""
        known = self._all.get(id(one))
        if known is None:
            known = self._all[id(one)] = one, self._ng(one)
        return known[1]

    def _ng(self, one: Demand) -> int:
        if len(one.rows) == 1 and not one.pool:
            option = one.rows[0].options[0]
            if option.wanted.fraction is None:
                return int(one.rows[0].need * self.piece_ng(option))
        return asked_ng(one, self._ways)


def asked_ng(one: Demand, ways: Ways) -> int:
    """Expected weight of all a line asks for where it is first made; 0 for what has no figure.

    Of a counted line that can't be made any more: where it was to be made, if that is still there.
    """
    if one.refusal is not None and not one.options:
        count = one.choice.amount.count
        return int(count * _once_ng(one.lost[0][0], ways)) if one.lost and count else 0
    weight = one.choice.amount.weight
    if one.pool:
        return weight.nanograms if weight is not None else 0
    total = Fraction(0)
    for row in one.rows:
        option = row.options[0]
        if option.wanted.fraction is None:
            total += row.need * piece_ng(option, ways)
        else:
            total += row.need * all_ng(option, ways)
    return int(total)


def _once_ng(option: Option, ways: Ways) -> Fraction:
    """What one piece would weigh where nothing were forbidden: a T-bone of a beef over age."""
    on_run, total = option.ways[0].on_run, Fraction(0)
    if isinstance(option.take(EXPECTED, ways), Take):
        return piece_ng(option, ways)
    for held in option.held if on_run is not None else ():
        assert on_run is not None
        there = window(held, on_run, EXPECTED, ways)
        lo, hi, weight = window_ng(held, on_run, ways)
        if there is None or hi <= lo:
            continue
        want, size = option.wanted, on_run.take.size
        length = piece_length(held, on_run, there, want, EXPECTED, ways)
        total += weight * (want.thickness if size == "slice" else length) / (hi - lo)
    return total


def all_ng(option: Option, ways: Ways) -> Fraction:
    """Expected weight of all (or a fraction of all) of a cut there."""
    take = option.take(EXPECTED, ways)
    if isinstance(take, Missing):
        return Fraction(0)
    parts = Parts(option, ways, EXPECTED)
    for strip, piece in take.pieces:
        lo = piece.allowed[0][0] if piece.allowed else 0
        parts.add_segment(Segment(strip, piece, lo, 1))
    for (_, side, code, share, _), amount, _ in take.cells:
        if share == 0:
            where = None if side == 0 else option.animal.sides[side - 1]
            part = ways.catalogue.parts[code]
            parts.add(part, amount, option.wanted.denominator, where)
    return Fraction(parts.weight)
