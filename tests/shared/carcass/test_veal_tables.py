"""Holds the veal file against the few published figures there are; no cut-out was found."""

from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.carcass.catalogue import Catalogue
from shared.carcass.weights import usual_dressing
from shared.units import NG_PER_LB, read_length
from tests.shared.carcass.cut_out import CutOut, Line, show

VEAL, BEEF = catalogue("veal"), catalogue("beef")
FORESADDLE = ("shoulder", "rib", "breast", "shank")
HINDSADDLE = ("loin", "sirloin", "round")


def test_the_primals_are_those_of_fore_and_hindsaddle() -> None:
    # Encyclopaedia Britannica, meat processing (Cross): foresaddle shoulder, rib, breast, shank;
    # hindsaddle loin, sirloin, round
    for primal, quarter in [
        *((one, "fore") for one in FORESADDLE),
        *((one, "hind") for one in HINDSADDLE),
    ]:
        hung = [part for part in VEAL.parts.values() if part.primal == primal]
        assert hung
        assert {part.quarter for part in hung} == {quarter}


@pytest.mark.parametrize(
    ("live", "dressed"), [("210", "122"), ("273", "159"), ("289", "170"), ("262", "155")]
)
def test_calves_dress_within_the_usual_range(live: str, dressed: str) -> None:
    # USDA AMS, actual slaughter under federal inspection: US averages of calves
    low, high = usual_dressing(VEAL.ranges)
    assert low <= Fraction(dressed) / Fraction(live) <= high


def test_the_reference_calf_is_one_of_those_weighed() -> None:
    # USDA AMS averages 122 to 170 lb; Britannica: a calf's carcass is 56 to 135 kg
    carcass = Fraction(2 * VEAL.reference_side_ng, NG_PER_LB)
    assert 122 <= carcass <= 170
    assert 56 <= carcass * Fraction("0.45359237") <= 135


def test_veal_is_leaner_and_bonier_than_the_beef_it_is_derived_from() -> None:
    """Derived from beef, from memory: checked for direction and for being near."""
    lines: list[Line] = []
    for name, ours, theirs in [
        ("shoulder / chuck", ("shoulder",), ("chuck",)),
        ("rib", ("rib",), ("rib",)),
        ("loin with flank and sirloin", ("loin", "sirloin"), ("short_loin", "sirloin", "flank")),
        ("round", ("round",), ("round",)),
    ]:
        beef = CutOut(BEEF, Fraction(100)).primal(*theirs)
        lines.append(Line(name, 100 * beef, 100 * CutOut(VEAL, Fraction(100)).primal(*ours)))
    show("veal beside beef, % of the carcass", lines)
    assert [one.name for one in lines if abs(one.off) > 5] == []
    assert whole("fat", VEAL) < whole("fat", BEEF)
    assert whole("bone", VEAL) > whole("bone", BEEF)


def whole(figure: str, of: Catalogue) -> Fraction:
    """Fraction of what hangs that is lean, fat or bone."""
    parts = [part for part in of.parts.values() if part.counted]
    return sum((part.share * getattr(part, figure) for part in parts), Fraction(0))


def test_lengths_follow_beef_by_the_cube_root() -> None:
    # 78 of 357.5 lb: the cube root is 0.602; within an inch and a quarter, since calves are lanky
    def inches(of: str, *stretches: str) -> Fraction:
        runs = catalogue(of).runs.values()
        found = [one for run in runs for one in run.stretches if one.code in stretches]
        assert len(found) == len(stretches)
        inch = read_length("1 in")
        assert isinstance(inch, int)
        return Fraction(sum(one.length for one in found), inch)

    for ours, theirs in [
        (("rib",), ("sixth_rib", "rib")),
        (("loin",), ("club", "t_bone", "porterhouse")),
        (("sirloin",), ("sirloin",)),
        (("foreshank",), ("foreshank",)),
    ]:
        expected = inches("beef", *theirs) * Fraction("0.602")
        assert abs(inches("veal", *ours) - expected) <= Fraction("1.25")


def test_thirteen_ribs_seven_in_the_rack() -> None:
    # Univ. of Guelph (Swatland): cattle have 13 pairs; hotel rack of 7: from memory
    stretches = [one for run in VEAL.runs.values() for one in run.stretches]
    assert sum(one.ribs for one in stretches) == 13
    assert next(one.ribs for one in stretches if one.code == "rib") == 7


def test_pieces_of_a_calf() -> None:
    assert [way.code for way in VEAL.cuts["osso_buco"].ways] == ["hind", "fore"]
    assert VEAL.parts["sweetbread"].per == "animal"
    assert len(VEAL.cuts) >= 25
