"""Counts of the skeleton and of pieces to an animal, asked of the planner species by species.

Univ. of Guelph (Swatland) Lab 8.1 for ribs; CFIA item 100, Pennsylvania Code 70 §23.109 and IMPS
for where the saw goes; K-State MF3394 and a plant's standard sheet for pieces.
"""

from typing import Literal

import pytest

from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share
from shared.carcass.catalogue import Quarter
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import plan
from shared.units import read_length

Name = Literal["beef", "bison", "deer", "goat", "lamb", "pork", "veal"]


def ribs(name: Name, *stretches: str, quarter: Quarter | None = None) -> int:
    """Ribs of these stretches of the back, or of all of it, or of one quarter."""
    return sum(
        one.ribs
        for one in catalogue(name).runs["back"].stretches
        if (not stretches or one.code in stretches) and quarter in (None, one.quarter)
    )


@pytest.mark.parametrize(
    ("name", "least", "most"),
    [
        ("beef", 13, 13),
        ("veal", 13, 13),
        ("pork", 13, 17),
        ("lamb", 13, 14),
        # goat and deer as lamb, bison one more than cattle: from memory
        ("goat", 13, 13),
        ("deer", 13, 13),
        ("bison", 14, 14),
    ],
)
def test_pairs_of_ribs(name: Name, least: int, most: int) -> None:
    assert least <= ribs(name) <= most


def test_where_the_saw_goes() -> None:
    # side to quarters between ribs 12 and 13 (CFIA, Pennsylvania Code); bison's 14th: from memory
    assert ribs("beef", quarter="fore") == 12
    assert ribs("veal", quarter="fore") == 12
    assert ribs("bison", quarter="fore") == 13
    # beef rib is ribs 6 to 12, chuck 1 to 5, rib 13 stays on the loin
    assert (ribs("beef", "blade", "fifth_rib"), ribs("beef", "sixth_rib", "rib")) == (5, 7)
    assert ribs("beef", "club") == 1
    # lamb rack ribs 5 to 12, the shoulder carries 4 or 5
    assert ribs("lamb", "fifth_rib", "sixth_rib", "rack") == 8
    assert ribs("lamb", "shoulder") == 4
    # pork: loin and shoulder part between ribs 2 and 3 (USDA AMS); center-cut loin of 8 or 11 ribs,
    # country-style 3 to 6 from the blade end, back ribs 8 or more (IMPS)
    assert ribs("pork", "butt", "rib_2") == 2
    assert ribs("pork", "rib") == 8
    assert 3 <= ribs("pork", "ribs_3_4", "blade_end") <= 6
    assert ribs("pork", "blade_end", "rib") >= 8


PIECES: list[tuple[Name, str, int]] = [
    # K-State MF3394, per half, times two
    ("pork", "whole_jowl", 2),
    ("pork", "hock", 4),
    ("pork", "foot", 4),
    ("pork", "spareribs", 2),
    # paired, so that there are two
    ("pork", "belly_slab", 2),
    ("pork", "whole_ham", 2),
    ("pork", "whole_butt", 2),
    ("pork", "whole_picnic", 2),
    ("pork", "tenderloin", 2),
    ("pork", "tail", 1),
    ("pork", "tongue", 1),
    # a plant's standard sheet (saltspringabattoir.ca): 2 racks, 4 shanks, 2 legs
    ("lamb", "whole_rack", 2),
    ("lamb", "shank", 4),
    ("lamb", "leg_shank_off", 2),
    ("lamb", "riblets", 4),
    ("lamb", "crown_roast", 1),
    ("goat", "shank", 4),
    ("goat", "whole_rack", 2),
    # unpaired, or one to a side: from memory
    ("beef", "hanging_tender", 1),
    ("beef", "flank_steak", 2),
    ("beef", "whole_tenderloin", 2),
    ("bison", "hanging_tender", 1),
    ("bison", "hump_roast", 2),
    ("bison", "oxtail", 1),
    ("veal", "whole_shank", 4),
    ("veal", "rib_rack", 2),
    ("veal", "sweetbread", 1),
    ("deer", "whole_backstrap", 2),
    ("deer", "tenderloin", 2),
    ("deer", "shank", 4),
    ("deer", "feet", 4),
    ("deer", "head", 1),
    ("deer", "cape", 1),
]


def verdict(name: Name, cut: str, pieces: int) -> str:
    animal = Carcass(name, age="under_30", skin="scalded" if name == "pork" else "skinned")
    share = Share(1, "Ada Brandt", (Holding(0, 1), Holding(0, 2)))
    asked = Choice(1, 1, cut, Amount("pieces", pieces))
    return plan(Question((animal,), (share,), (asked,)), catalogue(name)).verdict


@pytest.mark.parametrize(("name", "cut", "pieces"), PIECES, ids=[f"{a} {b}" for a, b, _ in PIECES])
def test_pieces_of_an_animal(name: Name, cut: str, pieces: int) -> None:
    """So many stand, one more can't be cut."""
    assert verdict(name, cut, pieces) == "sure"
    assert verdict(name, cut, pieces + 1) == "cant"


def most_slices(name: Name, cut: str, thickness: str) -> int:
    """The most slices of one side at the species' reference weight that aren't refused."""
    found = read_length(thickness)
    assert isinstance(found, int)
    animal = Carcass(name, age="under_30", skin="scalded")
    share = Share(1, "Ada Brandt", (Holding(0, 1),))
    count = 0
    while True:
        asked = Choice(1, 1, cut, Amount("slices", count + 1), thickness=found)
        answer = plan(Question((animal,), (share,), (asked,)), catalogue(name))
        if answer.verdict not in ("sure", "likely"):
            return count
        count += 1


@pytest.mark.parametrize(
    ("name", "cut", "thickness", "published", "room"),
    [
        # sample sheet, half a beef at 3/4 in (scribd 444027219)
        ("beef", "t_bone_steak", "3/4 in", 14, 2),
        ("beef", "rib_steak", "3/4 in", 14, 2),
        ("beef", "sirloin_steak", "3/4 in", 8, 1),
        # a plant's sheet, 100-lb half hog at 3/4 in [weak]; the reference side is 92 lb and more
        ("pork", "centre_chop", "3/4 in", 20, 2),
        # a plant's standard cut (saltspringabattoir.ca): 8 to 10 loin chops a lamb, 4 or 5 a side
        ("lamb", "loin_chop", "1 1/4 in", 5, 1),
    ],
)
def test_the_planner_cuts_as_many_as_the_sheets_say(
    name: Name, cut: str, thickness: str, published: int, room: int
) -> None:
    assert abs(most_slices(name, cut, thickness) - published) <= room
