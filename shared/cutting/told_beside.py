"""What is told beside a plan and refuses nothing: cautions, and questions to the owners."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from shared.cutting.answer import Caution, OwnersQuestion, Where
from shared.cutting.capacity import EXPECTED, NOTHING, SURE, animals, by_carcass, owners
from shared.cutting.conflict_place import Place, places
from shared.cutting.demand import Demand, Row, Shop, demand
from shared.cutting.laying import Laid
from shared.cutting.order import Question
from shared.cutting.singles import give_rooms
from shared.cutting.standing import Standing, stands
from shared.cutting.take import Option, Take
from shared.cutting.ways import Ways


def has_something(one: Demand) -> bool:
    """Whether there is something to tell of a line by itself, whatever the plan."""
    return bool(one.lost) or _is_weight_unused(one)


def of_lines(demands: Sequence[Demand], question: Question) -> Iterator[Caution]:
    """Sides left out of "all", roast weights nobody uses, and what was trimmed away.

    Only lines of which there is something to tell need be given.
    """
    for one in demands:
        for option, why in one.lost:
            if one.refusal is None and why.kind != "joined":
                where = Where(option.carcass, option.side, part=why.part)
                yield Caution("lost_part", one.choice.line, where)
        if _is_weight_unused(one):
            yield Caution("unused_piece_weight", one.choice.line)
    for number, carcass in enumerate(question.carcasses):
        away: dict[Where, Fraction] = {}
        for gone in carcass.gone:
            if gone.weight is not None:
                where = Where(number, gone.side, part=gone.part)
                away[where] = away.get(where, NOTHING) + gone.weight.nanograms
        for where, weight in away.items():
            yield Caution("trimmed", 0, where, weight)


def _is_weight_unused(one: Demand) -> bool:
    return one.choice.piece_weight is not None and bool(one.options) and not _cut_by_weight(one)


def _cut_by_weight(one: Demand) -> bool:
    return any(
        plan.on_run is not None and plan.on_run.take.size == "piece"
        for option in one.options
        for plan in option.ways
    )


def tight(found: Standing, ways: Ways) -> Iterator[Caution]:
    """The newest line of a group that isn't sure, which gives way first; if tight, where."""
    if found.scenario == SURE:
        return
    newest = max(one.choice.line for one in found.demands)
    if found.scenario == EXPECTED:
        yield Caution("likely", newest)
        return
    sides = {(one.carcass, one.side) for row in found.rows for one in row.options}
    over = [
        place
        for side in sorted(sides)
        for place in places(_as_planned(found, side), ways)
        if _is_tight(place)
    ]
    best = max(over, key=lambda one: (sum(map(bool, one.must.values())), -one.span), default=None)
    if best is None:
        yield Caution("tight", newest)
        return
    line = max(line for line, amount in best.must.items() if amount)
    asked = Fraction(sum(best.must.values()) - best.spare, best.unit)
    expected, most = Fraction(best.expected, best.unit), Fraction(best.most, best.unit)
    yield Caution("tight", line, best.where, asked, expected, most)


def _as_planned(found: Standing, side: tuple[int, int]) -> list[Demand]:
    """What the plan makes of the group's lines on one side, with no other place to go."""
    lines: list[Demand] = []
    for one in found.demands:
        rows = [
            Row(row.line, count, [option])
            for row, units in zip(found.rows, found.units, strict=True)
            for option, count in zip(row.options, units, strict=True)
            if count and row.line == one.choice.line and (option.carcass, option.side) == side
        ]
        lines.append(Demand(one.choice, one.cut, [row.options[0] for row in rows], rows))
    return [one for one in lines if one.rows]


def _is_tight(place: Place) -> bool:
    return sum(place.must.values()) - place.spare > place.expected


def dont_split(laid: Laid) -> Iterator[Caution]:
    """Lines that need the sides joined, where nobody has said whether they still are."""
    for row, made in zip(laid.rows, laid.units, strict=True):
        for option, count in zip(row.options, made, strict=True):
            joined = any(plan.way.sides == "joined" for plan in option.ways)
            if count and joined and option.animal.carcass.split is None:
                yield Caution("dont_split", row.line, Where(option.carcass, 0))


def undivided(laid: Laid, shares: dict[int, int], ways: Ways) -> Iterator[OwnersQuestion]:
    """Pieces bigger than their owner's part of a split side: who gets them, or how divided?"""
    for row, made in zip(laid.rows, laid.units, strict=True):
        for option, count in zip(row.options, made, strict=True):
            take = option.take(laid.scenario, ways)
            if count and isinstance(take, Take) and take.undivided:
                where = Where(option.carcass, option.side, part=_part_of(option))
                yield OwnersQuestion("undivided_piece", (row.line,), (shares[row.line],), where)


def _part_of(option: Option) -> str:
    parts = option.ways[0].parts
    return parts[0].code if parts else ""


def age_unknown(question: Question, demands: Iterable[Demand], shop: Shop) -> Iterator[Caution]:
    """Lines that would not stand, each on its own, if the animal were 30 months or over."""
    unknown = {n for n, one in enumerate(question.carcasses) if one.age == "unknown"}
    bound = {part.code for part in shop.ways.bound_parts if part.srm_from_30_months}
    if not unknown or not bound or question.settings.at_block:
        return
    older: Shop | None = None
    for one in demands:
        if one.refusal is not None or not _touches(one, unknown, bound):
            continue
        if older is None:
            older = _older(question, shop)
        then = demand(one.choice, older)
        if then.refusal is not None or not stands([then] if then.rows else [], shop.ways):
            yield Caution("age_unknown", one.choice.line)


def _touches(one: Demand, carcasses: set[int], bound: set[str]) -> bool:
    return any(
        option.carcass in carcasses and any(part.code in bound for part in plan.parts)
        for option in one.options
        for plan in option.ways
    )


def _older(question: Question, shop: Shop) -> Shop:
    carcasses = tuple(
        replace(one, age="30_and_over") if one.age == "unknown" else one
        for one in question.carcasses
    )
    aged = replace(question, carcasses=carcasses)
    herd = animals(aged, shop.ways)
    give_rooms(herd, shop.rooms)
    held = owners(aged, herd)
    return replace(shop, herd=herd, held=held, by_carcass=by_carcass(held))
