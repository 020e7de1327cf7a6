"""What an order is billed for beside the cutting: storage, delivery, miles, and cents taken off."""

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, MoneyField, TextField
from shared.billing.lot import Asked, Credit
from shared.billing.rates import RateCard


@dataclass(frozen=True, slots=True)
class Extras:
    """What is asked for and credited on the next bill of an order."""

    asked: tuple[Asked, ...] = ()
    credits: tuple[Credit, ...] = ()


class ExtrasDialog(FormDialog):
    """Begun from what was said before; `keep` gets it. `card` says what can be charged at all."""

    def __init__(
        self,
        card: RateCard,
        start: Extras,
        keep: Callable[[Extras], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self._keep = keep
        self._on_card = {one.code for one in card.charges if one.asked or one.basis in DAILY}
        self.days = CountField(self, least=0, most=365)
        self.delivery: ChoiceField[bool] = ChoiceField(self, required=True)
        self.miles = CountField(self, least=0, most=2000)
        self.offal: ChoiceField[bool] = ChoiceField(self, required=True)
        self.off = MoneyField(self)
        self.reason = TextField(self)
        for field in (self.days, self.delivery, self.miles, self.offal, self.off):
            self.grid.add(field)
        self.grid.add(self.reason)
        self.retranslate()
        self._begin(start)

    def _begin(self, start: Extras) -> None:
        much = {one.code: one.quantity for one in start.asked}
        self.days.set_value(int(much["storage"]) if "storage" in much else None)
        self.miles.set_value(int(much["delivery_miles"]) if "delivery_miles" in much else None)
        self.delivery.set_value("delivery" in much)
        self.offal.set_value("offal" in much)
        for code, field in (
            ("storage", self.days),
            ("delivery", self.delivery),
            ("delivery_miles", self.miles),
            ("offal", self.offal),
        ):
            field.setEnabled(code in self._on_card)
        if start.credits:
            self.off.set_value(start.credits[0].cents)
            self.reason.set_value(start.credits[0].reason)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Also on this bill"),
            self.tr("What the rate card doesn't have can't be chosen; add it under Rates."),
            self.tr("&Put it on the bill"),
            self.tr("&Leave it"),
        )
        self.days.set_label(self.tr("&Days of storage"))
        self.miles.set_label(self.tr("&Miles of delivery"))
        self.off.set_label(self.tr("&Taken off"))
        self.reason.set_label(self.tr("&Reason"))
        for field, label in (
            (self.delivery, self.tr("D&elivery")),
            (self.offal, self.tr("&Offal")),
        ):
            field.set_label(label)
            field.set_choices([(False, self.tr("no")), (True, self.tr("yes"))])

    def attempt(self) -> str:
        off, reason = self.off.value(), (self.reason.value() or "").strip()
        if off and not reason:
            self.reason.complain(self.tr("Say why it is taken off."))
            return ""
        asked = [
            Asked(code, Fraction(much))
            for code, much in (
                ("storage", self.days.value() or 0),
                ("delivery", int(bool(self.delivery.value()))),
                ("delivery_miles", self.miles.value() or 0),
                ("offal", int(bool(self.offal.value()))),
            )
            if much and code in self._on_card
        ]
        self._keep(Extras(tuple(asked), (Credit(reason, off),) if off else ()))
        return ""


DAILY = ("per_day", "per_mile")
