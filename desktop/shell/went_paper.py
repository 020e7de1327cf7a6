"""Where did the rest go, of a lot in the records: from live to packages, owner by owner."""

from typing import TYPE_CHECKING

from desktop.shell.context import now
from desktop.shell.stored_papers import lot_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from db.store import Store
    from printing.words import Words
    from shared.shop.counted import CountedPackages
    from shared.shop.orders import Order
    from shared.shop.packages import PackageMade

PACKED = ("ready", "handed_over")


def where_it_went_paper(store: "Store", number: int, words: "Words") -> bytes:
    """The page of a lot: as made for orders that are packed, as planned for the others."""
    from printing.where_it_went import where_it_went
    from shared.carcass.anatomy import catalogue
    from shared.cutting.forecast import forecast
    from shared.cutting.from_live import journeys
    from shared.cutting.plan import plan
    from shared.cutting.where_it_went import accounts

    with store.read() as work:
        lot, shop = lot_of(work, number, words), work.shop.details()
        question, orders = work.lots.question(lot.id), work.orders.of_lot(lot.id)
        packages, counted = work.packages.of_lot(lot.id), work.counted.of_lot(lot.id)
    known = catalogue(lot.species)
    answer = plan(question, known)
    found = accounts(question, answer, forecast(question, answer, known), known)
    return where_it_went(
        journeys(question, found, known, packed_ng(orders, packages, counted)),
        species=lot.species,
        lot_number=lot.number,
        tags=[one.tag for one in question.carcasses],
        shop=shop,
        made=now(),
        words=words,
        taken_off={one.share: one.taken_off_ng for one in found},
    )


def packed_ng(
    orders: "Iterable[Order]",
    packages: "Iterable[PackageMade]",
    counted: "Iterable[CountedPackages]" = (),
) -> dict[int, int]:
    """What was weighed into packages, by share, of orders that are packed; void ones left out.

    An order with packages wrapped by count is left out: what it weighs isn't known.
    """
    unknown = {one.share for one in counted if not one.void}
    made = {one.share: 0 for one in orders if one.state in PACKED and one.share not in unknown}
    for package in packages:
        if package.share in made and not package.void:
            made[package.share] += package.net.nanograms
    return made
