"""GS1 application identifiers the shop may meet, each with its format.

Sources: GS1 Barcode Syntax Dictionary (commit ff2eb4bf, 27 July 2026); the formats of 37, 392n,
393n, 395n and 421 to 427 are from memory and held against biip's own table in the tests.
"""

from dataclasses import dataclass
from typing import Final, Literal

Kind = Literal["digits", "text"]
Check = Literal["", "check_digit", "date", "date_or_month"]


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of a value: so many digits or characters, and what else must hold.

    "date_or_month" is YYMMDD where day 00 stands for the whole month.
    """

    kind: Kind
    least: int
    most: int
    check: Check = ""


@dataclass(frozen=True, slots=True)
class Identifier:
    """An application identifier. `decimals` are those of the fourth digit; None has none.

    `separated` says that FNC1 must follow unless it is last. `needs` are identifiers of which
    one must stand beside it.
    """

    ai: str
    pieces: tuple[Piece, ...]
    separated: bool
    decimals: int | None = None
    needs: tuple[str, ...] = ()

    @property
    def most(self) -> int:
        """The longest value."""
        return sum(piece.most for piece in self.pieces)


def _digits(count: int, check: Check = "") -> Piece:
    return Piece("digits", count, count, check)


def _up_to(most: int, kind: Kind = "text", least: int = 1) -> Piece:
    return Piece(kind, least, most)


def _plain() -> list[Identifier]:
    month = (_digits(6, "date_or_month"),)
    return [
        Identifier("00", (_digits(18, "check_digit"),), False),
        Identifier("01", (_digits(14, "check_digit"),), False),
        Identifier("02", (_digits(14, "check_digit"),), False, needs=("37",)),
        Identifier("10", (_up_to(20),), True),
        *(Identifier(ai, month, False) for ai in ("11", "13", "15", "16", "17")),
        Identifier("20", (_digits(2),), False),
        Identifier("21", (_up_to(20),), True),
        *(Identifier(ai, (_up_to(30),), True) for ai in ("240", "241")),
        Identifier("251", (_up_to(30),), True, needs=("01",)),
        Identifier("30", (_up_to(8, "digits"),), True),
        Identifier("37", (_up_to(8, "digits"),), True, needs=("02",)),
    ]


def _measures() -> list[Identifier]:
    goods = ("01", "02")
    weights = [
        Identifier(f"{ai}{n}", (_digits(6),), False, n, goods)
        for ai in ("310", "320")
        for n in range(6)
    ]
    amounts = [
        identifier
        for n in range(4)
        for identifier in (
            Identifier(f"392{n}", (_up_to(15, "digits"),), True, n, ("01",)),
            Identifier(f"393{n}", (_digits(3), _up_to(15, "digits")), True, n, ("01",)),
            Identifier(f"395{n}", (_digits(6),), True, n, ("01",)),
        )
    ]
    return weights + amounts


def _places() -> list[Identifier]:
    country = _digits(3)
    several = Piece("digits", 0, 12)
    return [
        *(Identifier(f"41{n}", (_digits(13, "check_digit"),), False) for n in range(8)),
        Identifier("420", (_up_to(20),), True),
        Identifier("421", (country, _up_to(9)), True),
        *(Identifier(ai, (country,), True) for ai in ("422", "424", "426")),
        *(Identifier(ai, (country, several), True) for ai in ("423", "425")),
        Identifier("427", (_up_to(3),), True),
        Identifier("7007", (_digits(6, "date"), Piece("digits", 0, 6, "date")), True),
        *(
            Identifier(f"703{n}", (country, _up_to(27)), True, needs=("01", "02"))
            for n in range(10)
        ),
    ]


IDENTIFIERS: Final[dict[str, Identifier]] = {
    one.ai: one for one in (*_plain(), *_measures(), *_places())
}
