"""Whose meat may be in one batch, and how what comes out is divided."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.curing.batch import Source, may_join, shared_out
from shared.units import Weight


def half(customer: int | None, lot: int = 1, *carcasses: int) -> Source:
    return Source(customer, lot, frozenset(carcasses or (0,)), "custom", "pork")


# 21 USC 623(a): custom-exempt meat is for its owner, household, guests and employees.
@pytest.mark.parametrize(
    ("there", "new", "barred"),
    [
        ((), half(1), None),
        ((half(1),), half(1, 2), None),  # one owner's two hogs
        ((half(1),), half(2), None),  # co-owners of one hog
        ((half(1),), half(2, 2), "others_meat"),
        ((half(1, 1, 0),), half(2, 1, 1), "others_meat"),  # one lot, two hogs
        ((half(1), half(2)), half(3), None),
        ((half(1, 1, 0), half(2, 1, 0, 1)), half(3, 1, 1), "others_meat"),
        ((half(None),), half(None, 2), "others_meat"),
    ],
)
def test_whose_meat_may_join(there: tuple[Source, ...], new: Source, barred: str | None) -> None:
    assert may_join(there, new) == barred


def test_inspected_meat_may_mix_but_not_with_custom() -> None:
    inspected = Source(1, 1, frozenset({0}), "inspected", "pork")
    assert may_join((inspected,), Source(2, 2, frozenset({0}), "inspected", "pork")) is None
    assert may_join((inspected,), half(1)) == "custom_with_inspected"


def hunted(customer: int, agreed: bool) -> Source:
    """A hunter's own deer, agreed in writing to be batched with others' or not."""
    return Source(customer, customer, frozenset({0}), "custom", "deer", agreed)


# Deer aren't among the animals of 21 USC 601(w) (from memory): the hunters' word in writing counts.
@pytest.mark.parametrize(
    ("there", "new", "barred"),
    [
        ((hunted(1, True),), hunted(2, True), None),
        ((hunted(1, True),), hunted(2, False), "others_meat"),
        ((hunted(1, False),), hunted(2, True), "others_meat"),
        ((hunted(1, True), hunted(2, True)), hunted(3, False), "others_meat"),
        ((hunted(1, False),), hunted(1, False), None),
    ],
)
def test_deer_of_several_hunters_share_a_batch_in_writing(
    there: tuple[Source, ...], new: Source, barred: str | None
) -> None:
    assert may_join(there, new) == barred


def test_a_hogs_owner_can_agree_to_nothing_like_it() -> None:
    agreed = [replace(half(1), agreed=True), replace(half(2, 2), agreed=True)]
    assert may_join(agreed[:1], agreed[1]) == "others_meat"


def test_game_stays_by_itself() -> None:
    deer = Source(1, 1, frozenset({0}), "custom", "deer")
    assert may_join((half(1),), deer) == "species"


def test_the_last_step_goes_by_largest_remainder() -> None:
    # 44.01 lb of 30 and 20 lb in: exactly 26.406 and 17.604.
    assert shared_out(Weight(4401, "lb", -2), [(7, 30), (9, 20)]) == {
        7: Weight(2641, "lb", -2),
        9: Weight(1760, "lb", -2),
    }


@given(
    st.integers(0, 10**6),
    st.lists(st.integers(1, 10**15), min_size=1, max_size=6),
)
def test_the_parts_add_up_and_no_part_is_off_by_a_step(count: int, ins: list[int]) -> None:
    parts = shared_out(Weight(count, "lb", -2), list(enumerate(ins)))
    assert sum(one.count for one in parts.values()) == count
    for at, ng in enumerate(ins):
        assert abs(parts[at].count - Fraction(count * ng, sum(ins))) < 1


def test_nothing_in_gives_nothing_to_share() -> None:
    with pytest.raises(ValueError, match="nothing"):
        shared_out(Weight(1, "lb"), [])
