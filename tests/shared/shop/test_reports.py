"""Weeks, months and sums of the reports, worked by hand."""

from datetime import UTC, date, datetime

from shared.shop.reports import (
    BlockWeek,
    CutMade,
    CutOut,
    Cutting,
    Killed,
    KillWeek,
    LotPacked,
    by_week,
    cut_out,
    made_together,
    minutes_of,
    months,
    together,
    weeks,
)

MONDAY = date(2026, 11, 23)


def beef(day: date, hot: int | None) -> Killed:
    return Killed(day, "1", "beef", "Kestrel", 1, hot)


def test_a_week_begins_on_monday_and_knows_what_wasnt_weighed() -> None:
    rows = [beef(date(2026, 11, 24), 700), beef(date(2026, 11, 29), None), beef(MONDAY, 300)]
    assert by_week(rows) == (KillWeek(MONDAY, "beef", 3, 2, 1000),)
    assert by_week([beef(date(2026, 11, 22), 5)])[0].monday == date(2026, 11, 16)


def test_cut_out_is_packages_over_hanging_weight_of_all_lots_of_a_producer() -> None:
    lots = [
        LotPacked("beef", "Kestrel", 1, 800, 500),
        LotPacked("beef", "Kestrel", 1, 700, 448),
        LotPacked("beef", "Aspen", 1, 0, 448),
    ]
    (found,) = cut_out(lots)
    assert found == CutOut("beef", "Kestrel", 2, 2, 1500, 948)
    assert found.per_mille == 632


def test_made_of_expected_rounds_half_up_and_says_nothing_without_expected() -> None:
    assert CutMade("pork", "loin", 1, 2000, 1999).per_mille == 1000
    assert CutMade("pork", "loin", 1, 2000, 1998).per_mille == 999
    assert CutMade("pork", "loin", 1, 0, 5).per_mille is None


def test_pieces_of_a_span_become_one() -> None:
    pieces = [BlockWeek(MONDAY, 60, 55, 1), BlockWeek(MONDAY, 30, 20, 2)]
    assert together(pieces) == (BlockWeek(MONDAY, 90, 75, 3),)
    made = [CutMade("pork", "loin", 1, 10, 9), CutMade("pork", "loin", 2, 20, 21)]
    assert made_together(made) == (CutMade("pork", "loin", 3, 30, 30),)


def test_minutes_are_from_first_to_last_tick() -> None:
    def at(hour: int, minute: int) -> datetime:
        return datetime(2026, 11, 24, hour, minute, tzinfo=UTC)

    assert minutes_of([Cutting(at(8, 0), at(9, 30)), Cutting(at(9, 40), at(10, 10))]) == 120


def test_a_span_falls_into_months_and_weeks_without_gap() -> None:
    assert months(date(2026, 1, 20), date(2026, 3, 3)) == (
        (date(2026, 1, 20), date(2026, 1, 31)),
        (date(2026, 2, 1), date(2026, 2, 28)),
        (date(2026, 3, 1), date(2026, 3, 3)),
    )
    assert months(date(2026, 3, 3), date(2026, 3, 2)) == ()
    assert list(weeks(date(2026, 11, 22), MONDAY)) == [date(2026, 11, 16), MONDAY]
