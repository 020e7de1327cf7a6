"""Who and which animal holds a piece of text: by trigrams on SQLite, by the columns on a server.

Three letters or more are looked up in the index of revision 0003. One or two are too short for
it and are read through the table, which stops as soon as the page is full.
"""

from sqlalchemy import (
    ColumnClause,
    ColumnElement,
    Connection,
    Integer,
    and_,
    bindparam,
    or_,
    select,
    text,
)
from sqlalchemy import column as sql_column
from sqlalchemy import table as sql_table
from sqlalchemy.orm import InstrumentedAttribute

from db.repositories.listing import contains
from db.tables.customers import Customers
from db.tables.lots import Animals
from shared.shop.customers import name_key, phone_digits

SHORTEST = 3
FEWEST_DIGITS = 3


def customer_holds(connection: Connection, typed: str) -> ColumnElement[bool]:
    """Every word is in the customer's name, or all its digits lie together in his phone number.

    "ber iv" finds Bert Iversen; "010-04" finds (555) 010-0456.
    """
    digits = phone_digits(typed)
    words = name_key(typed).split()
    ways = [_holds(connection, Customers.id, "customers", "name_key", words)]
    if len(digits) >= FEWEST_DIGITS and all(not one.isalpha() for one in typed):
        ways.append(_holds(connection, Customers.id, "customers", "digits", [digits]))
    return or_(*ways)


def customers_matching(asked: str) -> ColumnElement[bool]:
    """The name is what a question in the index's own syntax asks for; SQLite only."""
    return _in_index(Customers.id, "customers", f"name_key : ({asked})")


def tag_holds(connection: Connection, typed: str) -> ColumnElement[bool]:
    """The text is in the animal's tag: "14" finds T-114."""
    return _holds(connection, Animals.id, "animals", "tag_key", [name_key(typed)])


COLUMNS = {
    "name_key": Customers.name_key,
    "digits": Customers.digits,
    "tag_key": Animals.tag_key,
}


def _holds(
    connection: Connection,
    id_: InstrumentedAttribute[int],
    table: str,
    column: str,
    words: list[str],
) -> ColumnElement[bool]:
    indexed = connection.dialect.name == "sqlite"
    long = [one for one in words if len(one) >= SHORTEST] if indexed else []
    ways = [contains(COLUMNS[column], one) for one in words if one not in long]
    if long:
        quoted = " ".join('"' + one.replace('"', '""') + '"' for one in long)
        ways.append(_in_index(id_, table, f"{column} : ({quoted})"))
    return and_(*ways)


def _in_index(id_: InstrumentedAttribute[int], table: str, asked: str) -> ColumnElement[bool]:
    where = text(f"find_{table} MATCH :asked").bindparams(bindparam("asked", asked, unique=True))
    row_id: ColumnClause[int] = sql_column("rowid", Integer)
    return id_.in_(select(row_id).select_from(sql_table(f"find_{table}")).where(where))
