"""What each owner has of lines that one owner leads: packages by turn, pounds with them."""

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction

from shared.carcass.carcass import Share
from shared.cutting.divided import packages_dealt, parts_of
from shared.cutting.forecast import Forecast, LineForecast, Range
from shared.cutting.order import Question

_APART = 1_000_000  # above every line number of a lot


def dealt(forecast: Forecast, shares: Iterable[Share]) -> Forecast:
    """The forecast with the lines of a leader divided, one for each owner, by line.

    Worked number: 7 packages, 14 lb, of two halves of a side are 4 packages, 8 lb, and 3, 6 lb. A
    line without packages is divided by what each holds of the animals.
    """
    owners = tuple(shares)
    leaders = {one.leader for one in owners if one.leader is not None}
    found: list[LineForecast] = []
    for line in forecast.lines:
        if line.share in leaders:
            found += _divided(line, owners)
        else:
            found.append(line)
    return Forecast(tuple(found))


def as_own(question: Question, forecast: Forecast) -> tuple[Question, Forecast]:
    """A question and a `dealt` forecast where a led share has the leader's lines as its own.

    For what a bill would be; the lines of led shares have numbers that no order has.
    """
    led = {one.number: one.leader for one in question.shares if one.leader is not None}
    if not led:
        return question, forecast
    more = [
        replace(line, share=share, line=line.line + share * _APART)
        for share, leader in led.items()
        for line in question.choices
        if line.share == leader
    ]
    lines = tuple(
        replace(one, line=one.line + one.share * _APART) if one.share in led else one
        for one in forecast.lines
    )
    return replace(question, choices=(*question.choices, *more)), Forecast(lines)


def _divided(line: LineForecast, shares: tuple[Share, ...]) -> list[LineForecast]:
    low, mid, high = (
        packages_dealt(count, line.share, shares)
        for count in (line.packages.low, line.packages.mid, line.packages.high)
    )
    parts = parts_of(line.share, shares)
    if line.packages.mid:
        parts = {number: Fraction(count, line.packages.mid) for number, count in mid.items()}
    found: list[LineForecast] = []
    before = Fraction(0)
    for number, part in parts.items():
        upto = before + part
        found.append(
            replace(
                line,
                share=number,
                pieces=_between(line.pieces, before, upto),
                taken_ng=_between(line.taken_ng, before, upto),
                into_finish_ng=_between(line.into_finish_ng, before, upto),
                by_table_ng=_between(line.by_table_ng, before, upto),
                finished=Range(
                    _between(line.finished.low, before, upto),
                    _between(line.finished.mid, before, upto),
                    _between(line.finished.high, before, upto),
                ),
                packages=Range(low[number], mid[number], high[number]),
            )
        )
        before = upto
    return found


def _between(whole: int, before: Fraction, upto: Fraction) -> int:
    """The part of a whole between two fractions of it; the parts add up to the whole."""
    return int(whole * upto) - int(whole * before)
