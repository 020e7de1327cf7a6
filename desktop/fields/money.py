"""The fields for money: an amount in cents, and a rate that may have fractions of a cent."""

from fractions import Fraction

from PySide6.QtWidgets import QWidget

from desktop.fields.line import LineField
from shared.money import money_text, rate_text, read_money, read_rate
from shared.reading import Unread


class MoneyField(LineField[int]):
    """Takes an amount; its value is in cents."""

    def __init__(self, parent: QWidget | None = None, *, required: bool = False) -> None:
        super().__init__(parent, required=required)

    def _read(self, text: str) -> int | Unread:
        return read_money(text)

    def _write(self, value: int) -> str:
        return money_text(value)

    def _complaint(self, unread: Unread) -> str:
        text = unread.text.strip()
        match unread.code:
            case "negative":
                words = self.tr("An amount can't be below nothing.")
            case "sub_cent":
                words = self.tr("Money goes to the cent; “{text}” goes further.")
            case "too_large":
                words = self.tr("“{text}” is more than any bill here.")
            case _:
                words = self.tr(
                    "Steelyard reads amounts like $1,250.00 or 12.50; it can't read “{text}”."
                )
        return words.format(text=text)


class RateField(LineField[Fraction]):
    """Takes a rate for one unit; its value is in cents, with fractions of a cent."""

    def _read(self, text: str) -> Fraction | Unread:
        return read_rate(text)

    def _write(self, value: Fraction) -> str:
        return rate_text(value)

    def _complaint(self, unread: Unread) -> str:
        text = unread.text.strip()
        match unread.code:
            case "negative":
                words = self.tr("A rate can't be below nothing.")
            case "not_exact":
                words = self.tr("A rate has at most six decimals; “{text}” has more.")
            case "too_large":
                words = self.tr("“{text}” is more than any rate here.")
            case _:
                words = self.tr(
                    "Steelyard reads rates like $0.715 or 71.5¢; it can't read “{text}”."
                )
        return words.format(text=text)
