"""What stood before these books: an opening balance, and money a customer pays for what he owed."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.counter.payment_dialog import means_offered
from desktop.fields import ChoiceField, FormDialog, MoneyField, TextField
from desktop.office.money_words import complaint
from desktop.paid_day import PaidDay, open_days
from shared.billing.accounts import Account
from shared.money import money_text
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.money import PaymentMeans

OWES = "receivable"
_ACCOUNTS: dict[str, Account] = {
    OWES: "receivable",
    "cash": "money:cash",
    "bank": "bank",
    "tax": "tax",
}


class OpeningDialog(FormDialog):
    """Keeps one balance from before; a customer's is on his account, and is paid there."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.what: ChoiceField[str] = ChoiceField(self, required=True)
        self.amount = MoneyField(self, required=True)
        self.who = CustomerField(self, required=True)
        self.day = PaidDay(open_days(bench), self)
        self.note = TextField(self)
        self.grid.add(self.what)
        self.grid.add(self.amount)
        self.grid.add(self.who, span=2)
        self.grid.add(self.day)
        self.grid.add(self.note)
        offer_customers(bench, (self.who,))
        self.what.changed.connect(self._fit)
        self.retranslate()
        self.what.set_value(OWES)
        self._fit()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Opening balance"),
            self.tr("What stood in the old books when these began."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.what.set_label(self.tr("&What stood"))
        self.what.set_choices(
            [
                (OWES, self.tr("a customer owed the shop")),
                ("cash", self.tr("cash in the drawer")),
                ("bank", self.tr("money in the bank")),
                ("tax", self.tr("tax still to be paid")),
            ]
        )
        self.amount.set_label(self.tr("&Amount"))
        self.who.set_label(self.tr("&Customer"))
        self.day.retranslate()
        self.note.set_label(self.tr("&Note"))

    def _fit(self) -> None:
        whose = self.what.value() == OWES
        self.who.setVisible(whose)
        self.who.setEnabled(whose)
        self.grid.close_up()

    def attempt(self) -> str:
        what, cents = self.what.value(), self.amount.value()
        if what is None or not cents:
            self.amount.complain(self.tr("Say an amount above nothing."))
            return ""
        bench, whose = self.bench, what == OWES
        if whose:
            with bench.store.read() as work:
                if not self.who.known(work, bench.messages):
                    return ""
        with bench.store.work(bench.person, bench.station) as work:
            customer = self.who.settle(work, {}) if whose else None
            if whose and customer is None:
                return ""
            done = work.ledger.open_with(
                _ACCOUNTS[what],
                cents,
                day=self.day.said(),
                customer_id=customer,
                note=self.note.value() or "",
            )
            if isinstance(done, Refused):
                return complaint(done)
            work.commit()
        return ""


class OnAccountDialog(FormDialog):
    """Keeps money for what a customer owed before these books, never more than that."""

    def __init__(
        self, bench: "Bench", customer_id: int, due: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent, columns=2)
        self.bench, self._customer, self._due = bench, customer_id, due
        self.amount = MoneyField(self, required=True)
        self.means: ChoiceField[PaymentMeans] = ChoiceField(self, required=True)
        self.day = PaidDay(open_days(bench), self)
        self.note = TextField(self)
        for field in (self.amount, self.means, self.day, self.note):
            self.grid.add(field)
        self.retranslate()
        self.amount.set_value(due)
        self.means.set_value("cash")

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Money for what was owed before"),
            self.tr("{due} is owed from before these books. Any part may be paid.").format(
                due=money_text(self._due)
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.amount.set_label(self.tr("&Amount"))
        self.means.set_label(self.tr("&Means"))
        self.means.set_choices(means_offered())
        self.day.retranslate()
        self.note.set_label(self.tr("&Note or check number"))

    def attempt(self) -> str:
        cents, means = self.amount.value(), self.means.value()
        if cents is None or means is None:
            return ""
        bench = self.bench
        with bench.store.work(bench.person, bench.station) as work:
            done = work.ledger.receive(
                self._customer, means, cents, self.note.value() or "", day=self.day.said()
            )
            if not isinstance(done, Refused):
                work.commit()
                return ""
        if done.code == "more_than_due":
            due = money_text(int(done.data["due"]))
            self.amount.complain(self.tr("Only {due} is owed from before.").format(due=due))
            return ""
        return complaint(done)
