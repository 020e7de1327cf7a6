"""Who waits for a place: the longest first, and told once a place is free."""

from datetime import timedelta

from db.unit_of_work import Work
from shared.shop.calendar import Comes
from shared.shop.problems import Refused, StaleEdit
from tests.db.examples import KILL_DAY, customer


def test_who_waits_is_told_in_turn_until_booked(work: Work) -> None:
    anna, bert = customer(work, "Anna Berg"), customer(work, "Bert Iversen")
    comes = Comes("scalded", "inspected", "the heads")
    work.waiting.add(anna.id, "pork", 2, KILL_DAY, "mornings", comes=comes)
    work.waiting.add(bert.id, "pork", 1, KILL_DAY + timedelta(7))
    work.waiting.add(bert.id, "beef", 1, KILL_DAY)
    assert [(one.customer, one.species) for one in work.waiting.list()] == [
        ("Anna Berg", "pork"),
        ("Bert Iversen", "pork"),
        ("Bert Iversen", "beef"),
    ]
    (first,) = work.waiting.list("pork", KILL_DAY)
    assert first.comes == comes
    assert work.waiting.list("beef")[0].comes == Comes()
    assert (first.customer, first.head, first.note, first.state) == (
        "Anna Berg",
        2,
        "mornings",
        "waiting",
    )
    assert work.waiting.move(first.id, "told", version=first.version) is None
    assert work.waiting.list("pork", KILL_DAY)[0].state == "told"
    stale = work.waiting.move(first.id, "booked", version=first.version)
    assert isinstance(stale, StaleEdit)
    assert work.waiting.move(first.id, "booked", version=first.version + 1) is None
    assert work.waiting.list("pork", KILL_DAY) == ()


def test_nobody_waits_for_no_animal(work: Work) -> None:
    anna = customer(work)
    assert work.waiting.add(anna.id, "pork", 0, KILL_DAY) == Refused("no_head")
