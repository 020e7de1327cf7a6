"""The field for a weight: "3 1/2 lb", "98.5", "1 lb 4 oz", "12.34 kg"."""

from PySide6.QtWidgets import QWidget

from desktop.fields.line import LineField
from shared.reading import Unread
from shared.units import Weight, WeightUnit, read_weight, weight_text


class WeightField(LineField[Weight]):
    """Takes a weight; a bare number is in `unit`, or refused when `unit` is None."""

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        required: bool = False,
        unit: WeightUnit | None = "lb",
    ) -> None:
        super().__init__(parent, required=required)
        self.unit: WeightUnit | None = unit

    def _read(self, text: str) -> Weight | Unread:
        return read_weight(text, self.unit)

    def _write(self, value: Weight) -> str:
        return weight_text(value)

    def _complaint(self, unread: Unread) -> str:
        text = unread.text.strip()
        match unread.code:
            case "no_unit":
                words = self.tr("Say the unit: “{text}” may be lb or kg.")
            case "unknown_unit":
                words = self.tr("Steelyard weighs in lb, oz, kg and g; it can't read “{text}”.")
            case "mixed_units":
                words = self.tr("Write “{text}” in one unit, or in lb and oz.")
            case "negative" | "tare_over_gross":
                words = self.tr("A weight can't be below nothing.")
            case "not_exact":
                words = self.tr("Write “{text}” in decimals, like 0.33 lb.")
            case "too_large":
                words = self.tr("“{text}” is more than any weight here.")
            case _:
                words = self.tr(
                    "Steelyard reads weights like 3 1/2 lb, 98.5 lb, 12.34 kg; "
                    "it can't read “{text}”."
                )
        return words.format(text=text)
