"""Owners are told, too, of an age that brings their choices down.

Revision 0022, after 0021. The rows kept stay as they are; one kind more may be kept.
"""

from alembic import op

revision = "0022"
down_revision = "0021"
branch_labels = None
depends_on = None

BEFORE = "kind IN ('part_gone', 'condemned', 'refused', 'held', 'block')"
NOW = "kind IN ('part_gone', 'condemned', 'refused', 'held', 'block', 'age')"


def upgrade() -> None:
    """News of an age may be kept."""
    change(BEFORE, NOW)


def downgrade() -> None:
    """Fails where such news is kept: it could not be kept before, and is never deleted."""
    change(NOW, BEFORE)


def change(old: str, new: str) -> None:
    """The rule on the kinds, made in the other way."""
    if op.get_bind().dialect.name == "sqlite":
        rebuild(old, new)
        return
    name = op.f("ck_order_news_kind")
    op.drop_constraint(name, "order_news", type_="check")
    op.create_check_constraint(name, "order_news", new)


def rebuild(old: str, new: str) -> None:
    """The same table with the rule changed, its rows, indexes and triggers kept."""
    run = op.get_bind().exec_driver_sql
    made = str(run("SELECT sql FROM sqlite_master WHERE name = 'order_news'").scalar_one())
    beside = run(
        "SELECT sql FROM sqlite_master WHERE type IN ('index', 'trigger')"
        " AND tbl_name = 'order_news' AND sql IS NOT NULL"
    ).scalars()
    kept = [str(one) for one in beside]
    if made.count(old) != 1:
        raise RuntimeError("order_news is not as revision 0005 or 0022 left it")
    head, body = made.replace(old, new).split("(", 1)
    run(f"{head.replace('order_news', 'rebuilt_order_news')}({body}")
    run("INSERT INTO rebuilt_order_news SELECT * FROM order_news")
    run("PRAGMA legacy_alter_table = ON")
    run("DROP TABLE order_news")
    run("ALTER TABLE rebuilt_order_news RENAME TO order_news")
    run("PRAGMA legacy_alter_table = OFF")
    for one in kept:
        run(one)
