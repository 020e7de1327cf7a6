"""Holes in the cards' dates and cards that hold from the same day are said."""

from dataclasses import replace
from datetime import date

from shared.billing.card_dates import check_cards, uncovered
from tests.shared.billing.lots import card

MARCH = replace(card(), holds_from=date(2026, 3, 1), species=("beef",), name="Beef", id=1)
START, END = date(2026, 1, 1), date(2026, 6, 30)


def test_a_hole_lies_before_the_first_card() -> None:
    assert uncovered([MARCH], START, END, species="beef") == (START, date(2026, 2, 28))
    assert uncovered([MARCH], date(2026, 3, 1), END, species="beef") is None
    assert uncovered([MARCH], START, date(2026, 2, 1), species="beef") == (
        START,
        date(2026, 2, 1),
    )
    assert uncovered([MARCH], START, END, species="pork") == (START, END)


def test_a_card_of_a_group_or_regime_covers_only_it() -> None:
    friends = replace(MARCH, group="friends", regime="inspected")
    assert uncovered([friends], MARCH.holds_from, END, species="beef") is not None
    assert (
        uncovered(
            [friends], MARCH.holds_from, END, species="beef", regime="inspected", group="friends"
        )
        is None
    )


def test_all_that_is_wrong_with_the_cards_together_is_said() -> None:
    twin = replace(MARCH, name="Beef again", id=2)
    found = check_cards([MARCH, twin], START, END, ["beef", "pork"])
    assert [(one.code, dict(one.data)) for one in found] == [
        ("no_card_then", {"species": "beef", "start": "2026-01-01", "end": "2026-02-28"}),
        ("no_card_then", {"species": "pork", "start": "2026-01-01", "end": "2026-06-30"}),
        ("two_cards", {"card": "Beef again", "other": "Beef", "day": "2026-03-01"}),
    ]
    assert check_cards([MARCH], MARCH.holds_from, END, ["beef"]) == ()
