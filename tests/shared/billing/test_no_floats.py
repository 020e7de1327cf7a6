"""No float comes anywhere near money: read from the code itself."""

import ast
from pathlib import Path

import pytest

import db
import shared
from shared.billing.canonical import to_json

SHARED = Path(shared.__file__).parent
DB = Path(db.__file__).parent
BOOKS = ("bills", "payments", "ledger", "ledger_posting", "books", "periods", "rates")
MONEY = [
    SHARED / "money.py",
    SHARED / "shop/money.py",
    SHARED / "shop/ledger.py",
    *sorted((SHARED / "billing").glob("*.py")),
    *(DB / f"repositories/{one}.py" for one in BOOKS),
    *(DB / f"tables/{one}.py" for one in ("bills", "ledger", "rates")),
    DB / "migrations/versions/0009_ledger.py",
]
FLOATING = {"math", "decimal", "statistics", "random", "numpy"}


def floats(source: str) -> list[int]:
    """Lines that name a float, write one, round by the machine, or divide by a bare number."""
    found: list[int] = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Constant) and isinstance(node.value, float | complex):
            found.append(node.lineno)
        if isinstance(node, ast.Name) and node.id in ("float", "round", "complex"):
            found.append(node.lineno)
        if isinstance(node, ast.Import | ast.ImportFrom):
            names = [alias.name for alias in node.names]
            names.append(getattr(node, "module", None) or "")
            found += [node.lineno for name in names if name.split(".")[0] in FLOATING]
    return found


@pytest.mark.parametrize("path", MONEY, ids=lambda path: path.name)
def test_no_float_near_money(path: Path) -> None:
    assert floats(path.read_text()) == []


def test_the_check_would_find_one() -> None:
    for line in ("x = 0.5", "x: float", "x = round(y)", "import math", "from math import ceil"):
        assert floats(line) == [1]


def test_a_float_cant_be_kept() -> None:
    with pytest.raises(TypeError, match="float"):
        to_json(0.5)
