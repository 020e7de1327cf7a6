"""A table read across the room: how wide its columns are, and how high the words of a state."""

from math import ceil
from typing import TYPE_CHECKING, Any

from PySide6.QtGui import QFont, QFontMetrics

from desktop.look.patterns import square_beside
from desktop.look.space import TOGETHER

if TYPE_CHECKING:
    from collections.abc import Callable

PADDING = 3 * TOGETHER  # two beside the words, one to the next column
MOST = 4  # letters a column may take before its longest words end in an ellipsis
LEAST = 0.6  # of the letters asked for: 16 mm asked are 9.6 mm at the least


def mark_room(line: int) -> int:
    """What a state's square and the gap behind it take beside words of that line height."""
    side = square_beside(line)
    return side + max(TOGETHER, side // 3)


def column_width(font: QFont, title: int, texts: "set[str]") -> int:
    """As wide as its longest words, not wider than four letters' height, never less than `title`.

    Tags of three digits in letters of 83 pixels take some 190, where three letters took 249.
    """
    metrics = QFontMetrics(font)
    wide = max((metrics.horizontalAdvance(one) for one in texts), default=0)
    return max(title, min(wide, font.pixelSize() * MOST)) + PADDING


def letters_that_fit(font: QFont, room: int, texts: "set[str]") -> int:
    """The height at which the longest of the states stands whole beside its square.

    Never under 0.6 of what was asked: smaller is not read across the room.
    """
    asked = font.pixelSize()
    least = ceil(asked * LEAST)
    for pixels in range(asked, least, -1):
        if _marked_width(font, pixels, texts) <= room:
            return pixels
    return least


def least_width(font: QFont, texts: "set[str]") -> int:
    """What a column of states takes in the least letters it may have."""
    return _marked_width(font, ceil(font.pixelSize() * LEAST), texts)


def _marked_width(font: QFont, pixels: int, texts: "set[str]") -> int:
    smaller = QFont(font)
    smaller.setPixelSize(pixels)
    metrics = QFontMetrics(smaller)
    wide = max((metrics.horizontalAdvance(one) for one in texts), default=0)
    return mark_room(metrics.height()) + wide + 2 * TOGETHER


def texts_of(show: "Callable[[Any], object]", rows: "list[Any]") -> set[str]:
    """What a column shows of these rows, each once."""
    return {str(show(row)) for row in rows}
