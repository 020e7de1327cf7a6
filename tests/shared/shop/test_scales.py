"""A scale's pattern: one of ours, the shop's own, or one that can't be read."""

from shared.scales.reading import ScaleReading, read_line
from shared.shop.scales import Scale, own_from, own_text, pattern_of_scale
from shared.units import Weight

OWN = r"W(?P<number>\d+)"


def test_the_shops_own_line_is_read_in_the_scales_unit() -> None:
    pattern = pattern_of_scale(Scale(pattern="own", own_pattern=OWN))
    assert pattern is not None
    assert read_line("W112", pattern, "lb") == ScaleReading(Weight(112, "lb"), None)


def test_one_that_names_no_number_or_cant_be_read_is_none() -> None:
    assert pattern_of_scale(Scale(pattern="own", own_pattern="W.*")) is None
    assert pattern_of_scale(Scale(pattern="own", own_pattern="(")) is None
    assert pattern_of_scale(Scale(pattern="nobody's")) is None


def test_an_expression_comes_back_as_it_was() -> None:
    assert own_from(own_text(OWN)) == OWN
    assert own_from(own_text("")) == ""
