"""Read-only tables over ready rows."""

from desktop.tables.columns import Column, Figure, figure
from desktop.tables.rows import RowsModel
from desktop.tables.table import Table

__all__ = ["Column", "Figure", "RowsModel", "Table", "figure"]
