"""The invented plant's week: what a kill day takes, its cooler, the nearest day of a kind."""

from datetime import date, timedelta

from shared.shop.calendar import OtherDay, Plan

WEEK = Plan(
    week={
        0: {"pork": 12, "beef": 3},
        1: {"beef": 5, "lamb": 6, "goat": 6},
        3: {"pork": 12, "beef": 3, "deer": 8},
    },
    hooks=90,
)
TODAY_TAKES = {"pork": 12, "lamb": 6}
"""What is killed on the day the demo is opened, so that there is an animal to be weighed."""
WEEK_DAYS = 7


def kill_day(species: str, days: int, today: date, cut: int = 0) -> int:
    """The kill day of a species nearest to so many days from today, in days from today.

    Past stays past and coming stays coming; today is a kill day whatever the weekday is. Of two
    days as near the earlier: lamb wanted two days ago on a Friday is killed the Tuesday before.
    What is past hangs at least two days before it is `cut`.
    """
    if days == 0:
        return 0
    sign = 1 if days > 0 else -1
    near = sorted(range(-WEEK_DAYS + 1, WEEK_DAYS), key=lambda away: (abs(away), away))
    return next(
        days + away
        for away in near
        if (days + away) * sign > 0
        and (days > 0 or days + away <= cut - 2)
        and _takes(species, today + timedelta(days=days + away))
    )


def _takes(species: str, day: date) -> bool:
    return bool(WEEK.week.get(day.weekday(), {}).get(species))


def extra_day(today: date) -> OtherDay | None:
    """The date the demo is opened on as a kill day out of turn; None where its weekday is one."""
    usual = WEEK.week.get(today.weekday(), {})
    if all(usual.get(species) for species in TODAY_TAKES):
        return None
    return OtherDay(today, closed=False, note="Extra kill day", places={**usual, **TODAY_TAKES})
