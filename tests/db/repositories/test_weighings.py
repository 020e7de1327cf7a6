"""Weights: never overwritten, corrected once with a reason, not taken twice of one place."""

from db.unit_of_work import Work
from shared.shop.animals import AlreadyWeighed, Weighing
from shared.shop.problems import Refused
from shared.units import Weight
from tests.db.examples import arrived, lot_of_halves, weighed


def test_a_weighing_says_scale_division_tare_and_who(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    made = work.weighings.record(
        animal.id,
        "hot",
        Weight(9250, "lb", -2),
        side=1,
        tare=Weight(65, "lb", -1),
        division=Weight(5, "lb", -1),
        scale="rail",
        source="scale",
    )
    assert isinstance(made, Weighing)
    assert made.weight == Weight(9250, "lb", -2)
    assert (made.tare, made.division) == (Weight(65, "lb", -1), Weight(5, "lb", -1))
    assert (made.scale, made.source, made.person, made.station) == (
        "rail",
        "scale",
        "Test",
        "Bench",
    )
    assert made.at == work.now


def test_the_first_hot_weight_makes_it_weighed(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    work.weighings.record(animal.id, "live", Weight(250, "lb"))
    found = work.animals.get(animal.id)
    assert found is not None
    assert found.state == "arrived"
    weighed(work, animal, "92.5", 1)
    found = work.animals.get(animal.id)
    assert found is not None
    assert found.state == "weighed"


def test_a_correction_keeps_the_first(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    first = weighed(work, animal, "39", 1)
    assert work.weighings.correct(first.id, Weight(93, "lb"), "") == Refused("reason_missing")
    second = work.weighings.correct(first.id, Weight(93, "lb"), "digits turned")
    assert isinstance(second, Weighing)
    assert work.weighings.correct(first.id, Weight(94, "lb"), "again") == Refused(
        "already_corrected"
    )
    kept = work.weighings.of_animal(animal.id)
    assert [(one.weight.text(), one.current) for one in kept] == [
        ("39 lb", False),
        ("93 lb", True),
    ]
    assert kept[1].corrects == first.id
    assert kept[1].reason == "digits turned"
    assert work.animals.list()[0].hot_ng == Weight(93, "lb").nanograms


def test_a_weight_of_another_animal_is_withdrawn(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    first = weighed(work, animal, "93", 1)
    gone = work.weighings.withdraw(first.id, "hung on the wrong hook")
    assert isinstance(gone, Weighing)
    assert [one.current for one in work.weighings.of_animal(animal.id)] == [False, False]
    assert work.animals.list()[0].hot_ng is None
    assert weighed(work, animal, "88", 1).current


def test_one_place_is_weighed_once(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    first = weighed(work, animal, "93", 1)
    again = work.weighings.record(animal.id, "hot", Weight(94, "lb"), side=1)
    assert again == AlreadyWeighed(first)
    assert work.weighings.record(animal.id, "hot", Weight(186, "lb")) == Refused("whole_and_parts")
    fore = work.weighings.record(animal.id, "hot", Weight(50, "lb"), side=1, quarter="fore")
    assert fore == Refused("whole_and_parts")
    fore = work.weighings.record(animal.id, "hot", Weight(50, "lb"), side=2, quarter="fore")
    hind = work.weighings.record(animal.id, "hot", Weight(43, "lb"), side=2, quarter="hind")
    assert isinstance(fore, Weighing)
    assert isinstance(hind, Weighing)
    chilled = work.weighings.record(animal.id, "chilled", Weight(182, "lb"))
    assert isinstance(chilled, Weighing)


def test_nothing_weighs_nothing(work: Work) -> None:
    animal = arrived(work, lot_of_halves(work))
    assert work.weighings.record(animal.id, "hot", Weight(0, "lb")) == Refused("not_positive")
    assert work.weighings.record(animal.id, "hot", Weight(-1, "lb")) == Refused("not_positive")
    first = weighed(work, animal, "93")
    assert work.weighings.correct(first.id, Weight(0, "lb"), "why") == Refused("not_positive")
