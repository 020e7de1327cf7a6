"""The safe-handling label that stands beside the first one on raw inspected goods.

9 CFR 317.2(l): heading larger than the text, one colour on a contrasting ground, a border, type of
at least 1/16 in, and pictures. The wording is the rule's own, from memory: hold it against the rule
before it is printed. It is never printed on custom-exempt goods: its first sentence is not true of
them, nor on what is ready to eat.
"""

from printing.stock_canvas import EDGE, Roll
from printing.typefaces import cap_height, wrap
from printing.words import Words

LEAST_CAPITALS = 4.5  # 1/16 in, in points
SIZES = (9.5, 8.5, 7.5, 6.8)
PICTURE = 20.0
STEPS = ("keep", "apart", "cook", "hot")
# Lines of our own drawings, in a square of 20 points: cold, washing, a hot pot, a covered dish.
STROKES = {
    "keep": ((10, 2, 10, 18), (3, 6, 17, 14), (3, 14, 17, 6)),
    "apart": ((2, 12, 18, 12), (4, 12, 4, 18), (16, 12, 16, 18), (10, 2, 10, 9), (7, 9, 13, 9)),
    "cook": ((3, 12, 17, 12), (4, 12, 5, 18), (16, 12, 15, 18), (5, 18, 15, 18), (10, 3, 10, 9)),
    "hot": ((2, 16, 18, 16), (4, 16, 6, 9), (6, 9, 14, 9), (14, 9, 16, 16), (10, 5, 10, 9)),
}


def safe_handling(roll: Roll, words: Words) -> bool:
    """Draw the block on a label of its own; whether it fits this stock at a readable size."""
    for size in SIZES:
        if cap_height("regular") * size < LEAST_CAPITALS:
            return False
        told = [words.say(f"labels.safe_{one}") for one in STEPS]
        rows = [wrap(text, "regular", size, _room(roll)) for text in told]
        lead = wrap(words.say("labels.safe_lead"), "regular", size, roll.room - 12)
        high = size * 1.5 * 1.3 + len(lead) * size * 1.2 + 6
        high += sum(max(PICTURE, len(row) * size * 1.2) + 3 for row in rows)
        if high + 2 * EDGE + 8 <= roll.high:
            _draw(roll, size, lead, rows, words)
            return True
    return False


def _room(roll: Roll) -> float:
    return roll.room - 12 - PICTURE - 6


def _draw(roll: Roll, size: float, lead: list[str], rows: list[list[str]], words: Words) -> None:
    heading = size * 1.5
    roll.frame(EDGE, EDGE, roll.room, roll.high - 2 * EDGE, 1.4)
    y = EDGE + 6 + heading
    roll.text(EDGE + 6, y, words.say("labels.safe_heading"), heading, "bold")
    y += heading * 0.3
    for line in lead:
        y += size * 1.2
        roll.text(EDGE + 6, y, line, size)
    y += 6
    for name, row in zip(STEPS, rows, strict=True):
        _picture(roll, name, EDGE + 6, y)
        top = y
        for line in row:
            y += size * 1.2
            roll.text(EDGE + 12 + PICTURE, y, line, size)
        y = max(y, top + PICTURE) + 3


def _picture(roll: Roll, name: str, x: float, y: float) -> None:
    """A plain drawing of our own in a square: cold, washing, heat, and a covered dish."""
    roll.frame(x, y, PICTURE, PICTURE, 0.7)
    for start_x, start_y, end_x, end_y in STROKES[name]:
        roll.stroke(x + start_x, y + start_y, x + end_x, y + end_y)
