"""Columns of figures as every table sets them: counts, money, pounds; sorted by what they are."""

from collections.abc import Callable
from typing import TypeVar

from desktop.tables.columns import Column, Figure, figure
from shared.money import money_text
from shared.units import pounds_text

Row = TypeVar("Row")


def count_column(
    key: str, title: Callable[[], str], count: Callable[[Row], int | None], width: int = 80
) -> Column[Row]:
    """Whole numbers; None is left empty and sorted last."""

    def show(row: Row) -> Figure:
        found = count(row)
        return Figure("" if found is None else f"{found:,}")

    return Column(key, title, show, kind="figure", sort=count, width=width, places=0)


def money_column(
    key: str, title: Callable[[], str], cents: Callable[[Row], int | None], width: int = 110
) -> Column[Row]:
    """Whole cents as dollars; None is left empty and sorted last."""

    def show(row: Row) -> Figure:
        found = cents(row)
        return Figure("" if found is None else money_text(found))

    return Column(key, title, show, kind="figure", sort=cents, width=width, places=2)


def pounds_column(
    key: str,
    title: Callable[[], str],
    nanograms: Callable[[Row], int | None],
    width: int = 104,
    places: int = 1,
) -> Column[Row]:
    """Nanograms as pounds; None is left empty and sorted last."""

    def show(row: Row) -> str | Figure:
        found = nanograms(row)
        return "" if found is None else figure(pounds_text(found, places))

    return Column(key, title, show, kind="figure", sort=nanograms, width=width, places=places)
