"""Figures, days and the plant's name as papers and mails write them; nothing here draws."""

from datetime import date, datetime
from fractions import Fraction

from printing.words import Words
from shared.money import rate_text
from shared.shop.details import ShopDetails

NO_BREAK = "\u00a0"
_PARTS = {
    Fraction(1, 2): "½",
    Fraction(1, 4): "¼",
    Fraction(3, 4): "¾",
    Fraction(1, 8): "⅛",
}


def sender(shop: ShopDetails) -> tuple[str, ...]:
    """The plant as its papers name it: name, address, phone, email."""
    lines = [shop.name, *shop.address.splitlines(), shop.phone, shop.email]
    return tuple(line for line in lines if line.strip())


def day_text(day: date, words: Words) -> str:
    """A day in words: "March 9, 2026"."""
    month = words.say(f"bills.month_{day.month}")
    return words.say("bills.day", day=day.day, month=month, year=day.year)


def time_text(moment: datetime) -> str:
    """The hour and minute by the shop's own clock: "14:05"."""
    return moment.astimezone().strftime("%H:%M")


def number_text(exact: Fraction, least: int = 0, most: int = 4) -> str:
    """A quantity with the decimals it has, at most four, rounded half up: 187.5, 203.125, 1,250."""
    places = least
    while places < most and (exact * 10**places).denominator != 1:
        places += 1
    scaled = (2 * abs(exact) * 10**places + 1) // 2
    whole, rest = divmod(int(scaled), 10**places)
    sign = "\u2212" if exact < 0 and scaled else ""
    return f"{sign}{whole:,}" + (f".{rest:0{places}d}" if places else "")


def head_text(exact: Fraction) -> str:
    """Heads as people say them: ½, ¼, 1½; a part without a sign of its own as 1/3."""
    whole, part = divmod(exact, 1)
    if not part:
        return str(whole)
    written = _PARTS.get(part, str(part) if not whole else f"{NO_BREAK}{part}")
    return f"{whole or ''}{written}"


def pounds(exact: Fraction) -> str:
    """Pounds with the decimals they have: "187.5 lb"."""
    return f"{number_text(exact)}{NO_BREAK}lb"


def about_pounds(exact: Fraction) -> str:
    """Pounds nobody has weighed yet: whole ones, below ten in tenths. 29.5698 lb is "30 lb"."""
    places = 1 if abs(exact) < 10 else 0
    scaled = (2 * abs(exact) * 10**places + 1) // 2
    rounded = Fraction(int(scaled), 10**places)
    return f"{number_text(-rounded if exact < 0 else rounded)}{NO_BREAK}lb"


def rate_shown(rate: Fraction) -> str:
    """A rate in dollars; one whose decimals never end, to the hundredth of a cent."""
    try:
        return rate_text(rate)
    except ValueError:
        return "$" + number_text(rate / 100, 2)
