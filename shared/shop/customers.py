"""The people the shop works for, and how they are found again by name and phone."""

import unicodedata
from dataclasses import dataclass
from datetime import datetime

FILLED = ("phone", "email", "address")  # what a joined entry gives to one that has none

# Letters that carry no separate accent, so that decomposing them leaves them as they are.
PLAIN_LETTERS = str.maketrans(
    {"ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "æ": "ae", "œ": "oe", "ı": "i"}
)


@dataclass(frozen=True, slots=True)
class Customer:
    """A customer or producer. `address` may have several lines, `group` picks the rate card.

    `joined_into` is the customer this one turned out to be; its rows stay its own.
    """

    id: int = 0
    name: str = ""
    phone: str = ""
    email: str = ""
    address: str = ""
    notes: str = ""
    group: str = ""
    language: str = "en"
    joined_into: int | None = None
    version: int = 0


@dataclass(frozen=True, slots=True)
class HeldBy:
    """How much is written for an entry: orders, those of them still open, and what else."""

    orders: int = 0
    open_orders: int = 0
    bookings: int = 0
    bills: int = 0
    payments: int = 0
    waiting: int = 0

    def nothing(self) -> bool:
        """Whether nothing at all is written for it."""
        return not any((self.orders, self.bookings, self.bills, self.payments, self.waiting))


@dataclass(frozen=True, slots=True)
class JoinedEntry:
    """An entry that was joined into another: both, when, and by whom."""

    id: int
    name: str
    phone: str
    into_id: int
    into_name: str
    into_phone: str
    at: datetime | None = None
    by: str = ""


def lacked(duplicate: Customer, stays: Customer) -> tuple[str, ...]:
    """What the duplicate has and the entry that stays lacks: "phone", "email", "address"."""
    return tuple(
        one for one in FILLED if getattr(duplicate, one).strip() and not getattr(stays, one).strip()
    )


def name_key(text: str) -> str:
    """The text as it is searched: small letters, no accents, single spaces.

    `name_key("  Jørgen  MÜLLER ")` is `"jorgen muller"`.
    """
    small = unicodedata.normalize("NFKD", text.casefold()).translate(PLAIN_LETTERS)
    return " ".join("".join(one for one in small if not unicodedata.combining(one)).split())


def phone_digits(text: str) -> str:
    """Only the digits of a phone number: `"(555) 010-0123"` gives `"5550100123"`."""
    return "".join(one for one in text if one.isascii() and one.isdigit())


def town(address: str) -> str:
    """The last line of an address, which lists show; `""` when there is none."""
    lines = [one.strip() for one in address.splitlines() if one.strip()]
    return lines[-1] if lines else ""
