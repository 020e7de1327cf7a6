"""The sizes of type: points at factor 1, times the shop's factor."""

from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtGui import QFont, QFontDatabase

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

Size = Literal["small", "body", "group", "title", "scale", "block"]

# 13, 15, 18, 24, 36 and 48 pixels at 96 dots to the inch.
POINTS: dict[Size, float] = {
    "small": 9.75,
    "body": 11.25,
    "group": 13.5,
    "title": 18.0,
    "scale": 27.0,
    "block": 36.0,
}
WEIGHTS: dict[Size, QFont.Weight] = {
    "small": QFont.Weight.Normal,
    "body": QFont.Weight.Normal,
    "group": QFont.Weight.DemiBold,
    "title": QFont.Weight.DemiBold,
    "scale": QFont.Weight.DemiBold,
    "block": QFont.Weight.Bold,
}
LEAST_FACTOR, MOST_FACTOR = 80, 175


def load_fonts(folder: Path) -> str:
    """Make the bundled faces known; the family's name, or "" when the folder has none."""
    family = ""
    for path in sorted(folder.glob("Inter*.ttf")):
        number = QFontDatabase.addApplicationFont(str(path))
        names = QFontDatabase.applicationFontFamilies(number) if number >= 0 else []
        if names and (not family or "Regular" in path.name):
            family = names[0]
    return family


def font_of(size: Size, percent: int = 100, family: str = "") -> QFont:
    """The face for a size, at the shop's factor in percent, with figures of one width."""
    font = QFont()
    if family:
        font.setFamily(family)
    font.setPointSizeF(POINTS[size] * percent / 100)
    font.setWeight(WEIGHTS[size])
    font.setFeature(QFont.Tag("tnum"), 1)
    return font


def set_type(widget: "QWidget", size: Size) -> None:
    """Give a widget a size of the scale; it follows the shop's factor from then on."""
    widget.setProperty("type", size)
    style = widget.style()
    style.unpolish(widget)
    style.polish(widget)
