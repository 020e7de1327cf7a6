"""Who leads whom when a lot is shared out anew."""

from shared.shop.holdings import half, split_quarter
from shared.shop.leading import kept_leaders
from shared.shop.lots import LotShare

ANNA, BERT, CARL = 7, 8, 9


def quarters(*owners: int | None, leader: int | None = None) -> tuple[LotShare, ...]:
    """Split quarters, the second cut as `leader` says."""
    return tuple(
        LotShare(
            number,
            who,
            holdings=split_quarter(0, 1 + (number > 2)),
            leader=leader if number == 2 else None,
        )
        for number, who in enumerate(owners, start=1)
    )


BEFORE = quarters(ANNA, BERT, CARL, None, leader=1)


def test_it_holds_where_both_own_a_part_of_one_side_still() -> None:
    made, lost = kept_leaders(BEFORE, quarters(ANNA, BERT, None, None))
    assert [one.leader for one in made] == [None, 1, None, None]
    assert lost == ()


def test_the_leader_is_known_by_who_he_is() -> None:
    """Bert keeps his share; of the side's other part Carl is the owner, and Anna's is elsewhere."""
    made, lost = kept_leaders(BEFORE, quarters(CARL, BERT, ANNA, None))
    assert [one.leader for one in made] == [None] * 4
    assert lost == (BEFORE[1],)


def test_another_owner_of_the_share_is_asked_himself() -> None:
    _made, lost = kept_leaders(BEFORE, quarters(ANNA, CARL, BERT, None))
    assert lost == (BEFORE[1],)


def test_a_side_of_ones_own_is_cut_as_its_owner_says() -> None:
    halves = (LotShare(1, ANNA, holdings=half(0, 1)), LotShare(2, BERT, holdings=half(0, 2)))
    made, lost = kept_leaders(BEFORE, halves)
    assert made == halves
    assert lost == (BEFORE[1],)
