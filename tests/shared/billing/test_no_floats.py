"""No float comes anywhere near money: read from the code itself."""

import ast
from pathlib import Path

import pytest

import shared
from shared.billing.canonical import to_json

SHARED = Path(shared.__file__).parent
MONEY = [SHARED / "money.py", SHARED / "shop/money.py", *sorted((SHARED / "billing").glob("*.py"))]
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
