"""The field for a percentage: a tax, shrink, or interest for a year."""

from fractions import Fraction

from desktop.fields.line import LineField
from shared.billing.journal import percent_text
from shared.reading import Unread, read_number


class PercentField(LineField[Fraction]):
    """Takes a percentage; its value is the part of one: "6.25 %" is 1/16."""

    def _read(self, text: str) -> Fraction | Unread:
        found = read_number(text.strip().removesuffix("%").strip())
        if isinstance(found, Unread):
            return Unread(found.code, text)
        if found.value >= 100:
            return Unread("too_large", text)
        return found.value / 100

    def _write(self, value: Fraction) -> str:
        return f"{percent_text(value)} %"

    def _complaint(self, unread: Unread) -> str:
        text = unread.text.strip()
        match unread.code:
            case "negative":
                words = self.tr("A percentage can't be below nothing.")
            case "too_large":
                words = self.tr("A percentage here is below 100 %.")
            case _:
                words = self.tr("Steelyard reads percentages like 6.25 %; it can't read “{text}”.")
        return words.format(text=text)
