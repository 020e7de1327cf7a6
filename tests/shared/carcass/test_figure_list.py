"""Every figure of a species file comes back with the source the file gives it."""

import tomllib
from fractions import Fraction
from importlib import resources

import pytest

from shared.carcass.anatomy import catalogue, species
from shared.carcass.figure_list import figures, told


@pytest.mark.parametrize("name", species())
def test_each_part_and_stretch_of_the_file_is_listed(name: str) -> None:
    """Read from the TOML itself, past the reader."""
    file = resources.files("shared.carcass").joinpath("species", f"{name}.toml")
    read = tomllib.loads(file.read_text("utf-8"))
    listed = {(one.group, one.code, one.name): one for one in figures(catalogue(name))}
    for part in read["part"]:
        source = part.get("source") or part["sources"]["share"]
        assert listed["part", part["code"], "share"].source == source
    for run in read["run"]:
        for stretch in run["stretch"]:
            source = stretch.get("source", run.get("source"))
            assert listed["stretch", stretch["code"], "length"].source == source


def test_a_cut_lists_only_its_own() -> None:
    found = figures(catalogue("beef"), "flank_steak")
    assert {(one.group, one.code) for one in found} == {
        ("part", "flank_steak"),
        ("cut", "flank_steak"),
    }
    share = next(one for one in found if one.name == "share")
    assert (share.value, share.source) == (Fraction("2.05") / Fraction("357.5"), "derived")


def test_a_cut_there_is_none_of() -> None:
    with pytest.raises(KeyError):
        figures(catalogue("beef"), "antlers")


def test_a_source_is_told_in_full() -> None:
    lamb = catalogue("lamb")
    assert told(lamb, "FM") == "from memory"
    assert told(lamb, "practice: a farm") == "common practice, no source: a farm"
    assert told(lamb, "IMPS, practice").endswith("; common practice, no source")
