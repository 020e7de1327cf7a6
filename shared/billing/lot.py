"""A lot as it is billed: its animals, its shares with their cards, and what was made of each."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction

from shared.billing.ended import Ended
from shared.billing.problems import BillingProblem
from shared.billing.quantities import (
    ExpectedSides,
    MadeLine,
    Pick,
    expected_made,
    expected_sides,
    made_lines,
)
from shared.billing.rates import RateCard
from shared.billing.storage import StorageDays
from shared.carcass.carcass import Carcass, Holding
from shared.carcass.catalogue import Catalogue
from shared.cutting.forecast import Forecast
from shared.cutting.order import Choice, Question
from shared.shop.counted import CountedPackages, CountedWeight
from shared.shop.packages import PackageMade


@dataclass(frozen=True, slots=True)
class Asked:
    """What an order asks for beside the cutting: so many days, miles, or once (delivery).

    On a later bill of the order `rounds` bills have it already, and `before` of it was billed
    that the card's steps count along: storage of 8 days, then of 5 more, costs what 13 cost less
    what 8 did.
    """

    code: str
    quantity: Fraction = Fraction(1)
    before: Fraction = Fraction(0)
    rounds: int = 0


@dataclass(frozen=True, slots=True)
class Credit:
    """Cents taken off a bill before it is issued, with the reason the paper gives.

    `number` counts on after those on earlier bills; 0: by its place among the bill's.
    """

    reason: str
    cents: int
    number: int = 0


@dataclass(frozen=True, slots=True)
class Division:
    """One share's cents of one charge, as kept from the first bill of the animal on.

    `charge` is "<code>:<animal>", animals counted from 1, 0 for goods made of the whole lot.
    share 0 is the producer.
    """

    charge: str
    share: int
    cents: int


@dataclass(frozen=True, slots=True)
class BilledShare:
    """One owner's share: what he holds, his card, what was made, asked and credited."""

    number: int
    owner: str
    holdings: tuple[Holding, ...]
    card: RateCard
    made: tuple[MadeLine, ...] = ()
    asked: tuple[Asked, ...] = ()
    credits: tuple[Credit, ...] = ()


@dataclass(frozen=True, slots=True)
class BilledLot:
    """Everything the bills of a lot are made from.

    `fore_share` is the forequarter's part of a side where quarters aren't weighed.
    `producer_share` is the share whose bill also carries what falls to the producer; without a
    `producer_card` the first share's card says what that is. `kept` are the divisions stored
    with earlier bills; they win. `endings` say by place how an animal ended
    that isn't cut. `expected` fills in hanging weights for a quote. `storage_days` are the days
    that were counted as storage, as the bill says them.
    """

    species: str
    animals: tuple[Carcass, ...]
    shares: tuple[BilledShare, ...]
    fore_share: Fraction
    producer: str = ""
    producer_share: int | None = None
    producer_card: RateCard | None = None
    kept: tuple[Division, ...] = ()
    endings: Mapping[int, Ended] = field(default_factory=dict[int, Ended])
    expected: tuple[ExpectedSides, ...] = ()
    storage_days: StorageDays = "every_day"

    def share(self, number: int) -> BilledShare | None:
        """The share of that number, or None."""
        return next((one for one in self.shares if one.number == number), None)

    def ended_of(self, place: int) -> Ended:
        """How the animal at that place ended, "" while it goes on."""
        return self.endings.get(place, "")

    @property
    def the_producers_card(self) -> RateCard | None:
        """The card that says what falls to the producer; None for a lot without shares."""
        return self.producer_card or (self.shares[0].card if self.shares else None)


def billed_lot(
    question: Question,
    catalogue: Catalogue,
    cards: Mapping[int, RateCard],
    *,
    packages: Sequence[PackageMade] = (),
    counted: Sequence[CountedPackages] = (),
    weights: Sequence[CountedWeight] = (),
    complete: Collection[int] = (),
    complete_lines: Collection[int] = (),
    waiting_lines: Collection[int] = (),
    into: Mapping[int, Fraction] | None = None,
    forecast: Forecast | None = None,
    pick: Pick = "mid",
    fore_share: Fraction | None = None,
) -> BilledLot | BillingProblem:
    """A lot put together from the planner's question and the packages made.

    `cards` are by share number; "no_card" names a share without one. `complete` are the shares
    of which all packages are made, `complete_lines` lines of which they are though the share's
    others aren't (fresh goods, billed before the cured), `waiting_lines` those of which meat is
    still in cure or smoke though the share's others are ready: a charge on them waits. `into` are
    the pounds weighed in by line, `weights` what counted packages of a line weigh together.
    With a `forecast` it is a quote: what isn't weighed or made is taken from it, at the low, mid
    or high figure of its range. The producer, what is kept, asked and
    credited are set on it with `dataclasses.replace` and `with_extras`.
    """
    shares: list[BilledShare] = []
    for share in question.shares:
        card = cards.get(share.number)
        if card is None:
            return BillingProblem("no_card", {"share": str(share.number), "owner": share.owner})
        choices = [one for one in question.choices if one.share == share.number]
        if forecast is None:
            done = share.number in complete
            all_of_it = (packages, counted, weights)
            made = _made(share.number, choices, catalogue, all_of_it, complete=done, into=into)
            made = _as_ready(made, complete_lines, waiting_lines)
        else:
            made = expected_made(choices, catalogue, forecast, pick)
        shares.append(BilledShare(share.number, share.owner, share.holdings, card, made))
    expected = question.carcasses if forecast is not None else ()
    return BilledLot(
        species=catalogue.species,
        animals=question.carcasses,
        shares=tuple(shares),
        fore_share=catalogue.ranges.fore_share if fore_share is None else fore_share,
        expected=tuple(expected_sides(one, catalogue, pick) for one in expected),
    )


def _as_ready(
    made: Sequence[MadeLine], ready: Collection[int], waiting: Collection[int]
) -> tuple[MadeLine, ...]:
    """Lines that are ready before the share's others, and those that are after them."""
    return tuple(
        replace(one, complete=one.line not in waiting and (one.complete or one.line in ready))
        for one in made
    )


def _made(
    share: int,
    choices: Sequence[Choice],
    catalogue: Catalogue,
    of_lot: tuple[Sequence[PackageMade], Sequence[CountedPackages], Sequence[CountedWeight]],
    *,
    complete: bool,
    into: Mapping[int, Fraction] | None,
) -> tuple[MadeLine, ...]:
    """What was made of a share's lines, of the lot's packages, counts and their weights."""
    packages, counted, weights = of_lot
    return made_lines(
        choices,
        catalogue,
        [one for one in packages if one.share == share],
        complete=complete,
        into=into,
        counted=[one for one in counted if one.share == share],
        weights=[one for one in weights if one.share == share],
    )


def with_extras(
    lot: BilledLot,
    share: int,
    *,
    asked: Sequence[Asked] = (),
    credits_given: Sequence[Credit] = (),
) -> BilledLot:
    """The lot with what one share asks for and is credited."""
    shares = tuple(
        replace(one, asked=tuple(asked), credits=tuple(credits_given))
        if one.number == share
        else one
        for one in lot.shares
    )
    return replace(lot, shares=shares)
