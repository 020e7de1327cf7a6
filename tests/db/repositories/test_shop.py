"""The shop's details and own words."""

from dataclasses import replace
from fractions import Fraction

from db.unit_of_work import Work
from shared.shop.details import ShopDetails
from shared.shop.problems import StaleEdit


def test_details_come_back_and_two_cannot_write_over_each_other(work: Work) -> None:
    fresh = work.shop.details()
    assert fresh == ShopDetails(version=1)
    mine = replace(
        fresh,
        name="Oakfield Meats",
        address="4 Rail Street\nOakfield",
        language="es",
        paper="a4",
        hanging_basis="chilled",
        fore_share=Fraction(11, 20),
        kerf_saw=12_700,
        own_lengths=(("beef", "rib", 3_000_000), ("pork", "loin", 4_000_000)),
    )
    saved = work.shop.save(mine)
    assert saved == replace(mine, version=2)
    assert work.shop.details() == saved
    assert isinstance(work.shop.save(mine), StaleEdit)


def test_the_shops_own_words_win_and_can_be_taken_back(work: Work) -> None:
    work.shop.name("en", "cut.whole_ham", " Country ham ")
    work.shop.name("es", "cut.whole_ham", "Jamón del campo")
    assert work.shop.own_names("en") == {"cut.whole_ham": "Country ham"}
    work.shop.name("en", "cut.whole_ham", "Ham")
    assert work.shop.own_names("en") == {"cut.whole_ham": "Ham"}
    work.shop.name("en", "cut.whole_ham", "")
    assert work.shop.own_names("en") == {}
    assert work.shop.own_names("es") == {"cut.whole_ham": "Jamón del campo"}
