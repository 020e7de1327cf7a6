"""Package labels on a roll or on sheets, for the printer's own resolution.

On a roll each label is a page of its own, and raw inspected goods have a second one with the
safe-handling block. A label that can't carry everything it must say is refused. Long names
shrink to a stated least size, then wrap. The inspection legend is the plant's own artwork and is
never drawn here: the plant's image is placed, or room is left for the one on the stock.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from printing.barcode import Bars, bars, dots_that_fit, module_points
from printing.letterhead import day_text
from printing.safe_handling import safe_handling
from printing.stock_canvas import EDGE, MARK_HEIGHT, Roll, fitted
from printing.typefaces import Face, fit, width, wrap
from printing.words import Words
from printing.words.place_words import capital
from shared.marking.label import PackageLabel
from shared.marking.plant_marks import LEGEND_POINTS
from shared.marking.problems import MarkingProblem
from shared.units import weight_text

PRODUCT = ((22.0, 16.0, 1), (16.0, 13.0, 2), (13.0, 11.0, 3), (11.0, 9.0, 2))  # size, least, lines
OWNER = ((15.0, 11.0, 1), (11.0, 10.0, 2), (10.0, 9.0, 3), (9.0, 8.0, 2))
FINE = (7.5, 6.5)  # ingredients and allergens
WEIGHT = 26.0
FACTS, READY = 36.0, 11.0  # heights in points
BAR_HEIGHT = 22.0
PLANT_ROOM = 128.0
LEGEND_ROOM = LEGEND_POINTS + 4.0
MATRIX_ROOM = 60.0
SPARE = 1.0  # of the three points that stay white above the barcode
LOW, LOW_MATRIX_ROOM = 160.0, 26.0  # stock of 2 in and less
LEAST_GS1_MODULE = 9.8  # thousandths of an inch; GS1-128 is at least 0.25 mm (from memory)


class LabelRefused(Exception):  # noqa: N818 - it says what happened, as the shop would
    """A label that can't be printed: `package_number` says which, `problems` why."""

    def __init__(self, package_number: int, problems: tuple[MarkingProblem, ...]) -> None:
        """Why one label is refused."""
        self.package_number = package_number
        self.problems = problems
        super().__init__(f"package {package_number}: {', '.join(one.code for one in problems)}")


_Set = tuple[str, list[str], float, Face]  # what it is, its lines, size and face


@dataclass(frozen=True, slots=True)
class _Code:
    """The barcode of a label and what stands below it."""

    symbol: Bars
    dots: int
    told: str
    wide: bool


def labels(
    labels: Sequence[PackageLabel], *, words: Words, dpi: int = 203, artwork: bytes = b""
) -> bytes:
    """Labels as one PDF, in the order given. Raises LabelRefused, and then prints none.

    `dpi` is the printer's resolution; each module of a barcode is whole dots of it. `artwork` is
    the plant's approved legend as PNG, placed on inspected labels; b"" where the stock has it.
    """
    if not labels:
        raise ValueError("no labels to print")
    roll = Roll(labels[0].stock, "Package labels", artwork)
    for label in labels:
        if label.stock.code != labels[0].stock.code:
            raise ValueError("labels of one roll are of one stock")
        if label.stock.small:
            _draw_small(roll, label, words, dpi)
        else:
            _draw(roll, label, words, dpi)
        roll.end_label()
        if label.safe_handling:
            if not safe_handling(roll, words):
                raise _refused(label, "safe_handling")
            roll.end_label()
    return roll.pdf()


def _draw_small(roll: Roll, label: PackageLabel, words: Words, dpi: int) -> None:
    """Mark, name, owner and net weight at the left, a Data Matrix at the right."""
    content = ("gs1_datamatrix", label.gs1.bracketed) if label.gs1 else ("datamatrix", label.serial)
    symbol = bars(*content)
    y = EDGE
    if label.not_for_sale:
        mark = words.say("label.not_for_sale")
        roll.once("mark", lambda: roll.mark(mark))
        y += MARK_HEIGHT
    below = roll.high - EDGE - y
    dots = dots_that_fit(symbol, min(below, MATRIX_ROOM), dpi, most=6)
    if not dots:
        raise _refused(label, "serial")
    side = symbol.wide * module_points(dots, dpi)
    roll.bars(roll.wide - EDGE - side, roll.high - EDGE, symbol, dots, dpi, 0)
    room = roll.room - side - 8
    product = capital(label.product or words.name(label.species, label.product_key))
    owner = words.say("label.owner", owner=label.owner)
    texts: tuple[tuple[str, str, Face, tuple[float, float, int]], ...] = (
        ("product", product, "bold", (12.0, 7.0, 2)),
        ("owner", owner, "semibold", (10.0, 6.5, 1)),
        ("net_weight", weight_text(label.net), "bold", (14.0, 11.0, 1)),
    )
    for code, text, face, step in texts:
        found = _named(code, text, face, (step,), room)
        if found is None:
            raise _refused(label, code)
        y = roll.lines(y, found[1], found[2], face) + 1
    if y > roll.high - EDGE + 1:
        raise _refused(label, "product")


def _draw(roll: Roll, label: PackageLabel, words: Words, dpi: int) -> None:
    code = _code(label, roll, dpi)
    if code is None:
        raise _refused(label, "serial")
    y = EDGE
    if label.not_for_sale:
        mark = words.say("label.not_for_sale")
        roll.once("mark", lambda: roll.mark(mark))
        y = EDGE + MARK_HEIGHT
    bottom = _foot(roll, label, code, dpi)
    told: set[str] = {"plant", "serial", "safe_handling"}
    if label.not_for_sale:
        told.add("not_for_sale")
    names, fine, beside = _layout(roll, label, words, bottom - y)
    for code_word, lines, size, face in names:
        y = roll.lines(y, lines, size, face) + 2
        told.add(code_word)
    clear = _legend(roll, label, words, told) if label.legend else y
    y = _facts(roll, label, words, y if beside else max(y, clear), told, beside=beside)
    y = max(y, clear)
    for code_word, lines, size, face in fine:
        y = roll.lines(y, lines, size, face)
        told.add(code_word)
    missing = [one for one in label.required if one not in told]
    if missing:
        raise _refused(label, *missing)


def _refused(label: PackageLabel, *what: str) -> LabelRefused:
    problems = tuple(MarkingProblem("doesnt_fit", {"what": one}) for one in what)
    return LabelRefused(label.package_number, problems)


def _layout(
    roll: Roll, label: PackageLabel, words: Words, high: float
) -> tuple[list[_Set], list[_Set], bool]:
    """Names as large as leaves room for the rest; refused where even the least doesn't.

    True: numbers, day and net weight stand beside the legend, as low stock needs it.
    """
    product = capital(label.product or words.name(label.species, label.product_key))
    owner = words.say("label.owner", owner=label.owner) if label.owner else ""
    room = roll.room - (LEGEND_ROOM if label.legend else 0)
    for step in range(len(PRODUCT)):
        fine_size = FINE[0] if step == 0 else FINE[1]
        names = [_named("product", product, "bold", PRODUCT[step:], room)]
        names += [_named("owner", owner, "semibold", OWNER[step:], room)] if owner else []
        fine: list[_Set] = [
            (code, wrap(text, face, fine_size, roll.room), fine_size, face)
            for code, text, face in _fine(label, words)
        ]
        known = [one for one in names if one is not None]
        if len(known) < len(names):
            break
        named, small = (sum(len(it[1]) * it[2] * 1.15 for it in one) for one in (known, fine))
        named += 2 * len(known)
        facts = FACTS + (READY if label.ready else 0)
        below = max(named + small, LEGEND_ROOM + 8) if label.legend else named + small
        if below + facts <= high + SPARE:
            return known, fine, False
        if label.legend and max(named + facts, LEGEND_ROOM + 6) + small <= high + SPARE:
            return known, fine, True
    raise _refused(label, "product")


def _named(
    code: str, text: str, face: Face, steps: Sequence[tuple[float, float, int]], room: float
) -> _Set | None:
    for size, least, most_lines in steps:
        found = fitted(text, face, (size, least), room, most_lines)
        if found is not None:
            return code, found[0], found[1], face
    return None


def _legend(roll: Roll, label: PackageLabel, words: Words, told: set[str]) -> float:
    """The plant's own legend at the top right, or room for it; its number below."""
    roll.legend(roll.wide - EDGE - LEGEND_POINTS, EDGE, LEGEND_POINTS)
    est = words.say("label.establishment", number=label.establishment)
    roll.text_to(roll.wide - EDGE, EDGE + LEGEND_ROOM + 2, est, 8)
    told |= {"legend", "establishment"}
    return EDGE + LEGEND_ROOM + 4


def _facts(
    roll: Roll,
    label: PackageLabel,
    words: Words,
    y: float,
    told: set[str],
    *,
    beside: bool = False,
) -> float:
    """Numbers, day and how to keep it on the left, the net weight on the right.

    `beside` the legend all is narrower; the net weight keeps more than the 1/8 in that a display
    panel of over 5 to 25 square inches asks for (9 CFR 317.2(h), from memory).
    """
    right = roll.wide - EDGE - (LEGEND_ROOM + 6 if beside else 0)
    left, heavy = (right - EDGE - 76, 70.0) if beside else (150.0, 120.0)
    if not beside:
        roll.rule(y + 1)
    numbers = words.say("label.order", order=label.order_number, package=label.package_number)
    packed = words.say("label.packed_on", day=day_text(label.packed_on, words))
    roll.text(EDGE, y + 11, numbers, fit(numbers, "regular", 9.5, left, 7))
    roll.text(EDGE, y + 22, packed, fit(packed, "regular", 9.5, left, 7))
    keep = words.say(f"label.{label.keep}")
    roll.text(EDGE, y + 34, keep, fit(keep, "bold", 10.5, left, 8), "bold")
    told |= {"order", "packed_on", "keep", "net_weight"}
    roll.text_to(right, y + 10, words.say("label.net"), 8, "semibold")
    weight = weight_text(label.net)
    size = fit(weight, "bold", WEIGHT, heavy, 14)
    roll.text_to(right, y + 33, weight, size, "bold")
    if label.ready:
        roll.text(EDGE, y + FACTS + 8, words.say(f"label.{label.ready}"), 10.5, "bold")
        told.add("ready")
    return y + FACTS + (READY if label.ready else 0)


def _fine(label: PackageLabel, words: Words) -> Iterator[tuple[str, str, Face]]:
    """Ingredients and allergens."""
    if label.ingredients:
        told = words.say("label.ingredients", what=", ".join(label.ingredients))
        yield "ingredients", told, "regular"
    if label.allergens:
        yield "allergens", words.say("label.allergens", what=", ".join(label.allergens)), "bold"


def _foot(roll: Roll, label: PackageLabel, code: _Code, dpi: int) -> float:
    """Plant and barcode at the foot; returns where they begin."""
    base = roll.high - EDGE - 9
    symbol_wide = code.symbol.wide * module_points(code.dots, dpi)
    left = (roll.wide - symbol_wide) / 2 if code.wide else roll.wide - EDGE - 8 - symbol_wide
    high = BAR_HEIGHT if code.symbol.flat else symbol_wide
    roll.bars(left, base, code.symbol, code.dots, dpi, BAR_HEIGHT)
    size = fit(code.told, "regular", 7.5, roll.room if code.wide else roll.wide - left - EDGE, 5.5)
    middle = left + symbol_wide / 2 - width(code.told, "regular", size) / 2
    roll.text(max(EDGE, middle), base + 9, code.told, size)
    top = base - high - 3
    room = roll.room if code.wide else left - EDGE - 10
    address = label.plant_address.splitlines()
    if code.wide:
        address = [", ".join(address)]
    lines = [
        line for text in (label.plant_name, *address) for line in wrap(text, "regular", 7, room)
    ]
    end = top if code.wide else roll.high - EDGE
    begin = end - len(lines) * 7 * 1.15
    if len(lines) > 8:
        raise _refused(label, "plant")
    roll.lines(begin, lines, 7, "regular")
    return min(top, begin)


def _code(label: PackageLabel, roll: Roll, dpi: int) -> _Code | None:
    """GS1-128 across the label where the shop has a GTIN, else a Data Matrix; else the serial."""
    if label.gs1 is None:
        symbol = bars("code128", label.serial)
        dots = dots_that_fit(symbol, roll.room - PLANT_ROOM, dpi)
        return _Code(symbol, dots, label.serial, wide=False) if dots else None
    symbol = bars("gs1_128", label.gs1.bracketed)
    dots = dots_that_fit(symbol, roll.wide, dpi)
    if roll.high > LOW and dots * 1000 >= LEAST_GS1_MODULE * dpi:
        return _Code(symbol, dots, label.gs1.human, wide=True)
    symbol = bars("gs1_datamatrix", label.gs1.bracketed)
    room = MATRIX_ROOM if roll.high > LOW else LOW_MATRIX_ROOM
    dots = dots_that_fit(symbol, room, dpi, most=6)
    return _Code(symbol, dots, label.serial, wide=False) if dots else None
