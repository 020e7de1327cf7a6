"""What one unit of a choice takes, place by place: lengths of lanes and fractions of parts."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from tests.oracle.lot import Lot, Window
from tests.oracle.species_file import Json, share_of, weight_of

Cell = tuple[int, int, str]
Lane = tuple[int, int, str, str]
SIXTY_FOURTH = 3175


@dataclass(frozen=True)
class Stick:
    """A length of some lanes of a run on one side: where it may lie, how long, kerf after it.

    `anchor` "head" or "tail": the first lies against that end of lo..hi, the next beside it.
    """

    lanes: tuple[Lane, ...]
    open: tuple[tuple[int, int], ...]
    lo: int
    hi: int
    size: int
    kerf: int
    anchor: str = ""
    sliced: bool = False

    def at_most(self) -> int:
        """No more than so many fit with nothing else there."""
        if self.size <= 0:
            return 0
        return sum(max(0, (hi - lo + self.kerf) // (self.size + self.kerf)) for lo, hi in self.open)


@dataclass(frozen=True)
class Charge:
    """What a unit costs a split share's account: a length with its kerf, or a part's fraction."""

    account: tuple[int, Lane | Cell]
    amount: Fraction
    kerf: int
    room: Fraction


@dataclass(frozen=True)
class Bundle:
    """One place and way of making a choice. side 0: the animal, or both sides at once.

    `undivided`: a piece of it is bigger than its owner's account.
    """

    carcass: int
    side: int
    way: str
    sticks: tuple[Stick, ...] = ()
    cells: tuple[tuple[Cell, Fraction], ...] = ()
    charges: tuple[Charge, ...] = ()
    undivided: bool = False
    most: int = 10**6

    def at_most(self) -> int:
        counts = [stick.at_most() for stick in self.sticks]
        counts += [int(1 / share) for _, share in self.cells if share > 0]
        counts += [int((one.room + one.kerf) / one.amount) for one in self.charges if one.amount]
        return min([self.most, *counts])

    def touches(self) -> set[object]:
        found: set[object] = {cell for cell, _ in self.cells}
        for stick in self.sticks:
            found.update(stick.lanes)
        found.update(charge.account for charge in self.charges)
        return found


@dataclass(frozen=True)
class Made:
    """Sticks and cells before they are charged to anybody."""

    sticks: tuple[Stick, ...] = ()
    cells: tuple[tuple[Cell, Fraction], ...] = ()


def fixed(lanes: Iterable[Lane], lo: int, hi: int) -> Stick:
    return Stick(tuple(lanes), ((lo, hi),), lo, hi, hi - lo, 0)


def of_animal(lot: Lot, way: Json) -> bool:
    """Whether a way takes only what comes one to an animal."""
    parts = [lot.species.parts[one["part"]] for one in way.get("parts", [])]
    return not way.get("run") and all(part.get("per", "side") == "animal" for part in parts)


def single_ways(lot: Lot, choice: Json) -> list[Json]:
    """Ways that are made of one side."""
    ways = lot.species.ways(choice)
    return [one for one in ways if one.get("sides", "one") == "one" and not of_animal(lot, one)]


def is_split(lot: Lot, carcass: int) -> bool:
    return lot.order["carcasses"][carcass - 1].get("split") is True


def unit_bundles(lot: Lot, choice: Json, level: str) -> list[Bundle]:
    """Every place and way in which one unit of a counted choice can be made, the first first."""
    found: list[Bundle] = []
    share = choice["share"]
    single = single_ways(lot, choice)
    for carcass in sorted({c for c, _ in lot.sides_of(share)}):
        for side in (one for one in lot.sides_of(share) if one[0] == carcass):
            for way in single:
                made = on_side(lot, choice, way, side, level)
                if made is not None:
                    found.append(charged(lot, share, (*side, way["code"]), made, level))
        for way in lot.species.ways(choice):
            made = None
            if of_animal(lot, way):
                made = off_run(lot, share, (carcass, 0), way)
            elif way not in single:
                made = both_sides(lot, choice, way, carcass, level)
            if made is not None:
                found.append(charged(lot, share, (carcass, 0, way["code"]), made, level))
    return found


def both_sides(lot: Lot, choice: Json, way: Json, carcass: int, level: str) -> Made | None:
    """What one unit takes of both sides of a carcass; None where one of them can't give it."""
    if way["sides"] == "joined" and is_split(lot, carcass):
        return None
    first = on_side(lot, choice, way, (carcass, 1), level)
    second = on_side(lot, choice, way, (carcass, 2), level)
    if first is None or second is None:
        return None
    cells = dict((*first.cells, *second.cells))
    return Made(first.sticks + second.sticks, tuple(cells.items()))


def on_side(
    lot: Lot, choice: Json, way: Json, side: tuple[int, int], level: str, entire: bool = True
) -> Made | None:
    """What one unit takes on one side; None where it can't be made there.

    `entire` False: of a window that is taken whole a fraction is asked, which a lost stretch
    does not forbid.
    """
    made = off_run(lot, choice["share"], side, way, level)
    take = way.get("run")
    if made is None or not take:
        return made
    window = lot.window(choice["share"], side, take, level)
    if window is None or not window.open:
        return None
    if entire and take["size"] == "whole" and window.open != ((window.lo, window.hi),):
        return None
    first = stick(lot, choice, take, side, window, level)
    return Made((first, *made.sticks), made.cells)


def off_run(
    lot: Lot, share: int, side: tuple[int, int], way: Json, level: str = "expected"
) -> Made | None:
    """Sticks and cells of a way's part takes; None where one of them isn't there."""
    sticks: list[Stick] = []
    cells: list[tuple[Cell, Fraction]] = []
    for one in way.get("parts", []):
        part = lot.species.parts[one["part"]]
        animal = part.get("per", "side") == "animal"
        if lot.lost(side, one["part"]) or lot.holds_part(share, side, one["part"]) <= 0:
            return None
        if part.get("run"):
            borders = lot.bounds(side, part["run"], level)
            place = lot.species.place(part["run"], part["stretch"])
            lane = (*side, part["run"], part["lane"])
            sticks.append(fixed([lane], borders[place], borders[place + 1]))
        else:
            cell = (side[0], 0 if animal else side[1], one["part"])
            mine = lot.part_of_single(share, side[0], one["part"]) if animal else Fraction(1)
            cells.append((cell, min(mine, share_of(one.get("share", "1")))))
    return Made(tuple(sticks), tuple(cells))


def stick(
    lot: Lot, choice: Json, take: Json, side: tuple[int, int], window: Window, level: str
) -> Stick:
    """One piece on a run."""
    lanes = tuple((*side, take["run"], lane) for lane in take["lanes"])
    if take["size"] == "whole":
        return Stick(lanes, window.open, window.lo, window.hi, window.hi - window.lo, 0)
    size = length_of_piece(lot, choice, take, side, window, level)
    kerf = lot.kerf_of(choice)
    sliced = take["size"] == "slice"
    anchor = take.get("anchor", "")
    return Stick(lanes, window.open, window.lo, window.hi, size, kerf, anchor, sliced)


def length_of_piece(
    lot: Lot, choice: Json, take: Json, side: tuple[int, int], window: Window, level: str
) -> int:
    """Thickness of a slice; a piece by ribs, by weight, by its share of the window, or all."""
    if take["size"] == "slice":
        return lot.species.thickness(choice)
    whole = window.hi - window.lo
    stretches = lot.species.runs[take["run"]]
    borders = lot.bounds(side, take["run"], level)
    ribbed = [place for place in window.stretches if stretches[place].ribs]
    if choice.get("ribs") and ribbed:
        ribs = sum(stretches[place].ribs for place in ribbed)
        length = sum(borders[place + 1] - borders[place] for place in ribbed)
        return length * choice["ribs"] // ribs
    if "piece_weight" in choice:
        lanes = [(*side, take["run"], lane) for lane in take["lanes"]]
        there = lot.window(choice["share"], side, take, "expected")
        weight = lane_weight(lot, lanes, there.lo, there.hi) if there else Fraction(0)
        if weight > 0:
            length = whole * weight_of(choice["piece_weight"]) / weight
            sixty_fourths = max(1, int(length / SIXTY_FOURTH + Fraction(1, 2)))
            return min(whole, sixty_fourths * SIXTY_FOURTH)
    if "piece_share" in take:
        return int(whole * share_of(take["piece_share"]))
    return whole


def lane_weight(lot: Lot, lanes: Iterable[Lane], lo: int, hi: int) -> Fraction:
    """Expected weight of some lanes between two places, by length within each part."""
    total = Fraction(0)
    for carcass, side, run, lane in lanes:
        borders = lot.bounds((carcass, side), run, "expected")
        for place, stretch in enumerate(lot.species.runs[run]):
            code = lot.species.part_at.get((run, stretch.code, lane))
            length = borders[place + 1] - borders[place]
            inside = min(hi, borders[place + 1]) - max(lo, borders[place])
            if code and inside > 0:
                total += lot.part_weight((carcass, side), code) * inside / length
    return total


# -- accounts of split shares ----------------------------------------------------------------


def charged(
    lot: Lot, share: int, at: tuple[int, int, str], made: Made, level: str, most: int = 10**6
) -> Bundle:
    """A bundle with what it costs its owner's accounts, where the owner holds a fraction."""
    charges: list[Charge] = []
    undivided = False
    for one in made.sticks:
        if is_divided(lot, share, one.lanes[0][:2]):
            mine = [lane_charge(lot, share, one, lane, level) for lane in one.lanes]
            if any(one.size > charge.room for charge in mine):
                undivided = True
            elif one.sliced:
                both = zip(mine, one.lanes, strict=True)
                charges += [odd_slice(lot, share, one, lane, it, level) for it, lane in both]
            else:
                charges += mine
    for cell, taken in made.cells:
        if cell[1] == 0:
            room = lot.part_of_single(share, cell[0], cell[2])
        else:
            room = lot.holds_part(share, cell[:2], cell[2])
        if room < 1:
            if taken > room:
                undivided = True
            else:
                charges.append(Charge((share, cell), taken, 0, room))
    undivided |= any(over_account(charges, one.account) for one in charges)
    if undivided:
        charges = [one for one in charges if on_animal(one.account[1])]
    return Bundle(*at, made.sticks, made.cells, tuple(charges), undivided, most)


def over_account(charges: Sequence[Charge], account: tuple[int, Lane | Cell]) -> bool:
    """Whether all that one unit takes of a lane or part is more than its owner has of it."""
    mine = [one for one in charges if one.account == account]
    return sum(one.amount for one in mine) > max(one.room + one.kerf for one in mine)


def on_animal(place: Lane | Cell) -> bool:
    """Whether it comes one to an animal, not one to a side."""
    return place[1] == 0


def is_divided(lot: Lot, share: int, side: tuple[int, int]) -> bool:
    """Whether the share holds something of that side by a fraction only."""
    held = lot.held(share, side)
    return held.get("", Fraction(0)) < 1 and any(part < 1 for part in held.values())


def lane_charge(lot: Lot, share: int, one: Stick, lane: Lane, level: str) -> Charge:
    """The account of a lane is the fraction held of all of it that is filled."""
    carcass, side, run, name = lane
    room = Fraction(0)
    for stretch in lot.species.runs[run]:
        if (run, stretch.code, name) in lot.species.part_at:
            length = lot.sides[carcass, side].lengths[level][stretch.code]
            room += length * lot.fraction(share, (carcass, side), stretch.quarter)
    return Charge((share, lane), Fraction(one.size + one.kerf), one.kerf, Fraction(int(room)))


def odd_slice(lot: Lot, share: int, one: Stick, lane: Lane, charge: Charge, level: str) -> Charge:
    """The account of a lane where it is sliced: whole slices, those left over in turn by share.

    Only where every owner of the side holds one fraction of all of it.
    """
    carcass, side, run, name = lane
    holders = [number for number in sorted(lot.shares) if lot.held(number, (carcass, side))]
    holders = [number for number in holders if not lot.shares[number].get("leader")]
    held = [lot.held(number, (carcass, side)) for number in holders]
    if len(held) < 2 or any(set(it) != {""} or it[""] >= 1 for it in held):
        return charge
    length = sum(
        lot.sides[carcass, side].lengths[level][stretch.code]
        for stretch in lot.species.runs[run]
        if (run, stretch.code, name) in lot.species.part_at
    )
    step = one.size + one.kerf
    slices = (length + one.kerf) // step
    mine = {number: int(slices * it[""]) for number, it in zip(holders, held, strict=True)}
    left = int(slices * sum((it[""] for it in held), Fraction(0))) - sum(mine.values())
    for number in holders[:left]:
        mine[number] += 1
    room = max(charge.room, Fraction(mine[share] * step - one.kerf))
    return Charge(charge.account, charge.amount, charge.kerf, room)
