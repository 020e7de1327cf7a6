"""Lines of scales, and what may be taken of them.

The lines are made by us in the plain ASCII forms makers' manuals print (common practice, no
source); divisions are those of NIST Handbook 44, Table 3 (0.01 lb to 1 lb).
"""

import pytest

from shared.scales.reading import (
    Pattern,
    ScaleReading,
    UnreadLine,
    on_division,
    pattern_of,
    patterns,
    read_line,
    steady,
)
from shared.units import Weight, WeightUnit

BY_CODE = {one.code: one for one in patterns()}


def lb(count: int, exponent: int = 0) -> Weight:
    return Weight(count, "lb", exponent)


@pytest.mark.parametrize(
    ("code", "line", "read"),
    [
        ("plain", "  98.50 lb\r\n", ScaleReading(lb(9850, -2), None)),
        ("plain", "\x02  0012.5kg\x03", ScaleReading(Weight(125, "kg", -1), None)),
        ("plain", "-  0.5", ScaleReading(lb(-5, -1), None)),
        ("comma_header", "ST,GS,+00098.50lb", ScaleReading(lb(9850, -2), "steady", "gross")),
        ("comma_header", "US,NT,+  97.0 lb", ScaleReading(lb(970, -1), "moving", "net")),
        ("comma_header", "OL,GS,+        lb", ScaleReading(None, "over", "gross")),
        ("comma_header", "UL", UnreadLine("UL")),
        ("letter_after", "  402 lb G S", ScaleReading(lb(402), "steady", "gross")),
        ("letter_after", "  402 lb N M", ScaleReading(lb(402), "moving", "net")),
        ("asked_word", "S S     98.52 lb", ScaleReading(lb(9852, -2), "steady")),
        ("asked_word", "S D     98.5 kg", ScaleReading(Weight(985, "kg", -1), "moving")),
        ("asked_word", "S +", ScaleReading(None, "over")),
        ("plain", "Error 17", UnreadLine("Error 17")),
        ("plain", "", UnreadLine("")),
        ("plain", "98..5 lb", UnreadLine("98..5 lb")),
    ],
)
def test_a_line_is_read(code: str, line: str, read: ScaleReading | UnreadLine) -> None:
    assert read_line(line, BY_CODE[code]) == read


@pytest.mark.parametrize("unit", ["lb", "kg"])
def test_the_scale_s_own_unit_holds_where_the_line_names_none(unit: WeightUnit) -> None:
    found = read_line("12.5", BY_CODE["plain"], unit)
    assert found == ScaleReading(Weight(125, unit, -1), None)


def test_what_the_scale_calls_steady_is() -> None:
    said = ScaleReading(lb(98), "steady")
    assert steady([said])
    assert not steady([said, ScaleReading(lb(99), "moving")])
    assert not steady([])
    assert not steady([ScaleReading(None, "over")])


def test_without_a_word_three_alike_are_steady() -> None:
    one, other = ScaleReading(lb(98), None), ScaleReading(lb(97), None)
    assert not steady([one, one])
    assert steady([other, one, one, one])
    assert not steady([one, other, one])


@pytest.mark.parametrize(
    ("weight", "division", "fits"),
    [
        (lb(985, -1), lb(5, -1), True),
        (lb(983, -1), lb(5, -1), False),
        (lb(219), lb(1), True),
        (lb(2195, -1), lb(1), False),
        (lb(1235, -3), lb(5, -3), True),
        (lb(0), lb(1), True),
    ],
)
def test_a_reading_off_the_scale_s_division_is_noticed(
    weight: Weight, division: Weight, fits: bool
) -> None:
    assert on_division(weight, division) is fits


def test_a_shop_s_own_pattern() -> None:
    own = pattern_of(
        {"code": "own", "line": r"W=(?P<number>\d+);(?P<status>\d)", "status": {"1": "steady"}}
    )
    assert read_line("W=402;1", own) == ScaleReading(lb(402), "steady")
    assert read_line("W=402;0", own) == ScaleReading(lb(402), None)


@pytest.mark.parametrize("line", ["(", "no number here"])
def test_a_pattern_that_can_t_be_used_is_refused(line: str) -> None:
    with pytest.raises(ValueError, match="own"):
        pattern_of({"code": "own", "line": line})


def test_every_pattern_that_comes_along_has_a_code_of_its_own() -> None:
    assert len(BY_CODE) == len(patterns()) >= 4
    assert all(isinstance(one, Pattern) for one in patterns())
