"""A hog in halves whose first half is cut and lies on the wrapping table."""

from collections.abc import Sequence
from dataclasses import replace

from db.store import Store
from shared.cutting.order import Amount, Choice, Package
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.db.examples import arrived, line, lot_of_halves, moved, order_of, settled, weighed

HAM = Choice(0, 0, "whole_ham", Amount("all"))
BACON = Choice(
    0,
    0,
    "bacon",
    Amount("all"),
    package=Package(weight=Weight(1, "lb")),
    finishes=("cured_smoked", "sliced"),
)
GROUND = Choice(0, 0, "ground_pork", Amount("rest"), package=Package(weight=Weight(1, "lb")))


def order_on_the_table(
    store: Store,
    signed: SignedOn,
    *,
    cut: bool = True,
    choices: Sequence[Choice] = (HAM, BACON, GROUND),
) -> Order:
    """Anna's half hog of 190 lb: a ham, bacon and ground pork, released and (if `cut`) cut."""
    with store.work(signed.person, signed.station) as work:
        details = work.shop.details()
        work.shop.save(replace(details, name="Oak Lane Meats", address="4 Oak Lane\nOakfield"))
        lot = lot_of_halves(work)
        animal = arrived(work, lot)
        weighed(work, animal, "95", side=1)
        weighed(work, animal, "95", side=2)
        moved(work, animal.id, "passed", "hanging", "on_block", "cut")
        order = order_of(work, lot)
        for choice in choices:
            line(work, order, choice)
        settled(work, order.id)
        work.orders.release(lot.id, (order.id,), snapshot="{}", pdf=b"%PDF sheet")
        found = work.orders.get(order.id)
        assert found is not None
        if cut:
            done = work.orders.move(order.id, "cut", version=found.version)
            assert isinstance(done, Order)
            found = done
        work.commit()
    return found
