"""The bill of one owner, made from shares, weights, packages and card; nothing typed twice.

A plant's bill carries the plant's services only. The farmer's price for the animal is a paper of
his own: `shared.billing.statement`.
"""

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from typing import Literal

from shared.billing.division import Portion, Rule, portions
from shared.billing.lot import BilledLot, BilledShare, Credit
from shared.billing.problems import BillingProblem
from shared.billing.quantities import HangingWeights, WeightKind
from shared.billing.rates import HANGING, Basis, Charge, RateCard, Unit
from shared.billing.stakes import PRODUCER, WaitsFor, lot_weights
from shared.money import round_half_up
from shared.shop.holdings import whole
from shared.shop.money import Payment, PaymentKind, PaymentMeans

LineKind = Literal["charge", "waiting", "credit"]


@dataclass(frozen=True, slots=True)
class BillLine:
    """One line: code, basis, quantity × rate, the rule that made the amount, cents and tax.

    `key` is the charge and the animal ("kill:1"), animals counted from 1, 0 for the whole order.
    `rule`: "" rate × quantity; "shared" this owner's part of `whole_cents`, which is the rate on
    `whole_quantity`; "minimum"; "steps"; "kept" as divided when the first bill was issued;
    "reason" a credit with its `reason`. A "waiting" line has no amount and says what it
    `waits_for`. `by_table`: a quarter's pounds come from the shop's fore and hind share.
    """

    key: str
    code: str
    name: str
    kind: LineKind
    basis: Basis
    animal: int
    tag: str
    quantity: Fraction | None
    unit: Unit
    rate: Fraction | None
    rule: Rule
    amount_cents: int
    tax_rate: Fraction = Fraction(0)
    tax_cents: int = 0
    waits_for: WaitsFor = ""
    whole_quantity: Fraction | None = None
    whole_cents: int | None = None
    by_table: bool = False
    shrink: Fraction = Fraction(0)
    reason: str = ""


@dataclass(frozen=True, slots=True)
class TaxSum:
    """The tax of a bill at one rate, and the cents of the lines that bear it."""

    rate: Fraction
    on_cents: int
    cents: int


@dataclass(frozen=True, slots=True)
class Paid:
    """Money taken against the order, as the bill lists it; cents are positive."""

    number: int
    kind: PaymentKind
    means: PaymentMeans
    cents: int
    day: date
    note: str = ""


@dataclass(frozen=True, slots=True)
class BillCaution:
    """A thing to be told beside the bill; `key` is the line's, "" the whole bill's.

    "not_come", "refused", "not_killed", "not_cut" (how an animal ended, whose tag is the `key`;
    the bill says what isn't charged of it) · "waiting" · "by_table" ·
    "half_of_whole" (side weights are half of an unsplit carcass) ·
    "kept_differs" (a weight or rate was changed after the division was kept: the kept amount
    stands, `was` and `now` are its cents and today's; mend it by a credit) · "below_nothing".
    """

    code: str
    key: str = ""
    was: int = 0
    now: int = 0


@dataclass(frozen=True, slots=True)
class Bill:
    """A bill as made and as kept. Its number is the store's and stands beside it.

    `share` 0 is the producer's own bill. `hanging` is what the owner has hanging, hot or
    chilled as the card's first charge on it says. `estimate` marks a quote.
    """

    species: str
    owner: str
    share: int
    card_code: str
    card_name: str
    card_from: date
    animals: tuple[str, ...]
    hanging: HangingWeights
    lines: tuple[BillLine, ...]
    paid: tuple[Paid, ...] = ()
    cautions: tuple[BillCaution, ...] = ()
    estimate: bool = False

    @property
    def charges_cents(self) -> int:
        """All lines before tax, credits taken off."""
        return sum(line.amount_cents for line in self.lines)

    @property
    def tax_cents(self) -> int:
        """The tax of all lines."""
        return sum(line.tax_cents for line in self.lines)

    @property
    def taxes(self) -> tuple[TaxSum, ...]:
        """The tax by rate, the highest first; with the lines they add up to the total.

        $100.00 and $50.00 at 6 % are one, $9.00 on $150.00. Each line's tax is rounded, so it
        may be a cent or two off the rate times the sum.
        """
        taxed = [line for line in self.lines if line.tax_cents]
        return tuple(
            TaxSum(
                rate,
                sum(line.amount_cents for line in taxed if line.tax_rate == rate),
                sum(line.tax_cents for line in taxed if line.tax_rate == rate),
            )
            for rate in sorted({line.tax_rate for line in taxed}, reverse=True)
        )

    @property
    def total_cents(self) -> int:
        """Charges and tax."""
        return self.charges_cents + self.tax_cents

    @property
    def deposits_cents(self) -> int:
        """Deposits held."""
        return sum(one.cents for one in self.paid if one.kind == "deposit")

    @property
    def paid_cents(self) -> int:
        """Payments and write-offs less refunds."""
        rest = [one for one in self.paid if one.kind != "deposit"]
        return sum(-one.cents if one.kind == "refund" else one.cents for one in rest)

    @property
    def due_cents(self) -> int:
        """What is still to be paid; below nothing it is owed to the customer."""
        return self.total_cents - self.deposits_cents - self.paid_cents

    @property
    def waiting(self) -> tuple[BillLine, ...]:
        """Lines that wait for a weight or a package."""
        return tuple(line for line in self.lines if line.kind == "waiting")

    def expects(self, line: BillLine) -> bool:
        """Whether the pounds of a line are expected and not weighed.

        On an estimate those of made goods are; hanging pounds only where the scale hasn't them.
        """
        return self.estimate and (line.basis not in HANGING or self.hanging.estimated)

    def line(self, key: str) -> BillLine | None:
        """The line of that key, or None."""
        return next((line for line in self.lines if line.key == key), None)


def make_bill(
    lot: BilledLot,
    share: int,
    *,
    payments: Sequence[Payment] = (),
    already: Collection[str] = (),
) -> Bill | BillingProblem:
    """The bill of one share.

    819 lb at $0.70 and $100 a head is $673.30 for the whole animal. `already` are keys of lines
    that an earlier bill of the order has. The producer's own share also carries what falls to
    the producer.
    """
    owner = lot.share(share)
    if owner is None:
        return BillingProblem("no_such_share", {"share": str(share)})
    numbers = {share, PRODUCER} if share == lot.producer_share else {share}
    return _bill(lot, owner, owner.card, numbers, payments, already)


def make_producer_bill(
    lot: BilledLot,
    *,
    payments: Sequence[Payment] = (),
    already: Collection[str] = (),
) -> Bill | BillingProblem:
    """What falls to the producer who brought the animals, where he has no share of his own."""
    card = lot.the_producers_card
    if card is None:
        return BillingProblem("no_such_share", {"share": str(PRODUCER)})
    every = tuple(one for place in range(len(lot.animals)) for one in whole(place))
    owner = BilledShare(PRODUCER, lot.producer, every, card)
    return _bill(lot, owner, card, {PRODUCER}, payments, already)


def _bill(
    lot: BilledLot,
    owner: BilledShare,
    card: RateCard,
    numbers: Collection[int],
    payments: Iterable[Payment],
    already: Collection[str],
) -> Bill | BillingProblem:
    weights = lot_weights(lot)
    if isinstance(weights, BillingProblem):
        return weights
    found = portions(lot)
    if isinstance(found, BillingProblem):
        return found
    hanging = weights[_weight_kind(card), owner.number]
    wanted = [one for one in found if one.share in numbers and one.key not in already]
    parts = _in_order([one for one in wanted if one.quantity != 0], card, lot.the_producers_card)
    lines = [_line(lot, part) for part in parts]
    credited = [_credit_line(place, one) for place, one in enumerate(owner.credits)]
    lines += [line for line in credited if line.key not in already]
    places = sorted({holding.carcass for holding in owner.holdings})
    return Bill(
        species=lot.species,
        owner=owner.owner,
        share=owner.number,
        card_code=card.code,
        card_name=card.name,
        card_from=card.holds_from,
        animals=tuple(lot.animals[place].tag for place in places),
        hanging=hanging,
        lines=tuple(lines),
        paid=tuple(_paid(one) for one in payments),
        cautions=(*_endings(lot, places), *_cautions(parts, hanging, lines)),
        estimate=hanging.estimated or any(part.estimated for part in parts),
    )


def _weight_kind(card: RateCard) -> WeightKind:
    """Hot or chilled, as the first charge on hanging weight says; hot without one."""
    for charge in card.charges:
        if charge.basis == "per_lb_chilled":
            return "chilled"
        if charge.basis in ("per_lb_hot", "per_lb_hot_less_shrink"):
            return "hot"
    return "hot"


def _in_order(parts: Iterable[Portion], *cards: RateCard | None) -> list[Portion]:
    """As the cards list their charges, then animal by animal."""
    codes = [charge.code for card in cards if card is not None for charge in card.charges]
    return sorted(parts, key=lambda part: (codes.index(part.charge.code), part.animal))


def _line(lot: BilledLot, part: Portion) -> BillLine:
    charge: Charge = part.charge
    cents = part.cents or 0
    return BillLine(
        key=part.key,
        code=charge.code,
        name=charge.name,
        kind="waiting" if part.cents is None else "charge",
        basis=charge.basis,
        animal=part.animal,
        tag=lot.animals[part.animal - 1].tag if part.animal else "",
        quantity=part.quantity,
        unit=_unit(lot, charge),
        rate=charge.rate,
        rule=part.rule,
        amount_cents=cents,
        tax_rate=charge.tax_rate,
        tax_cents=round_half_up(cents * charge.tax_rate),
        waits_for=part.waits_for,
        whole_quantity=part.whole_quantity,
        whole_cents=part.whole_cents,
        by_table=part.by_table,
        shrink=charge.shrink,
    )


def _unit(lot: BilledLot, charge: Charge) -> Unit:
    """What the quantity is counted in: storage may be counted by working days."""
    if charge.unit == "day" and lot.storage_days != "every_day":
        return "working_day"
    return charge.unit


def _credit_line(place: int, credit: Credit) -> BillLine:
    return BillLine(
        key=f"credit:{credit.number or place + 1}",
        code="credit",
        name="",
        kind="credit",
        basis="flat",
        animal=0,
        tag="",
        quantity=None,
        unit="each",
        rate=None,
        rule="reason",
        amount_cents=-credit.cents,
        reason=credit.reason,
    )


def _paid(payment: Payment) -> Paid:
    return Paid(
        number=payment.number,
        kind=payment.kind,
        means=payment.means,
        cents=payment.cents,
        day=payment.day,
        note=payment.note,
    )


def _endings(lot: BilledLot, places: Iterable[int]) -> Iterator[BillCaution]:
    for place in places:
        if how := lot.ended_of(place):
            yield BillCaution(how, lot.animals[place].tag)


def _cautions(
    parts: Iterable[Portion], hanging: HangingWeights, lines: Sequence[BillLine]
) -> Iterator[BillCaution]:
    for part in parts:
        if part.cents is None:
            yield BillCaution("waiting", part.key)
        elif part.rule == "kept":
            yield BillCaution("kept_differs", part.key, part.cents, part.fresh_cents or 0)
    if hanging.by_table:
        yield BillCaution("by_table")
    if any(one.source == "half_of_whole" for one in hanging.held):
        yield BillCaution("half_of_whole")
    if sum(line.amount_cents + line.tax_cents for line in lines) < 0:
        yield BillCaution("below_nothing")
