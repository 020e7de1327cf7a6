"""`steelyard records`, and the lot's papers from the shell."""

import csv
from pathlib import Path

import pytest

from desktop.commands import main
from desktop.paths import Paths
from desktop.records import open_records
from desktop.shell.records import write_records
from shared.shop.records import TABLES
from tests.desktop.shell import small_shop
from tests.printing.pages import text


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> tuple[Paths, str]:
    paths, order = small_shop.make(tmp_path_factory.mktemp("shop"))
    store = open_records(paths)
    with store.read() as work:
        lot = work.lots.get(order.lot_id)
    store.close()
    assert lot is not None
    return paths, str(lot.number)


def test_every_table_is_a_file_a_spreadsheet_reads(
    shop: tuple[Paths, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "records"
    arguments = ["records", "--from", "2020-01-01", "--to", "2099-12-31", "-o", str(out)]
    assert main([*arguments, "--data-dir", str(shop[0].data)]) == 0
    assert "9 CFR 320.3" in capsys.readouterr().out
    assert sorted(one.stem for one in out.iterdir()) == sorted(one.name for one in TABLES)
    with (out / "weighings.csv").open(encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    assert {"92.5 lb"} <= {row["weight"] for row in rows}


@pytest.mark.parametrize(
    ("days", "said"),
    [
        (("--from", "yesterday"), "yesterday is not a day"),
        (("--from", "2026-02-01", "--to", "2026-01-01"), "is after the last"),
    ],
)
def test_days_that_make_no_span_are_refused(
    shop: tuple[Paths, str],
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    days: tuple[str, ...],
    said: str,
) -> None:
    out = tmp_path / "records"
    assert main(["records", *days, "-o", str(out), "--data-dir", str(shop[0].data)]) == 2
    assert said in capsys.readouterr().err
    assert not out.exists()


def test_a_full_disk_is_a_sentence(
    shop: tuple[Paths, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    status = main(["records", "-o", str(blocked), "--data-dir", str(shop[0].data)])
    assert status == 1
    assert str(blocked) in capsys.readouterr().err


def test_writing_stops_when_told(shop: tuple[Paths, str], tmp_path: Path) -> None:
    from datetime import date

    store = open_records(shop[0])
    days = (date(2020, 1, 1), date(2099, 12, 31))
    whole = write_records(store, *days, tmp_path / "whole")
    stopped = write_records(store, *days, tmp_path / "stopped", told=lambda _count: False)
    store.close()
    assert 0 < stopped < whole


def test_the_trace_and_the_report_of_a_lot(shop: tuple[Paths, str], tmp_path: Path) -> None:
    for document, told in (
        ("trace", "Hot weight, side 1: 92.5 lb"),
        ("producer-report", "Nothing was condemned, trimmed or discarded."),
        ("where-it-went", "In your packages"),
    ):
        out = tmp_path / f"{document}.pdf"
        arguments = ["print", document, shop[1], "-o", str(out)]
        assert main([*arguments, "--data-dir", str(shop[0].data)]) == 0
        assert told in text(out.read_bytes()).replace("\n", " ")
