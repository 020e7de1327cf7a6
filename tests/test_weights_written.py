"""One way of writing a weight for people: grouped by thousands, then a no-break space."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from shared.units import Weight, pounds_text, weight_text

ROOT = Path(__file__).parents[1]
WEIGHTS = ("weight", "net", "gross", "tare", "hook", "gambrel", "division", "hot", "live", "out")


@pytest.mark.parametrize(
    ("weight", "shown"),
    [
        (Weight(1275, "lb"), "1,275\u00a0lb"),
        (Weight(12755, "lb", -1), "1,275.5\u00a0lb"),
        (Weight(999, "lb"), "999\u00a0lb"),
        (Weight(57834, "kg", -2), "578.34\u00a0kg"),
    ],
)
def test_thousands_are_grouped(weight: Weight, shown: str) -> None:
    assert weight_text(weight) == shown
    assert pounds_text(Weight(1275, "lb").nanograms) == "1,275.0\u00a0lb"


def _plain_weights(tree: ast.AST) -> Iterator[int]:
    """Where a weight's digits as a file has them are taken: "1275 lb"."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Attribute):
            continue
        asked, of = node.func.attr, node.func.value
        name = (
            of.attr if isinstance(of, ast.Attribute) else of.id if isinstance(of, ast.Name) else ""
        )
        if asked == "digits" or (asked == "text" and name in WEIGHTS and not _field(of)):
            yield node.lineno


def _field(of: ast.expr) -> bool:
    """A dialog's own field of that name, whose text is what was typed."""
    return (
        isinstance(of, ast.Attribute) and isinstance(of.value, ast.Name) and of.value.id == "self"
    )


def test_screens_and_papers_write_no_weight_as_files_do() -> None:
    """`Weight.text` is for files and the store; a doubt at the rail said 1275 beside 1,275 lb."""
    found = [
        f"{path.relative_to(ROOT)}:{line}"
        for room in ("desktop", "printing")
        for path in sorted((ROOT / room).rglob("*.py"))
        for line in _plain_weights(ast.parse(path.read_text(encoding="utf-8")))
    ]
    assert found == []
