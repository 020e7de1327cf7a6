"""Finished PDFs as pictures, barcodes and text, read by libraries the printing room doesn't use."""

from io import BytesIO

import pypdfium2
import zxingcpp
from PIL import Image
from pypdf import PdfReader


def text_of(pdf: bytes) -> str:
    """All text of all pages."""
    return "\n".join(pages_of(pdf))


def pages_of(pdf: bytes) -> list[str]:
    """The text of each page."""
    return [page.extract_text() for page in PdfReader(BytesIO(pdf)).pages]


def picture_of(pdf: bytes, dpi: int = 203, page: int = 0) -> Image.Image:
    """One page in greys, rasterised at the printer's resolution."""
    drawn = pypdfium2.PdfDocument(pdf)[page].render(scale=dpi / 72)  # pyright: ignore[reportArgumentType]
    return drawn.to_pil().convert("L")


def codes_of(pdf: bytes, page: int = 0, dpi: int = 203) -> list[zxingcpp.Barcode]:
    """Every barcode zxing-cpp reads on one page rasterised at the printer's resolution."""
    return list(zxingcpp.read_barcodes(picture_of(pdf, dpi, page)))


def letters_of(pdf: bytes, page: int = 0) -> list[tuple[str, float, float, float, float]]:
    """Each letter of a page with the box of its ink: left, bottom, right, top in points."""
    drawn = pypdfium2.PdfDocument(pdf)[page].get_textpage()
    whole = drawn.get_text_range()
    return [(one, *drawn.get_charbox(place)) for place, one in enumerate(whole)]
