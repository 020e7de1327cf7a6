"""Tables as CSV that a spreadsheet opens without running anything that stands in a cell."""

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

# What a spreadsheet may take for the start of a formula (OWASP, "CSV Injection").
STARTERS = ("=", "+", "-", "@", "\t", "\r", "\n")


def safe_cell(text: str) -> str:
    """The text with an apostrophe before it where a spreadsheet would take it for a formula.

    A plain number keeps its sign: "=1+1" becomes "'=1+1", "-12.50" stays "-12.50".
    """
    if not text.startswith(STARTERS) or _is_number(text):
        return text
    return "'" + text


def csv_text(headings: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    r"""The table as CSV by RFC 4180: commas, CRLF, quotes where needed; every cell made safe.

    One heading "name" and one row "=A1" are "name\r\n'=A1\r\n".
    """
    out = StringIO()
    write = csv.writer(out, lineterminator="\r\n").writerow
    write([safe_cell(cell) for cell in headings])
    for row in rows:
        write([safe_cell(cell) for cell in row])
    return out.getvalue()


def _is_number(text: str) -> bool:
    digits = text[1:].replace(".", "", 1)
    return text[0] in "+-" and digits.isascii() and digits.isdigit()
