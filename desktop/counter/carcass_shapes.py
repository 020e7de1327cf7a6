"""Our drawings of a side as it hangs in the cooler, head down, one region for each primal.

One outline for each species; lengths are in a drawing 100 wide and 300 high, the back at the right.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from math import ceil

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath, QPolygonF

WIDTH = 100.0
HEIGHT = 300.0
STEP = 3.0
SEAM = 0.5  # bands of one primal lie this far over each other, so that no line parts them

Points = Sequence[tuple[float, float]]
# Primal, which part across ("all", "back", "belly", "foreleg"), and from where to where down.
Band = tuple[str, str, float, float]


@dataclass(frozen=True, slots=True)
class Outline:
    """One species: (y, x) down its edges, which bend smoothly between the points, and its bands.

    `middle` parts back from belly.
    """

    back: Points
    belly: Points
    middle: Points
    foreleg: Points
    bands: tuple[Band, ...]


_PORK = Outline(
    back=(
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
    ),
    belly=(
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
    ),
    middle=((0, 51), (80, 56), (110, 55), (190, 52), (240, 54), (298, 56)),
    foreleg=((20, 232), (34, 246), (14, 292), (4, 288)),
    bands=(
        ("hocks", "all", 0, 24),
        ("ham", "all", 24, 102),
        ("loin", "back", 102, 214),
        ("belly", "belly", 102, 214),
        ("butt", "back", 214, 262),
        ("picnic", "belly", 214, 262),
        ("jowl", "all", 262, 298),
        ("hocks", "foreleg", 0, 0),
    ),
)
_CATTLE: tuple[Band, ...] = (
    ("shank", "all", 0, 26),
    ("round", "all", 26, 92),
    ("sirloin", "back", 92, 118),
    ("flank", "belly", 92, 146),
    ("short_loin", "back", 118, 152),
    ("rib", "back", 152, 198),
    ("plate", "belly", 146, 202),
    ("chuck", "back", 198, 298),
    ("brisket", "belly", 202, 298),
    ("shank", "foreleg", 0, 0),
)
_BEEF = Outline(
    back=(
        (0, 57),
        (26, 60),
        (52, 80),
        (78, 86),
        (104, 79),
        (150, 77),
        (200, 83),
        (240, 84),
        (270, 72),
        (298, 64),
    ),
    belly=(
        (0, 48),
        (26, 44),
        (52, 28),
        (78, 24),
        (104, 25),
        (150, 14),
        (196, 8),
        (232, 20),
        (266, 40),
        (298, 52),
    ),
    middle=((0, 52), (80, 55), (110, 55), (190, 50), (240, 54), (298, 60)),
    foreleg=((17, 224), (33, 244), (15, 296), (7, 293)),
    bands=_CATTLE,
)
# The hump stands over the ribs and the shoulder; the hind end is lighter.
_BISON = replace(
    _BEEF,
    back=(
        (0, 57),
        (26, 60),
        (52, 74),
        (78, 78),
        (104, 74),
        (150, 78),
        (190, 94),
        (222, 99),
        (262, 82),
        (298, 66),
    ),
    middle=((0, 52), (80, 52), (110, 52), (190, 52), (240, 58), (298, 61)),
)
_VEAL = Outline(
    back=(
        (0, 56),
        (28, 59),
        (52, 74),
        (80, 80),
        (108, 74),
        (150, 72),
        (200, 76),
        (238, 79),
        (268, 70),
        (298, 66),
    ),
    belly=(
        (0, 48),
        (28, 44),
        (52, 32),
        (80, 30),
        (108, 32),
        (150, 22),
        (196, 18),
        (232, 26),
        (266, 42),
        (298, 49),
    ),
    middle=((0, 52), (80, 54), (110, 54), (190, 52), (240, 54), (298, 59)),
    foreleg=((22, 226), (35, 244), (16, 297), (9, 294)),
    bands=(
        ("shank", "all", 0, 28),
        ("round", "all", 28, 92),
        ("sirloin", "back", 92, 118),
        ("loin", "back", 118, 156),
        ("rib", "back", 156, 202),
        ("breast", "belly", 92, 230),
        ("shoulder", "back", 202, 230),
        ("shoulder", "all", 230, 298),
        ("shank", "foreleg", 0, 0),
    ),
)
_LAMB = Outline(
    back=(
        (0, 55),
        (34, 60),
        (62, 82),
        (88, 86),
        (116, 76),
        (156, 75),
        (204, 82),
        (240, 82),
        (268, 68),
        (298, 68),
    ),
    belly=(
        (0, 48),
        (34, 42),
        (62, 26),
        (88, 24),
        (116, 28),
        (156, 20),
        (200, 18),
        (236, 28),
        (268, 42),
        (298, 47),
    ),
    middle=((0, 51), (80, 55), (116, 54), (190, 52), (240, 54), (298, 57)),
    foreleg=((24, 230), (36, 248), (20, 297), (13, 294)),
    bands=(
        ("shank", "all", 0, 34),
        ("leg", "all", 34, 110),
        ("loin", "back", 110, 152),
        ("flank", "belly", 110, 152),
        ("rack", "back", 152, 206),
        ("breast", "belly", 152, 232),
        ("shoulder", "back", 206, 232),
        ("shoulder", "all", 232, 298),
        ("shank", "foreleg", 0, 0),
    ),
)
# As the lamb, but leaner: a longer shank, a narrower leg and neck.
_GOAT = replace(
    _LAMB,
    back=(
        (0, 54),
        (38, 58),
        (66, 74),
        (90, 77),
        (116, 70),
        (156, 70),
        (204, 76),
        (240, 77),
        (268, 66),
        (298, 66),
    ),
    belly=(
        (0, 49),
        (38, 44),
        (66, 34),
        (90, 32),
        (116, 34),
        (156, 26),
        (200, 23),
        (236, 32),
        (268, 44),
        (298, 47),
    ),
)
# Long in the leg and the neck, deep in the ribs, narrow behind them.
_DEER = Outline(
    back=(
        (0, 53),
        (44, 57),
        (70, 76),
        (94, 79),
        (120, 70),
        (160, 71),
        (204, 77),
        (230, 78),
        (254, 68),
        (298, 66),
    ),
    belly=(
        (0, 49),
        (44, 45),
        (70, 34),
        (94, 33),
        (120, 38),
        (160, 27),
        (204, 20),
        (228, 28),
        (254, 44),
        (298, 47),
    ),
    middle=((0, 51), (80, 55), (120, 56), (190, 54), (240, 55), (298, 57)),
    foreleg=((24, 226), (36, 242), (22, 298), (16, 296)),
    bands=(
        ("shank", "all", 0, 44),
        ("leg", "all", 44, 116),
        ("back", "back", 116, 212),
        ("ribs", "belly", 116, 222),
        ("shoulder", "back", 212, 222),
        ("shoulder", "all", 222, 298),
        ("shank", "foreleg", 0, 0),
    ),
)
_OUTLINES: Mapping[str, Outline] = {
    "pork": _PORK,
    "beef": _BEEF,
    "bison": _BISON,
    "veal": _VEAL,
    "lamb": _LAMB,
    "goat": _GOAT,
    "deer": _DEER,
}


@lru_cache(maxsize=32)
def shapes(species: str) -> Mapping[str, QPainterPath]:
    """The region of each primal that is drawn; empty for an animal there is no drawing of."""
    outline = _OUTLINES.get(species)
    found: dict[str, QPainterPath] = {}
    if outline is None:
        return found
    for primal, across, top, bottom in outline.bands:
        path = QPainterPath()
        if across == "foreleg":
            path.addPolygon(QPolygonF([QPointF(x, y) for x, y in outline.foreleg]))
        else:
            seam = SEAM if primal in found else 0.0
            path.addPolygon(_band(outline, across, top - seam, bottom))
        path.closeSubpath()
        if across == "foreleg":  # it begins behind the trunk
            for trunk in list(found.values()):
                path = path.subtracted(trunk)
        found[primal] = found[primal].united(path) if primal in found else path
    return found


def _band(outline: Outline, across: str, top: float, bottom: float) -> QPolygonF:
    left = outline.middle if across == "back" else outline.belly
    right = outline.middle if across == "belly" else outline.back
    inside = range(int(top / STEP) + 1, ceil(bottom / STEP))
    downs = [top, *(place * STEP for place in inside), bottom]  # the same points for neighbours
    down = [QPointF(_across(right, y), y) for y in downs]
    up = [QPointF(_across(left, y), y) for y in reversed(downs)]
    return QPolygonF(down + up)


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
