"""The exported journal, read and balanced by an independent accounting library (Beancount)."""

import csv
from datetime import date
from fractions import Fraction
from io import StringIO

import pytest
from beancount import loader
from beancount.core import data, realization
from hypothesis import given
from hypothesis import strategies as st

from shared.billing.journal import (
    COLUMNS,
    account_name,
    journal_lines,
    journal_rows,
    percent_text,
    plain_dollars,
)
from shared.shop.ledger import Entry, EntryLine
from shared.spreadsheet import csv_text

DAY = date(2026, 3, 2)
BILL = Entry(
    1,
    "bill",
    DAY,
    7,
    "",
    "Ann",
    (
        EntryLine("receivable", 12_120, customer='Anna "Annie" Berg'),
        EntryLine("income", -10_000, "kill", "pork"),
        EntryLine("income", -2_000, "cut_and_wrap", "pork", Fraction(29, 400)),
        EntryLine("tax", -120, "cut_and_wrap", "pork", Fraction(29, 400)),
    ),
)
PAID = Entry(
    2,
    "payment",
    date(2026, 3, 3),
    1,
    "=check\n12",
    "Ann",
    (EntryLine("money:cash", 5_000), EntryLine("receivable", -5_000)),
)


def read(entries: list[Entry]) -> tuple[list[data.Directive], dict[str, str]]:
    """What the library makes of the text: its entries, and balances by account."""
    found, errors, _ = loader.load_string("\n".join(journal_lines(entries, "Oak \\ Hollow")))
    assert errors == []
    balances = {
        one.account: str(one.balance.get_currency_units("USD").number)
        for one in realization.iter_children(realization.realize(found))
        if not one.balance.is_empty()
    }
    return found, balances


def test_the_library_reads_it_and_finds_every_amount() -> None:
    found, balances = read([BILL, PAID])
    assert balances == {
        "Assets:Cash": "50.00",
        "Assets:Receivable": "71.20",
        "Income:Pork:CutAndWrap": "-20.00",
        "Income:Pork:Kill": "-100.00",
        "Liabilities:Tax": "-1.20",
    }
    bill, paid = [one for one in found if isinstance(one, data.Transaction)]
    assert (bill.payee, bill.narration, bill.date) == ('Anna "Annie" Berg', "bill 7", DAY)
    assert (paid.meta["memo"], paid.meta["entry"]) == ("=check 12", 2)
    assert str((bill.postings[3].meta or {})["tax_percent"]) == "7.25"


def test_the_library_would_find_a_cent_that_is_missing() -> None:
    """The check is real: one cent less on one line is an error there."""
    text = "\n".join(journal_lines([BILL], "x")).replace("121.20", "121.19")
    _, errors, _ = loader.load_string(text)
    assert errors


MOVES = st.lists(
    st.tuples(
        st.sampled_from(["receivable", "income", "tax", "deposits", "bank", "money:check"]),
        st.integers(-10_000_000, 10_000_000).filter(bool),
        st.text(max_size=12),
    ),
    min_size=1,
    max_size=5,
)


@given(st.lists(MOVES, min_size=1, max_size=4), st.text(max_size=20))
def test_any_balanced_entries_with_any_words_are_read_without_error(
    moves: list[list[tuple[str, int, str]]], words: str
) -> None:
    entries = [
        Entry(
            place,
            "bill",
            DAY,
            place,
            words,
            words,
            (
                *(EntryLine(account, cents, code, code) for account, cents, code in one),
                EntryLine("opening", -sum(cents for _, cents, _ in one), customer=words),
            ),
        )
        for place, one in enumerate(moves, start=1)
    ]
    found, _ = read(entries)
    assert len([one for one in found if isinstance(one, data.Transaction)]) == len(entries)


def test_the_table_has_debit_and_credit_and_runs_nothing() -> None:
    text = csv_text(COLUMNS, journal_rows([BILL, PAID]))
    rows = list(csv.DictReader(StringIO(text)))
    assert [(one["account"], one["debit"], one["credit"]) for one in rows[:2]] == [
        ("receivable", "121.20", ""),
        ("income", "", "100.00"),
    ]
    assert rows[2]["tax_percent"] == "7.25"
    assert rows[4]["memo"] == "'=check\n12"
    debit = sum(Fraction(one["debit"] or "0") for one in rows)
    assert debit == sum(Fraction(one["credit"] or "0") for one in rows) == Fraction("171.20")


@pytest.mark.parametrize(
    ("cents", "text"), [(125_000, "1250.00"), (-5, "-0.05"), (-12_345, "-123.45"), (0, "0.00")]
)
def test_amounts_are_plain_numbers(cents: int, text: str) -> None:
    assert plain_dollars(cents) == text


def test_rates_and_account_names() -> None:
    assert [percent_text(one) for one in (None, Fraction(3, 50), Fraction(1, 3))] == [
        "",
        "6",
        "100/3",
    ]
    assert account_name(EntryLine("income", -1, "smoke", "beef")) == "Income:Beef:Smoke"
    assert account_name(EntryLine("income", -1)) == "Income:Untold:Untold"
