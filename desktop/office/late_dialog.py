"""Interest on late payment, as a rate card has it."""

from collections.abc import Callable
from fractions import Fraction

from PySide6.QtWidgets import QWidget

from desktop.fields import CountField, FormDialog, MoneyField
from desktop.office.money_words import complaint
from desktop.office.percent_field import PercentField
from shared.billing.rates import LateTerms, check_terms


class LateDialog(FormDialog):
    """An empty rate is no interest; `keep` gets the terms, or None."""

    def __init__(
        self,
        start: LateTerms | None,
        keep: Callable[[LateTerms | None], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self._keep = keep
        self.rate = PercentField(self)
        self.days = CountField(self, least=0, most=365)
        self.least = MoneyField(self)
        for field in (self.rate, self.days, self.least):
            self.grid.add(field)
        self.retranslate()
        terms = start or LateTerms()
        self.rate.set_value(terms.yearly_rate or None)
        self.days.set_value(terms.free_days)
        self.least.set_value(terms.least_cents or None)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Late payment"),
            self.tr("Local law bounds such interest: ask somebody who knows before charging it."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.rate.set_label(self.tr("&Interest a year, %"))
        self.days.set_label(self.tr("&Days without interest"))
        self.least.set_label(self.tr("&Not billed below"))

    def attempt(self) -> str:
        rate = self.rate.value()
        terms = LateTerms(self.days.value() or 0, rate or Fraction(0), self.least.value() or 0)
        problems = check_terms(terms)
        if problems:
            self.rate.complain(complaint(problems[0]))
            return ""
        self._keep(terms if rate else None)
        return ""
