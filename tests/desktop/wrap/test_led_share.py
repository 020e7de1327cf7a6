"""At the table an order cut as another says has that one's lines, and its own packages of them."""

from desktop.bench import Bench
from desktop.wrap.wrapping import read_wrapping
from shared.cutting.order import Amount, Choice, Package
from shared.shop.orders import Order
from shared.shop.packages import NewPackage, PackageMade
from shared.shop.problems import Refused
from shared.units import Weight
from tests.db.examples import line, order_of, settled
from tests.db.repositories.test_led_orders import divided

STEAKS = Choice(0, 0, "ribeye_steak", Amount("all"), package=Package(pieces=1))


def new(order: Order, number: int) -> NewPackage:
    return NewPackage(order.id, number, "ribeye_steak", "Ribeye steak", Weight(1, "lb"))


def test_its_packages_are_of_the_leaders_lines(bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = divided(work)
        one, two, three = (order_of(work, lot, share) for share in (1, 2, 3))
        theirs = line(work, one, STEAKS)
        other = line(work, three, STEAKS)
        assert isinstance(work.orders.lead(two.id, 1, version=two.version), Order)
        for order in (one, two, three):
            settled(work, order.id)
        ids = [one.id, two.id, three.id]
        work.orders.release(lot.id, ids, snapshot="{}", pdf=b"%PDF")
        assert isinstance(work.packages.add(new(two, theirs.line)), PackageMade)
        assert isinstance(work.packages.add(new(two, other.line)), Refused)
        assert isinstance(work.packages.add(new(three, theirs.line)), Refused)
        work.commit()
    leads = read_wrapping(bench.store, one.id, bench.words)
    led = read_wrapping(bench.store, two.id, bench.words)
    assert leads is not None
    assert led is not None
    mine = led.lines[0]
    assert (mine.line, mine.packages) == (theirs.line, 1)
    whole = led.forecast.line(theirs.line)
    assert whole is not None
    assert mine.planned is not None
    assert leads.lines[0].planned is not None
    assert mine.planned.mid > 0
    assert mine.planned.mid + leads.lines[0].planned.mid == whole.packages.mid
    assert leads.lines[0].packages == 0
