"""Read-only tables over ready rows."""

from desktop.tables.columns import Column, Figure, figure
from desktop.tables.figure_columns import count_column, money_column, pounds_column
from desktop.tables.rows import RowsModel
from desktop.tables.sum_line import SumLine
from desktop.tables.table import Table
from desktop.tables.tall_table import TallTable

__all__ = [
    "Column",
    "Figure",
    "RowsModel",
    "SumLine",
    "Table",
    "TallTable",
    "count_column",
    "figure",
    "money_column",
    "pounds_column",
]
