"""A lot: one booking of animals of one species by a producer for a day, and its shares."""

from dataclasses import dataclass
from datetime import date

from shared.carcass.carcass import Holding, Regime, Skin
from shared.shop.animals import Animal
from shared.units import Weight


@dataclass(frozen=True, slots=True)
class LotShare:
    """One owner's part of the lot; customer_id None is still to be named (and the producer's).

    `owner` is the customer's name for showing. `deposit_asked` is in cents.
    """

    number: int
    customer_id: int | None
    owner: str = ""
    holdings: tuple[Holding, ...] = ()
    leader: int | None = None
    deposit_asked: int = 0
    order_id: int = 0


@dataclass(frozen=True, slots=True)
class NewLot:
    """What is said when booking. `booked` is the guess of one animal's hot weight.

    `keeps` is what the owner keeps beside the meat (hide, offal), in his words.
    """

    species: str
    head: int
    day: date
    producer_id: int
    shares: tuple[LotShare, ...]
    skin: Skin = "unknown"
    regime: Regime = "custom"
    booked: Weight | None = None
    keeps: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Lot:
    """A booked lot with its animals and shares; `cancelled` is the reason, "" while it stands."""

    id: int
    number: int
    species: str
    head: int
    day: date
    producer_id: int
    producer: str
    skin: Skin
    regime: Regime
    booked: Weight | None
    keeps: str
    note: str
    shares: tuple[LotShare, ...]
    animals: tuple[Animal, ...]
    cancelled: str = ""
    version: int = 0
