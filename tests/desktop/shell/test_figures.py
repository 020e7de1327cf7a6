"""`steelyard figures`: every figure with its source, of an animal or of one cut."""

import json
from fractions import Fraction

import pytest

from desktop.commands import main
from desktop.shell.figures import percent
from printing.words import LANGUAGES
from shared.carcass.anatomy import species


def test_a_cut_shows_what_it_takes_and_from_where(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["figures", "lamb", "loin_chop"]) == 0
    lines = [" ".join(line.split()) for line in capsys.readouterr().out.splitlines()]
    # 6 1/2 in and 0.8 of 37.5 lb (2.13 %) as the file has them
    assert lines[lines.index("loin (loin)") + 1] == "length 6½ in derived"
    assert lines[lines.index("loin bone (loin_bone)") + 1] == "share 2.13 % derived"
    assert "FM = from memory" in lines
    assert not any(line.startswith("leg") for line in lines)


def test_json_holds_exact_values_and_the_source_in_full(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["figures", "--json", "deer", "tenderloin"]) == 0
    found = json.loads(capsys.readouterr().out)
    share = next(
        one for one in found["figures"] if (one["code"], one["figure"]) == ("tenderloin", "share")
    )
    assert Fraction(share["value"]) == Fraction("0.4") / Fraction("41.5")
    assert "Michigan State Univ. Extension" in share["told"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", species())
def test_every_figure_of_every_animal_has_a_name_and_a_source(
    name: str, language: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["--language", language, "figures", name]) == 0
    out = capsys.readouterr().out
    assert "figure." not in out
    assert main(["figures", "--json", name]) == 0
    rows = json.loads(capsys.readouterr().out)["figures"]
    assert len(rows) > 150
    assert all(row["source"] and row["told"] and row["text"] for row in rows)


def test_dressing_is_a_range_with_its_source(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["figures", "veal"]) == 0
    line = next(one for one in capsys.readouterr().out.splitlines() if "usual dressing" in one)
    assert "55–62 %" in line
    assert "USDA AMS" in line


@pytest.mark.parametrize("given", [["moose"], ["pork", "antlers"]])
def test_an_animal_or_a_cut_there_is_none_of(
    given: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["figures", *given]) == 2
    told = capsys.readouterr()
    assert given[-1] in told.err
    assert not told.out


def test_per_cent_is_rounded_half_up_without_idle_noughts() -> None:
    assert [percent(Fraction(one)) for one in ("1/2", "473/10000", "1/3", "1/80000")] == [
        "50",
        "4.73",
        "33.33",
        "0",
    ]
