"""The values a species file is read into: parts, runs, cuts and their ways of being made.

A carcass is lines that are sawn end to end (runs), muscles that lie side by side on a line
(lanes), and two sides that are sometimes one. A part lies on one stretch and one lane of a run,
or stands alone. Shares and fractions are exact (`Fraction`), lengths are whole numbers of
1/203,200 in at the species' reference weight, weights are whole nanograms.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from shared.units import Weight

Quarter = Literal["fore", "hind", ""]
Tool = Literal["saw", "knife", "slicer"]
Per = Literal["side", "animal"]
Pool = Literal["lean", "fat", "bones", "skin", "offal"]
PieceSize = Literal["slice", "piece", "whole"]
CutKind = Literal["steaks", "roast", "whole", "ribs", "bones", "offal", "fat", "to_trim", "pool"]
SidesNeeded = Literal["one", "both", "joined"]


@dataclass(frozen=True, slots=True)
class Stretch:
    """A length of a run between two lines the saw may take, e.g. ribs 6 to 12 of beef.

    `length` is the usable length at the reference side weight, faces already taken off.
    `band` is how far sure and most lie from expected (1/20 = 5 %).
    """

    code: str
    length: int
    ribs: int
    quarter: Quarter
    band: Fraction
    source: str


@dataclass(frozen=True, slots=True)
class Run:
    """Stretches that lie end to end, head end first, and the lanes that lie side by side."""

    code: str
    lanes: tuple[str, ...]
    stretches: tuple[Stretch, ...]

    def place(self, stretch: str) -> int:
        """Index of a stretch on the run, counted from the head end."""
        for index, one in enumerate(self.stretches):
            if one.code == stretch:
                return index
        raise KeyError(stretch)


@dataclass(frozen=True, slots=True)
class Part:
    """The smallest region two cuts could fight over.

    `share` is of the reference chilled side for a part that comes one to a side, of the
    reference carcass for one that comes one to an animal. lean + fat + bone + skin = 1.
    `counted` says whether the part is in the hanging weight. `by_nature_trim` parts are never
    open: they are trim whatever the order says (the plate's loose lean, for one).
    """

    code: str
    primal: str
    per: Per
    share: Fraction
    lean: Fraction
    fat: Fraction
    bone: Fraction
    skin: Fraction
    quarter: Quarter
    run: str = ""
    stretch: str = ""
    lane: str = ""
    counted: bool = True
    divisible: bool = True
    srm_from_30_months: bool = False
    needs_skin: bool = False
    by_nature_trim: bool = False
    bone_pool: str = "other"
    fat_pool: str = "other"
    loss: str = ""
    sources: Mapping[str, str] = field(default_factory=dict[str, str])


@dataclass(frozen=True, slots=True)
class PartTake:
    """One piece takes this fraction of a part (off any run, or of a whole part on one)."""

    part: str
    share: Fraction


@dataclass(frozen=True, slots=True)
class RunTake:
    """One piece takes a length of a run, of every lane it names, between two stretches.

    size "slice": a slice of the choice's thickness. "piece": as long as the choice's ribs or
    weight say, else `piece_share` of the window. "whole": from `first` to `last` entire; with
    `first_share` (the tail-end fraction of the first stretch) or `last_share` (the head-end
    fraction of the last) less than 1 the piece stops inside a stretch: the butt half of a ham is
    first = ham_butt, last = ham_centre, last_share = 1/2.
    `anchor` holds a "piece" at the head or tail end of its window.
    """

    run: str
    lanes: tuple[str, ...]
    first: str
    last: str
    size: PieceSize
    first_share: Fraction = Fraction(1)
    last_share: Fraction = Fraction(1)
    piece_share: Fraction | None = None
    anchor: Literal["head", "tail", ""] = ""


@dataclass(frozen=True, slots=True)
class Way:
    """One way a cut can be made: what each piece takes together.

    At most one `run` take sets the size; `parts` are taken whole or by fraction beside it.
    """

    code: str
    run: RunTake | None
    parts: tuple[PartTake, ...]
    sides: SidesNeeded = "one"


@dataclass(frozen=True, slots=True)
class Trimming:
    """What a cut gives back of the weight it takes: fractions to the pools, and a named loss."""

    lean: Fraction = Fraction(0)
    fat: Fraction = Fraction(0)
    bone: Fraction = Fraction(0)
    skin: Fraction = Fraction(0)
    loss: Fraction = Fraction(0)
    source: str = ""


@dataclass(frozen=True, slots=True)
class Batch:
    """The least a seasoned product is made of at a time, and what one bag of seasoning is for.

    A batch is a multiple of a bag.
    """

    smallest: Weight
    bag: Weight
    source: str


@dataclass(frozen=True, slots=True)
class Cut:
    """Something a customer can ask for.

    `default_amount` is what the counter offers first ("rest", "all", "pieces"). `amounts` are
    the kinds of amount it understands. A cut of kind "pool" draws on `pools`; one of kind
    "to_trim" gives all it takes to the pools. `order` is its place in the order the block breaks
    the carcass. `finishes` are the finishes it may have, `usual_finishes` those it is offered
    with, for it is made so: sausage is seasoned, links are in links (common practice,
    no source). `keeps_bone` is for words only.
    """

    code: str
    primal: str
    kind: CutKind
    ways: tuple[Way, ...]
    amounts: tuple[str, ...]
    default_amount: str
    order: int
    tool: Tool = "saw"
    thickness: int | None = None
    least_thickness: int | None = None
    piece_weight: Weight | None = None
    pieces_default: int = 1
    package_pieces: int | None = None
    package_weight: Weight | None = None
    pools: tuple[Pool, ...] = ()
    lean_percent: Fraction | None = None
    finishes: tuple[str, ...] = ()
    usual_finishes: tuple[str, ...] = ()
    neighbours: tuple[str, ...] = ()
    trimming: Trimming = Trimming()
    keeps_bone: bool = True
    imps: str = ""
    source: str = ""
    batch: Batch | None = None

    def way(self, code: str) -> Way:
        """The way of that code; KeyError when the cut has none such."""
        for one in self.ways:
            if one.code == code:
                return one
        raise KeyError(code)


@dataclass(frozen=True, slots=True)
class Finish:
    """What is done to a cut after it is cut; `yield_` is finished weight over weight in.

    A slice that is `opened` takes so many thicknesses of meat: one butterflied at 3/4 in is cut
    1 1/2 in. `least_thickness` is the least a slice must have for it, `boneless` says that it
    is done to boneless meat only.
    """

    code: str
    yield_: Fraction
    slices: bool = False
    charged: bool = False
    cured: bool = False
    source: str = ""
    opened: int = 1
    least_thickness: int | None = None
    boneless: bool = False


@dataclass(frozen=True, slots=True)
class UsualLine:
    """One line of the usual way of cutting a primal, as an order would hold it."""

    primal: str
    cut: str
    amount: str
    count: int = 0
    thickness: int | None = None
    piece_weight: Weight | None = None
    package_pieces: int | None = None
    package_weight: Weight | None = None
    finishes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Ranges:
    """Usual ranges of the species, for notes and questions at the rail; per cent as fractions.

    `usual` is what nobody remarks on, `possible` what is taken without a question. Keyed by
    class ("scalded", "skinned", "steer", ...; "" for any).
    """

    dressing_usual: Mapping[str, tuple[Fraction, Fraction]]
    dressing_possible: tuple[Fraction, Fraction]
    shrink: Fraction
    hang_days: tuple[int, int]
    fore_share: Fraction
    sources: Mapping[str, str] = field(default_factory=dict[str, str])


@dataclass(frozen=True, slots=True)
class Catalogue:
    """All that is known of one species: read once from its file, checked, then never changed.

    `reference_side_ng` is the chilled side at which the lengths hold. `primals` are in the
    order the block breaks them. `leanest` is the leanest the trim separates to. `also_usual` are
    the shop's other usual lines, which it doesn't remark on.
    """

    species: str
    version: int
    reference_side_ng: int
    reference_dressing: str
    reference_live_ng: int
    primals: tuple[str, ...]
    runs: Mapping[str, Run]
    parts: Mapping[str, Part]
    cuts: Mapping[str, Cut]
    finishes: Mapping[str, Finish]
    usual: tuple[UsualLine, ...]
    ranges: Ranges
    kerf: Mapping[Tool, int]
    leanest: Fraction
    sources: Mapping[str, str]
    usually_split: bool = True
    also_usual: tuple[UsualLine, ...] = ()

    def part_at(self, run: str, stretch: str, lane: str) -> Part | None:
        """The part that fills one lane of one stretch, or None where the lane is empty there."""
        for part in self.parts.values():
            if part.run == run and part.stretch == stretch and part.lane == lane:
                return part
        return None
