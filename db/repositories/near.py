"""Customers whose names are written nearly as typed, found by what one edit leaves whole.

A name one edit away still holds what lies before and after the edit: "jonson" looks for names
with "jon" and "son", with "onson", with "jonosn" and so on, in the same index as the search.
What is found so is then compared letter by letter. Two edits, which long words may have, leave
too little for the index: those are looked for in the words of all names (`name_words.py`).
"""

from collections.abc import Callable
from itertools import islice

from sqlalchemy import ColumnElement, Connection, and_, func, or_, select

from db.repositories.listing import contains
from db.repositories.name_words import name_words
from db.repositories.text_index import SHORTEST, customers_matching
from db.tables.customers import Customers
from shared.shop.customers import name_key
from shared.shop.near_names import SHORTEST_NEAR, edits_let, is_near, nearly_same, pieces

MOST_LOOKED_AT = 500


def near_customers(connection: Connection, typed: str, limit: int) -> tuple[int, ...]:
    """Ids of customers near what is typed, those first that begin with the same letter.

    One edit away come before two.
    """
    key = name_key(typed)
    found = _compared(connection, key, is_near)
    first = sorted(found, key=lambda one: (one[1][:1] != key[:1], len(one[1]), one[1], one[0]))
    if len(found) < limit:
        first += _two_off(connection, key, limit)
    return tuple(dict.fromkeys(one[0] for one in first))[:limit]


def _two_off(connection: Connection, key: str, limit: int) -> list[tuple[int, str]]:
    """Who is near with two edits in a long word."""
    long = [one for one in key.split() if edits_let(one) > 1 and one.isalpha()]
    if not long:
        return []
    words, found = name_words(connection), dict[int, tuple[int, str]]()
    for one in long:
        found |= words.near(one, edits_let(one), MOST_LOOKED_AT)
    return list(islice((one for one in found.values() if is_near(key, one[1])), limit))


def customers_named_nearly(connection: Connection, name: str, limit: int) -> tuple[int, ...]:
    """Ids of customers whose whole name is this one but for one edit in a word."""
    found = _compared(connection, name_key(name), lambda one, other: nearly_same(one, other))
    return tuple(dict.fromkeys(one[0] for one in found))[:limit]


def _compared(
    connection: Connection, key: str, alike: Callable[[str, str], bool]
) -> list[tuple[int, str]]:
    words = [one for one in key.split() if len(one) >= SHORTEST]
    if not any(len(one) >= SHORTEST_NEAR and one.isalpha() for one in words):
        return []
    indexed = connection.dialect.name == "sqlite"
    may_be = _indexed(words) if indexed else and_(*(_read(one) for one in words))
    rows = connection.execute(
        select(func.coalesce(Customers.joined_into, Customers.id), Customers.name_key)
        .where(may_be)
        .limit(MOST_LOOKED_AT)
    )
    return [(row[0], row[1]) for row in rows if alike(key, row[1])]


def _indexed(words: list[str]) -> ColumnElement[bool]:
    """One question to the trigram index: each word as it is, or what one edit leaves of it."""
    asked = [" OR ".join(f"({_all_of(one)})" for one in _ways(word)) for word in words]
    return customers_matching(" AND ".join(f"({one})" for one in asked))


def _all_of(parts: tuple[str, ...]) -> str:
    return " AND ".join('"' + part.replace('"', '""') + '"' for part in parts)


def _read(word: str) -> ColumnElement[bool]:
    ways = [and_(*(contains(Customers.name_key, part) for part in way)) for way in _ways(word)]
    return or_(*ways)


def _ways(word: str) -> list[tuple[str, ...]]:
    """The word itself, and its pieces that are long enough for the index."""
    if len(word) < SHORTEST_NEAR:
        return [(word,)]
    cut = [tuple(part for part in way if len(part) >= SHORTEST) for way in pieces(word)]
    return list(dict.fromkeys([(word,), *(way for way in cut if way)]))
