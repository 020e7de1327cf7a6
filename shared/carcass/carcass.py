"""The carcass as it hangs, and who owns which of it."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from shared.carcass.catalogue import Quarter
from shared.carcass.dressing import USUAL, Dressing
from shared.units import Weight

Age = Literal["under_30", "30_and_over", "unknown"]
Skin = Literal["scalded", "skinned", "unknown"]
Basis = Literal["measured", "chilled", "hot", "live", "booked"]
Regime = Literal["inspected", "custom"]


@dataclass(frozen=True, slots=True)
class SideWeights:
    """What the rail weighed of one side; `fore` and `hind` where it was weighed by quarters."""

    whole: Weight | None = None
    fore: Weight | None = None
    hind: Weight | None = None

    @property
    def nanograms(self) -> int | None:
        """The side's weight: as weighed whole, else fore and hind together, else None."""
        if self.whole is not None:
            return self.whole.nanograms
        if self.fore is not None and self.hind is not None:
            return self.fore.nanograms + self.hind.nanograms
        return None


@dataclass(frozen=True, slots=True)
class Gone:
    """Something taken away: a part (or some pounds of it) from a side, with its reason.

    side 0 means the animal (for parts that come one to an animal). weight None means all of it.
    `before_scale` says it was off before the hot weight was taken, `before_chilled` that it went
    between the hot and the chilled weight of its side.
    """

    part: str
    side: int
    weight: Weight | None
    reason: str
    before_scale: bool = False
    before_chilled: bool = False

    def off_before(self, basis: str) -> bool:
        """Whether a side known by that weight was weighed without it."""
        return self.before_scale or (self.before_chilled and basis == "chilled")


@dataclass(frozen=True, slots=True)
class Measured:
    """A stretch measured at the block ("loin ran 13½"): a fact, not an estimate."""

    stretch: str
    side: int
    length: int


@dataclass(frozen=True, slots=True)
class Carcass:
    """One animal, as far as it is known. `hot` and `chilled` hold side 1 and side 2.

    `unsplit` weights (a lamb hung whole) are given as `hot_whole`. `booked` is the guess of the
    hot weight made when it was booked. Of one `condemned`, or refused at the pen, nothing is cut.
    """

    species: str
    tag: str = ""
    sex: str = ""
    age: Age = "unknown"
    skin: Skin = "unknown"
    regime: Regime = "custom"
    split: bool | None = None
    live: Weight | None = None
    hot: tuple[SideWeights, SideWeights] = (SideWeights(), SideWeights())
    chilled: tuple[SideWeights, SideWeights] = (SideWeights(), SideWeights())
    hot_whole: Weight | None = None
    booked: Weight | None = None
    gone: tuple[Gone, ...] = ()
    measured: tuple[Measured, ...] = ()
    condemned: bool = False
    dressing: Dressing = USUAL


@dataclass(frozen=True, slots=True)
class Holding:
    """What a share holds of one carcass: a side, or a quarter of it, or a fraction of either.

    `carcass` counts from 0 within the lot, `side` is 1 or 2, quarter "" is the whole side.
    A split quarter is fraction 1/2 of a side.
    """

    carcass: int
    side: int
    quarter: Quarter = ""
    fraction: Fraction = Fraction(1)


@dataclass(frozen=True, slots=True)
class Share:
    """An owner's part of a lot; numbers never change. `leader`: cut as that share says."""

    number: int
    owner: str
    holdings: tuple[Holding, ...]
    leader: int | None = None
