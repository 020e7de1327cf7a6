"""A hog of two owners that hangs with sheet 1 released."""

from dataclasses import replace
from datetime import date

from db.unit_of_work import Work
from desktop.bench import Bench
from shared.cutting.order import Amount, Choice
from shared.shop.holdings import whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.sheets import Sheet
from shared.units import read_length
from tests.db import examples
from tests.desktop.paper_to_print import LETTER, paper

PDF = paper(LETTER)


def inches(text: str) -> int:
    found = read_length(text)
    assert isinstance(found, int)
    return found


def choices(share: int) -> tuple[Choice, ...]:
    """Anna: the ham whole, chops thicker than usual. Bert: the ham in steaks, chops as usual."""
    if share == 1:
        return (
            Choice(0, 0, "whole_ham", Amount("pieces", 1)),
            Choice(0, 0, "centre_chop", Amount("rest"), thickness=inches("1 1/4 in")),
        )
    return (
        Choice(0, 0, "ham_steak", Amount("slices", 4), note="no salt on these"),
        Choice(0, 0, "centre_chop", Amount("rest")),
    )


def release(work: Work, lot: Lot, *shares: int) -> Sheet:
    ids = [examples.order_of(work, lot, share).id for share in shares]
    for order_id in ids:
        order = work.orders.get(order_id)
        assert order is not None
        if order.state == "open":
            examples.settled(work, order_id)
    made = work.orders.release(lot.id, ids, snapshot="{}", pdf=PDF)
    assert isinstance(made, Sheet)
    return made


def hanging(bench: Bench, *shares: int) -> Lot:
    """The hog hangs, 109.5 and 108.5 lb; the orders of those shares are released."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, day=date(2026, 3, 2))
        for share in (1, 2):
            order = examples.order_of(work, lot, share)
            for one in choices(share):
                examples.line(work, order, one)
        animal = examples.arrived(work, lot)
        animal = work.animals.change(replace(animal, skin="skinned"))
        examples.weighed(work, examples.moved(work, 1), "109.5", 1)
        examples.weighed(work, examples.moved(work, 1), "108.5", 2)
        examples.moved(work, 1, "passed", "hanging")
        release(work, lot, *(shares or (1, 2)))
        work.commit()
    return lot


def two_hogs(bench: Bench) -> Lot:
    """Two hogs of one owner hang; of every side the whole ham is wanted."""
    with bench.store.work(bench.person, bench.station) as work:
        anna = examples.customer(work)
        share = LotShare(1, anna.id, holdings=(*whole(0), *whole(1)))
        lot = examples.booked(work, NewLot("pork", 2, date(2026, 3, 2), anna.id, (share,)))
        examples.line(work, examples.order_of(work, lot), Choice(0, 0, "whole_ham", Amount("all")))
        for index, tag in enumerate(("114", "115")):
            animal = examples.arrived(work, lot, tag, index)
            examples.weighed(work, animal, "205")
            examples.moved(work, animal.id, "passed", "hanging")
        release(work, lot, 1)
        work.commit()
    return lot
