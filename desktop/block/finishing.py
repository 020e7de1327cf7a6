"""Starting, ticking and finishing a carcass in the store."""

from typing import TYPE_CHECKING

from desktop.block.cutting import ENDED, Cutting, Spot
from desktop.block.ticks import Ticks
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
    """Tick one place; True when the line itself was changed in the store."""
    becomes = ticks.set(cutting, spot, made)
    if becomes is None:
        return False
    share = next(one.share for one in cutting.question.choices if one.line == spot[2])
    with bench.store.work(bench.person, bench.station) as work:
        work.orders.mark_made(cutting.order_of(share).id, spot[2], becomes)
        work.commit()
    return True


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
