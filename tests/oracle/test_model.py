"""The judge itself, on an invented animal whose answers can be worked out by head."""

from pathlib import Path
from typing import Any

import pytest

from tests.oracle.lot import Lot
from tests.oracle.model import can_stand, verdict
from tests.oracle.species_file import Json, Species

TINY = Species.read(Path(__file__).parent / "tiny.toml")


def lot(*choices: tuple[str, Any], sides: int = 1, carcass: Json | None = None, **more: Any) -> Lot:  # noqa: ANN401
    """One owner of one or both sides of an animal whose sides weigh the reference 100 lb."""
    order: Json = {
        "carcasses": [{"chilled": [{"whole": "100 lb"}] * 2, **(carcass or {})}],
        "shares": [
            {"number": 1, "holdings": [{"carcass": 1, "side": n + 1} for n in range(sides)]}
        ],
        "choices": [
            {"line": line, "share": 1, "cut": cut, "amount": amount, **more.get(f"l{line}", {})}
            for line, (cut, amount) in enumerate(choices, start=1)
        ],
    }
    return Lot(order, TINY)


@pytest.mark.parametrize(
    ("choices", "sides", "expected"),
    [
        # 37 chops of 3/4 in with 1/16 in kerf take 30 in exactly; the sirloin's 5 in vary 10 %.
        ([("chops", {"slices": 36})], 1, "sure"),
        ([("chops", {"slices": 37})], 1, "likely"),
        ([("chops", {"slices": 38})], 1, "cant"),
        ([("chops", {"slices": 74})], 2, "likely"),
        ([("chops", {"slices": 75})], 2, "cant"),
        # 17 slices of 1 in take rib and centre, 17 × 17/16 - 1/16 = 18 in; the blade's 7 in hold
        # 8 chops, the sirloin 6, and 5 where it runs short.
        ([("rib_chops", {"slices": 17})], 1, "sure"),
        ([("rib_chops", {"slices": 17}), ("chops", {"slices": 14})], 1, "likely"),
        ([("rib_chops", {"slices": 17}), ("chops", {"slices": 15})], 1, "cant"),
        ([("rib_rack", {"pieces": 1}), ("rib_chops", {"slices": 6})], 1, "sure"),
        ([("rib_rack", {"pieces": 1}), ("rib_chops", {"slices": 7})], 1, "cant"),
        ([("rib_rack", {"pieces": 1}), ("rib_chops", {"slices": 7})], 2, "sure"),
        ([("sirloin_roast", {"pieces": 1}), ("chops", {"slices": 30})], 1, "sure"),
        ([("sirloin_roast", {"pieces": 1}), ("chops", {"slices": 31})], 1, "cant"),
        ([("long_ham", {"pieces": 1}), ("hock", {"pieces": 1})], 1, "cant"),
        ([("long_ham", {"pieces": 1}), ("hock", {"pieces": 1})], 2, "sure"),
        ([("long_ham", {"pieces": 1}), ("half_ham", {"pieces": 2})], 2, "sure"),
        ([("long_ham", {"pieces": 1}), ("half_ham", {"pieces": 3})], 2, "cant"),
        ([("long_ham", "all"), ("half_ham", {"pieces": 1})], 2, "cant"),
        ([("long_ham", "all"), ("hock", "rest")], 2, "sure"),
        ([("tongue", {"pieces": 1})], 2, "sure"),
        ([("tongue", {"pieces": 2})], 2, "cant"),
        ([("crown", {"pieces": 1})], 2, "sure"),
        ([("crown", {"pieces": 1})], 1, "cant"),
        ([("crown", {"pieces": 1}), ("rib_chops", {"slices": 12})], 2, "sure"),
        ([("crown", {"pieces": 1}), ("rib_chops", {"slices": 14})], 2, "cant"),
        ([("saddle", {"slices": 6}), ("chops", {"slices": 28})], 2, "sure"),
        ([("saddle", {"slices": 7})], 2, "cant"),
        ([("hock", {"slices": 1})], 1, "cant"),
        # 30 in: half of them as a block, chops on the other 15 in: 18 × 13/16 - 1/16 = 14 9/16.
        ([("chops", {"fraction": "1/2"}), ("chops", {"slices": 18})], 1, "sure"),
        ([("chops", {"fraction": "1/2"}), ("chops", {"slices": 19})], 1, "cant"),
    ],
)
def test_verdicts_worked_out_by_head(
    choices: list[tuple[str, Any]], sides: int, expected: str
) -> None:
    assert verdict(lot(*choices, sides=sides)) == expected


def test_what_inspection_or_law_takes_away() -> None:
    old = {"age": "30_and_over"}
    assert verdict(lot(("rib_chops", {"slices": 10}), carcass=old)) == "sure"
    assert verdict(lot(("rib_chops", {"slices": 11}), carcass=old)) == "cant"
    skinned = {"skin": "skinned"}
    assert verdict(lot(("rind", "all"), carcass=skinned)) == "cant"
    gone = {"gone": [{"part": "rib", "side": 1, "reason": "bruise"}]}
    # blade 7 in holds 8 chops, centre and sirloin 12 in hold 14, 15 where they run long
    assert verdict(lot(("chops", {"slices": 22}), carcass=gone)) == "sure"
    assert verdict(lot(("chops", {"slices": 23}), carcass=gone)) == "tight"
    assert verdict(lot(("chops", {"slices": 24}), carcass=gone)) == "cant"
    split = {"split": True}
    assert verdict(lot(("saddle", {"slices": 1}), sides=2, carcass=split)) == "cant"


def test_pins_are_kept() -> None:
    pin = {"pinned": [{"carcass": 1, "side": 1, "count": 1}]}
    both = [("long_ham", {"pieces": 1}), ("hock", {"pieces": 1})]
    assert verdict(lot(*both, sides=2, l1=pin)) == "sure"
    assert verdict(lot(*both, sides=2, l1=pin, l2=pin)) == "cant"


def test_a_thin_slice_is_refused_and_a_part_of_the_lines_may_stand() -> None:
    thin = {"thickness": "1/4 in"}
    assert verdict(lot(("chops", {"slices": 1}), l1=thin)) == "cant"
    two = lot(("long_ham", {"pieces": 1}), ("hock", {"pieces": 1}))
    assert can_stand(two, [1, 2]) is None
    assert can_stand(two, [1]) == "sure"
    assert can_stand(two, [2]) == "sure"


def test_a_piece_crosses_a_part_border_but_not_what_is_missing() -> None:
    # 30 in in one: 37; boxes of 7, 11, 7 and 5 in would give 8 + 13 + 8 + 6 = 35
    assert verdict(lot(("chops", {"slices": 37}))) == "likely"


def test_weight_scales_length_by_its_cube_root() -> None:
    # 800 lb is eight times 100 lb: twice the length, 60 in: 73 chops, 60 1/16 ÷ 13/16 = 73.9
    heavy = {"chilled": [{"whole": "800 lb"}] * 2}
    assert verdict(lot(("chops", {"slices": 72}), carcass=heavy)) == "sure"
    assert verdict(lot(("chops", {"slices": 73}), carcass=heavy)) == "likely"
    assert verdict(lot(("chops", {"slices": 75}), carcass=heavy)) == "tight"
    assert verdict(lot(("chops", {"slices": 76}), carcass=heavy)) == "cant"
