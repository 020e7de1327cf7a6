"""Run by Alembic: migrates the connection it is handed, inside the transaction open on it."""

from alembic import context


def not_the_text_index(name: str | None, *_: object) -> bool:
    """Whether it is a table of ours: the index of revision 0003 is no table in code."""
    return name is None or not name.startswith("find_")


def run() -> None:
    """Run the revisions on the caller's connection; it is never opened here."""
    connection = context.config.attributes.get("connection")
    if connection is None:
        raise RuntimeError("hand over a connection: use db.migrate.upgrade or db.migrate.draft")
    context.configure(
        connection=connection,
        target_metadata=context.config.attributes.get("metadata"),
        render_as_batch=True,
        transactional_ddl=True,
        compare_type=True,
        include_name=not_the_text_index,
    )
    with context.begin_transaction():
        context.run_migrations()


run()
