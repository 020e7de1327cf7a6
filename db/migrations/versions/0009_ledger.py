"""The ledger: entries that balance, closed periods, drawer counts; and entries for what is there.

Revision 0009, after 0008. Every bill, credit note and payment already kept gets the entry it
would get today, dated the day it was made, in the order in which they were made.
"""

import json
from collections.abc import Iterator, Mapping
from datetime import date, datetime
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
MOMENT = sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
DAY = sa.Date().with_variant(sa.Text(), "sqlite")
TABLES = ("ledger_entries", "ledger_postings", "closed_periods", "drawer_counts")
BATCH = 5000


def upgrade() -> None:
    """Tables, triggers, and entries for what is kept."""
    create_entries()
    create_postings()
    create_periods()
    create_counts()
    op.execute("INSERT INTO counters (name, last) VALUES ('entry', 0)")
    guard()
    backfill()


def downgrade() -> None:
    """The books go; bills and payments stay."""
    for table in reversed(TABLES):
        op.drop_table(table)
    if op.get_bind().dialect.name == "postgresql":
        for guarded in GUARDS:
            op.execute(f"DROP FUNCTION {guarded[1]}()")
    op.execute("DELETE FROM counters WHERE name = 'entry'")


def stamp(table: str) -> list[Any]:
    """Who wrote it, and at which station."""
    return [
        sa.Column("at", MOMENT, nullable=False),
        sa.Column("person_id", BIG, nullable=False),
        sa.Column("station_id", BIG, nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["persons.id"], name=op.f(f"fk_{table}_person_id_persons")
        ),
        sa.ForeignKeyConstraint(
            ["station_id"], ["stations.id"], name=op.f(f"fk_{table}_station_id_stations")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{table}")),
    ]


def create_entries() -> None:
    """One row for each happening; its id is its number, without gaps."""
    op.create_table(
        "ledger_entries",
        sa.Column("id", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("day", DAY, nullable=False),
        sa.Column("number", BIG, nullable=False),
        sa.Column("bill_id", BIG, nullable=True),
        sa.Column("payment_id", BIG, nullable=True),
        sa.Column("memo", sa.Text(), nullable=False),
        sa.CheckConstraint(
            "kind IN ('bill', 'credit', 'deposit', 'payment', 'refund', 'write_off',"
            " 'on_account', 'opening', 'drawer', 'cash_moved', 'collected', 'paid_out')",
            name=op.f("ck_ledger_entries_kind"),
        ),
        sa.ForeignKeyConstraint(
            ["bill_id"], ["bills.id"], name=op.f("fk_ledger_entries_bill_id_bills")
        ),
        sa.ForeignKeyConstraint(
            ["payment_id"], ["payments.id"], name=op.f("fk_ledger_entries_payment_id_payments")
        ),
        sa.UniqueConstraint("bill_id", name=op.f("uq_ledger_entries_bill_id")),
        sa.UniqueConstraint("payment_id", name=op.f("uq_ledger_entries_payment_id")),
        *stamp("ledger_entries"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_ledger_entries_day"), "ledger_entries", ["day"], unique=False)


def create_postings() -> None:
    """What an entry moves: above nothing is a debit, below a credit; written before its entry."""
    name = "ledger_postings"
    op.create_table(
        name,
        sa.Column("entry_id", BIG, nullable=False),
        sa.Column("position", BIG, autoincrement=False, nullable=False),
        sa.Column("account", sa.Text(), nullable=False),
        sa.Column("cents", BIG, nullable=False),
        sa.Column("day", DAY, nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("species", sa.Text(), nullable=False),
        sa.Column("tax_rate", sa.Text(), nullable=True),
        sa.Column("customer_id", BIG, nullable=True),
        sa.Column("order_id", BIG, nullable=True),
        sa.Column("lot_id", BIG, nullable=True),
        sa.CheckConstraint("cents <> 0", name=op.f(f"ck_{name}_not_nothing")),
        sa.ForeignKeyConstraint(
            ["customer_id"], ["customers.id"], name=op.f(f"fk_{name}_customer_id_customers")
        ),
        sa.ForeignKeyConstraint(
            ["entry_id"],
            ["ledger_entries.id"],
            name=op.f(f"fk_{name}_entry_id_ledger_entries"),
            initially="DEFERRED",
            deferrable=True,
        ),
        sa.ForeignKeyConstraint(["lot_id"], ["lots.id"], name=op.f(f"fk_{name}_lot_id_lots")),
        sa.ForeignKeyConstraint(
            ["order_id"], ["orders.id"], name=op.f(f"fk_{name}_order_id_orders")
        ),
        sa.PrimaryKeyConstraint("entry_id", "position", name=op.f(f"pk_{name}")),
        sqlite_strict=True,
    )
    op.create_index(op.f(f"ix_{name}_lot_id"), name, ["lot_id"], unique=False)
    op.create_index(op.f(f"ix_{name}_account_day_cents"), name, ["account", "day", "cents"])
    owed = ["account", "customer_id", "order_id", "lot_id", "cents"]
    op.create_index(op.f(f"ix_{name}_{'_'.join(owed)}"), name, owed)


def create_periods() -> None:
    """The last day of each closed period; nothing is dated on it or before it any more."""
    op.create_table(
        "closed_periods",
        sa.Column("id", BIG, nullable=False),
        sa.Column("through", DAY, nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.UniqueConstraint("through", name=op.f("uq_closed_periods_through")),
        *stamp("closed_periods"),
        sqlite_strict=True,
    )


def create_counts() -> None:
    """What was in the drawer, beside what should have been."""
    op.create_table(
        "drawer_counts",
        sa.Column("id", BIG, nullable=False),
        sa.Column("day", DAY, nullable=False),
        sa.Column("expected_cents", BIG, nullable=False),
        sa.Column("counted_cents", BIG, nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.CheckConstraint("counted_cents >= 0", name=op.f("ck_drawer_counts_counted")),
        sa.CheckConstraint(
            "counted_cents = expected_cents OR reason <> ''", name=op.f("ck_drawer_counts_reason")
        ),
        *stamp("drawer_counts"),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_drawer_counts_day"), "drawer_counts", ["day"], unique=False)


# What is refused on insert: the table, the guard's name, the condition, and what is said.
GUARDS = (
    (
        "ledger_entries",
        "entry_balances",
        "(SELECT coalesce(sum(cents), 1) FROM ledger_postings WHERE entry_id = NEW.id) <> 0",
        "debits and credits differ",
    ),
    (
        "ledger_entries",
        "entry_has_one_day",
        "EXISTS (SELECT 1 FROM ledger_postings WHERE entry_id = NEW.id AND day <> NEW.day)",
        "a posting has another day",
    ),
    (
        "ledger_entries",
        "entry_in_open_period",
        "EXISTS (SELECT 1 FROM closed_periods WHERE through >= NEW.day)",
        "the period is closed",
    ),
    (
        "ledger_postings",
        "entry_is_sealed",
        "EXISTS (SELECT 1 FROM ledger_entries WHERE id = NEW.entry_id)",
        "the entry is made already",
    ),
    (
        "closed_periods",
        "period_closes_later",
        "EXISTS (SELECT 1 FROM closed_periods WHERE through >= NEW.through)",
        "a later day is closed already",
    ),
)


def guard() -> None:
    """Entries balance, are sealed, never lie in a closed period, and nothing is ever changed."""
    sqlite = op.get_bind().dialect.name == "sqlite"
    for table, name, bad, said in GUARDS:
        if sqlite:
            op.execute(
                f"CREATE TRIGGER {name} BEFORE INSERT ON {table} WHEN {bad}"
                f" BEGIN SELECT RAISE(ABORT, '{table}: {said}'); END"
            )
            continue
        op.execute(
            f"CREATE FUNCTION {name}() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN IF {bad}"
            f" THEN RAISE EXCEPTION '{table}: {said}'; END IF; RETURN NEW; END $$"
        )
        op.execute(
            f"CREATE TRIGGER {name} BEFORE INSERT ON {table} FOR EACH ROW EXECUTE FUNCTION {name}()"
        )
    refuse = "BEGIN SELECT RAISE(ABORT, '{0}: rows are locked'); END"
    if not sqlite:
        refuse = "FOR EACH ROW EXECUTE FUNCTION refuse_locked()"
    for table in TABLES:
        for doing in ("update", "delete"):
            op.execute(
                f"CREATE TRIGGER lock_{table}_{doing} BEFORE {doing.upper()} ON {table} "
                + refuse.format(table)
            )


Row = Mapping[str, Any]
Posting = dict[str, Any]


def backfill() -> None:
    """An entry for each bill, credit note and payment, oldest first."""
    bind = op.get_bind()
    entries: list[dict[str, Any]] = []
    postings: list[Posting] = []
    owed: dict[tuple[str, int], list[int]] = {}
    last = 0
    for row in happenings(bind):
        party = ("order", row["order_id"]) if row["order_id"] else ("lot", row["lot_id"])
        held = owed.setdefault(party, [0, 0])
        made = [one for one in moved(row, held) if one["cents"]]
        for one in made:
            if one["account"] in ("receivable", "deposits"):
                held[one["account"] == "deposits"] += one["cents"]
        if not made:
            continue
        last += 1
        entries.append(entry_of(last, row))
        postings += [posting_of(last, place, row, one) for place, one in enumerate(made, 1)]
        if len(entries) >= BATCH:
            keep(entries, postings)
    keep(entries, postings)
    bind.execute(sa.text("UPDATE counters SET last = :last WHERE name = 'entry'"), {"last": last})


def happenings(bind: sa.Connection) -> Iterator[Row]:
    """Bills, credit notes and payments as they happened, each with its lines."""
    lines: dict[int, list[Row]] = {}
    for line in bind.execute(
        sa.text(
            "SELECT bill_id, key, code, amount_cents, tax_cents FROM bill_lines"
            " ORDER BY bill_id, position"
        )
    ).mappings():
        lines.setdefault(line["bill_id"], []).append(line)
    found = sa.text(
        "SELECT b.kind, b.id AS bill_id, NULL AS payment_id, b.number, '' AS means,"
        " b.total_cents AS cents, b.reason AS memo, b.issued_at AS at, b.lot_id, b.order_id,"
        " coalesce(b.customer_id, l.producer_id) AS customer_id, l.species, b.person_id,"
        " b.station_id, b.paper_id, b.credits, 0 AS later"
        " FROM bills b JOIN lots l ON l.id = b.lot_id UNION ALL"
        " SELECT p.kind, NULL, p.id, p.number, p.means, p.cents, p.note, p.at, p.lot_id,"
        " p.order_id, coalesce(p.customer_id, l.producer_id), l.species, p.person_id,"
        " p.station_id, NULL, NULL, 1"
        " FROM payments p JOIN lots l ON l.id = p.lot_id ORDER BY at, later, bill_id, payment_id"
    )
    snapshot = sa.text("SELECT snapshot FROM papers WHERE id = :id")
    rates: dict[int, dict[str, str]] = {}
    for row in bind.execute(found).mappings().all():
        kept = lines.get(row["bill_id"] or 0, [])
        told: list[Row] = []
        if row["kind"] == "credit" or any(line["tax_cents"] for line in kept):
            told = lines_told(bind.execute(snapshot, {"id": row["paper_id"]}).scalar())
        if row["kind"] == "bill":
            rates[row["bill_id"]] = {one["key"]: str(one.get("tax_rate", "")) for one in told}
        else:
            kept = told
        yield {**row, "lines": kept, "rates": rates.get(row["credits"] or row["bill_id"] or 0, {})}


def lines_told(snapshot: object) -> list[Row]:
    """The lines of a bill or credit note as its text keeps them; none where it can't be read."""
    try:
        value = json.loads(str(snapshot))["value"]
        found = [
            {**one, "amount_cents": int(one["amount_cents"]), "tax_cents": int(one["tax_cents"])}
            for one in value["lines"]
        ]
        return found if all("key" in one and "code" in one for one in found) else []
    except (ValueError, KeyError, TypeError):
        return []


def moved(row: Row, held: list[int]) -> list[Posting]:
    """What a happening moves; `held` is what its payer owes and (below nothing) has deposited."""
    cents, kind = row["cents"], row["kind"]
    owes, deposits = held
    money = f"money:{row['means']}"
    if kind == "payment":
        return [posting(money, cents), posting("receivable", -cents)]
    if kind == "write_off":
        return [posting("written_off", cents), posting("receivable", -cents)]
    if kind == "refund":
        first = min(cents, max(0, -owes))
        second = min(cents - first, -deposits)
        return [
            posting(money, -cents),
            posting("receivable", cents - second),
            posting("deposits", second),
        ]
    if kind == "deposit":
        used = max(0, min(owes, cents - deposits))
        return [
            posting(money, cents),
            posting("deposits", used - cents),
            posting("receivable", -used),
        ]
    sign = 1 if kind == "bill" else -1
    made = [posting("receivable", sign * cents), *earned(row, sign)]
    used = max(0, min(owes + cents, -deposits)) if kind == "bill" else 0
    return [*made, posting("deposits", used), posting("receivable", -used)]


def earned(row: Row, sign: int) -> Iterator[Posting]:
    """Income and tax line by line; what the lines don't account for is income without a code."""
    rest = row["cents"]
    for line in row["lines"]:
        rate = row["rates"].get(line["key"], "")
        exact = None if rate in ("", "0") else rate if "/" in rate else f"{rate}/1"
        rest -= line["amount_cents"] + line["tax_cents"]
        yield posting("income", -sign * line["amount_cents"], line["code"], exact)
        yield posting("tax", -sign * line["tax_cents"], line["code"], exact)
    yield posting("income", -sign * rest)


def posting(account: str, cents: int, code: str = "", rate: str | None = None) -> Posting:
    """Cents moved on an account."""
    return {"account": account, "cents": cents, "code": code, "tax_rate": rate}


def day_of(at: datetime | str) -> date:
    """The day on the shop's wall."""
    moment = datetime.fromisoformat(at) if isinstance(at, str) else at
    return moment.astimezone().date()


def entry_of(number: int, row: Row) -> dict[str, Any]:
    """The entry's columns."""
    names = ("kind", "number", "bill_id", "payment_id", "memo", "at", "person_id", "station_id")
    return {"id": number, "day": shown(day_of(row["at"])), **{name: row[name] for name in names}}


def posting_of(number: int, place: int, row: Row, one: Posting) -> Posting:
    """The posting's columns."""
    names = ("customer_id", "order_id", "lot_id")
    return {
        **one,
        "entry_id": number,
        "position": place,
        "day": shown(day_of(row["at"])),
        "species": row["species"] if one["account"] in ("income", "tax") else "",
        **{name: row[name] for name in names},
    }


def shown(day: date) -> date | str:
    """As the store keeps a day."""
    return day.isoformat() if op.get_bind().dialect.name == "sqlite" else day


def keep(entries: list[dict[str, Any]], postings: list[Posting]) -> None:
    """Write what is gathered, postings first as the guard wants them."""
    bind = op.get_bind()
    for table, rows in (("ledger_postings", postings), ("ledger_entries", entries)):
        if rows:
            columns = list(rows[0])
            named = ", ".join(columns)
            values = ", ".join(f":{name}" for name in columns)
            bind.execute(sa.text(f"INSERT INTO {table} ({named}) VALUES ({values})"), rows)
        rows.clear()
