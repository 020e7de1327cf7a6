"""The cooler in the store: what hangs, wishes, temperatures, measures."""

from datetime import timedelta
from fractions import Fraction

from db.unit_of_work import Work
from shared.shop.cooler import CoolerReading, RoomLimits, Temperature
from shared.shop.problems import Refused
from shared.units import NG_PER_LB, Weight
from tests.db.examples import arrived, lot_of_halves, moved, order_of, weighed
from tests.store_fixture import MORNING

COLD = Temperature(365, "F")
WARM = Temperature(430, "F")


def test_what_hangs_is_told_with_its_weight_and_the_longest_wish(work: Work) -> None:
    lot = lot_of_halves(work)
    animal = arrived(work, lot)
    first = weighed(work, animal, "92.5", 1)
    weighed(work, animal, "93", 2)
    work.weighings.correct(first.id, Weight.from_pounds("91.5"), "hook left on")
    assert work.cooler.hanging() == ()
    moved(work, animal.id, "passed", "hanging")
    for share, days in ((1, 7), (2, 5), (2, 10)):
        work.cooler.wish(order_of(work, lot, share).id, days)
    [one] = work.cooler.hanging()
    assert (one.tag, one.owners, one.wish) == ("114", "Anna Berg, Bert Iversen", 10)
    assert one.hot_ng == NG_PER_LB * 1845 // 10
    assert one.hung_on == MORNING.astimezone().date()
    work.cooler.wish(order_of(work, lot, 2).id, None)
    assert work.cooler.hanging()[0].wish == 7
    assert work.cooler.wish_of(order_of(work, lot, 2).id) is None


def test_a_temperature_is_corrected_never_overwritten(work: Work) -> None:
    read = work.cooler.read("Cooler 1", WARM, MORNING)
    assert isinstance(read, CoolerReading)
    later = work.cooler.read("Cooler 1", COLD, MORNING + timedelta(hours=4))
    fixed = work.cooler.correct(read.id, COLD, "door was open")
    assert isinstance(fixed, CoolerReading)
    told = work.cooler.readings("Cooler 1")
    assert [one.id for one in told] == [later.id, fixed.id, read.id]  # pyright: ignore
    assert [one.current for one in told] == [True, True, False]
    assert work.cooler.correct(read.id, COLD, "again") == Refused("already_corrected")
    assert work.cooler.correct(fixed.id, COLD, " ") == Refused("reason_missing")
    assert work.cooler.read(" ", COLD, MORNING) == Refused("room_missing")


def test_the_last_limits_of_a_room_hold(work: Work) -> None:
    work.cooler.set_limits(RoomLimits("Cooler 1", Temperature(280, "F"), Temperature(400, "F")))
    work.cooler.set_limits(RoomLimits("Cooler 1", None, Temperature(40, "C")))
    work.cooler.set_limits(RoomLimits("Freezer", None, None))
    assert work.cooler.limits()["Cooler 1"] == RoomLimits("Cooler 1", None, Temperature(40, "C"))
    assert work.cooler.rooms() == ("Cooler 1", "Freezer")


def test_the_last_measures_hold(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    work.cooler.measure(animal.id, {"fat": "0.40"})
    work.cooler.measure(animal.id, {"fat": "0.45", "ribeye": "12.0"})
    assert work.cooler.measures([animal.id, 99]) == {animal.id: {"fat": "0.45", "ribeye": "12.0"}}


def test_a_graded_beef_moves_its_forecast(work: Work) -> None:
    lot = lot_of_halves(work, "beef")
    animal = arrived(work, lot)
    weighed(work, animal, "367.5", 1)
    weighed(work, animal, "367.5", 2)
    assert work.cooler.meat_factor(lot.id) == 1
    work.cooler.measure(animal.id, {"fat": "0.40", "ribeye": "12.0", "kph": "2.5"})
    # 735 lb: yield grade 2.953, a factor of 1.0345 (shared/carcass/grades.py).
    assert Fraction("1.0345") < work.cooler.meat_factor(lot.id) < Fraction("1.0346")
