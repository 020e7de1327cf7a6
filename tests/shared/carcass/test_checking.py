"""The checks of a species file: each fault, planted in a sound little file, is found."""

from dataclasses import replace
from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue, read_catalogue, species
from shared.carcass.checking import Fault, check, parts_of_way
from tests.shared.carcass.test_anatomy import SMALL


def faults(old: str, new: str) -> list[Fault]:
    assert old in SMALL
    return list(check(read_catalogue(SMALL.replace(old, new, 1), "rabbit.toml")))


@pytest.mark.parametrize("name", species())
def test_nothing_is_wrong_with_a_species_of_the_package(name: str) -> None:
    assert [one for one in check(catalogue(name)) if one.level == "wrong"] == []


def test_nothing_is_wrong_with_the_little_file() -> None:
    assert check(read_catalogue(SMALL, "rabbit.toml")) == ()


PLANTED = [
    ("shares", '"25 %"', '"26 %"'),
    ("share", '"25 %"', '"0"'),
    ("make_up", 'bone = "1/5"', 'bone = "1/4"'),
    ("no_place", 'stretch = "rib", lane', 'stretch = "loin", lane'),
    ("no_place", 'lane = "meat"', 'lane = "fat"'),
    ("stretch_empty", 'lane = "meat"', 'lane = "fat"'),
    ("length", '"4 3/4 in"', '"0 in"'),
    ("band", 'band = "5 %"', 'band = "105 %"'),
    ("animal_on_run", 'primal = "loin", share', 'primal = "loin", per = "animal", share'),
    ("quarter", "ribs = 7", 'ribs = 7, quarter = "fore"'),
    ("no_end", '{ code = "plain", parts = [{ part = "flap" }] },', ""),
    ("usual_leaves_open", '{ code = "plain", parts = [{ part = "flap" }] },', ""),
    ("way_twice", '{ code = "loin", run', '{ code = "plain", run'),
    ("no_run", 'run = { run = "back"', 'run = { run = "front"'),
    ("no_lane", 'lanes = ["meat"], first', 'lanes = ["fat"], first'),
    ("no_window", 'first = "rib", size = "slice"', 'first = "loin", size = "slice"'),
    ("first_share", 'size = "slice"', 'size = "slice", first_share = "3/2"'),
    ("last_share", 'size = "slice"', 'size = "slice", last_share = "0"'),
    ("no_part", '[{ part = "flap" }]', '[{ part = "flop" }]'),
    ("part_share", '{ part = "flap" }', '{ part = "flap", share = "2" }'),
    ("part_share", '{ part = "flap" }', '{ part = "loin", share = "1/2" }'),
    ("taken_twice", 'size = "slice" }', 'size = "slice" }, parts = [{ part = "loin" }]'),
    ("trims_bone", '{ bone = "0.05"', '{ bone = "0.25"'),
    ("trimming", '{ bone = "0.05"', '{ loss = "1.05"'),
    ("ways", 'kind = "steaks"', 'kind = "pool"\npools = ["lean"]'),
    ("pools", 'kind = "to_trim"', 'kind = "pool"'),
    ("pools", 'kind = "steaks"', 'kind = "steaks"\npools = ["lean"]'),
    ("thickness", 'thickness = "3/4 in"', 'thickness = "1/4 in"'),
    ("thickness", 'least_thickness = "3/8 in"\n', ""),
    ("no_primal", 'code = "loin", primal = "loin"', 'code = "loin", primal = "saddle"'),
    ("no_primal", 'code = "chop"\nprimal = "loin"', 'code = "chop"\nprimal = "saddle"'),
    ("no_neighbour", 'neighbours = ["grind"]', 'neighbours = ["roast"]'),
    ("no_neighbour", 'neighbours = ["grind"]', 'neighbours = ["chop"]'),
    ("no_finish", 'finishes = ["smoked"]', 'finishes = ["cured"]'),
    ("usual_finishes", 'finishes = ["smoked"]', 'finishes = ["smoked"]\nusual_finishes = ["tied"]'),
    ("srm_not_cattle", 'bone = "1/5"', 'bone = "1/5", srm_from_30_months = true'),
    ("srm_without_bone", 'share = "25 %"', 'share = "25 %", srm_from_30_months = true'),
    ("no_source", 'lane = "meat", source = "FM"', 'lane = "meat"'),
    ("no_source", 'lean = "derived"', 'lean = "hearsay"'),
    ("no_source", 'source = "FM"\nstretch', "stretch"),
    ("no_source", 'yield = "0.88"\nsource = "FM"', 'yield = "0.88"'),
    ("no_source", 'bone = "0.05", source = "FM"', 'bone = "0.05"'),
    ("no_source", 'fore_share = "1/2"\nsource = "FM"', 'fore_share = "1/2"'),
    ("usual_cut", 'cut = "grind"', 'cut = "roast"'),
    ("no_primal", '[[usual]]\nprimal = "loin"', '[[usual]]\nprimal = "saddle"'),
    ("usual_amount", 'amount = "rest"', 'amount = "pounds"'),
    ("usual_count", 'amount = "rest"', 'amount = "rest"\ncount = 3'),
    ("package", 'package_weight = "1.50 lb"', 'package_weight = "1.50 lb"\npackage_pieces = 2'),
    ("usual_thickness", 'amount = "rest"', 'amount = "rest"\nthickness = "1/8 in"'),
    ("usual_finish", 'amount = "rest"', 'amount = "rest"\nfinishes = ["smoked"]'),
]


@pytest.mark.parametrize(("code", "old", "new"), PLANTED, ids=[one[0] for one in PLANTED])
def test_a_planted_fault_is_found(code: str, old: str, new: str) -> None:
    assert code in {one.code for one in faults(old, new)}


def test_a_fault_says_where_what_was_asked_and_what_was_found() -> None:
    found = [one for one in faults('"25 %"', '"26 %"') if one.code == "shares"]
    assert found == [Fault("shares", "wrong", "part", "1", "101/100")]


def test_two_parts_in_one_place_are_found() -> None:
    second = '{ code = "twin", primal = "loin", share = "1 %", lean = "1", run = "back",'
    second += ' stretch = "rib", lane = "meat", source = "FM" },\n]\n\n[sources]'
    assert "two_parts" in {one.code for one in faults("]\n\n[sources]", second)}


def test_a_stretch_named_twice_is_found() -> None:
    twice = 'ribs = 7 }, { code = "rib", length = "1 in" }]'
    assert "stretch_twice" in {one.code for one in faults("ribs = 7 }]", twice)}


def test_a_whole_cut_over_an_empty_lane_is_found() -> None:
    longer = 'ribs = 7 }, { code = "hip", length = "1 in" }]'
    text = SMALL.replace("ribs = 7 }]", longer).replace(
        'first = "rib", size = "slice"', 'first = "rib", last = "hip", size = "whole"'
    )
    found = {one.code for one in check(read_catalogue(text, "rabbit.toml"))}
    assert {"lane_empty", "stretch_empty"} <= found


def test_takes_that_meet_two_by_two_but_not_all_three_are_told_not_refused() -> None:
    lanes = ("a", "b"), ("b", "c"), ("a", "c")
    parts = "".join(
        f'{{ code = "{lane}", primal = "loin", share = "1/4", lean = "1", run = "back",'
        f' stretch = "rib", lane = "{lane}", source = "FM" }},\n'
        for lane in ("a", "b", "c")
    )
    ways = "".join(
        f'{{ code = "w{number}", run = {{ run = "back", lanes = {list(pair)}, first = "rib",'
        f' size = "piece" }} }},\n'
        for number, pair in enumerate(lanes)
    ).replace("'", '"')
    start, end = SMALL.index('  { code = "loin"'), SMALL.index('  { code = "flap"')
    text = SMALL[:start] + parts + SMALL[end:]
    text = text.replace('lanes = ["meat"]\n', 'lanes = ["a", "b", "c"]\n')
    text = text.replace('lanes = ["meat"], first', 'lanes = ["a"], first')
    text = text.replace('{ code = "plain", parts', ways + '{ code = "plain", parts')
    found = [one for one in check(read_catalogue(text, "rabbit.toml")) if "lanes" in one.code]
    assert [(one.code, one.level) for one in found] == [("crossing_lanes", "information")]


def test_parts_of_a_way_count_the_share_of_the_stretch_they_stop_in() -> None:
    """The butt half of a ham is its butt end and half of its center."""
    pork = catalogue("pork")
    taken = {part.code: share for part, share in parts_of_way(pork, pork.cuts["half_ham"].ways[0])}
    assert taken == {"ham_butt": Fraction(1), "ham_centre": Fraction(1, 2)}


def test_a_run_that_goes_from_tail_to_head_is_found() -> None:
    hind_first = (
        'ribs = 7, quarter = "hind" }, { code = "fore", length = "1 in", quarter = "fore" }]'
    )
    assert "run_order" in {one.code for one in faults("ribs = 7 }]", hind_first)}


def test_ribs_with_a_gap_between_them_are_found() -> None:
    gap = 'ribs = 7 }, { code = "a", length = "1 in" }, { code = "b", length = "1 in", ribs = 1 }]'
    assert "rib_order" in {one.code for one in faults("ribs = 7 }]", gap)}


def test_a_forequarter_that_its_parts_dont_come_to_is_found() -> None:
    beef = catalogue("beef")
    off = replace(beef, ranges=replace(beef.ranges, fore_share=Fraction("0.60")))
    assert [one.code for one in check(off) if one.level == "wrong"] == ["fore_share"]
