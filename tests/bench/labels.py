"""How long 1,000 labels take as one PDF, beside the bare ReportLab canvas drawing the same ink."""

import argparse
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from io import BytesIO
from typing import Any
from unittest.mock import patch

from reportlab.pdfgen.canvas import Canvas

import printing.stock_canvas as stock_canvas
from printing.labels import labels
from printing.words import Words
from shared.marking.label import LabelFacts, PackageLabel, package_label
from shared.units import Weight

FACTS = LabelFacts(
    regime="custom",
    species="pork",
    product_key="cut.ham_steak",
    owner="Anna Berg",
    order_number=1042,
    net=Weight(235, "lb", -2),
    packed_on=date(2026, 3, 9),
    plant_name="Two Creeks Meats",
    plant_address="118 Mill Road\nCedar Fork, MI 48999",
)
DRAWN = ("setFont", "drawString", "setLineWidth", "line", "rect", "setFillGray", "drawPath")
STATE = ("saveState", "restoreState", "translate", "scale", "showPage", "doForm")
FORMS = ("beginForm", "endForm")
Call = tuple[str, tuple[Any, ...], dict[str, Any]]


def made(count: int) -> list[PackageLabel]:
    """So many labels of one order."""
    found = [package_label(replace(FACTS, package_number=n)) for n in range(1, count + 1)]
    return [one for one in found if isinstance(one, PackageLabel)]


def recorded(many: Sequence[PackageLabel], words: Words) -> list[Call]:
    """Every drawing call the labels make of their canvas."""
    calls: list[Call] = []

    class Heard(Canvas):
        """A canvas that notes what is drawn on it."""

    def hear(name: str) -> Callable[..., object]:
        plain = getattr(Canvas, name)

        def heard(self: Canvas, *given: object, **named: object) -> object:
            calls.append((name, given, named))
            return plain(self, *given, **named)

        return heard

    for name in (*DRAWN, *STATE, *FORMS):
        setattr(Heard, name, hear(name))

    def begin_path(self: Canvas) -> object:
        path: Any = Canvas.beginPath(self)
        rects: list[tuple[Any, ...]] = []
        plain = path.rect

        def rect(*given: object) -> object:
            rects.append(given)
            return plain(*given)

        path.rect = rect
        calls.append(("path", (rects,), {}))
        return path

    setattr(Heard, "beginPath", begin_path)  # noqa: B010
    with patch.object(stock_canvas, "Canvas", Heard):
        labels(many, words=words)
    return calls


def bare(calls: Sequence[Call]) -> bytes:
    """The same calls on a canvas of ReportLab's own."""
    out = BytesIO()
    canvas = Canvas(out, pagesize=(288, 216), invariant=1, pageCompression=1)
    path: Any = None
    for name, given, named in calls:
        if name == "path":
            path = canvas.beginPath()
            for rect in given[0]:
                path.rect(*rect)
        elif name == "drawPath":
            canvas.drawPath(path, **named)
        else:
            getattr(canvas, name)(*given, **named)
    canvas.save()
    return out.getvalue()


def cpu_ms(work: Callable[[], object]) -> float:
    """CPU milliseconds of some work, once."""
    start = time.process_time()
    work()
    return (time.process_time() - start) * 1000


def main(words: Sequence[str]) -> int:
    """Both by turns, the least of so many."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench labels", description=__doc__)
    parser.add_argument("--labels", type=int, default=1000)
    parser.add_argument("--turns", type=int, default=5)
    given = parser.parse_args(words)
    many, said = made(given.labels), Words("en")
    calls = recorded(many, said)
    ours = theirs = float("inf")
    for _turn in range(given.turns):
        ours = min(ours, cpu_ms(lambda: labels(many, words=said)))
        theirs = min(theirs, cpu_ms(lambda: bare(calls)))
    sys.stdout.write(
        f"{given.labels} labels: {ours:.0f} ms; the bare canvas, {len(calls)} calls: "
        f"{theirs:.0f} ms; {ours / theirs:.2f} times (claimed: 1.3)\n"
    )
    return 0
