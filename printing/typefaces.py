"""The bundled typefaces as ReportLab knows them, and how high their capitals stand.

One TrueType family serves screen and paper; a condensed bold serves narrow labels. Letter
heights are measured from the font's own tables, since rules speak of letters, not font sizes.
"""

from functools import lru_cache
from pathlib import Path
from threading import Lock
from typing import Literal

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont, TTFontFile
from reportlab.pdfgen.canvas import Canvas

Face = Literal["regular", "semibold", "bold", "condensed"]

REGULAR: Face = "regular"
SEMIBOLD: Face = "semibold"
BOLD: Face = "bold"
CONDENSED: Face = "condensed"

_FOLDER = Path(__file__).parent / "fonts"
_FILES: dict[Face, str] = {
    "regular": "InterTabular-Regular.ttf",
    "semibold": "InterTabular-SemiBold.ttf",
    "bold": "InterTabular-Bold.ttf",
    "condensed": "DejaVuSansCondensed-Bold.ttf",
}
# ReportLab reads a face's file through one cursor that all papers share.
_faces = Lock()


def save(canvas: Canvas) -> None:
    """End a paper: the letters it used are copied from their faces, by one thread at a time.

    Two papers that ended at once read each other's letters: one in sixty of such pairs failed,
    and one in some hundred came out with wrong letters.
    """
    with _faces:
        canvas.save()


@lru_cache(maxsize=8)
def font(face: Face) -> str:
    """The name ReportLab knows the face by; registers it the first time it is asked for."""
    name = f"Steelyard-{face}"
    with _faces:
        if name not in pdfmetrics.getRegisteredFontNames():
            pdfmetrics.registerFont(  # pyright: ignore[reportUnknownMemberType]
                TTFont(name, str(_FOLDER / _FILES[face]))
            )
    return name


def width(text: str, face: Face, size: float) -> float:
    """How wide a text is in points."""
    return pdfmetrics.stringWidth(text, font(face), size)


@lru_cache(maxsize=8)
def cap_height(face: Face) -> float:
    """Height of a capital as a fraction of the font size, from the outline of the letter H."""
    outlines = TTFontFile(str(_FOLDER / _FILES[face]))
    glyph = outlines.charToGlyph[ord("H")]
    table: tuple[int, int] = outlines.get_table_pos("glyf")  # pyright: ignore[reportUnknownMemberType]
    start = table[0] + outlines.glyphPos[glyph]
    outlines.seek(start)
    _contours, _left, _bottom, _right, top = (outlines.read_short() for _ in range(5))
    return top / outlines.unitsPerEm


def size_for_capitals(height: float, face: Face) -> float:
    """The font size whose capitals stand `height` points; 27 pt capitals of Inter need 37.1."""
    return height / cap_height(face)


def fit(text: str, face: Face, size: float, room: float, least: float) -> float:
    """The largest size from `size` down to `least` at which the text fits; `least` if none."""
    wide = width(text, face, size)
    return size if wide <= room else max(least, size * room / wide)


def cut_short(text: str, face: Face, size: float, room: float) -> str:
    """The text as far as it fits on one line, with an ellipsis where it is cut."""
    if width(text, face, size) <= room:
        return text
    kept = _fitting(text, face, size, room - width("…", face, size))
    return text[:kept].rstrip() + "…"


def wrap(text: str, face: Face, size: float, room: float) -> list[str]:
    """The text in lines no wider than the room; a wider word is broken, at a hyphen if it can."""
    lines: list[str] = []
    for paragraph in text.splitlines() or [""]:
        line = ""
        for word in paragraph.split(" "):
            grown = f"{line} {word}".strip() if line else word
            if width(grown, face, size) <= room:
                line = grown
                continue
            if line:
                lines.append(line)
            line = word
            while width(line, face, size) > room and len(line) > 1:
                cut = _fitting(line, face, size, room)
                cut = line.rfind("-", 0, cut) + 1 or cut
                lines.append(line[:cut])
                line = line[cut:]
        lines.append(line)
    return lines


def _fitting(word: str, face: Face, size: float, room: float) -> int:
    """How many letters of a word fit; at least one."""
    count = len(word)
    while count > 1 and width(word[:count], face, size) > room:
        count -= 1
    return count
