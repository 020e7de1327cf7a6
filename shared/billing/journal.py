"""The journal for other programs: as a table, and as plain text in the Beancount syntax.

Beancount's syntax is openly documented (beancount.github.io/docs/beancount_language_syntax.html):
accounts are opened with a day, an entry is a day, a star, who and what, and under it one line for
each account with its amount; the amounts of an entry add up to nothing. Written for a period, the
text holds that period's entries only.
"""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from typing import Final

from shared.billing.accounts import CHART
from shared.shop.ledger import Entry, EntryLine

COLUMNS: Final = (
    "entry",
    "day",
    "kind",
    "number",
    "memo",
    "person",
    "account",
    "customer",
    "charge",
    "species",
    "tax_percent",
    "debit",
    "credit",
)


def journal_rows(entries: Iterable[Entry]) -> Iterator[tuple[str, ...]]:
    """One row for each account an entry moves, under `COLUMNS`; debit and credit in dollars.

    "121.20" stands under debit where 12,120 cents are owed, the other column is empty.
    """
    for entry in entries:
        number = str(entry.number) if entry.number else ""
        head = (str(entry.id), entry.day.isoformat(), entry.kind, number, entry.memo, entry.person)
        for line in entry.lines:
            yield (
                *head,
                line.account,
                line.customer,
                line.code,
                line.species,
                percent_text(line.tax_rate),
                plain_dollars(line.cents) if line.cents > 0 else "",
                plain_dollars(-line.cents) if line.cents < 0 else "",
            )


def journal_lines(entries: Iterable[Entry], title: str) -> Iterator[str]:
    """The journal as lines of plain text, without line ends; an account opens where first used.

    A payment of $12.50 in cash is `2026-03-02 * "Anna Berg" "payment 7"` with
    `Assets:Cash  12.50 USD` and `Assets:Receivable  -12.50 USD` under it.
    """
    yield f'option "title" {_quoted(title)}'
    yield 'option "operating_currency" "USD"'
    opened: set[str] = set()
    for entry in entries:
        names = [account_name(line) for line in entry.lines]
        yield ""
        for name in dict.fromkeys(names):
            if name not in opened:
                opened.add(name)
                yield f"{entry.day.isoformat()} open {name} USD"
        yield from _entry(entry, names)


def account_name(line: EntryLine) -> str:
    """An account in the plain-text journal; income by species and charge.

    Income of "cut_and_wrap" on pork is "Income:Pork:CutAndWrap".
    """
    top = next(one.journal for one in CHART.values() if one.account == line.account)
    if line.account != "income":
        return top
    return f"{top}:{_word(line.species)}:{_word(line.code)}"


def plain_dollars(cents: int) -> str:
    """Cents as a number other programs read: 125000 is "1250.00", −5 is "-0.05"."""
    dollars, rest = divmod(abs(cents), 100)
    return f"{'-' if cents < 0 else ''}{dollars}.{rest:02d}"


def percent_text(rate: Fraction | None) -> str:
    """A tax rate in per cent: 29/400 is "7.25"; none is empty."""
    if rate is None:
        return ""
    scaled = rate * 100 * 10**6
    if scaled.denominator != 1:
        return f"{rate * 100}"
    whole, rest = divmod(scaled.numerator, 10**6)
    return f"{whole}.{rest:06d}".rstrip("0").rstrip(".")


def _entry(entry: Entry, names: list[str]) -> Iterator[str]:
    customer = next((line.customer for line in entry.lines if line.customer), "")
    what = f"{entry.kind} {entry.number}" if entry.number else entry.kind
    yield f"{entry.day.isoformat()} * {_quoted(customer)} {_quoted(what)}"
    yield f"  entry: {entry.id}"
    if entry.person:
        yield f"  person: {_quoted(entry.person)}"
    if entry.memo:
        yield f"  memo: {_quoted(entry.memo)}"
    for line, name in zip(entry.lines, names, strict=True):
        yield f"  {name:<44} {plain_dollars(line.cents):>14} USD"
        if line.code:
            yield f"    charge: {_quoted(line.code)}"
        if line.tax_rate is not None:
            yield f"    tax_percent: {percent_text(line.tax_rate)}"


def _quoted(text: str) -> str:
    plain = " ".join(text.split())
    return '"' + plain.replace("\\", "\\\\").replace('"', '\\"') + '"'


def _word(text: str) -> str:
    """One part of an account's name: letters and digits only, with a capital first."""
    parts = "".join(sign if sign.isascii() and sign.isalnum() else " " for sign in text).split()
    return "".join(part[:1].upper() + part[1:] for part in parts) or "Untold"
