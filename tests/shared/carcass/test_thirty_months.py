"""Which animals the rule on 30 months holds for, and that everybody asks the one place."""

import re
from pathlib import Path

import pytest

import shared
from shared.carcass import thirty_months
from shared.carcass.anatomy import catalogue, species


def test_a_calf_and_a_bison_are_asked_their_age_and_a_ewe_is_not() -> None:
    # 9 CFR 310.22 speaks of cattle; bison is the cautious reading, from memory (9 CFR 352)
    assert [one for one in species() if thirty_months.holds_for(one)] == ["beef", "bison", "veal"]


@pytest.mark.parametrize(
    ("age", "at_block", "kept"),
    [
        ("under_30", True, False),
        ("30_and_over", True, True),
        ("30_and_over", False, True),
        ("unknown", True, True),
        ("unknown", False, False),
    ],
)
def test_age_not_known_counts_as_over_at_the_block(age: str, at_block: bool, kept: bool) -> None:
    assert thirty_months.backbone_kept_back("beef", age, at_block) is kept
    assert not thirty_months.backbone_kept_back("lamb", age, at_block)


@pytest.mark.parametrize("name", sorted(thirty_months.CATTLE))
def test_the_whole_column_is_flagged_and_no_rib_or_tail(name: str) -> None:
    """9 CFR 310.22: the vertebral column, not the tail; neck, rib, loin and sacrum by name."""
    parts = catalogue(name).parts.values()
    flagged = {one.code for one in parts if one.srm_from_30_months}
    assert {"neck_bone", "sacral_bone"} <= flagged
    assert any("rib_chine" in one for one in flagged)
    assert any(one.startswith("loin_") for one in flagged)
    assert not {"oxtail", "tail", "rib_bone", "hip_bone", "aitch_bone"} & flagged
    assert all(one.bone == 1 for one in parts if one.srm_from_30_months)


def test_no_other_animal_has_a_flag() -> None:
    for name in set(species()) - thirty_months.CATTLE:
        assert not any(one.srm_from_30_months for one in catalogue(name).parts.values())


def test_nobody_keeps_a_list_of_cattle_of_his_own() -> None:
    top = Path(shared.__file__).parent.parent
    for room in ("shared", "desktop", "printing", "db"):
        for path in (top / room).rglob("*.py"):
            if path.name != "thirty_months.py":
                assert not re.search(r"\bCATTLE\b", path.read_text(encoding="utf-8")), path
