"""Columns of figures: how they are set and what they are sorted by."""

from desktop.tables import Figure, count_column, money_column, pounds_column
from shared.units import NG_PER_LB


def title() -> str:
    return "Title"


def itself(row: int | None) -> int | None:
    return row


def test_counts() -> None:
    column = count_column("n", title, itself)
    assert [column.show(n) for n in (1250, None)] == [Figure("1,250"), Figure("")]
    assert column.sort is not None
    assert column.sort(7) == 7


def test_money() -> None:
    column = money_column("m", title, itself)
    assert [column.show(n) for n in (319688, None)] == [Figure("$3,196.88"), Figure("")]


def test_pounds_keep_their_unit_apart() -> None:
    column = pounds_column("p", title, itself, places=2)
    assert column.show(NG_PER_LB * 5 // 2) == Figure("2.50", "lb")
    assert column.show(None) == ""
