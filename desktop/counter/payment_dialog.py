"""Taking a deposit or a payment for an order."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, MoneyField, TextField
from desktop.paid_day import PaidDay, open_days
from shared.billing.payment import Taken, Tender, take
from shared.money import money_text
from shared.shop.money import Payment

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.money import Balance, PaymentMeans
    from shared.shop.orders import Order


class PaymentDialog(FormDialog):
    """What was given and how; `payments` are those that were stored, `change` what goes back."""

    def __init__(self, bench: "Bench", order: "Order", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self._bench = bench
        self._order = order
        self.payments: list[Payment] = []
        self.change = 0
        with bench.store.read() as work:
            self.balance: Balance = work.payments.balance(order.id)
        self.amount = MoneyField(required=True)
        self.means: ChoiceField[PaymentMeans] = ChoiceField(required=True)
        self.note = TextField()
        self.day = PaidDay(open_days(bench))
        self.grid.add(self.amount)
        self.grid.add(self.means)
        self.grid.add(self.note)
        self.grid.add(self.day)
        self.retranslate()
        self.means.set_value("cash")
        self._doubted = ""
        asked = self._asked()
        self.amount.set_value(asked or None)

    @property
    def is_deposit(self) -> bool:
        """Before a bill, money taken is a deposit."""
        return self.balance.billed == 0

    def retranslate(self) -> None:
        owner = self._order.owner or self.tr("to be named")
        heading = self.tr("Take a deposit") if self.is_deposit else self.tr("Take a payment")
        lead = self.tr("Order {number}, {owner}. {asked}").format(
            number=self._order.number, owner=owner, asked=self._said()
        )
        self.set_words(heading, lead, self.tr("&Take it"), self.tr("&Leave it"))
        self.amount.set_label(self.tr("&Amount"))
        self.means.set_label(self.tr("&Given as"))
        self.means.set_choices(means_offered())
        self.day.retranslate()
        self.note.set_label(self.tr("&Note, e.g. the number of the check"))

    def attempt(self) -> str:
        cents, means = self.amount.value(), self.means.value()
        if cents is None or means is None:
            return ""
        tender = Tender(means, cents, self.note.value() or "")
        found = take(self.balance, (tender,), deposit=self.is_deposit)
        if not isinstance(found, Taken):
            self.amount.complain(self._refused(found.code))
            return ""
        doubt = self.day.doubt(cash=means == "cash")
        if doubt and doubt != self._doubted:
            self._doubted = doubt
            return doubt + " " + self.tr("Take it again if that is meant.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            for one in found.tenders:
                made = work.payments.take(
                    self._order.id,
                    found.kind,
                    one.means,
                    one.cents,
                    one.note,
                    day=self.day.said(),
                )
                if not isinstance(made, Payment):
                    return self._refused(made.code)
                self.payments.append(made)
            work.commit()
        self.change = found.change_cents
        return ""

    def _asked(self) -> int:
        if self.is_deposit:
            return max(self.balance.deposit_asked - self.balance.deposits, 0)
        return max(self.balance.due, 0)

    def _said(self) -> str:
        if self.is_deposit:
            return self.tr("Deposit asked {asked}, had {had}.").format(
                asked=money_text(self.balance.deposit_asked), had=money_text(self.balance.deposits)
            )
        return self.tr("Due {due}.").format(due=money_text(self.balance.due))

    def _refused(self, code: str) -> str:
        if code in ("overpaid", "nothing_due", "more_than_due", "more_than_owed"):
            return self.tr("Only {due} is due; change is given out of cash only.").format(
                due=money_text(max(self.balance.due, 0))
            )
        if code in ("period_closed", "not_yet"):
            return self.tr("The books are closed for that day.")
        return self.tr("The amount has to be above nothing.")


def means_offered() -> "list[tuple[PaymentMeans, str]]":
    """How money is given, cash first."""
    return [
        ("cash", QCoreApplication.translate("PaymentDialog", "cash")),
        ("check", QCoreApplication.translate("PaymentDialog", "check")),
        ("card", QCoreApplication.translate("PaymentDialog", "card")),
        ("transfer", QCoreApplication.translate("PaymentDialog", "transfer")),
        ("other", QCoreApplication.translate("PaymentDialog", "other")),
    ]
