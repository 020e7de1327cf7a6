"""The Office's dialogs about one order: a credit, and the producer's statement."""

from collections.abc import Callable, Sequence
from fractions import Fraction

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, MoneyField, RateField, TextField
from shared.billing.statement import PriceBasis


class CreditDialog(FormDialog):
    """A credit on the last bill. `keep` gets the reason, line ("" all) and amount or None.

    The paper is made on a worker meanwhile; `kept` closes the dialog or says why it was refused.
    """

    def __init__(
        self,
        lines: Sequence[tuple[str, str]],
        keep: Callable[[str, str, int | None], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._keep = keep
        self._lines = list(lines)
        self.line: ChoiceField[str] = ChoiceField(self, required=True)
        self.amount = MoneyField(self)
        self.reason = TextField(self, required=True)
        self.grid.add(self.line, span=2)
        self.grid.add(self.amount)
        self.grid.add(self.reason, span=2)
        self.retranslate()
        self.line.set_value("")

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Credit"),
            self.tr("An issued bill is never changed; a mistake is mended by a credit."),
            self.tr("&Issue credit"),
            self.tr("L&eave it"),
        )
        self.line.set_label(self.tr("&Line"))
        self.line.set_choices([("", self.tr("the whole bill")), *self._lines])
        self.amount.set_label(self.tr("&Amount, if not all of the line"))
        self.reason.set_label(self.tr("&Reason"))

    def attempt(self) -> str:
        key = self.line.value() or ""
        if not key and not self.amount.is_empty():
            self.line.complain(self.tr("Choose the line the amount is of."))
            return ""
        self.main.setEnabled(False)
        self._keep(self.reason.value() or "", key, self.amount.value())
        return self.tr("Making the credit.")

    def kept(self, refused: str) -> None:
        """It is issued, or this is why not."""
        self.main.setEnabled(True)
        if refused:
            self.refuse(refused)
        else:
            self.accept()


class StatementDialog(FormDialog):
    """The producer's price; `show` makes the statement and says "" or why it can't be."""

    def __init__(
        self,
        show: Callable[[PriceBasis, Fraction, int], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._show = show
        self.basis: ChoiceField[PriceBasis] = ChoiceField(self, required=True)
        self.rate = RateField(self, required=True)
        self.deposit = MoneyField(self)
        self.grid.add(self.basis)
        self.grid.add(self.rate)
        self.grid.add(self.deposit)
        self.retranslate()
        self.basis.set_value("per_lb_hot")

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Producer's statement"),
            self.tr("The producer's own paper to the buyer; it never stands on the plant's bill."),
            self.tr("&Show it"),
            self.tr("&Leave it"),
        )
        self.basis.set_label(self.tr("&Price"))
        self.basis.set_choices(
            [
                ("per_lb_hot", self.tr("per lb hot")),
                ("per_lb_chilled", self.tr("per lb chilled")),
                ("per_head", self.tr("per head")),
                ("per_share", self.tr("for the share")),
            ]
        )
        self.rate.set_label(self.tr("&Rate"))
        self.deposit.set_label(self.tr("&Deposit paid to the producer"))

    def attempt(self) -> str:
        basis, rate = self.basis.value(), self.rate.value()
        if basis is None or rate is None:
            return self.tr("Say the price.")
        return self._show(basis, rate, self.deposit.value() or 0)
