"""One animal as the rail knows it: its states, every weight taken, and what was taken away."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from shared.carcass.carcass import Age, Gone, Regime, Skin
from shared.carcass.catalogue import Quarter
from shared.shop.states import AnimalState
from shared.units import Weight

WeighingKind = Literal["live", "hot", "chilled"]
WeighingSource = Literal["typed", "scale"]


@dataclass(frozen=True, slots=True)
class Animal:
    """One animal of a lot. `index` counts from 0 within the lot, as `Holding.carcass` does.

    `place` is where it hangs, `held_for` why it is held, condemned or refused.
    """

    id: int
    lot_id: int
    index: int
    species: str
    tag: str = ""
    sex: str = ""
    age: Age = "unknown"
    skin: Skin = "unknown"
    regime: Regime = "custom"
    state: AnimalState = "booked"
    split: bool | None = None
    place: str = ""
    arrived_at: datetime | None = None
    killed_on: date | None = None
    hung_at: datetime | None = None
    held_for: str = ""
    version: int = 0


@dataclass(frozen=True, slots=True)
class Weighing:
    """One weight, net and as weighed; never overwritten: a correction names what it `corrects`.

    side 0 is the whole animal. `withdrawn` corrects to "not weighed". `current` says no later
    row corrects this one and it is not withdrawn.
    """

    id: int
    animal_id: int
    kind: WeighingKind
    side: int
    quarter: Quarter
    weight: Weight
    tare: Weight | None
    division: Weight | None
    scale: str
    source: WeighingSource
    at: datetime
    person: str
    station: str
    corrects: int | None = None
    withdrawn: bool = False
    reason: str = ""
    current: bool = True


@dataclass(frozen=True, slots=True)
class AlreadyWeighed:
    """That place has a weight already; correct that one instead, with a reason."""

    weighing: Weighing


@dataclass(frozen=True, slots=True)
class Loss:
    """A part trimmed, condemned or discarded; `void` says why it was taken back, "" when not."""

    id: int
    animal_id: int
    gone: Gone
    at: datetime
    person: str
    station: str
    void: str = ""
