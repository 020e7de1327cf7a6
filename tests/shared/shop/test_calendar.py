"""The kill calendar: places, hooks and block minutes, worked by hand (no outside source)."""

from dataclasses import replace
from datetime import date, timedelta

from shared.shop.calendar import (
    Booking,
    Filled,
    Full,
    OtherDay,
    Plan,
    hang_days,
    hooks_on,
    left_on,
    minutes_on,
    next_days,
    why_full,
)

MONDAY = date(2026, 11, 30)
TUESDAY = MONDAY + timedelta(1)
WEEK = {0: {"pork": 12, "beef": 4}, 1: {"beef": 4}}


def filled(*bookings: Booking, plan: Plan | None = None, closed: date | None = None) -> Filled:
    others = {} if closed is None else {closed: OtherDay(closed, True, "holiday")}
    return Filled(plan or Plan(WEEK), others, bookings)


def test_what_a_day_has_left() -> None:
    there = filled(Booking(MONDAY, "pork", 9), Booking(MONDAY, "beef", 1))
    assert left_on(there, "pork", MONDAY) == 3
    assert left_on(there, "beef", MONDAY) == 3
    assert left_on(there, "pork", TUESDAY) == 0
    assert left_on(filled(Booking(MONDAY, "pork", 13)), "pork", MONDAY) == 0


def test_the_last_place_is_given_and_one_more_is_not() -> None:
    there = filled(Booking(MONDAY, "pork", 11))
    assert why_full(there, Booking(MONDAY, "pork", 1)) == ()
    assert why_full(there, Booking(MONDAY, "pork", 2)) == (Full("places", MONDAY, 12, 11, 2),)


def test_without_a_week_every_day_takes_all() -> None:
    assert why_full(filled(plan=Plan()), Booking(MONDAY, "pork", 500)) == ()


def test_a_closed_day_and_a_day_without_places() -> None:
    asked = Booking(MONDAY, "beef", 1)
    assert why_full(filled(closed=MONDAY), asked) == (Full("closed", MONDAY, needed=1),)
    assert why_full(filled(), Booking(TUESDAY, "pork", 1)) == (
        Full("no_kill_day", TUESDAY, 0, 0, 1),
    )


def test_other_places_stand_in_for_the_weekday() -> None:
    other = OtherDay(MONDAY, False, "short day", {"beef": 1})
    there = Filled(Plan(WEEK), {MONDAY: other}, ())
    assert left_on(there, "beef", MONDAY) == 1
    assert left_on(there, "pork", MONDAY) == 0


def test_beef_holds_its_hooks_for_fourteen_days() -> None:
    """14 to 21 days: Beef Checkoff, "Your Beef Breakdown, Explained"."""
    there = filled(Booking(MONDAY, "beef", 1))
    assert hang_days(there.plan, "beef") == 14
    assert [hooks_on(there, MONDAY + timedelta(n)) for n in (-1, 0, 13, 14)] == [0, 2, 2, 0]


def test_the_cooler_is_too_full_on_the_worst_day_it_hangs() -> None:
    """Killed later but hanging at the same time counts: 8 hooks, 6 taken a week on, 4 needed."""
    later = MONDAY + timedelta(7)
    there = filled(Booking(later, "beef", 3), plan=Plan(WEEK, hooks=8))
    assert why_full(there, Booking(MONDAY, "beef", 1)) == ()
    assert why_full(there, Booking(MONDAY, "beef", 2)) == (Full("hooks", later, 8, 6, 4),)


def test_block_minutes_are_counted_where_the_shop_entered_them() -> None:
    plan = Plan(WEEK, block_minutes=480, minutes_a_side={"beef": 90})
    there = filled(Booking(MONDAY, "beef", 2), plan=plan)
    cutting = MONDAY + timedelta(14)
    assert minutes_on(there, cutting) == 360
    assert why_full(there, Booking(MONDAY, "beef", 1)) == (Full("block", cutting, 480, 360, 180),)
    assert why_full(there, Booking(MONDAY, "pork", 1)) == ()


def test_lines_are_counted_beside_the_side_and_who_has_not_answered_as_the_usual() -> None:
    """90 a side; 2 head whose lines take 130: 490. One more by the usual of 21: 2 * 111 = 222."""
    plan = Plan(
        WEEK,
        block_minutes=700,
        minutes_a_side={"beef": 90},
        minutes_a_cut={"beef": {"steaks": 6}},
    )
    there = Filled(plan, {}, (Booking(MONDAY, "beef", 2, 130),), {"beef": 21})
    cutting = MONDAY + timedelta(14)
    assert minutes_on(there, cutting) == 490
    assert why_full(there, Booking(MONDAY, "beef", 1)) == (Full("block", cutting, 700, 490, 222),)
    assert why_full(there, Booking(MONDAY, "beef", 1, 30)) == ()
    uncounted = replace(there, counted=False)
    assert minutes_on(uncounted, cutting) == 0


def test_the_next_days_that_can_take_it_pass_over_the_closed() -> None:
    week_on = MONDAY + timedelta(7)
    there = filled(Booking(MONDAY, "pork", 12), closed=week_on)
    assert next_days(there, Booking(MONDAY, "pork", 1), 2) == (
        MONDAY + timedelta(14),
        MONDAY + timedelta(21),
    )
    assert next_days(there, Booking(MONDAY, "pork", 13)) == ()
