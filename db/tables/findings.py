"""Tables of the block: ticks as they are made, what it read, what it reports, own figures."""

from datetime import datetime

from sqlalchemy import CheckConstraint, ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from db.columns import Nanograms
from db.tables.row import Id, Row


class BlockTicks(Row):
    """A place ticked as made, or the tick taken back: the last row of a place holds.

    side 0 with the way "pool" is the table at the end.
    """

    __tablename__ = "block_ticks"

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    side: Mapped[int]
    line: Mapped[int]
    way: Mapped[str]
    made: Mapped[bool]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BlockReads(Row):
    """The block has read the changes of an order up to this one."""

    __tablename__ = "block_reads"

    id: Mapped[Id]
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"), index=True)
    change_id: Mapped[int] = mapped_column(ForeignKey("order_changes.id"))
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BlockFindings(Row):
    """What the block reports: a stretch measured, pounds lost, a line cut otherwise."""

    __tablename__ = "block_findings"
    __table_args__ = (
        CheckConstraint("kind IN ('measured', 'lost', 'cut_otherwise')", name="kind"),
    )

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"), index=True)
    kind: Mapped[str]
    side: Mapped[int]
    what: Mapped[str]
    line: Mapped[int]
    count: Mapped[int]
    length: Mapped[int | None]
    weight_count: Mapped[int | None]
    weight_unit: Mapped[str | None]
    weight_exponent: Mapped[int | None]
    ours: Mapped[bool]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BlockAnswers(Row):
    """What the office made of a mistake of ours: a credit, or none and why."""

    __tablename__ = "block_answers"
    __table_args__ = (CheckConstraint("how IN ('credited', 'no_credit')", name="how"),)

    id: Mapped[Id]
    finding_id: Mapped[int] = mapped_column(ForeignKey("block_findings.id"), unique=True)
    how: Mapped[str]
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class ExpectedYields(Row):
    """What the table foretold of a line when the block had cut the carcass."""

    __tablename__ = "expected_yields"
    __table_args__ = (Index(None, "order_id", "line"),)

    id: Mapped[Id]
    animal_id: Mapped[int] = mapped_column(ForeignKey("animals.id"))
    order_id: Mapped[int] = mapped_column(ForeignKey("orders.id"))
    line: Mapped[int]
    cut: Mapped[str]
    expected_ng: Mapped[int] = mapped_column(Nanograms)
    carcass_ng: Mapped[int] = mapped_column(Nanograms)
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class BlockRules(Row):
    """Whether the shop's own figures are used, and the sheet's language; one row."""

    __tablename__ = "block_rules"
    __table_args__ = (
        CheckConstraint("id = 1", name="one_row"),
        CheckConstraint("sheet_words IN ('window', 'en', 'es', 'both')", name="words"),
    )

    id: Mapped[Id] = mapped_column(autoincrement=False)
    own_figures: Mapped[bool]
    sheet_words: Mapped[str]
    version: Mapped[int]


class WithdrawnFindings(Row):
    """A report taken back, with its reason; the report itself stays."""

    __tablename__ = "withdrawn_findings"

    id: Mapped[Id]
    finding_id: Mapped[int] = mapped_column(ForeignKey("block_findings.id"), unique=True)
    reason: Mapped[str]
    at: Mapped[datetime]
    person_id: Mapped[int] = mapped_column(ForeignKey("persons.id"))
    station_id: Mapped[int] = mapped_column(ForeignKey("stations.id"))


class WithdrawnMeasurements(Row):
    """What a report that was taken back had measured; it no longer counts."""

    __tablename__ = "withdrawn_measurements"

    measurement_id: Mapped[int] = mapped_column(
        ForeignKey("measurements.id"), primary_key=True, autoincrement=False
    )
    finding_id: Mapped[int] = mapped_column(ForeignKey("block_findings.id"), index=True)
