"""A scale of the shop: its line, how it writes, its division, and what hook and gambrel weigh."""

import json
import re
from dataclasses import dataclass
from typing import Literal

from shared.scales.reading import Pattern, pattern_of, patterns
from shared.units import Weight, WeightUnit

Parity = Literal["N", "E", "O"]
OWN = "own"


@dataclass(frozen=True, slots=True)
class Scale:
    """A scale on a station's serial line.

    `pattern` is the code of one of ours, or "own" with `own_pattern`: the expression of the line.
    `hook` and `gambrel` are taken off what hangs on them. `used` False: no longer in use.
    """

    id: int = 0
    name: str = ""
    port: str = ""
    baud: int = 9600
    bits: int = 8
    parity: Parity = "N"
    stop_bits: int = 1
    pattern: str = "plain"
    own_pattern: str = ""
    unit: WeightUnit = "lb"
    division: Weight | None = None
    hook: Weight | None = None
    gambrel: Weight | None = None
    used: bool = True
    version: int = 0


def pattern_of_scale(scale: Scale) -> Pattern | None:
    """How its line is read; None where the shop's own expression can't be read.

    "comma_header" is ours; own 'W(?P<number>[0-9]+)' reads "W112" as 112 in the scale's unit.
    """
    if scale.pattern != OWN:
        return next((one for one in patterns() if one.code == scale.pattern), None)
    try:
        return pattern_of({"code": OWN, "line": scale.own_pattern})
    except (ValueError, re.error):
        return None


def own_text(expression: str) -> str:
    """The shop's own expression as the store keeps it."""
    return json.dumps({"line": expression}, ensure_ascii=False) if expression else ""


def own_from(text: str) -> str:
    """The expression again."""
    return str(json.loads(text)["line"]) if text else ""
