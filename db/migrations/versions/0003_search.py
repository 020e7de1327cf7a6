"""An index over every part of a name, phone number and tag.

Revision 0003, after 0002. SQLite keeps trigrams in FTS5 tables that hold no text of their own
(sqlite.org/fts5.html, "external content" and "the trigram tokenizer"); triggers keep them in step
in the writing transaction. PostgreSQL indexes the columns themselves with pg_trgm, where the
server has it; without it the same search reads the tables through.
"""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

INDEXED = {"customers": ("name_key", "digits"), "animals": ("tag_key",)}


def upgrade() -> None:
    """Index what is there, and whatever is written from now on."""
    if op.get_bind().dialect.name == "sqlite":
        for table, columns in INDEXED.items():
            keep_trigrams(table, columns)
    elif server_has_trigrams():
        op.execute("CREATE EXTENSION IF NOT EXISTS pg_trgm")
        for table, columns in INDEXED.items():
            for column in columns:
                op.execute(
                    f"CREATE INDEX find_{table}_{column} ON {table}"
                    f" USING gin ({column} gin_trgm_ops)"
                )


def downgrade() -> None:
    """Triggers and index go; no row of the tables themselves is touched."""
    sqlite = op.get_bind().dialect.name == "sqlite"
    for table, columns in INDEXED.items():
        if sqlite:
            for when in ("insert", "delete", "update"):
                op.execute(f"DROP TRIGGER find_{table}_{when}")
            op.execute(f"DROP TABLE find_{table}")
            continue
        for column in columns:
            op.execute(f"DROP INDEX IF EXISTS find_{table}_{column}")


def keep_trigrams(table: str, columns: tuple[str, ...]) -> None:
    """The FTS5 table over these columns, filled, and its three triggers."""
    names = ", ".join(columns)
    old = ", ".join(f"old.{one}" for one in columns)
    new = ", ".join(f"new.{one}" for one in columns)
    op.execute(
        f"CREATE VIRTUAL TABLE find_{table} USING fts5({names}, content='{table}',"
        " content_rowid='id', tokenize='trigram')"
    )
    op.execute(f"INSERT INTO find_{table} (find_{table}) VALUES ('rebuild')")
    take = (
        f"INSERT INTO find_{table} (find_{table}, rowid, {names}) VALUES ('delete', old.id, {old});"
    )
    give = f"INSERT INTO find_{table} (rowid, {names}) VALUES (new.id, {new});"
    for when, what, body in (
        ("insert", "INSERT", give),
        ("delete", "DELETE", take),
        ("update", f"UPDATE OF {names}", f"{take} {give}"),
    ):
        op.execute(f"CREATE TRIGGER find_{table}_{when} AFTER {what} ON {table} BEGIN {body} END")


def server_has_trigrams() -> bool:
    """Whether pg_trgm is there already, or this person may put it there."""
    found = op.get_bind().execute(
        sa.text(
            "SELECT EXISTS (SELECT 1 FROM pg_extension WHERE extname = 'pg_trgm') OR ("
            " has_database_privilege(current_database(), 'CREATE') AND EXISTS"
            " (SELECT 1 FROM pg_available_extension_versions"
            " WHERE name = 'pg_trgm' AND trusted))"
        )
    )
    return bool(found.scalar_one())
