"""Starting, ticking and finishing a carcass in the store."""

from typing import TYPE_CHECKING

from desktop.block.cutting import ENDED, Cutting, Spot
from desktop.block.ticks import Ticks
from shared.cutting.foretold import foretold
from shared.shop.animals import Animal
from shared.shop.orders import Order

if TYPE_CHECKING:
    from desktop.bench import Bench


def start(bench: "Bench", cutting: Cutting) -> bool:
    """Put the carcass on the block; False when another station has changed it."""
    animal = cutting.animal
    with bench.store.work(bench.person, bench.station) as work:
        made = work.animals.move(animal.id, "on_block", version=animal.version)
        if isinstance(made, Animal):
            work.commit()
            return True
    return False


def acknowledge(bench: "Bench", cutting: Cutting) -> None:
    """The block has read every sheet of the lot."""
    with bench.store.work(bench.person, bench.station) as work:
        for sheet in work.orders.sheets(cutting.lot.id):
            if sheet.acknowledged_at is None:
                work.orders.acknowledge(sheet.id)
        work.commit()


def tick(bench: "Bench", cutting: Cutting, ticks: Ticks, spot: Spot, *, made: bool) -> bool:
    """Tick one place, kept at once; True when the line itself was changed in the store."""
    before = frozenset(ticks.spots)
    becomes = ticks.set(cutting, spot, made)
    share = next(one.share for one in cutting.question.choices if one.line == spot[2])
    with bench.store.work(bench.person, bench.station) as work:
        for places, on in ((ticks.spots - before, True), (before - ticks.spots, False)):
            work.block.tick(cutting.animal.id, [one[1:] for one in sorted(places)], on)
        if becomes is not None:
            work.orders.mark_made(cutting.order_of(share).id, spot[2], becomes)
        work.commit()
    return becomes is not None


def read_changes(bench: "Bench", cutting: Cutting) -> None:
    """The block has read what the counter changed."""
    with bench.store.work(bench.person, bench.station) as work:
        for one in cutting.told:
            work.block.read(one.order_id, one.last)
        work.commit()


def finish(bench: "Bench", cutting: Cutting) -> tuple[Order, ...] | None:
    """The carcass is cut; the orders that wait for no other carcass become cut and are returned.

    None when another station has changed it.
    """
    animal = cutting.animal
    done: list[Order] = []
    with bench.store.work(bench.person, bench.station) as work:
        made = work.animals.move(animal.id, "cut", version=animal.version)
        if not isinstance(made, Animal):
            return None
        work.yields.expect(animal.id, _expected(cutting))
        ended = {one.index for one in work.animals.of_lot(animal.lot_id) if one.state in ENDED}
        shares = {one.number: one for one in cutting.lot.shares}
        for order in work.orders.of_lot(animal.lot_id):
            held = {one.carcass for one in shares[order.share].holdings}
            if order.state == "released" and held <= ended:
                moved = work.orders.move(order.id, "cut", version=order.version)
                if isinstance(moved, Order):
                    done.append(moved)
        work.commit()
    return tuple(done)


def _expected(cutting: Cutting) -> list[tuple[int, int, str, int, int]]:
    """What the table foretold of this carcass, for the shop's own figures."""
    orders = {one.share: one.id for one in cutting.orders}
    place = cutting.animal.index
    lines = foretold(cutting.question, cutting.answer, cutting.catalogue, place)
    return [
        (orders[one.share], one.line, one.cut, one.expected_ng, one.carcass_ng)
        for one in lines
        if one.share in orders
    ]
