"""A whole primal measured is divided as the table has it."""

from desktop.block.measuring import measurable, measured, stretches_of
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Measured
from shared.units import LENGTH_UNITS_PER_INCH

INCH = LENGTH_UNITS_PER_INCH


def test_a_short_loin_that_ran_thirteen_and_a_half() -> None:
    known = catalogue("beef")
    places = stretches_of(known, "short_loin")
    assert [code for code, _ in places] == ["club", "t_bone", "porterhouse"]
    found = measured(known, "primal.short_loin", 1, 27 * INCH // 2)
    assert [one.stretch for one in found] == ["club", "t_bone", "porterhouse"]
    assert sum(one.length for one in found) == 27 * INCH // 2
    table = sum(length for _, length in places)
    for one, (_, length) in zip(found, places, strict=True):
        assert abs(one.length - length * 27 * INCH // 2 // table) <= 3


def test_one_stretch_is_as_it_was_measured() -> None:
    assert measured(catalogue("pork"), "centre", 2, INCH) == (Measured("centre", 2, INCH),)


def test_everything_that_can_be_measured_has_a_name() -> None:
    for species in ("beef", "pork", "lamb", "goat", "deer", "veal", "bison"):
        for language in ("en", "es"):
            words = Words(language, strict=True)
            for code, whole, name in measurable(catalogue(species), words):
                assert name or (whole and words.name(species, code))
