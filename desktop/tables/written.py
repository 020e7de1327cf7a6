"""A table's rows as text that leaves the window: for a file, for paper, for finding."""

from collections.abc import Sequence
from typing import Any

from desktop.tables.columns import Column, Figure


def cells_of(columns: Sequence[Column[Any]], row: object) -> list[str]:
    """A row's cells as they are shown."""
    return [str(one.show(row)) for one in columns]


def has_words(asked: Sequence[str], cells: Sequence[str]) -> bool:
    """Whether every word asked for, in small letters, is in the cells."""
    said = " ".join(cells).casefold()
    return all(word in said for word in asked)


def for_spreadsheet(
    columns: Sequence[Column[Any]], rows: Sequence[object]
) -> tuple[list[str], list[list[str]]]:
    """Headings and rows whose figures are bare numbers, their unit told in the heading.

    "1,250.5 lb" under Hanging becomes 1250.5 under "Hanging (lb)".
    """
    shown = [[one.show(row) for one in columns] for row in rows]
    heads = [_heading(one, [cells[at] for cells in shown]) for at, one in enumerate(columns)]
    return heads, [[_bare(cell) for cell in cells] for cells in shown]


def _heading(column: Column[Any], cells: Sequence[str | Figure]) -> str:
    units = {cell.unit for cell in cells if isinstance(cell, Figure) and cell.unit}
    return f"{column.title()} ({units.pop()})" if len(units) == 1 else column.title()


def _bare(cell: str | Figure) -> str:
    if not isinstance(cell, Figure):
        return cell
    return cell.number.replace(",", "").replace("$", "").replace("\u2212", "-")
