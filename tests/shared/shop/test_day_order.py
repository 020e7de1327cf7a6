"""The turn of a day: inspected first, older cattle after the younger, allergens, deer last."""

from datetime import date
from itertools import permutations

from shared.shop.day_order import DayLot, in_turn

DAY = date(2026, 3, 9)


def test_the_turn_is_the_same_however_they_were_booked() -> None:
    """9 CFR 303.1(a)(2) for the first, 310.22 for the second; allergens and game by practice."""
    lots = (
        DayLot(1, 1, DAY, "beef", 1, "A", regime="inspected"),
        DayLot(2, 2, DAY, "beef", 1, "B", regime="inspected", over=True),
        DayLot(3, 3, DAY, "pork", 1, "C"),
        DayLot(4, 4, DAY, "beef", 1, "D", over=True),
        DayLot(5, 5, DAY, "deer", 1, "E"),
    )
    for booked in permutations(lots):
        assert [one.id for one in in_turn(booked)] == [1, 2, 3, 4, 5]


def test_allergens_come_after_the_same_without() -> None:
    lots = [
        DayLot(1, 1, DAY, "pork", 1, "A", allergens=True),
        DayLot(2, 2, DAY, "lamb", 1, "B"),
        DayLot(3, 3, DAY, "deer", 1, "C"),
    ]
    assert [one.id for one in in_turn(lots)] == [2, 1, 3]


def test_an_age_nobody_has_said_counts_as_over() -> None:
    lots = [
        DayLot(1, 1, DAY, "beef", 2, "A", unknown_age=1),
        DayLot(2, 2, DAY, "beef", 1, "B"),
        DayLot(3, 3, DAY, "pork", 1, "C", unknown_age=1),
    ]
    assert [one.id for one in in_turn(lots)] == [3, 2, 1]


def test_days_stay_apart() -> None:
    lots = [DayLot(1, 1, date(2026, 3, 10), "pork", 1, "A"), DayLot(2, 2, DAY, "deer", 1, "B")]
    assert [one.id for one in in_turn(lots)] == [2, 1]
