"""Labels of boxes, on the stock the packages' labels have; contents run on to further labels.

Each of them carries the box's code: the second is as likely the one that is at hand.
"""

from collections.abc import Sequence

from printing.barcode import bars, dots_that_fit, module_points
from printing.labels import MATRIX_ROOM
from printing.stock_canvas import EDGE, MARK_HEIGHT, Roll
from printing.typefaces import Face, fit, width, wrap
from printing.words import Words
from shared.marking.box_label import BoxLabel, InBox
from shared.units import pounds_text

Text = tuple[str, Face, float, float]  # what, face, size, least size
BAR_HEIGHT = 24.0
ROW, SMALL_ROW = 9.5, 7.0  # size of a line of the contents
SCALES = (1.0, 0.85, 0.7, 0.6, 0.5, 0.42)  # of the head, the largest that fits


def box_label(label: BoxLabel, *, words: Words) -> bytes:
    """A box's label as PDF; where the contents don't fit they run on to more of the same stock."""
    roll = Roll(label.stock, "Box label")
    left = _first(roll, label, words)
    roll.end_label()
    page = 2
    while left:
        y = _mark(roll, label, words)
        told = words.say("boxes.label_runs_on", box=label.box, number=label.order_number, page=page)
        lines, size = _fitting(told, "bold", 11.0, 7.0, _beside_code(roll, label))
        side, foot = _code(roll, label, y)
        beside = side if label.stock.small else 0.0
        y = roll.lines(y, lines, size, "bold")
        left = _rows(roll, left, y + 2, foot, _row_size(label), words, at_least=1, beside=beside)
        roll.end_label()
        page += 1
    return roll.pdf()


def _first(roll: Roll, label: BoxLabel, words: Words) -> Sequence[InBox]:
    """The head, the code and what fits of the contents; what doesn't fit comes back."""
    small = label.stock.small
    y = _mark(roll, label, words)
    side, foot = _code(roll, label, y)
    y = _head(roll, label, words, y, foot, roll.room - (side if small else 0))
    if small:
        return label.rows
    roll.rule(y + 2)
    return _rows(roll, label.rows, y + 4, foot, _row_size(label), words)


def _head(roll: Roll, label: BoxLabel, words: Words, y: float, foot: float, room: float) -> float:
    """Box and order, owner, sums and place, as large as leaves them above the foot."""
    pounds = pounds_text(label.nanograms, 2)
    head: tuple[Text, ...] = (
        (words.say("boxes.label_box", box=label.box, number=label.order_number), "bold", 22, 12),
        (words.say("label.owner", owner=label.owner) if label.owner else "", "semibold", 15, 9),
        (words.say("boxes.label_sum", label.packages, pounds=pounds), "bold", 15, 9),
        (label.place, "semibold", 12, 8),
    )
    lines: list[tuple[tuple[list[str], float], Face]] = []
    for scale in SCALES:
        lines = [
            (_fitting(text, face, size * scale, least * scale, room), face)
            for text, face, size, least in head
            if text
        ]
        if y + sum(len(one) * size * 1.15 for (one, size), _ in lines) <= foot:
            break
    for (one, size), face in lines:
        y = roll.lines(y, one, size, face)
    return y


def _mark(roll: Roll, label: BoxLabel, words: Words) -> float:
    if not label.not_for_sale:
        return EDGE
    mark = words.say("label.not_for_sale")
    roll.once("mark", lambda: roll.mark(mark))
    return EDGE + MARK_HEIGHT


def _beside_code(roll: Roll, label: BoxLabel) -> float:
    """The room of a line: on small stock the code stands at its right."""
    return roll.room - (MATRIX_ROOM + 8 if label.stock.small and label.serial else 0)


def _row_size(label: BoxLabel) -> float:
    return SMALL_ROW if label.stock.small else ROW


def _fitting(
    text: str, face: Face, size: float, least: float, room: float
) -> tuple[list[str], float]:
    """A line shrunk to fit, wrapped where even the least size is too wide."""
    if width(text, face, least) <= room:
        return [text], fit(text, face, size, room, least)
    return wrap(text, face, least, room), least


def _rows(
    roll: Roll,
    rows: Sequence[InBox],
    y: float,
    foot: float,
    size: float,
    words: Words,
    *,
    at_least: int = 0,
    beside: float = 0.0,
) -> Sequence[InBox]:
    """Lines of the contents as far as they fit above the foot; the others come back.

    `beside` is what the code takes at the right.
    """
    for place, one in enumerate(rows):
        pounds = pounds_text(one.nanograms, 2)
        room = roll.room - beside - width(pounds, "semibold", size) - 8
        told = words.say("boxes.label_row", count_of=one.packages, product=one.product)
        lines = wrap(told, "regular", size, room)
        if place >= at_least and y + len(lines) * size * 1.15 > foot:
            return rows[place:]
        roll.text_to(roll.wide - EDGE - beside, y + size, pounds, size, "semibold")
        y = roll.lines(y, lines, size, "regular")
    return ()


def _code(roll: Roll, label: BoxLabel, top: float) -> tuple[float, float]:
    """The serial: flat at the foot, on small stock square at the right. Its width, and the foot."""
    if not label.serial:
        return 0.0, roll.high - EDGE
    symbol = bars("datamatrix" if label.stock.small else "code128", label.serial)
    if label.stock.small:
        room = min(roll.high - EDGE - top, MATRIX_ROOM)
        dots = dots_that_fit(symbol, room, label.dpi, most=6)
        side = symbol.wide * module_points(dots, label.dpi)
        roll.bars(roll.wide - EDGE - side, roll.high - EDGE, symbol, dots, label.dpi, 0)
        return side + 8, roll.high - EDGE
    dots = dots_that_fit(symbol, roll.room - 90, label.dpi, most=3)
    base = roll.high - EDGE
    roll.bars(EDGE + 10, base, symbol, dots, label.dpi, BAR_HEIGHT)
    roll.text_to(roll.wide - EDGE, base - 2, label.serial, 9)
    return symbol.wide * module_points(dots, label.dpi), base - BAR_HEIGHT - 4
