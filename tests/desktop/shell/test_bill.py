"""`steelyard bill`: the order's bill in words, to the cent, and its paper."""

from pathlib import Path

import pytest

from desktop.commands import main
from desktop.paths import Paths
from tests.desktop.shell import small_shop
from tests.printing.pages import amounts, text


def run(paths: Paths, *arguments: str) -> int:
    return main([*arguments, "--data-dir", str(paths.data)])


def test_the_bill_is_said_line_by_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    paths, order = small_shop.make(tmp_path)
    assert run(paths, "bill", str(order.number)) == 0
    said = capsys.readouterr().out
    assert "Anna Berg, 114" in said
    assert "½ head × $60.00" in said
    assert "$30.00" in said
    assert "92.5 lb × $0.85" in said
    assert "$78.63" in said  # 78.625, half up
    assert "$108.63" in said
    assert "−$50.00" in said
    assert said.rstrip().endswith("$58.63")  # less the deposit of $50.00


def test_what_waits_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    paths, order = small_shop.make(tmp_path, weighed=False)
    assert run(paths, "bill", str(order.number)) == 0
    assert "waits for the hot weight" in capsys.readouterr().out


def test_the_paper_is_a_draft_until_it_is_issued(tmp_path: Path) -> None:
    paths, order = small_shop.make(tmp_path)
    out = tmp_path / "bill.pdf"
    assert run(paths, "bill", str(order.number), "-o", str(out)) == 0
    assert "not issued yet" in text(out.read_bytes())
    assert {3000, 7863, 10863, 5863} <= set(amounts(out.read_bytes()))


def test_without_rates_it_says_what_to_do(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    paths, order = small_shop.make(tmp_path, card=False)
    assert run(paths, "bill", str(order.number)) == 1
    assert "No rates hold for Anna Berg" in capsys.readouterr().err


def test_no_such_order(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    paths, _ = small_shop.make(tmp_path)
    assert run(paths, "bill", "987654") == 1
    assert "There is no order 987654" in capsys.readouterr().err


def test_in_spanish(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    paths, order = small_shop.make(tmp_path)
    assert run(paths, "bill", str(order.number), "--language", "es") == 0
    assert "Saldo por pagar" in capsys.readouterr().out


def test_an_issued_bill_has_its_number_and_what_is_due_now(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    paths, order = small_shop.make(tmp_path)
    number = small_shop.issue_and_pay(paths, order, 5000)
    assert run(paths, "bill", str(order.number)) == 0
    said = capsys.readouterr().out
    assert said.startswith(f"Bill {number}\n")
    assert said.rstrip().endswith("$8.63")  # $58.63 less $50.00 paid since
    out = tmp_path / "bill.pdf"
    assert run(paths, "bill", str(order.number), "-o", str(out)) == 0
    assert out.read_bytes() == f"%PDF bill {number}".encode()
