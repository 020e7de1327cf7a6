"""An order of half a hog that is ready to hand over."""

from db.store import Store
from shared.shop.orders import Order
from shared.shop.packages import NewPackage
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.db.examples import GROUND, at_the_block, line, lot_of_halves, order_of, package, settled


def ready(store: Store, signed: SignedOn) -> Order:
    """Two hams and a package of ground, ready; nothing is billed."""
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_halves(work)
        mine = order_of(work, lot)
        ham = line(work, mine)
        package(work, mine, ham)
        package(work, mine, ham, "15.5")
        ground = line(work, mine, GROUND)
        with at_the_block(work, mine.id):
            work.packages.add(of_ground(mine, ground.line))
        work.orders.release(lot.id, [settled(work, mine.id).id], snapshot="{}", pdf=b"%PDF sheet")
        for state in ("cut", "ready"):
            now = work.orders.get(mine.id)
            assert now is not None
            assert isinstance(work.orders.move(mine.id, state, version=now.version), Order)
        found = work.orders.get(mine.id)
        work.commit()
    assert found is not None
    return found


def of_ground(order: Order, at: int) -> NewPackage:
    return NewPackage(order.id, at, "ground", "Ground pork", Weight.from_pounds("1.02"))
