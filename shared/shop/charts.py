"""A chart as values: bars by label, and the ticks of its axis. The screen and the paper draw it."""

from dataclasses import dataclass
from fractions import Fraction

MOST_LABELS = 40


@dataclass(frozen=True, slots=True)
class Series:
    """One kind of bar: its name and a value for each label; None has no bar.

    `kind` is its colour and pattern, where it has the same in every chart; None is its place among
    the chart's series.
    """

    name: str
    values: tuple[Fraction | None, ...]
    kind: int | None = None


@dataclass(frozen=True, slots=True)
class Chart:
    """Bars over labels: one on top of the other where `stacked`, else side by side.

    `note` is what must be said beside it, such as what was left out.
    """

    title: str
    labels: tuple[str, ...]
    series: tuple[Series, ...]
    stacked: bool = False
    note: str = ""

    @property
    def kinds(self) -> tuple[int, ...]:
        """The colour and pattern of each series, by number."""
        return tuple(at if one.kind is None else one.kind for at, one in enumerate(self.series))

    @property
    def empty(self) -> bool:
        """Whether there is no bar to draw."""
        return self.most == 0

    @property
    def most(self) -> Fraction:
        """The top of the highest bar or stack."""
        return max((self.top(at) for at in range(len(self.labels))), default=Fraction(0))

    def top(self, at: int) -> Fraction:
        """The height at a label: the stack's, or the highest of the bars side by side."""
        values = [one.values[at] or Fraction(0) for one in self.series]
        return sum(values, Fraction(0)) if self.stacked else max(values, default=Fraction(0))


def ticks(most: Fraction, at_most: int = 6) -> tuple[Fraction, ...]:
    """Ticks from nothing to at least `most`, at steps of 1, 2 or 5 times a power of ten.

    Up to 1,830 are 0, 500, 1,000, 1,500, 2,000; up to 3 are 0, 1, 2, 3.
    """
    if most <= 0:
        return (Fraction(0), Fraction(1))
    power = Fraction(1)
    while power * 10 * at_most < most:
        power *= 10
    while power * at_most > most * 10:
        power /= 10
    while True:
        for step in (1, 2, 5):
            count = -(-most // (power * step))
            if count < at_most:
                return tuple(power * step * at for at in range(int(count) + 1))
        power *= 10
