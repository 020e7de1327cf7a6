"""The list of a kill day: every booking in its turn, with what is to be minded."""

from datetime import UTC, date, datetime

import pytest

from printing.day_list import day_list
from printing.words import LANGUAGES, Words
from shared.shop.day_order import DayLot
from shared.shop.details import ShopDetails
from tests.printing.pages import pages, size, text

DAY = date(2026, 3, 9)
MADE = datetime(2026, 3, 8, 16, 0, tzinfo=UTC)
LOTS = (
    DayLot(1, 71, DAY, "deer", 1, "Ellen Quist"),
    DayLot(2, 72, DAY, "beef", 2, "Dora Lind", "(555) 010-0111", over=True, keeps="hide"),
    DayLot(3, 73, DAY, "beef", 1, "Carla Olsen", regime="inspected", note="back gate"),
)


def made(lots: tuple[DayLot, ...], language: str = "en", note: str = "") -> bytes:
    words = Words(language, strict=True)
    return day_list(DAY, lots, shop=ShopDetails(paper="letter"), note=note, made=MADE, words=words)


def test_the_bookings_stand_in_their_turn() -> None:
    pdf = made(LOTS, note="Fair week")
    said = text(pdf)
    assert size(pdf) == (612, 792)
    assert said.index("Carla Olsen") < said.index("Dora Lind") < said.index("Ellen Quist")
    for one in ("30 months and over", "keeps hide", "back gate", "4 head in all", "Fair week"):
        assert one in said


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_long_day_goes_on_over_the_page_with_none_left_out(language: str) -> None:
    lots = tuple(DayLot(n, 1000 + n, DAY, "pork", 1, f"Producer {n}") for n in range(60))
    found = pages(made(lots, language))
    assert len(found) > 1
    assert all(str(1000 + n) in "".join(found) for n in range(60))


def test_the_day_of_the_week_stands_beside_the_date_and_the_phone_below_its_name() -> None:
    assert "Monday, March 9, 2026" in text(made(LOTS))
    assert "Lunes, 9 de marzo de 2026" in text(made(LOTS, "es"))


def test_an_empty_day_says_so() -> None:
    assert "Nothing is booked on this day." in text(made(()))
