"""Which records are written out for those who may ask for them, and what their columns are."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class RecordTable:
    """One table of the export: its name is the file's, its columns the headings' codes."""

    name: str
    columns: tuple[str, ...]


# Weights are written as weighed ("34.5 lb"), money in dollars ("12.50"), times on the shop's wall.
TABLES: tuple[RecordTable, ...] = (
    RecordTable(
        "animals",
        (
            "lot",
            "day",
            "species",
            "producer",
            "address",
            "phone",
            "animal",
            "tag",
            "sex",
            "age",
            "regime",
            "state",
            "held_for",
            "arrived_at",
            "killed_on",
            "cancelled",
        ),
    ),
    RecordTable("owners", ("lot", "share", "owner", "address", "phone", "order", "state")),
    RecordTable(
        "weighings",
        (
            "at",
            "lot",
            "tag",
            "kind",
            "side",
            "quarter",
            "weight",
            "scale",
            "source",
            "withdrawn",
            "reason",
            "person",
        ),
    ),
    RecordTable(
        "losses",
        (
            "at",
            "lot",
            "tag",
            "part",
            "side",
            "weight",
            "reason",
            "void",
            "person",
        ),
    ),
    RecordTable(
        "packages",
        (
            "at",
            "label",
            "order",
            "owner",
            "product",
            "weight",
            "pieces",
            "void",
            "person",
        ),
    ),
    RecordTable("counted", ("at", "order", "owner", "product", "packages", "void", "person")),
    RecordTable(
        "bills", ("at", "kind", "number", "lot", "customer", "dollars", "reason", "person")
    ),
    RecordTable(
        "payments",
        ("at", "day", "number", "lot", "customer", "kind", "means", "dollars", "note", "person"),
    ),
    RecordTable("changes", ("at", "subject", "id", "what", "reason", "data", "person")),
)
