"""Our drawing of a side as it hangs in the cooler, head down, as one region for each primal.

Lengths are in a drawing 100 wide and 300 high; the back is at the right.
"""

from collections.abc import Sequence

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath, QPolygonF

WIDTH = 100.0
HEIGHT = 300.0
STEP = 3.0

Points = Sequence[tuple[float, float]]
Band = tuple[str, str, float, float]

# (y, x) down the edges; between the points the edge bends smoothly.
_BACK: Points = (
    (0, 56),
    (22, 60),
    (50, 78),
    (80, 86),
    (110, 80),
    (150, 77),
    (200, 82),
    (235, 86),
    (265, 78),
    (298, 62),
)
_BELLY: Points = (
    (0, 46),
    (22, 42),
    (50, 30),
    (80, 26),
    (110, 22),
    (150, 12),
    (190, 12),
    (225, 24),
    (262, 38),
    (298, 50),
)
_MIDDLE: Points = ((0, 51), (80, 56), (110, 55), (190, 52), (240, 54), (298, 56))
_FORELEG: Points = ((20, 232), (34, 246), (14, 292), (4, 288))

# Primal, which part across ("all", "back", "belly", "foreleg"), and from where to where down.
_BANDS: dict[str, tuple[Band, ...]] = {
    "pork": (
        ("hocks", "all", 0, 24),
        ("ham", "all", 24, 102),
        ("loin", "back", 102, 214),
        ("belly", "belly", 102, 214),
        ("butt", "back", 214, 262),
        ("picnic", "belly", 214, 262),
        ("hocks", "foreleg", 0, 0),
        ("jowl", "all", 262, 298),
    ),
    "beef": (
        ("shank", "all", 0, 20),
        ("round", "all", 20, 84),
        ("sirloin", "back", 84, 114),
        ("flank", "belly", 84, 140),
        ("short_loin", "back", 114, 150),
        ("rib", "back", 150, 196),
        ("plate", "belly", 140, 196),
        ("chuck", "back", 196, 298),
        ("brisket", "belly", 196, 298),
        ("shank", "foreleg", 0, 0),
    ),
}


def shapes(species: str) -> dict[str, QPainterPath]:
    """The region of each primal that is drawn; empty for an animal there is no drawing of."""
    found: dict[str, QPainterPath] = {}
    for primal, across, top, bottom in _BANDS.get(species, ()):
        path = found.setdefault(primal, QPainterPath())
        path.addPolygon(_foreleg() if across == "foreleg" else _band(across, top, bottom))
        path.closeSubpath()
    return found


def _band(across: str, top: float, bottom: float) -> QPolygonF:
    left = _MIDDLE if across == "back" else _BELLY
    right = _MIDDLE if across == "belly" else _BACK
    count = max(2, round((bottom - top) / STEP))
    downs = [top + (bottom - top) * place / count for place in range(count + 1)]
    down = [QPointF(_across(right, y), y) for y in downs]
    up = [QPointF(_across(left, y), y) for y in reversed(downs)]
    return QPolygonF(down + up)


def _foreleg() -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in _FORELEG])


def _across(edge: Points, y: float) -> float:
    """Where an edge is at a height, by a smooth curve through its points."""
    at = next((place for place in range(len(edge) - 2) if y <= edge[place + 1][0]), len(edge) - 2)
    (y0, x0), (y1, x1) = edge[at], edge[at + 1]
    before, after = edge[max(at - 1, 0)], edge[min(at + 2, len(edge) - 1)]
    slope0 = (x1 - before[1]) / (y1 - before[0])
    slope1 = (after[1] - x0) / (after[0] - y0)
    span = y1 - y0
    t = min(max((y - y0) / span, 0.0), 1.0)
    return (
        (2 * t**3 - 3 * t**2 + 1) * x0
        + (t**3 - 2 * t**2 + t) * span * slope0
        + (3 * t**2 - 2 * t**3) * x1
        + (t**3 - t**2) * span * slope1
    )
