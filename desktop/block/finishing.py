"""Starting, ticking and finishing a carcass in the store."""

from typing import TYPE_CHECKING

from desktop.block.cutting import ENDED, Cutting, Spot
from desktop.block.ticks import Ticks
from shared.carcass.weights import side_weights
from shared.cutting.forecast import forecast
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
    """What the table foretold of this carcass, line by line, for the shop's own figures.

    A line of two carcasses is divided by what the plan takes of each.
    """
    found = forecast(cutting.question, cutting.answer, cutting.catalogue)
    taken: dict[int, list[int]] = {}
    for one in cutting.answer.lines:
        here = taken.setdefault(one.line, [0, 0])
        here[0] += one.weight_ng if one.carcass == cutting.animal.index else 0
        here[1] += one.weight_ng
    sides = side_weights(cutting.question.carcasses[cutting.animal.index], cutting.catalogue)
    carcass = sum(one.hanging_ng for one in sides)
    orders = {one.share: one.id for one in cutting.orders}
    heads = len(cutting.question.carcasses)
    rows: list[tuple[int, int, str, int, int]] = []
    for line in found.lines:
        here, whole = taken.get(line.line, [1, heads])
        expected = line.by_table_ng * here // whole if whole else 0
        if expected and line.share in orders:
            rows.append((orders[line.share], line.line, line.cut, expected, carcass))
    return rows
