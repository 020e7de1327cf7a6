"""The invented packages and the bills of a lot, by the same rules as any other."""

from dataclasses import replace
from typing import TYPE_CHECKING

from demo.papers import bill_paper
from printing.words import Words
from shared.billing.bill import make_bill
from shared.billing.division import new_divisions
from shared.billing.lot import BilledLot, billed_lot
from shared.billing.problems import BillingProblem
from shared.billing.snapshot import snapshot
from shared.carcass.anatomy import catalogue
from shared.cutting.forecast import forecast
from shared.cutting.plan import plan
from shared.shop.lots import Lot
from shared.shop.money import IssuedBill
from shared.shop.packages import NewPackage, PackageMade
from shared.units import NG_PER_LB, Weight

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from shared.cutting.order import Choice


def weigh_packages(work: "Work", lot_id: int, species: str, lines: int | None = None) -> None:
    """As many packages as are expected, of the weight expected, to the hundredth of a pound.

    Only those of the first lines of each order where `lines` says so.
    """
    found, words = catalogue(species), Words("en")
    question = work.lots.question(lot_id)
    expected = forecast(question, plan(question, found), found)
    choices = {choice.line: choice for choice in question.choices}
    for order in work.orders.of_lot(lot_id):
        for line in expected.of_share(order.share)[:lines]:
            count = line.packages.mid
            hundredths = line.finished.mid * 100 // NG_PER_LB
            for place in range(count):
                net = hundredths // count + (place < hundredths % count)
                if net:
                    new = NewPackage(
                        order.id,
                        line.line,
                        line.cut,
                        _product(words, species, choices[line.line]),
                        Weight(net, "lb", -2),
                        tare=Weight(3, "lb", -2),
                        finishes=choices[line.line].finishes,
                    )
                    _labelled(work, work.packages.add(new))


def _product(words: Words, species: str, choice: "Choice") -> str:
    """The words on the label: the cut and what is done to it, with a capital."""
    done = [words.name(species, f"finish.{one}") for one in choice.finishes if one != "fresh"]
    said = ", ".join([words.name(species, f"cut.{choice.cut}"), *done])
    return said[:1].upper() + said[1:]


def _labelled(work: "Work", found: object) -> None:
    if not isinstance(found, PackageMade):
        raise RuntimeError(f"a package was refused: {found}")
    work.packages.labelled([found.id])


def bill(work: "Work", lot_id: int, species: str) -> None:
    """Issue the bill of every order of the lot."""
    lot = work.lots.get(lot_id)
    assert lot is not None
    for order in work.orders.of_lot(lot_id):
        billed = _billed(work, lot, species)
        made = make_bill(
            billed,
            order.share,
            payments=work.payments.of_order(order.id),
            already=work.bills.billed_keys(order.id, lot_id),
        )
        divisions = new_divisions(billed)
        if isinstance(made, BillingProblem) or isinstance(divisions, BillingProblem):
            raise RuntimeError(f"lot {lot.number} can't be billed: {made}")
        issued = work.bills.issue(
            order.id,
            total_cents=made.total_cents,
            snapshot=snapshot(made),
            pdf=bill_paper(work, order, lot, made),
            lines=made.lines,
            divisions=divisions,
        )
        if not isinstance(issued, IssuedBill):
            raise RuntimeError(f"lot {lot.number} was not billed: {issued}")


def _billed(work: "Work", lot: Lot, species: str) -> BilledLot:
    card = work.rates.current(lot.day, species=species, regime=lot.regime, group="")
    assert card is not None
    cards = {share.number: card for share in lot.shares}
    question = work.lots.question(lot.id)
    found = billed_lot(
        question,
        catalogue(species),
        cards,
        packages=work.packages.of_lot(lot.id),
        complete=tuple(cards),
    )
    if isinstance(found, BillingProblem):
        raise RuntimeError(f"lot {lot.number} can't be billed: {found}")
    own = [share.number for share in lot.shares if share.customer_id == lot.producer_id]
    return replace(
        found,
        producer=lot.producer,
        producer_share=own[0] if own else None,
        kept=work.bills.divisions(lot.id),
    )
