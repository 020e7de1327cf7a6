"""A package is frozen after the shop's hours in a freezer, and not before."""

from datetime import UTC, datetime, timedelta

from shared.shop.freezing import FreezerRules, Frozen, InFreezer, frozen

MADE = datetime(2026, 3, 9, 10, tzinfo=UTC)
PUT = datetime(2026, 3, 9, 16, tzinfo=UTC)
DAY = timedelta(hours=24)


def test_the_hours_count_from_the_freezer_or_else_the_label() -> None:
    rules = FreezerRules(24, "label")
    told = InFreezer(PUT)
    assert frozen(rules, MADE, told, PUT + DAY) == Frozen("frozen", PUT + DAY)
    early = frozen(rules, MADE, told, PUT + DAY - timedelta(minutes=1))
    assert (early.state, early.holds) == ("freezing", True)
    assert frozen(rules, MADE, None, MADE + DAY).state == "frozen"


def test_what_is_in_no_freezer_is_held_however_old() -> None:
    assert frozen(FreezerRules(24, "place"), MADE, None, MADE + 9 * DAY).holds
    assert frozen(FreezerRules(24, "label"), MADE, InFreezer(None), MADE + 9 * DAY).holds


def test_a_shop_that_does_not_ask_holds_nothing() -> None:
    assert not frozen(FreezerRules(0), MADE, None, MADE).holds
