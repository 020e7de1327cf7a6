"""What an order is billed for beside the cutting: storage, delivery, miles, and cents taken off."""

from collections.abc import Callable
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, MoneyField, TextField
from desktop.fields.dates import date_text
from shared.billing.extras import Extras, SaidExtras, Storing, first_day_that_costs
from shared.billing.lot import Asked, Credit
from shared.billing.rates import RateCard

if TYPE_CHECKING:
    from printing.words import Words


class ExtrasDialog(FormDialog):
    """Begun from what was said before; `keep` gets it, and says why it can't be kept.

    `card` says what can be charged at all, `told` which days of storage aren't billed yet.
    """

    def __init__(
        self,
        card: RateCard,
        said: SaidExtras,
        told: Storing | None,
        keep: Callable[[Extras], str],
        words: "Words",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self._card, self._said, self._told, self._keep = card, said, told, keep
        self._language = words.language
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
        self._begin(said.extras)

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
            self._lead(),
            self.tr("&Put on the bill"),
            self.tr("&Leave it"),
        )
        self.days.set_label(self.tr("&Days of storage"))
        self.days.hint(str(self._told.days) if self._told is not None else "")
        self.miles.set_label(self.tr("&Miles of delivery"))
        self.off.set_label(self.tr("&Taken off"))
        self.reason.set_label(self.tr("&Reason"))
        for field, label in (
            (self.delivery, self.tr("D&elivery")),
            (self.offal, self.tr("&Offal")),
        ):
            field.set_label(label)
            field.set_choices([(False, self.tr("no")), (True, self.tr("yes"))])

    def _lead(self) -> str:
        said = [self.tr("What the rate card doesn't have can't be chosen; add it under Rates.")]
        if self._said.at is not None and self._said.extras != Extras():
            day = date_text(self._said.at.astimezone().date(), self._language)
            said.append(self.tr("Said by {who}, {day}.").format(who=self._said.by, day=day))
        told = self._told
        if told is None or "storage" not in self._on_card:
            return " ".join(said)
        since = date_text(told.since, self._language)
        if told.bill:
            said.append(
                self.tr("Storage: new days since bill {number}, {since}: {days}.").format(
                    days=told.days, number=told.bill, since=since
                )
            )
        else:
            first = date_text(first_day_that_costs(told, self._card), self._language)
            said.append(
                self.tr("Storage: days since ready, {since}: {days}; charged from {first}.").format(
                    days=told.days, since=since, first=first
                )
            )
        if told.which != "every_day":
            said.append(self.tr("Counted are working days, as set under Shop."))
        return " ".join(said)

    def _too_many(self) -> bool:
        """Days a bill has already would be billed twice."""
        told, days = self._told, self.days.value() or 0
        if told is None or not told.bill or days <= told.days:
            return False
        self.days.complain(
            self.tr("Bill {number} has the days before; new ones: {days}.").format(
                number=told.bill, days=told.days
            )
        )
        return True

    def attempt(self) -> str:
        if self._too_many():
            return ""
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
        return self._keep(Extras(tuple(asked), (Credit(reason, off),) if off else ()))


DAILY = ("per_day", "per_mile")
