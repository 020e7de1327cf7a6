"""A chart's bars on paper, told apart in black and white: a grey, some with a hatch or a cross."""

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from printing.page import Paper
from printing.typefaces import width, wrap
from shared.shop.charts import Chart, ticks

HIGH = 170.0
SMALL = 8.0
GREYS = (0.3, 1.0, 0.6, 0.85, 0.1, 0.7, 0.92, 0.45)
HATCH = 4.0
CROSSED = 3
WIDEST_BAR = 30.0


@dataclass(frozen=True, slots=True)
class _Plot:
    """Where the bars stand, in the frame's coordinates."""

    left: float
    top: float
    wide: float
    high: float

    @property
    def foot(self) -> float:
        return self.top + self.high


def draw_chart(paper: Paper, chart: Chart, say: Callable[[Fraction], str]) -> None:
    """The chart from the cursor down, moving it; its legend above, its labels below."""
    paper.need(HIGH + 60)
    _legend(paper, chart)
    every = ticks(chart.most)
    left = max(width(say(one), "regular", SMALL) for one in every) + 8
    plot = _Plot(left, paper.y + 6, paper.room - left, HIGH)
    for one in every:
        y = plot.foot - plot.high * float(one / every[-1])
        paper.line(plot.left - 3, y, paper.room, y, 0.6 if not one else 0.2)
        paper.text(plot.left - 6, y + 2.5, say(one), SMALL, align="right")
    _bars(paper, chart, plot, every[-1])
    _labels(paper, chart, plot)
    paper.y = plot.foot + 30


def _legend(paper: Paper, chart: Chart) -> None:
    if chart.note:
        paper.text(0, paper.y + SMALL, chart.note, SMALL)
        paper.skip(SMALL + 6)
    x = 0.0
    for kind, one in zip(chart.kinds, chart.series, strict=True):
        if not one.name:
            continue
        _bar(paper, x, paper.y, 9, 9, kind)
        paper.text(x + 13, paper.y + 8, one.name, SMALL)
        x += 13 + width(one.name, "regular", SMALL) + 14
    paper.skip(14)


def _bars(paper: Paper, chart: Chart, plot: _Plot, top: Fraction) -> None:
    room = plot.wide / len(chart.labels)
    beside = 1 if chart.stacked else len(chart.series)
    wide = min(room * 0.8 / beside, WIDEST_BAR)
    for at in range(len(chart.labels)):
        x = plot.left + room * at + (room - wide * beside) / 2
        foot = plot.foot
        for kind, one in zip(chart.kinds, chart.series, strict=True):
            high = plot.high * float((one.values[at] or Fraction(0)) / top)
            if high > 0:
                _bar(paper, x, foot - high, wide, high, kind)
            if chart.stacked:
                foot -= high
            else:
                x += wide


def _bar(paper: Paper, x: float, y: float, wide: float, high: float, kind: int) -> None:
    """A bar whose top left corner is at x, y."""
    canvas = paper.canvas()
    left, top = paper.corner(x, y)
    canvas.saveState()
    canvas.setLineWidth(0.4)
    canvas.setFillGray(GREYS[kind % len(GREYS)])
    canvas.rect(left, top - high, wide, high, stroke=1, fill=1)
    if kind % 2:
        path = canvas.beginPath()
        path.rect(left, top - high, wide, high)  # pyright: ignore[reportUnknownMemberType]
        canvas.clipPath(path, stroke=0, fill=0)  # pyright: ignore[reportUnknownMemberType]
        start = -high
        while start < wide:
            canvas.line(left + start, top - high, left + start + high, top)
            if kind % 4 == CROSSED:
                canvas.line(left + start, top, left + start + high, top - high)
            start += HATCH
    canvas.restoreState()


def _labels(paper: Paper, chart: Chart, plot: _Plot) -> None:
    room = plot.wide / len(chart.labels)
    widest = max(width(one, "regular", SMALL) for one in chart.labels)
    most = max(room, plot.wide / 7)
    each = max(1, int(-(-(min(widest, most) + 6) // room)))
    for at in range(0, len(chart.labels), each):
        middle = plot.left + room * (at + 0.5)
        for number, line in enumerate(wrap(chart.labels[at], "regular", SMALL, most - 6)[:2]):
            half = width(line, "regular", SMALL) / 2
            x = min(max(middle, half), paper.room - half)
            paper.text(x, plot.foot + 11 + number * 10, line, SMALL, align="centre")
