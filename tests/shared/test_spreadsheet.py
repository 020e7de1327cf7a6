"""CSV that opens in a spreadsheet without running a formula."""

import csv
from io import StringIO

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.spreadsheet import csv_text, safe_cell

# Cells a spreadsheet would run: OWASP, "CSV Injection" (the characters = + - @ tab, return).
HARMFUL = ("=1+1", "+1+1", "-1+1", "@SUM(A1)", '=HYPERLINK("http://x","y")', "\t=1", "\r=1", "\n=1")


@pytest.mark.parametrize("text", HARMFUL)
def test_a_formula_becomes_text(text: str) -> None:
    assert safe_cell(text) == "'" + text


@pytest.mark.parametrize("text", ["-12.50", "+3", "-1", "98.5 lb", "Ruiz, Ana", "", "a=b", "-.5"])
def test_plain_text_and_signed_numbers_stay(text: str) -> None:
    assert safe_cell(text) == text


@pytest.mark.parametrize("text", ["-", "+", "-1.2.3", "-1e5", "-1-1", "-²"])
def test_what_only_looks_like_a_number_is_made_safe(text: str) -> None:
    assert safe_cell(text) == "'" + text


def test_quotes_and_line_ends_follow_the_rfc() -> None:
    # RFC 4180, section 2, rules 5 to 7.
    assert csv_text(["a", "b"], [['x "y"', "1,2"]]) == 'a,b\r\n"x ""y""","1,2"\r\n'


@given(st.lists(st.lists(st.text(alphabet="=+-@ab,\"'\n1."), min_size=2, max_size=2)))
def test_every_cell_read_back_is_the_safe_one(rows: list[list[str]]) -> None:
    read = list(csv.reader(StringIO(csv_text(["one", "two"], rows), newline="")))
    assert read[1:] == [[safe_cell(cell) for cell in row] for row in rows]
