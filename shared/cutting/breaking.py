"""The order in which the block takes the carcass apart: plan lines as the cutter meets them.

Everything comes from the plan; nothing is worked out a second time. A line that comes from both
sides (a crown roast) or from the animal (the tongue) stands with side 1, after the side's own.
"""

from dataclasses import dataclass, replace

from shared.carcass.catalogue import Catalogue, Cut, UsualLine
from shared.cutting.answer import Answer, PlanLine, PoolDraw
from shared.cutting.order import Choice, Package, Question, Stock
from shared.units import Weight


@dataclass(frozen=True, slots=True)
class BlockLine:
    """One line of a block sheet: what is made there, of how many, for whom.

    `count` is pieces or slices expected on that side, `size` the length of one. `differs` says
    that it isn't the house's usual way; `from_rest` that it takes whatever is left. `weight_ng`
    is the weight taken before trimming. side 0: of the animal, or of both sides.
    """

    carcass: int
    side: int
    primal: str
    share: int
    line: int
    cut: str
    way: str
    count: int
    thickness: int | None
    size: int | None
    piece_weight: Weight | None
    ribs: int | None
    package: Package
    finishes: tuple[str, ...]
    note: str
    weight_ng: int
    differs: bool
    from_rest: bool
    start: int | None = None
    end: int | None = None


@dataclass(frozen=True, slots=True)
class PoolLine:
    """One line of the table at the end: ground, stew, sausage, bones or lard of one share.

    `added_ng` of `weight_ng` is stock that is ground in, `added` which; `seasoning` is its batch's.
    """

    share: int
    line: int
    cut: str
    weight_ng: int
    lean_ng: int
    fat_ng: int
    lean: int | None
    package: Package
    finishes: tuple[str, ...]
    note: str
    differs: bool
    from_rest: bool
    added_ng: int = 0
    added: Stock | None = None
    seasoning: str = ""


def block_lines(question: Question, answer: Answer, catalogue: Catalogue) -> tuple[BlockLine, ...]:
    """The plan's lines by carcass, then side, then the order the block breaks them.

    Stretches of one line on one side are told together, and so are the ways of a line that takes
    everything or the rest: the cutter reads four strip steaks once, not twice two.

    Worked number: of a whole hog with one ham whole and the other in steaks, side 1 gives one
    line (whole ham, 1) and side 2 one line (ham steaks, 6).
    """
    choices = {choice.line: choice for choice in question.choices}
    merged: dict[tuple[int, int, int, str], BlockLine] = {}
    for made in answer.lines:
        line = _block_line(made, choices[made.line], catalogue)
        key = (line.carcass, line.side, line.line, line.way)
        merged[key] = _together(merged[key], line) if key in merged else line
    return tuple(sorted(merged.values(), key=lambda one: _place(one, catalogue)))


def pool_lines(question: Question, answer: Answer, catalogue: Catalogue) -> tuple[PoolLine, ...]:
    """What each share draws of its pools, by share and line."""
    choices = {choice.line: choice for choice in question.choices}
    lines = [_pool_line(draw, choices[draw.line], catalogue) for draw in answer.draws]
    return tuple(sorted(lines, key=lambda one: (one.share, one.line)))


def differs_from_usual(choice: Choice, cut: Cut, usual: tuple[UsualLine, ...]) -> bool:
    """Whether the cutter must look twice: the choice isn't the house's usual for its primal.

    Thickness, package and roast weight left open count as the cut's own.
    """
    return not any(_same(choice, cut, line) for line in usual if line.cut == cut.code)


def package_of(choice: Choice, cut: Cut) -> Package:
    """The choice's package, else the cut's usual one."""
    if choice.package.pieces is not None or choice.package.weight is not None:
        return choice.package
    return Package(cut.package_pieces, cut.package_weight)


def _same(choice: Choice, cut: Cut, usual: UsualLine) -> bool:
    thickness = choice.thickness or cut.thickness
    if thickness != (usual.thickness or cut.thickness):
        return False
    if set(choice.finishes) != set(usual.finishes) or choice.note:
        return False
    if (choice.piece_weight or cut.piece_weight) != (usual.piece_weight or cut.piece_weight):
        return False
    package = package_of(choice, cut)
    return (
        package.pieces == (usual.package_pieces or cut.package_pieces)
        and package.weight == (usual.package_weight or cut.package_weight)
        and choice.ribs is None
    )


def _together(first: BlockLine, second: BlockLine) -> BlockLine:
    """One line of two; where they lie apart on the run, it has no one place there."""
    return replace(
        first,
        count=first.count + second.count,
        weight_ng=first.weight_ng + second.weight_ng,
        size=first.size if first.size == second.size else None,
        start=None,
        end=None,
    )


def _block_line(made: PlanLine, choice: Choice, catalogue: Catalogue) -> BlockLine:
    cut = catalogue.cuts[made.cut]
    everything = choice.amount.kind in ("all", "rest")
    sliced = any(way.run is not None and way.run.size == "slice" for way in cut.ways)
    return BlockLine(
        carcass=made.carcass,
        side=made.side,
        primal=cut.primal,
        share=made.share,
        line=made.line,
        cut=made.cut,
        way=made.way if len(cut.ways) > 1 and not everything else "",
        count=0 if cut.kind == "to_trim" else made.count,
        thickness=(choice.thickness or cut.thickness) if sliced else None,
        size=made.size,
        piece_weight=choice.piece_weight,
        ribs=choice.ribs,
        package=package_of(choice, cut),
        finishes=choice.finishes,
        note=choice.note,
        weight_ng=made.weight_ng,
        differs=differs_from_usual(choice, cut, (*catalogue.usual, *catalogue.also_usual)),
        from_rest=choice.amount.kind == "rest",
        start=made.start,
        end=made.end,
    )


def _pool_line(draw: PoolDraw, choice: Choice, catalogue: Catalogue) -> PoolLine:
    cut = catalogue.cuts[draw.cut]
    lean = choice.lean if choice.lean is not None else cut.lean_percent
    added = choice.added
    if added is not None and added.share is not None:
        lean = choice.lean
    return PoolLine(
        share=draw.share,
        line=draw.line,
        cut=draw.cut,
        weight_ng=draw.weight_ng,
        lean_ng=draw.lean_ng,
        fat_ng=draw.fat_ng,
        lean=None if lean is None else round(lean * 100),
        package=package_of(choice, cut),
        finishes=choice.finishes,
        note=choice.note,
        differs=differs_from_usual(choice, cut, (*catalogue.usual, *catalogue.also_usual)),
        from_rest=choice.amount.kind == "rest",
        added_ng=draw.added_ng,
        added=added.of if added is not None and draw.added_ng else None,
        seasoning=choice.seasoning,
    )


def _place(line: BlockLine, catalogue: Catalogue) -> tuple[int, int, int, int, int, int, int]:
    primal = (
        catalogue.primals.index(line.primal)
        if line.primal in catalogue.primals
        else len(catalogue.primals)
    )
    side = line.side or 1
    return (
        line.carcass,
        side,
        int(line.side == 0),
        primal,
        catalogue.cuts[line.cut].order,
        line.share,
        line.line,
    )
