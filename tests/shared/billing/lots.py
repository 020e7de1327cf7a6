"""Lots for the billing tests, in the few words the examples need."""

from collections.abc import Sequence
from datetime import UTC, date, datetime
from fractions import Fraction

from shared.billing.bill import Bill
from shared.billing.lot import BilledLot, BilledShare
from shared.billing.problems import BillingProblem
from shared.billing.quantities import MadeLine
from shared.billing.rates import Charge, RateCard
from shared.billing.statement import Statement
from shared.carcass.carcass import Carcass, Holding, SideWeights
from shared.shop.money import Payment, PaymentKind, PaymentMeans
from shared.units import Weight

FROM = date(2024, 4, 1)
FORE = Fraction(55, 100)
WHOLE = (Holding(0, 1), Holding(0, 2))
HALVES = ((Holding(0, 1),), (Holding(0, 2),))
QUARTERS = (
    (Holding(0, 1, "fore"),),
    (Holding(0, 1, "hind"),),
    (Holding(0, 2, "fore"),),
    (Holding(0, 2, "hind"),),
)
SPLIT_QUARTERS = tuple((Holding(0, side, "", Fraction(1, 2)),) for side in (1, 1, 2, 2))


def pounds(text: str) -> Weight:
    return Weight.from_pounds(text)


def hung(first: str | None, second: str | None, tag: str = "114") -> Carcass:
    """A carcass with the hot weights of its two sides."""
    sides = [SideWeights(pounds(one) if one else None) for one in (first, second)]
    return Carcass("beef", tag=tag, hot=(sides[0], sides[1]))


def card(*charges: Charge, code: str = "2024", group: str = "") -> RateCard:
    return RateCard(code, "Rates", FROM, group=group, charges=charges)


def lot_of(
    animals: Carcass | Sequence[Carcass],
    holdings: Sequence[tuple[Holding, ...]],
    *charges: Charge,
    made: Sequence[tuple[MadeLine, ...]] = (),
) -> BilledLot:
    """A lot whose shares are numbered from 1 and all on one card."""
    shares = tuple(
        BilledShare(
            number=place + 1,
            owner=f"Owner {place + 1}",
            holdings=held,
            card=card(*charges),
            made=made[place] if place < len(made) else (),
        )
        for place, held in enumerate(holdings)
    )
    every = (animals,) if isinstance(animals, Carcass) else tuple(animals)
    return BilledLot("beef", every, shares, FORE, producer="Producer")


def smoked(
    finished: str, *, packages: int = 1, complete: bool = True, into: str | None = None
) -> MadeLine:
    return MadeLine(
        line=1,
        cut="belly",
        kind="whole",
        finishes=("smoked",),
        packages=packages,
        finished=Fraction(finished),
        into=None if into is None else Fraction(into),
        complete=complete,
    )


def good(bill: Bill | BillingProblem) -> Bill:
    assert isinstance(bill, Bill), bill
    return bill


def fine(paper: Statement | BillingProblem) -> Statement:
    assert isinstance(paper, Statement), paper
    return paper


def paid(kind: PaymentKind, cents: int, means: PaymentMeans = "cash") -> Payment:
    at = datetime(2024, 4, 20, 15, tzinfo=UTC)
    return Payment(1, 1, 1, None, kind, means, cents, "", at, "Test", "Bench", 0, at.date())
