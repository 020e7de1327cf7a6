"""One run of one side with the kinds of pieces asked there: how many of each fit together.

It remembers what it has tried; where pieces lie is `run_packing`'s to say.
"""

from collections.abc import Sequence
from operator import ge, le, mul

from shared.cutting.can_lie import tried
from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import Layout, Piece, lay, most_alone
from shared.cutting.run_search import ENDLESS

FEW = 24  # questions after which a strip is worth adding up before it is laid


class Strip:
    """One run of one side with the kinds of pieces asked there; remembers what it has tried."""

    __slots__ = (
        "_alone",
        "_apart",
        "_fit",
        "_known",
        "_long",
        "_over",
        "_rivals",
        "_rooms",
        "_spans",
        "_steps",
        "cant",
        "hard",
        "kinds",
        "plain",
    )

    def __init__(self, kinds: Sequence[Piece]) -> None:
        """A strip on which only these kinds of pieces may come, in this order.

        `hard` is how often it was hard to tell whether some can lie, `cant` are some that can't.
        """
        self.hard = 0
        self.cant: list[tuple[int, ...]] = []
        self.kinds = tuple(kinds)
        self._known: dict[tuple[int, ...], Layout | None] = {}
        self._steps = tuple([kind.size + kind.kerf for kind in self.kinds])
        self.plain = _is_plain(self.kinds)
        if self.plain:  # nothing else is asked of it
            (lo, hi), kerf = self.kinds[0].allowed[0], self.kinds[0].kerf
            self._long = hi - lo + kerf
            return
        self._alone = [-1] * len(self.kinds)
        self._apart: dict[int, list[int]] = {}
        self._rooms: dict[tuple[tuple[int, ...], int, int], int] = {}
        self._fit: list[tuple[int, ...]] = []
        self._over: list[tuple[int, ...]] = []
        self._spans: dict[int, list[tuple[int, list[tuple[int, int]]]]] = {}
        self._rivals: list[tuple[int, list[int]] | None] = [None] * len(self.kinds)

    def fits(self, counts: tuple[int, ...]) -> bool:
        """Whether so many of each kind can lie here together."""
        if self.plain:
            return self.weigh(counts) <= self._long
        return self._can_lie(counts)

    def _can_lie(self, counts: tuple[int, ...]) -> bool:
        """Whether they can lie; fewer than what fitted do, more than what didn't don't."""
        if counts in self._known:
            return self._known[counts] is not None
        for over in self._over:
            if all(map(ge, counts, over)):
                return False
        for fit in self._fit:
            if all(map(le, counts, fit)):
                return True
        told = tried(self.kinds, counts)
        self.hard += told.hard
        if told.lie:
            self._fit = [one for one in self._fit if not all(map(le, one, counts))]
            self._fit.append(counts)
        else:
            over = tuple([n if kind in told.kinds else 0 for kind, n in enumerate(counts)])
            self._over = [one for one in self._over if not all(map(ge, one, over))]
            self._over.append(over)
        return told.lie

    def weigh(self, counts: tuple[int, ...]) -> int:
        """The length a plain strip's pieces take, kerfs and all."""
        return sum(map(mul, counts, self._steps))

    def room(self, counts: tuple[int, ...], kind: int, limit: int) -> int:
        """How many more of one kind fit beside what lies here, up to a limit.

        Where nothing lies that could stand in its way, as many as on the empty strip.
        """
        if self.plain:
            step = self._steps[kind]
            room = (self._long - sum(map(mul, counts, self._steps))) // step if step else limit
            return room if room < limit else limit
        room = self._alone[kind]
        if room < 0:
            room = self.most_alone(kind)
        room -= counts[kind]
        if room < limit:
            limit = room
        if limit <= 0:
            return 0
        rivals = self._rivals[kind]
        for other in (self._rivals_of(kind) if rivals is None else rivals)[1]:
            if counts[other]:
                break
        else:
            return limit
        key = (counts, kind, limit)
        known = self._rooms.get(key)
        if known is None:
            known = self._rooms[key] = self._room_near(self._near(counts, kind), kind, limit)
        return known

    def _room_near(self, counts: tuple[int, ...], kind: int, limit: int) -> int:
        """The same beside only what stands in its way."""
        if len(self._rooms) > FEW:
            limit = min(limit, self._beside(counts, kind))
            if limit <= 0:
                return 0
        key = (counts, kind, limit)
        known = self._rooms.get(key)
        if known is None:
            known = self._rooms[key] = self._room(counts, kind, limit)
        return known

    def _rivals_of(self, kind: int) -> tuple[int, list[int]]:
        """The other kinds that may stand in the way of one, as bits and by number."""
        known = self._rivals[kind]
        if known is None:
            known = self._rivals[kind] = _rivals(self.kinds, kind)
        return known

    def _near(self, counts: tuple[int, ...], kind: int) -> tuple[int, ...]:
        """Of what lies here only what stands in the way of a kind, directly or through others.

        The rest lies as it lies, however many more of the kind come: chops beside shoulder and
        leg, where a whole loin parts the leg from them, ask for room beside the loin alone.
        """
        lying = 0
        for other, count in enumerate(counts):
            if count:
                lying |= 1 << other
        near, new = 0, 1 << kind
        while new:
            near |= new
            one = new & -new
            new = (new ^ one) | self._rivals_of(one.bit_length() - 1)[0] & lying & ~near
        if not lying & ~near:
            return counts
        return tuple([count if near >> one & 1 else 0 for one, count in enumerate(counts)])

    def _beside(self, counts: tuple[int, ...], kind: int) -> int:
        """No more of a kind fit beside these, lane by lane, wherever they all lie.

        On 30 in of a lane with 20 in of other pieces there is room for at most 12 slices of 3/4 in
        with their kerf.
        """
        step = self._steps[kind]
        most = ENDLESS
        for length, kinds in self._spans_of(kind) if step else ():
            left = length - sum([counts[other] * each for other, each in kinds])
            most = min(most, left // step)
        return most

    def _spans_of(self, kind: int) -> list[tuple[int, list[tuple[int, int]]]]:
        """Spans around where a kind may lie, lane by lane, with the kinds that lie within them.

        Each with its length and the last kerf, which may fall outside; kinds with their steps.
        """
        known = self._spans.get(kind)
        if known is None:
            known = self._spans[kind] = _spans(self.kinds, kind)
        return known

    def _room(self, counts: tuple[int, ...], kind: int, limit: int) -> int:
        apart = self._apart.setdefault(kind, [])
        for other in apart:
            if counts[other]:
                return 0
        before, here, after = counts[:kind], counts[kind], counts[kind + 1 :]
        low, middle = 0, limit
        while low < limit:
            if self._can_lie((*before, here + middle, *after)):
                low = middle
            else:
                limit = middle - 1
            middle = (low + limit + 1) // 2
        if low == 0 and here == 0:
            self._learn(counts, kind, apart)
        return low

    def _learn(self, counts: tuple[int, ...], kind: int, apart: list[int]) -> None:
        """Remember which of the kinds that lie here can't lie beside this one at all."""
        for other, count in enumerate(counts):
            if count:
                pair = [0] * len(counts)
                pair[other] = pair[kind] = 1
                if not self._can_lie(tuple(pair)):
                    apart.append(other)

    def too_many(self, counts: tuple[int, ...]) -> tuple[int, ...]:
        """Of pieces that can't lie here together some that can't either: no others meet them.

        Worked number: of 8 pieces of 4 in on 30 in and 2 of 3 in behind them these are the 8.
        """
        if self.plain or self.fits(counts):
            return counts
        found = next(over for over in self._over if all(map(ge, counts, over)))
        if found not in self.cant:
            self.cant.append(found)
        return found

    def lay(self, counts: tuple[int, ...]) -> Layout | None:
        """Where so many of each kind lie, or None where they can't."""
        if counts not in self._known:
            self._known[counts] = lay(self.kinds, counts)
        return self._known[counts]

    def most_alone(self, kind: int) -> int:
        """How many of one kind fit with nothing else there."""
        known = self._alone[kind]
        if known < 0:
            known = self._alone[kind] = most_alone(self.kinds[kind])
        return known


def _rivals(kinds: tuple[Piece, ...], kind: int) -> tuple[int, list[int]]:
    """The other kinds, as bits and by number, that may stand in the way of one where they lie.

    Slices of 3/4 in up to 12 in with a kerf of 1/16 in, and what begins at 12 in, are rivals: the
    last kerf may fall there. Without a kerf they aren't.
    """
    lanes, allowed, _, kerf, _ = kinds[kind]
    mask, found = 0, list[int]()
    if not allowed:
        return mask, found
    lo, hi = allowed[0][0], allowed[-1][1] + kerf
    for number, (its_lanes, places, _, its_kerf, _) in enumerate(kinds):
        if number == kind or not its_lanes & lanes or not places:
            continue
        if places[0][0] < hi and lo < places[-1][1] + its_kerf:
            mask |= 1 << number
            found.append(number)
    return mask, found


def _spans(kinds: tuple[Piece, ...], kind: int) -> list[tuple[int, list[tuple[int, int]]]]:
    mine = kinds[kind]
    if not mine.allowed:
        return []
    lo, hi = mine.allowed[0][0], mine.allowed[-1][1]
    found: dict[tuple[int, tuple[tuple[int, int], ...]], None] = {}
    for bit in bits_of(mine.lanes):
        beside = [
            (one.allowed[0][0], one.allowed[-1][1], number)
            for number, one in enumerate(kinds)
            if one.lanes & bit and one.allowed
        ]
        for start, end in {(start, end) for start, end, _ in beside}:
            if start <= lo and hi <= end:
                within = [number for a, b, number in beside if start <= a and b <= end]
                length = end - start + max([kinds[number].kerf for number in within])
                steps = tuple([(one, kinds[one].size + kinds[one].kerf) for one in within])
                found[length, steps] = None
    return [(length, list(steps)) for length, steps in found]


def _is_plain(kinds: tuple[Piece, ...]) -> bool:
    """Whether all kinds share one window, kerf and lanes, so that a sum decides."""
    lanes, allowed, _, kerf, anchor = kinds[0]
    if len(allowed) != 1 or anchor:
        return False
    for one in kinds:
        if one.lanes != lanes or one.kerf != kerf or one.anchor or one.allowed != allowed:
            return False
    return True
