"""Shares of a lot: they add up exactly, or it is said where they don't."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from shared.carcass.carcass import Holding
from shared.shop.holdings import (
    ShareFault,
    animal_fraction,
    check_shares,
    half,
    quarter,
    split_quarter,
    whole,
)
from shared.shop.lots import LotShare


def shares(*held: tuple[Holding, ...]) -> tuple[LotShare, ...]:
    return tuple(LotShare(n, n, holdings=one) for n, one in enumerate(held, start=1))


def test_the_ways_an_animal_is_shared() -> None:
    for held in (
        (whole(0),),
        (half(0, 1), half(0, 2)),
        (half(0, 1), quarter(0, 2, "fore"), quarter(0, 2, "hind")),
        (split_quarter(0, 1), split_quarter(0, 1), half(0, 2)),
        (
            (*quarter(0, 1, "fore"), *quarter(0, 2, "hind")),
            (*quarter(0, 1, "hind"), *quarter(0, 2, "fore")),
        ),
    ):
        assert check_shares(1, shares(*held)) == ()
    assert check_shares(2, shares((*whole(0), *half(1, 2)), half(1, 1))) == ()


def test_a_share_sold_twice_and_one_not_sold() -> None:
    assert check_shares(1, shares(half(0, 1), half(0, 1))) == (
        ShareFault("over", 0, 1, "fore", Fraction(2)),
        ShareFault("over", 0, 1, "hind", Fraction(2)),
        ShareFault("under", 0, 2, "fore", Fraction(0)),
        ShareFault("under", 0, 2, "hind", Fraction(0)),
    )
    assert check_shares(1, shares(half(0, 1), quarter(0, 2, "fore"))) == (
        ShareFault("under", 0, 2, "hind", Fraction(0)),
    )
    thirds = tuple((Holding(0, side, "", Fraction(1, 3)),) for side in (1, 2) for _ in range(3))
    assert check_shares(1, shares(*thirds)) == ()


def test_what_is_not_there_cannot_be_held() -> None:
    codes = [one.code for one in check_shares(1, shares((*whole(0), *half(1, 1))))]
    assert codes == ["no_such_carcass"]
    assert check_shares(1, shares((*whole(0), Holding(0, 3))))[0].code == "no_such_side"
    nothing = Holding(0, 1, "", Fraction(0))
    assert check_shares(1, shares((*whole(0), nothing)))[0].code == "not_a_fraction"


def test_numbers_and_leaders() -> None:
    two = (LotShare(1, 1, holdings=half(0, 1)), LotShare(1, 2, holdings=half(0, 2)))
    assert check_shares(1, two) == (ShareFault("same_number", share=1),)
    led = (LotShare(1, 1, holdings=half(0, 1)), LotShare(2, 2, holdings=half(0, 2), leader=1))
    assert check_shares(1, led) == ()
    for leader in (2, 7):
        wrong = (led[0], LotShare(2, 2, holdings=half(0, 2), leader=leader))
        assert check_shares(1, wrong) == (ShareFault("leader", share=2),)


def test_by_head_a_quarter_is_a_quarter_fore_or_hind() -> None:
    for held, expected in (
        (whole(0), Fraction(1)),
        (half(0, 2), Fraction(1, 2)),
        (quarter(0, 1, "fore"), Fraction(1, 4)),
        (quarter(0, 1, "hind"), Fraction(1, 4)),
        (split_quarter(0, 1), Fraction(1, 4)),
        (whole(1), Fraction(0)),
    ):
        assert animal_fraction(LotShare(1, 1, holdings=held), 0) == expected


@given(st.lists(st.integers(1, 9), min_size=1, max_size=6), st.integers(1, 3))
def test_any_equal_parts_of_whole_animals_add_up(parts: list[int], head: int) -> None:
    total = sum(parts)
    held = tuple(
        tuple(
            Holding(carcass, side, "", Fraction(part, total))
            for carcass in range(head)
            for side in (1, 2)
        )
        for part in parts
    )
    made = shares(*held)
    assert check_shares(head, made) == ()
    for carcass in range(head):
        assert sum((animal_fraction(one, carcass) for one in made), Fraction(0)) == 1
