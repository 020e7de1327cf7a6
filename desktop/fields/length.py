"""The field for a length: "1¼ in", "3/4", "2 cm"."""

from decimal import Decimal

from desktop.fields.line import LineField
from shared.reading import Unread
from shared.units import LENGTH_UNITS_PER_MM, SIXTY_FOURTH, length_text, read_length


class LengthField(LineField[int]):
    """Takes a length, in 1/203,200 in; a bare number is in inches."""

    def _read(self, text: str) -> int | Unread:
        return read_length(text)

    def _write(self, value: int) -> str:
        # A length that falls between two 64ths stays as typed: shown in inches it would change.
        return self.text().strip() if value % SIXTY_FOURTH and self.text() else length_text(value)

    def set_value(self, value: int | None) -> None:
        if value is not None and value % SIXTY_FOURTH:
            # Our unit is 0.000125 mm, so that millimeters write every length exactly.
            self.set_text(f"{(Decimal(value) / LENGTH_UNITS_PER_MM).normalize():f} mm")
        else:
            super().set_value(value)

    def _complaint(self, unread: Unread) -> str:
        text = unread.text.strip()
        match unread.code:
            case "unknown_unit":
                words = self.tr("Steelyard measures in in, mm and cm; it can't read “{text}”.")
            case "mixed_units":
                words = self.tr("Write “{text}” in one unit.")
            case "negative":
                words = self.tr("A length can't be below nothing.")
            case "not_exact":
                words = self.tr("“{text}” falls between what a saw can be set to.")
            case "too_large":
                words = self.tr("“{text}” is longer than any carcass.")
            case _:
                words = self.tr(
                    "Steelyard reads lengths like 1¼ in, 3/4 in, 2 cm; it can't read “{text}”."
                )
        return words.format(text=text)
