"""What an owner asks for: amounts, packages and choices, and the whole question to the planner."""

from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from shared.carcass.carcass import Carcass, Share
from shared.units import Weight

AmountKind = Literal["all", "rest", "pieces", "slices", "pounds", "fraction", "up_to", "at_least"]
Stock = Literal["pork_fat", "pork_trim", "beef_fat"]


@dataclass(frozen=True, slots=True)
class Amount:
    """How much of a cut. Only the field its kind needs is set.

    all · rest · pieces(count) · slices(count) · pounds(weight) · fraction(of each side, or of
    the animal) · up_to(count) · at_least(count).
    """

    kind: AmountKind
    count: int = 0
    weight: Weight | None = None
    fraction: Fraction | None = None
    of: Literal["side", "animal"] = "side"


@dataclass(frozen=True, slots=True)
class Package:
    """What goes in one package: so many pieces, or so much weight; neither means one each."""

    pieces: int | None = None
    weight: Weight | None = None


@dataclass(frozen=True, slots=True)
class Added:
    """Fat or pork of inspected stock ground in: what, and what part of the product it is.

    `share` None adds what brings the product to the lean asked (Pearson's square).
    """

    of: Stock
    share: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Choice:
    """One line of an owner's order. Line numbers are unique in the question and never return.

    `way` names a way of the cut, "" leaves it open. `piece_weight` is the roast weight asked,
    `ribs` the ribs of a rib roast or rack, `lean` the per cent lean asked of ground. `pinned`
    fixes sides: pairs of (carcass, side, count); `made` says the block has cut it. `seasoning`
    names the seasoning of a batch: lines seasoned alike go into one. `added` is what is ground in.
    """

    line: int
    share: int
    cut: str
    amount: Amount
    way: str = ""
    thickness: int | None = None
    piece_weight: Weight | None = None
    ribs: int | None = None
    lean: Fraction | None = None
    package: Package = Package()
    finishes: tuple[str, ...] = ()
    note: str = ""
    pinned: tuple[tuple[int, int, int], ...] = ()
    made: bool = False
    seasoning: str = ""
    added: Added | None = None


@dataclass(frozen=True, slots=True)
class Settings:
    """The shop's own settings the planner needs; None keeps the species file's figure.

    `cut_alike`: owners of one side have it cut one way; else each as he likes where length allows.
    """

    kerf_saw: int | None = None
    kerf_slicer: int | None = None
    at_block: bool = False
    own_lengths: tuple[tuple[str, int], ...] = ()
    cut_alike: bool = True


@dataclass(frozen=True, slots=True)
class Question:
    """One lot: carcasses that share owners, their shares, and every choice of every owner."""

    carcasses: tuple[Carcass, ...]
    shares: tuple[Share, ...]
    choices: tuple[Choice, ...]
    settings: Settings = field(default_factory=Settings)
