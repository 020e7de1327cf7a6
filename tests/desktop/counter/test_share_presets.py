"""Every way of sharing comes to the whole animal, and quarters are quarters."""

from fractions import Fraction

import pytest

from desktop.counter.share_presets import PRESETS, Preset, holdings_of
from shared.shop.holdings import animal_fraction, check_shares
from shared.shop.lots import LotShare


def shares(preset: Preset, head: int) -> list[LotShare]:
    held = holdings_of(preset, head)
    return [LotShare(number, None, holdings=one) for number, one in enumerate(held, start=1)]


@pytest.mark.parametrize("head", [1, 3])
@pytest.mark.parametrize("preset", PRESETS)
def test_the_shares_add_up(preset: Preset, head: int) -> None:
    assert check_shares(head, shares(preset, head)) == ()


def test_a_half_and_two_quarters() -> None:
    found = [animal_fraction(one, 0) for one in shares("half_and_quarters", 1)]
    assert found == [Fraction(1, 2), Fraction(1, 4), Fraction(1, 4)]


def test_each_animal_has_its_owner() -> None:
    assert len(shares("each", 3)) == 3
    assert animal_fraction(shares("each", 3)[2], 2) == 1
