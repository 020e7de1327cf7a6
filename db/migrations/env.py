"""Run by Alembic: migrates the connection it is handed, inside the transaction open on it."""

from alembic import context


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
    )
    with context.begin_transaction():
        context.run_migrations()


run()
