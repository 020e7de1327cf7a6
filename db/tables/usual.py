"""Tables of the shop's own usual lines and of how it cuts split sides."""

from sqlalchemy import CheckConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.tables.row import Id, Row


class UsualLines(Row):
    """One line of a usual way of cutting a primal; `choice` as an order's line is kept."""

    __tablename__ = "usual_lines"
    __table_args__ = (CheckConstraint("variant > 0", name="variant_from_one"),)

    species: Mapped[str] = mapped_column(primary_key=True)
    primal: Mapped[str] = mapped_column(primary_key=True)
    variant: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    place: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    cut: Mapped[str]
    choice: Mapped[str]


class UsualRules(Row):
    """How split sides are cut; one row."""

    __tablename__ = "usual_rules"
    __table_args__ = (CheckConstraint("id = 1", name="one_row"),)

    id: Mapped[Id] = mapped_column(autoincrement=False)
    cut_alike: Mapped[bool]
    version: Mapped[int]
