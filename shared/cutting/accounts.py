"""What a split share may take of a lane: its account, and its slices in turn."""

from shared.cutting.capacity import NOTHING, Held
from shared.cutting.run_packing import Piece
from shared.cutting.ways import Ways


def slices_in_turn(held: Held, run: int, lane: int, piece: Piece, scenario: int, ways: Ways) -> int:
    """The slices of a lane that are a split share's, with their kerfs: the odd one by turn.

    Worked number: 37 chops of 3/4 in with 1/16 in kerf from 30 in: the lower share has 19,
    which are 15 7/16 in of it, the other 18.
    """
    key = (run, lane, scenario, piece.size, piece.kerf)
    known = held.turns.get(key)
    if known is None:
        bounds, filled = held.side.bounds[scenario][run], ways.filled[run].get(lane, ())
        length = sum([bounds[place + 1] - bounds[place] for place in filled])
        step = piece.size + piece.kerf
        count = (length + piece.kerf) // step if step else 0
        known = step * held.turn.dealt(count, held.place) if held.turn is not None else 0
        held.turns[key] = known
    return known


def account_length(held: Held, run: int, lane: int, scenario: int, ways: Ways) -> int:
    """A split share's part of one lane of a run: its fraction of what is filled there."""
    key = (run, lane, scenario)
    accounts = held.known.accounts
    known = accounts.get(key)
    if known is None:
        bounds = held.side.bounds[scenario][run]
        by_quarter: dict[str, int] = {}
        for place in ways.filled[run].get(lane, ()):
            quarter = ways.runs[run].stretches[place].quarter
            length = bounds[place + 1] - bounds[place]
            by_quarter[quarter] = by_quarter.get(quarter, 0) + length
        if held.uniform:
            part = held.fractions[""]
            length = sum(by_quarter.values()) * part.numerator // part.denominator
        else:
            parts = [(n, held.fractions[quarter]) for quarter, n in by_quarter.items()]
            total = sum([n * part for n, part in parts], NOTHING)
            length = total.numerator // total.denominator
        known = accounts[key] = length
    return known
