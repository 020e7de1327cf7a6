"""What the planner answers: the plan, or what can't stand together and what would work."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, NamedTuple

from shared.cutting.order import Choice

Verdict = Literal["sure", "likely", "tight", "asks", "cant"]
VERDICTS: tuple[Verdict, ...] = ("sure", "likely", "tight", "asks", "cant")


@dataclass(frozen=True, slots=True)
class Where:
    """A place on the carcass. side 0 is the animal or both sides; unused names are "".

    A place on a run names the lane and its first stretch, and `last` where it reaches further
    than that one; `part` then only where it is one part.
    """

    carcass: int
    side: int
    run: str = ""
    stretch: str = ""
    lane: str = ""
    part: str = ""
    last: str = ""


class Taken(NamedTuple):
    """How much of one part a plan line takes: an exact fraction of the part on that side."""

    part: str
    fraction: Fraction


class PlanLine(NamedTuple):
    """One line of the plan: what is made of one choice on one side, in one way.

    `count` is pieces or slices made there; pieces that don't lie side by side are lines of their
    own. `start` and `end` are lengths along the run from its head end, None off a run: at
    expected lengths, or at the most where the group only stands so. `size` is the length of one
    slice or piece. `weight_ng` is the weight taken (before trimming and finish), expected.
    side 0: from the animal, or from both sides; then `start` and `end` are those of side 1 and
    fractions are of both sides' parts together. `count` 0 is less than one piece of the rest.
    """

    line: int
    share: int
    cut: str
    way: str
    carcass: int
    side: int
    count: int  # pyright: ignore[reportIncompatibleMethodOverride] - nobody counts in a line
    taken: tuple[Taken, ...]
    weight_ng: int
    start: int | None = None
    end: int | None = None
    size: int | None = None


class Trim(NamedTuple):
    """What one share has for the pools before any draw, whole nanograms, expected figures.

    `loss_ng` is the cutting loss named by its cuts' trimming.
    """

    share: int
    lean_ng: int
    fat_ng: int
    bones_ng: int
    skin_ng: int
    offal_ng: int
    loss_ng: int


class PoolDraw(NamedTuple):
    """What one pool choice (ground, stew, soup bones, lard) draws of its share's pools.

    `weight_ng` is what goes into the product; the five draws and what is added of inspected
    stock add up to it.
    """

    line: int
    share: int
    cut: str
    weight_ng: int
    lean_ng: int = 0
    fat_ng: int = 0
    bones_ng: int = 0
    skin_ng: int = 0
    offal_ng: int = 0
    added_ng: int = 0


class OpenPart(NamedTuple):
    """A part nobody has settled yet: `fraction` of it on that side, owned by that share."""

    share: int
    carcass: int
    side: int
    part: str
    fraction: Fraction


@dataclass(frozen=True, slots=True)
class Conflict:
    """An irreducible set of lines that can't stand together, where, and the numbers.

    `asked` is what all of the lines need there together, `expected` and `most` what is there of
    it; `rivals` says, by line, what each takes there on its own. A whole ham and 6 ham steaks at
    3/4 in: where is the ham centre, rivals 4 3/4 in and 4 13/16 in, asked 9 9/16 in, expected
    4 3/4 in. Kerfs between pieces are counted, the last piece on each side needs none. Where
    asked isn't more than most, no sum explains it: the pieces can't lie whatever their order, or
    every way of one line meets another line somewhere else. Over several sides where.side is 0
    and the figures are added up. In "trim" where.part is the pool that runs short.

    `kind`: "length" (asked, expected, most in length units), "whole" (a part wanted twice),
    "share" (fractions), "single" (one to an animal), "trim" (nanograms), "srm", "gone", "skin",
    "not_owned", "thickness", "joined", "amount", "pinned", "leaner", "not_whole", "batch" (asked
    the whole batch, expected what its lines come to), "led" (its share is cut as another says).
    """

    lines: tuple[int, ...]
    kind: str
    where: Where
    asked: Fraction
    expected: Fraction
    most: Fraction
    rivals: tuple[tuple[int, Fraction], ...] = ()


@dataclass(frozen=True, slots=True)
class OwnersQuestion:
    """Something the owners must settle between them before the sheet is released.

    `kind`: "single_wanted_twice", "undivided_piece", "cut_alike".
    """

    kind: str
    lines: tuple[int, ...]
    shares: tuple[int, ...]
    where: Where


@dataclass(frozen=True, slots=True)
class Caution:
    """A thing to be told that refuses nothing: code, line (0 = the order) and its numbers.

    "likely" and "tight" name the line that gives way first where the carcass comes out short;
    "tight" says where the group only stands if it runs long, "up_to_none" that nothing fits of a
    line that asked for up to so many; "rest_twice" that an earlier line took the rest.

    Codes: "likely", "tight", "rest_empty", "rest_under_one_piece", "lost_part", "batch_small",
    "age_unknown", "trimmed", "dont_split", "rest_twice", "unused_piece_weight",
    "up_to_none", "added_from_inspected_stock". Of "batch_small" asked is what its lines come to,
    expected the whole batch and most what it still needs.
    """

    code: str
    line: int
    where: Where | None = None
    asked: Fraction = Fraction(0)
    expected: Fraction = Fraction(0)
    most: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True)
class Edit:
    """One changed line of a remedy; `choice` None leaves the line out."""

    line: int
    choice: Choice | None


@dataclass(frozen=True, slots=True)
class Remedy:
    """A way out that was planned before it is offered.

    `moved_ng` is the change in expected pounds. With a refused line: "thicker" (as thin as the
    saw holds), "less_lean" (as lean as the trim separates), "each_side" (a fraction of each side
    in place of one of the animal), "whole_batch" (as much as the least batch).

    `kind`: "less", "rest", "other_side", "neighbour", "other_cut", "leave_out", "two_lines",
    "ask_other", "thicker", "less_lean", "each_side", "whole_batch".
    `verdict` is the order's verdict with it taken (other conflicts left out).
    """

    kind: str
    edits: tuple[Edit, ...]
    moved_ng: int
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class Answer:
    """The whole answer. With conflicts, `lines` hold the plan of what stands without them.

    `group_verdicts` gives each line the verdict of its group (or of its pools), by line number.
    """

    verdict: Verdict
    lines: tuple[PlanLine, ...]
    trim: tuple[Trim, ...]
    open_parts: tuple[OpenPart, ...]
    conflicts: tuple[Conflict, ...] = ()
    questions: tuple[OwnersQuestion, ...] = ()
    cautions: tuple[Caution, ...] = ()
    group_verdicts: tuple[tuple[int, Verdict], ...] = ()
    draws: tuple[PoolDraw, ...] = ()
