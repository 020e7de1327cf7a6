"""A finished PDF as its reader sees it: text, pages, and where the words lie."""

import re
from datetime import UTC, date, datetime
from io import BytesIO

from pypdf import PdfReader

from printing.words import Words
from shared.shop.details import ShopDetails

MADE = datetime(2026, 3, 9, 14, 5, tzinfo=UTC)
DAY = date(2026, 3, 9)
NAME = "Jørgen & Łucja <O'Neil>"
WORDS = Words("en", strict=True)
SPANISH = Words("es", strict=True)
SHOP = ShopDetails(name="Oak Hollow Meats", address="12 Mill Lane\nOakfield", phone="555 010 0100")
SHOP_A4 = ShopDetails(name="Oak Hollow Meats", address="12 Mill Lane\nOakfield", paper="a4")
SIZES = {"letter": (612, 792), "a4": (595, 842)}


def pages(pdf: bytes) -> list[str]:
    """The text of each page, no-break spaces as plain ones."""
    return [page.extract_text().replace("\u00a0", " ") for page in PdfReader(BytesIO(pdf)).pages]


def text(pdf: bytes) -> str:
    return "\n".join(pages(pdf))


def size(pdf: bytes) -> tuple[int, int]:
    """Width and height of the first page in whole points."""
    box = PdfReader(BytesIO(pdf)).pages[0].mediabox
    return round(box.width), round(box.height)


def amounts(pdf: bytes) -> list[int]:
    """Every sum of money on the paper, in cents."""
    found = re.findall(r"(\u2212?)\$([\d,]+)\.(\d\d)(?!\d)", text(pdf))
    return [
        int(f"{dollars.replace(',', '')}{cents}") * (-1 if sign else 1)
        for sign, dollars, cents in found
    ]


def places(pdf: bytes) -> list[tuple[float, float, float, float]]:
    """x, y, and the page's width and height for every piece of text."""
    found: list[tuple[float, float, float, float]] = []
    for page in PdfReader(BytesIO(pdf)).pages:
        wide, high = float(page.mediabox.width), float(page.mediabox.height)

        def visit(
            part: str,
            matrix: list[float],
            text_matrix: list[float],
            font: object,
            size: float,
            wide: float = wide,
            high: float = high,
        ) -> None:
            if part.strip():
                found.append((text_matrix[4], text_matrix[5], wide, high))

        page.extract_text(visitor_text=visit)
    return found
