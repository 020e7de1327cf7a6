"""The bounds every published table is held to; `python -m tests.bench tables` prints the lines.

Own tables 2 % or 0.2 lb a line; others primal 2.5 points of the carcass (loin, belly, rack 5),
lines 25 % or 0.2 % of the carcass for four in five, each line outside with its reason.
"""

from fractions import Fraction

import pytest

from shared.carcass.spread import band, pairs
from tests.bench.tables import Published, kind_of, main, tables

ALL = tables()
CHECKS = [one for one in ALL if not one.own]


@pytest.mark.parametrize("table", ALL, ids=lambda it: it.code)
def test_a_table_comes_back_within_its_bounds(table: Published) -> None:
    outside = {one.name for one in table.outside()}
    assert outside == set(dict(table.reasons))
    assert len(outside) * 5 <= len(table.lines)
    assert table.settings
    assert not (table.own and outside)


@pytest.mark.parametrize("table", ALL, ids=lambda it: it.code)
def test_no_line_is_forecast_at_less_than_half(table: Published) -> None:
    assert table.halved() == []


@pytest.mark.parametrize("left_out", [False, True])
def test_the_range_shown_holds_four_fifths_of_the_checked_lines(left_out: bool) -> None:
    """Of tables a species wasn't made from; then with ranges made without the table itself."""
    lines = sum(len(one.lines) for one in CHECKS)
    missed = sum(len(one.missed_by_range(left_out=left_out)) for one in CHECKS)
    assert (lines - missed) * 5 >= lines * 4


def test_deer_alone_does_not_carry_the_range() -> None:
    some = [one for one in CHECKS if one.code != "V-A"]
    lines = sum(len(one.lines) for one in some)
    missed = sum(len(one.missed_by_range(left_out=True)) for one in some)
    assert (lines - missed) * 5 >= lines * 4


def test_every_table_asked_for_is_there() -> None:
    codes = {one.code for one in ALL}
    named = {"B-A", "B-B", "B-C", "B-D", "P-A", "P-B", "P-C", "L-A", "L-D", "G-A", "G-B", "V-A"}
    assert codes == named


def test_a_range_is_as_wide_as_tables_lie_apart() -> None:
    """Without P-A there is one pair fewer of ribs twice over, and the range moves."""
    assert band("ribs", "P-A") != band("ribs")
    assert {kind_of(one.name) for it in ALL for one in it.lines} >= {"roast", "ribs", "pool"}
    apart = [one.apart for one in pairs() if one.kind == "bones"]
    mean = sum(one * one for one in apart) / len(apart)
    assert abs(float(band("bones")) - 1.2816 * float(mean) ** 0.5) < 0.0002
    assert band("offal") == band("fat")
    assert all(one.first > 0 < one.second < Fraction(1, 2) for one in pairs())


def test_the_whole_table_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main() == 0
    printed = capsys.readouterr().out
    for table in ALL:
        assert all(one.name in printed for one in table.lines)


@pytest.mark.parametrize(
    ("code", "printed"),
    [  # pounds into packages of the whole carcass, as each table adds them up
        ("B-A", Fraction("568.7") / 715),
        ("P-A", Fraction("139.8") / Fraction("184.2")),
        ("G-A", Fraction("31.0") / Fraction("39.5")),
    ],
)
def test_take_home_is_within_five_points(code: str, printed: Fraction) -> None:
    table = next(one for one in ALL if one.code == code)
    kept = [one for one in table.lines if kind_of(one.name) != "waste"]
    assert abs(sum(one.published for one in kept) / table.carcass - printed) < Fraction(1, 100)
    assert abs(sum(one.ours for one in kept) / table.carcass - printed) <= Fraction(5, 100)
