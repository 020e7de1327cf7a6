"""How large the block's letters are: by the height of their capitals on this very screen."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

LEAST_LETTERS, USUAL_LETTERS, MOST_LETTERS = 5, 9, 16  # mm
CAPITALS = 0.727  # height of a capital of our face, of the size of its letters
MM_PER_INCH = 25.4
LEAST_DOTS, MOST_DOTS = 72.0, 320.0  # a screen that says otherwise doesn't know itself


def pixels_of(millimetres: int, dots: float) -> int:
    """The size of letters whose capitals stand so high on a screen of so many dots to the inch.

    Worked number: 9 mm at 96 dots are 34.02 pixels of capital, letters of 46.8, rounded up 47.
    """
    dots = min(max(dots, LEAST_DOTS), MOST_DOTS)
    return int(-(-millimetres * dots / MM_PER_INCH / CAPITALS // 1))


def letter_pixels(widget: "QWidget", millimetres: int) -> int:
    """The same for the screen a widget is on."""
    return pixels_of(millimetres, widget.screen().physicalDotsPerInchY())
