"""Valid values with defaults, so that a test states only what it is about."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from fractions import Fraction

from sqlalchemy import select, update

from db.tables.orders import Orders
from db.unit_of_work import Work
from shared.cutting.order import Amount, Choice, Package
from shared.shop.animals import Animal, Weighing
from shared.shop.customers import Customer
from shared.shop.holdings import half, whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.orders import Order
from shared.shop.packages import NewPackage, PackageMade
from shared.shop.states import AnimalState
from shared.units import Weight

KILL_DAY = date(2026, 3, 9)
HAM = Choice(0, 0, "whole_ham", Amount("pieces", 1))
GROUND = Choice(
    0,
    0,
    "ground",
    Amount("pounds", weight=Weight(105, "lb", -1)),
    lean=Fraction(4, 5),
    package=Package(weight=Weight(1, "lb")),
    finishes=("seasoned",),
    note="mild",
)


def customer(work: Work, name: str = "Anna Berg", phone: str = "(555) 010-0123") -> Customer:
    made = work.customers.add(Customer(name=name, phone=phone, address="1 Mill Road\nOakfield"))
    assert isinstance(made, Customer)
    return made


def lot_of_halves(work: Work, species: str = "pork", day: date = KILL_DAY) -> Lot:
    """One animal; side 1 is Anna's, side 2 Bert's."""
    anna, bert = customer(work), customer(work, "Bert Iversen", "(555) 010-0456")
    shares = (
        LotShare(1, anna.id, holdings=half(0, 1), deposit_asked=5000),
        LotShare(2, bert.id, holdings=half(0, 2)),
    )
    return booked(work, NewLot(species, 1, day, anna.id, shares, booked=Weight(185, "lb")))


def lot_of_one(
    work: Work, name: str = "Anna Berg", day: date = KILL_DAY, species: str = "pork"
) -> Lot:
    """One animal of one owner."""
    owner = customer(work, name)
    return booked(
        work, NewLot(species, 1, day, owner.id, (LotShare(1, owner.id, holdings=whole(0)),))
    )


def booked(work: Work, new: NewLot) -> Lot:
    made = work.lots.book(new)
    assert isinstance(made, Lot), made
    return made


def arrived(work: Work, lot: Lot, tag: str = "114", index: int = 0) -> Animal:
    animal = work.animals.of_lot(lot.id)[index]
    made = work.animals.arrive(animal.id, tag=tag, version=animal.version)
    assert isinstance(made, Animal), made
    return made


def weighed(work: Work, animal: Animal, pounds: str, side: int = 0) -> Weighing:
    made = work.weighings.record(animal.id, "hot", Weight.from_pounds(pounds), side=side)
    assert isinstance(made, Weighing), made
    return made


def moved(work: Work, animal_id: int, *states: AnimalState) -> Animal:
    animal = work.animals.get(animal_id)
    for state in states:
        assert animal is not None
        found = work.animals.move(animal_id, state, version=animal.version)
        assert isinstance(found, Animal), found
        animal = found
    assert animal is not None
    return animal


def order_of(work: Work, lot: Lot, share: int = 1) -> Order:
    return next(one for one in work.orders.of_lot(lot.id) if one.share == share)


def line(work: Work, order: Order, choice: Choice = HAM) -> Choice:
    made = work.orders.add_line(order.id, choice)
    assert isinstance(made, Choice), made
    return made


def settled(work: Work, order_id: int) -> Order:
    order = work.orders.get(order_id)
    assert order is not None
    made = work.orders.move(order_id, "settled", version=order.version)
    assert isinstance(made, Order), made
    return made


@contextmanager
def at_the_block(work: Work, order_id: int) -> Iterator[None]:
    """The order takes packages meanwhile, whatever its state; then it is where it was."""
    run = work._connection.execute  # pyright: ignore
    state = run(select(Orders.state).where(Orders.id == order_id)).scalar_one()
    run(update(Orders).where(Orders.id == order_id).values(state="released"))
    yield
    run(update(Orders).where(Orders.id == order_id).values(state=state))


def package(work: Work, order: Order, choice: Choice, net: str = "16.25") -> PackageMade:
    with at_the_block(work, order.id):
        made = work.packages.add(
            NewPackage(order.id, choice.line, choice.cut, "Whole ham", Weight.from_pounds(net))
        )
    assert isinstance(made, PackageMade), made
    return made


def issued_pdf(number: int) -> bytes:
    return f"%PDF bill {number}".encode()
