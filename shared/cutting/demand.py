"""Each choice turned into whole numbers: what must be made, and where it could be.

A `Row` asks for a whole number of units out of its options, in the order in which they are
preferred: carcass by carcass, side 1 before side 2, then both sides or the animal, ways in order.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import TYPE_CHECKING

from shared.carcass.catalogue import Cut
from shared.cutting.capacity import ALL, SURE, Animal, Held
from shared.cutting.order import Choice, Settings
from shared.cutting.piece_length import Wanted, wanted
from shared.cutting.piece_weight import count_of_pounds, piece_ng
from shared.cutting.singles import Rooms
from shared.cutting.take import Keys, Missing, Option, Take, missing
from shared.cutting.ways import WayPlan, Ways
from shared.cutting.windows import owned

if TYPE_CHECKING:
    from shared.cutting.drawing import Draw


@dataclass(slots=True)
class Row:
    """So many units of one line, to be made with these options."""

    line: int
    need: int
    options: list[Option]


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a line can't be, before any search: the conflict's kind, part and figures."""

    kind: str
    part: str = ""
    carcass: int = 0
    side: int = 0
    asked: Fraction = Fraction(0)
    there: Fraction = Fraction(0)


@dataclass(slots=True)
class Demand:
    """One choice compiled. `rows` must all be met; `up_to` is asked after everything else.

    `rest` says that it takes what is left, `pool` that it draws on the pools. `lost` are options
    that something gone or forbidden takes away. `keys` are the lanes and cells it touches, `draw`
    is what it takes of the pools where that is the same whatever is in them; both are memory.
    """

    choice: Choice
    cut: Cut
    options: list[Option] = field(default_factory=lambda: [])
    rows: list[Row] = field(default_factory=lambda: [])
    up_to: int = 0
    rest: bool = False
    pool: bool = False
    refusal: Refusal | None = None
    lost: list[tuple[Option, Missing]] = field(default_factory=lambda: [])
    keys: Keys | None = None
    draw: "Draw | None" = None


@dataclass(frozen=True, slots=True)
class Shop:
    """What every choice of a question needs to be compiled.

    `split`: something is held in part only; `rooms` are the parts of divided singles,
    `led` the shares that are cut as another says.
    """

    ways: Ways
    herd: tuple[Animal, ...]
    held: dict[int, tuple[Held, ...]]
    settings: Settings
    by_carcass: dict[int, list[tuple[int, list[Held]]]]
    denominator: int
    split: bool
    rooms: Rooms
    led: frozenset[int] = frozenset()


_COUNTED = ("pieces", "slices", "up_to", "at_least")


def demand(choice: Choice, shop: Shop) -> Demand:
    """Compile one choice."""
    cut = shop.ways.catalogue.cuts.get(choice.cut)
    if cut is None or choice.share not in shop.held:
        return Demand(choice, _no_cut(choice), refusal=Refusal("amount"))
    found = Demand(choice, cut)
    kind = choice.amount.kind
    if choice.share in shop.led:
        found.refusal = Refusal("led")
        return found
    if not _understood(choice, cut):
        found.refusal = Refusal("amount")
        return found
    if cut.kind == "pool":
        found.pool = True
        return found
    plans = shop.ways.by_cut[cut.code]
    if choice.way:
        plans = tuple(plan for plan in plans if plan.way.code == choice.way)
    found.refusal = _too_thin(choice, plans, shop)
    if found.refusal is not None:
        return found
    if kind == "all" or (kind == "fraction" and choice.amount.of == "side"):
        _of_each_side(found, plans, shop)
    elif kind == "fraction":
        _of_the_animal(found, plans, shop)
    else:
        _counted(found, plans, shop)
    return found


def kerf_of(cut: Cut, shop: Shop) -> int:
    """The kerf of a cut's tool: the shop's own, else the species file's."""
    settings = shop.settings
    if cut.tool == "saw" and settings.kerf_saw is not None:
        return settings.kerf_saw
    if cut.tool == "slicer" and settings.kerf_slicer is not None:
        return settings.kerf_slicer
    return shop.ways.catalogue.kerf.get(cut.tool, 0)


def opened(choice: Choice, shop: Shop) -> int:
    """How many thicknesses of meat a slice takes: two where it is butterflied, else one."""
    finishes = shop.ways.catalogue.finishes
    return max([finishes[it].opened for it in choice.finishes if it in finishes], default=1)


def _no_cut(choice: Choice) -> Cut:
    return Cut(choice.cut, "", "whole", (), (), "", 0)


def _understood(choice: Choice, cut: Cut) -> bool:
    amount = choice.amount
    if choice.way and all(way.code != choice.way for way in cut.ways):
        return False
    if amount.kind in _COUNTED:
        if amount.count < 1:
            return False
        if amount.kind in ("up_to", "at_least"):
            return amount.kind in cut.amounts or bool({"pieces", "slices"} & {*cut.amounts})
    if amount.kind == "fraction":
        part = amount.fraction
        if part is None or not 0 < part <= 1:
            return False
    if amount.kind == "pounds" and (amount.weight is None or amount.weight.nanograms <= 0):
        return False
    return amount.kind in cut.amounts


def _too_thin(choice: Choice, plans: tuple[WayPlan, ...], shop: Shop) -> Refusal | None:
    """Refuse slices thinner than the tool holds, or than a finish needs (a pocket: 1 1/4 in)."""
    sliced = [plan for plan in plans if plan.on_run and plan.on_run.take.size == "slice"]
    if not sliced:
        return None
    thickness = choice.thickness or sliced[0].cut.thickness or 0
    finishes = shop.ways.catalogue.finishes
    needed = [finishes[it].least_thickness or 1 for it in choice.finishes if it in finishes]
    least = max(sliced[0].cut.least_thickness or 1, *needed, 1)
    if thickness >= least:
        return None
    return Refusal("thickness", asked=Fraction(thickness), there=Fraction(least))


def _want(found: Demand, plan: WayPlan, shop: Shop) -> Wanted:
    """The figures of a choice; a slice that is opened (butterflied) takes twice its thickness."""
    plain = wanted(found.choice, plan, kerf_of(found.cut, shop), shop.denominator)
    times = opened(found.choice, shop)
    return plain if times == 1 else plain._replace(thickness=plain.thickness * times)


def _keep(found: Demand, options: Sequence[Option], shop: Shop) -> None:
    """Keep the options that can be, sort out those that something takes away."""
    reasons: list[tuple[Option, Missing]] = []
    rest, ways = found.choice.amount.kind == "rest", shop.ways
    for option in options:
        take = missing(option, ways) if rest else option.take(SURE, ways)
        if isinstance(take, Missing):
            reasons.append((option, take))
        else:
            found.options.append(option)
    found.lost = [(option, why) for option, why in reasons if why.kind != "not_owned"]
    if found.options:
        return
    if not reasons:
        found.refusal = Refusal("not_owned")
        return
    option, why = found.lost[0] if found.lost else reasons[0]
    found.refusal = Refusal(why.kind, why.part, option.carcass, option.side)


def unit_options(found: Demand, plans: tuple[WayPlan, ...], shop: Shop) -> list[Option]:
    """Every way on every side, as single pieces, in the order preferred.

    Ways that need a quarter nobody of the share holds are left out, unless there are no others.
    """
    options: list[Option] = []
    want, cut = _want(found, plans[0], shop), found.cut.code
    for carcass, mine in shop.by_carcass[found.choice.share]:
        animal = shop.herd[carcass]
        for held in mine:
            side, sides = held.side.number, (held,)
            for plan in owned(cut, plans, held, shop.ways) or plans:
                if plan.single:
                    options.append(Option(carcass, side, (plan,), sides, animal, want))
        for plan in plans:
            pair = None if plan.single else _pair(plan, mine)
            if pair is not None:
                options.append(Option(carcass, 0, (plan,), pair, animal, want))
    return options


def _pair(plan: WayPlan, mine: list[Held]) -> tuple[Held, ...] | None:
    """The sides a both-sided way takes, none for a part of the animal; None if not held."""
    if plan.animal:
        return ()
    return (mine[0], mine[1]) if len(mine) == 2 else None


def _joined_split(options: list[Option], found: Demand, shop: Shop) -> list[Option]:
    """Leave out ways that need the sides joined where the carcass is split."""
    if not shop.ways.joined:
        return options
    kept: list[Option] = []
    for option in options:
        joined = any(plan.way.sides == "joined" for plan in option.ways)
        if joined and option.animal.carcass.split is True:
            found.lost.append((option, Missing("joined")))
        else:
            kept.append(option)
    return kept


def _sort_out(found: Demand, options: list[Option], shop: Shop) -> None:
    kept = _joined_split(options, found, shop)
    split = list(found.lost)
    _keep(found, kept, shop)
    found.lost += split
    nowhere = not found.options and found.refusal is not None
    if nowhere and split and found.refusal == Refusal("not_owned"):
        found.refusal = Refusal("joined", carcass=split[0][0].carcass)


def _counted(found: Demand, plans: tuple[WayPlan, ...], shop: Shop) -> None:
    _sort_out(found, unit_options(found, plans, shop), shop)
    if not found.options:
        return
    amount = found.choice.amount
    if amount.kind == "rest":
        found.rest = True
        return
    need = amount.count
    if amount.kind == "pounds" and amount.weight is not None:
        one = piece_ng(found.options[0], shop.ways)
        need = count_of_pounds(amount.weight.nanograms, one)
    if amount.kind == "up_to":
        found.up_to = need
        return
    found.rest = amount.kind == "at_least"
    _rows(found, need)


def _rows(found: Demand, need: int) -> None:
    """Rows of a counted line: one for each pinned side, one for the rest of them."""
    line, free, left = found.choice.line, list(found.options), need
    for carcass, side, count in found.choice.pinned:
        there = [one for one in free if (one.carcass, one.side) == (carcass, side)]
        free = [one for one in free if (one.carcass, one.side) != (carcass, side)]
        left -= count
        if count:
            found.rows.append(Row(line, count, there))
    if left < 0 or any(not row.options for row in found.rows) or (left and not free):
        found.rows = []
        found.refusal = Refusal("pinned", asked=Fraction(need))
    elif left:
        found.rows.append(Row(line, left, free))


def _whole_options(
    found: Demand, plans: tuple[WayPlan, ...], part: Fraction, shop: Shop
) -> list[Option]:
    """All (or a part of all) on each side: one option a side, of all ways that are there."""
    want = _want(found, plans[0], shop)._replace(fraction=part)
    single = plans if plans[0].single and len(plans) == 1 else tuple([p for p in plans if p.single])
    options: list[Option] = []
    for carcass, mine in shop.by_carcass[found.choice.share]:
        animal = shop.herd[carcass]
        for held in mine:
            options += _side_options(carcass, held, single, animal, want, found, shop)
        for plan in plans:
            if plan.single or (single and not plan.animal):
                continue
            pair = _pair(plan, mine)
            if pair is not None:
                options.append(Option(carcass, 0, (plan,), pair, animal, want, cap=1))
    return options


def _side_options(
    carcass: int,
    held: Held,
    plans: tuple[WayPlan, ...],
    animal: Animal,
    want: Wanted,
    found: Demand,
    shop: Shop,
) -> list[Option]:
    """One option for all ways that are there; the ways that are lost are noted."""
    there: list[WayPlan] = []
    apart: list[Option] = []
    for plan in plans:
        option = Option(carcass, held.side.number, (plan,), (held,), animal, want, cap=1)
        take = option.take(SURE, shop.ways)
        if isinstance(take, Take):
            there.append(plan)
        apart.append(option)
    if len(there) == len(plans) == 1:
        return apart
    if not there:
        return apart
    lost = [one for one in apart if isinstance(one.take(SURE, shop.ways), Missing)]
    together = Option(carcass, held.side.number, tuple(there), (held,), animal, want, cap=1)
    return [together, *lost]


def _of_each_side(found: Demand, plans: tuple[WayPlan, ...], shop: Shop) -> None:
    part = found.choice.amount.fraction or ALL
    if found.choice.amount.kind == "all":
        part = ALL
    _sort_out(found, _whole_options(found, plans, part, shop), shop)
    line = found.choice.line
    found.rows = [Row(line, 1, [option]) for option in found.options]


def _of_the_animal(found: Demand, plans: tuple[WayPlan, ...], shop: Shop) -> None:
    """A fraction of the animal: whole sides, or whole pieces, or refused."""
    part = found.choice.amount.fraction or Fraction(1)
    options = _whole_options(found, plans, ALL, shop)
    _sort_out(found, options, shop)
    if not found.options:
        return
    places = {(one.carcass, one.side) for one in found.options}
    places |= {(one.carcass, one.side) for one, _ in found.lost}
    sides = part * len(places)
    if sides.denominator == 1:
        _rows(found, sides.numerator)
        return
    pieces = Demand(found.choice, found.cut)
    _sort_out(pieces, unit_options(pieces, plans, shop), shop)
    total = part * sum([_pieces_in(one, shop) for one in pieces.options])
    if total.denominator == 1 and total > 0:
        found.options = pieces.options
        _rows(found, total.numerator)
    else:
        found.refusal = Refusal("not_whole", asked=sides)


def _pieces_in(option: Option, shop: Shop) -> int:
    """How many pieces "all" makes there: none for what is sliced or cut to length."""
    plan = option.ways[0]
    if plan.on_run is not None and plan.on_run.take.size != "whole":
        return 0
    take = option.take(SURE, shop.ways)
    if isinstance(take, Missing):
        return 0
    counts = [there // amount for _, amount, there in take.cells]
    return min([*counts, 1] if take.pieces else counts)
