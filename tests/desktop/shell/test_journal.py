"""`steelyard journal`: the shop's books out of a shell, balanced for another program."""

import csv
from datetime import UTC, datetime
from pathlib import Path

import pytest
from beancount import loader
from beancount.core import data

from desktop.commands import main
from desktop.paths import Paths
from tests.desktop.shell import small_shop


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Paths:
    paths, order = small_shop.make(tmp_path_factory.mktemp("shop"))
    small_shop.issue_and_pay(paths, order, 1_000)
    return paths


def test_the_text_is_balanced_by_another_program(
    shop: Paths, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["journal", "--data-dir", str(shop.data)]) == 0
    text = capsys.readouterr().out
    found, errors, options = loader.load_string(text)
    assert errors == []
    assert options["title"] == "Oak Hollow Meats"
    told = [one.narration for one in found if isinstance(one, data.Transaction)]
    assert told == ["deposit 1", "bill 1", "payment 2"]


def test_the_table_is_a_file(
    shop: Paths, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "books.csv"
    assert main(["journal", "--csv", "-o", str(out), "--data-dir", str(shop.data)]) == 0
    assert str(out) in capsys.readouterr().out
    with out.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [one["account"] for one in rows if one["kind"] == "deposit"] == [
        "money:check",
        "deposits",
    ]


def test_a_span_without_entries_and_days_that_make_no_span(
    shop: Paths, capsys: pytest.CaptureFixture[str]
) -> None:
    year = datetime.now(UTC).year + 1
    days = ["--from", f"{year}-02-01", "--to", f"{year}-02-28"]
    assert main(["journal", *days, "--data-dir", str(shop.data)]) == 0
    assert " * " not in capsys.readouterr().out
    assert main(["journal", "--from", "soon", "--data-dir", str(shop.data)]) == 2
    assert "soon is not a day" in capsys.readouterr().err
    wrong = ["journal", "--from", "2026-02-01", "--to", "2026-01-01", "--data-dir", str(shop.data)]
    assert main(wrong) == 2
    assert "is after the last" in capsys.readouterr().err
