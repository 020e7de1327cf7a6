"""What the invented plant has booked: five weeks of lots around today, in days from today."""

from dataclasses import dataclass
from typing import Literal

from shared.carcass.carcass import Age, Regime

Style = Literal["whole", "halves", "fore and hind"]
Until = Literal["half taken", "open", "settled", "released", "wrapping", "ready", "owing", "closed"]
UNTIL: tuple[Until, ...] = (
    "half taken",
    "open",
    "settled",
    "released",
    "wrapping",
    "ready",
    "owing",
    "closed",
)


@dataclass(frozen=True, slots=True)
class Wish:
    """One owner (by his place in the list of names) and what he wants changed of the usual."""

    owner: int
    changes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Booking:
    """One lot: killed on `kill`, cut on `cut`; `until` is as far as its orders go."""

    species: str
    kill: int
    cut: int
    live: int
    producer: int
    wishes: tuple[Wish, ...]
    until: Until = "closed"
    style: Style = "whole"
    regime: Regime = "custom"
    age: Age = "under_30"
    liver: bool = True
    deposit: int = 0


def _lot(
    species: str,
    kill: int,
    cut: int,
    live: int,
    producer: int,
    *wishes: Wish,
    until: Until = "closed",
    regime: Regime = "custom",
    age: Age = "under_30",
    liver: bool = True,
    deposit: int = 0,
) -> Booking:
    style: Style = (
        "whole" if len(wishes) == 1 else "halves" if len(wishes) == 2 else "fore and hind"
    )
    return Booking(
        species, kill, cut, live, producer, wishes, until, style, regime, age, liver, deposit
    )


W = Wish
FORE, HIND = ("fore",), ("hind", "no tender")
DONE = (
    _lot(
        "beef",
        -34,
        -20,
        1240,
        1,
        W(6, ("strips", "grind round")),
        W(7, ("no tender", "grind round")),
        deposit=10_000,
    ),
    _lot("pork", -28, -25, 284, 2, W(12), W(13, ("boneless",))),
    _lot("pork", -28, -25, 266, 2, W(14, ("sausage",))),
    _lot("lamb", -27, -22, 128, 30, W(11)),
    _lot("pork", -25, -22, 271, 0, W(0, ("ham steaks",)), deposit=5_000),
    _lot("pork", -24, -21, 290, 2, W(15, ("sausage",)), regime="inspected"),
    _lot("goat", -24, -20, 84, 25, W(9), W(10)),
    _lot("beef", -27, -14, 1185, 5, W(17, ("ribeyes", "grind round"))),
    _lot("goat", -21, -18, 82, 3, W(18)),
    _lot("lamb", -20, -15, 136, 30, W(19, ("roasts",)), W(20)),
    _lot("pork", -18, -15, 295, 2, W(22, ("boneless",))),
    _lot("pork", -17, -14, 262, 35, W(35, ("sausage", "liver"))),
    _lot("goat", -18, -12, 88, 25, W(23), W(24), deposit=2_500),
    _lot("pork", -14, -11, 277, 2, W(26), W(27), liver=False, regime="inspected"),
    _lot("lamb", -13, -9, 118, 30, W(28)),
    _lot("goat", -12, -8, 78, 25, W(29)),
)
OWING = (
    _lot("pork", -14, -11, 281, 3, W(3, ("ham steaks",)), until="owing"),
    _lot("pork", -11, -8, 269, 2, W(31), W(32, ("boneless",)), until="owing"),
    _lot("goat", -13, -9, 86, 25, W(33), until="owing", deposit=4_000),
)
READY = (
    _lot("pork", -7, -4, 274, 2, W(34), until="ready"),
    _lot("pork", -6, -3, 288, 35, W(36, ("sausage",)), W(37), until="ready"),
    _lot("lamb", -8, -3, 122, 30, W(38, ("roasts",)), until="ready"),
    _lot(
        "beef", -16, -3, 1265, 1, W(39, ("older", "grind round")), until="ready", age="30_and_over"
    ),
)
WRAPPING = (
    _lot("pork", -4, -1, 272, 2, W(4), until="wrapping"),
    _lot("lamb", -6, -1, 127, 30, W(5), until="wrapping"),
)
BLOCK = (_lot("pork", -3, 0, 279, 0, W(0, ("boneless", "liver")), W(40), until="released"),)
COOLER = (
    _lot("beef", -13, 1, 1275, 5, W(41, ("strips",)), W(8, ("no tender",)), until="released"),
    _lot("pork", -3, 1, 268, 2, W(12, ("ham steaks",)), until="released"),
    _lot("pork", -2, 1, 292, 2, W(13), W(14, ("boneless",)), until="settled"),
    _lot("beef", -10, 3, 1210, 1, W(16), until="settled", regime="inspected", liver=False),
    _lot("beef", -9, 4, 1305, 5, W(18, FORE), W(19, HIND), W(20, ("no tender",)), until="settled"),
    _lot("lamb", -4, 1, 131, 30, W(21, ("kabobs",)), until="released"),
    _lot("goat", -3, 2, 81, 25, W(9), until="settled"),
    _lot("pork", -2, 2, 276, 3, W(22, ("too much ham",)), W(23), until="open"),
    _lot("beef", -6, 7, 1190, 1, W(24, ("ribeyes",)), until="open", deposit=10_000),
    _lot("beef", -3, 10, 1340, 5, W(26), W(28, ("no tender",)), until="half taken"),
    _lot("pork", -1, 3, 283, 35, W(29), until="open", regime="inspected"),
)
COMING = (
    _lot("pork", 0, 3, 270, 2, W(31), W(32), until="open"),
    _lot("lamb", 0, 5, 125, 30, W(33), until="half taken"),
    _lot("beef", 1, 14, 1255, 1, W(34, ("strips",)), until="open", deposit=10_000),
    _lot("pork", 1, 4, 280, 2, W(36, ("sausage",)), W(37), until="half taken"),
    _lot("pork", 2, 5, 275, 35, W(38), until="half taken"),
    _lot("goat", 2, 7, 80, 25, W(10), until="half taken"),
    _lot("beef", 3, 16, 1290, 5, W(39, FORE), W(40, HIND), W(41, ("no tender",)), until="open"),
    _lot("pork", 4, 7, 265, 0, W(0), until="half taken", regime="inspected"),
    _lot("beef", 6, 20, 1230, 1, W(17), until="half taken", regime="inspected"),
)
BOOKINGS = (*DONE, *OWING, *READY, *WRAPPING, *BLOCK, *COOLER, *COMING)
