"""Money taken or given back for one order: one or several means, who pays, and the change."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, MoneyField, TextField
from desktop.look.space import TOGETHER, row
from desktop.paid_day import OpenDays, PaidDay
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from shared.billing.payment import Tender
from shared.money import money_text
from shared.shop.money import PaymentKind, PaymentMeans

if TYPE_CHECKING:
    from shared.shop.money import Balance

MOST_CHANGE_CENTS = 10_000
"""More change than the largest banknote is asked about: the amount may be a slip of the key."""
MOST_MEANS = 4


@dataclass(frozen=True, slots=True)
class Given:
    """What the dialog asks to keep; `payer_id` None is the owner himself, `day` None today."""

    kind: PaymentKind
    tenders: tuple[Tender, ...]
    payer_id: int | None = None
    day: date | None = None

    @property
    def cents(self) -> int:
        """All that was put on the counter."""
        return sum(one.cents for one in self.tenders)


class MoneyDialog(FormDialog):
    """`keep` keeps what is given and says "" or why it can't be; `payers` are ids and names."""

    def __init__(
        self,
        kind: PaymentKind,
        balance: "Balance",
        payers: Sequence[tuple[int | None, str]],
        keep: Callable[[Given], str],
        days: OpenDays,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self._balance, self._payers, self._keep = balance, payers, keep
        self._asked = ""
        self._means: list[tuple[MoneyField, ChoiceField[PaymentMeans], TextField]] = []
        self.kind: ChoiceField[PaymentKind] = ChoiceField(self, required=True)
        self.payer: ChoiceField[int | None] = ChoiceField(self, required=True)
        self._add_means()
        self.amount, self.means, self.note = self._means[0]
        self.day = PaidDay(days, self)
        self._add_whose(alone=len(payers) < 2)
        self.another = button(self)
        self.another.setAutoDefault(False)
        self.sum = Words("body", parent=self).wrapped()
        beside = QWidget(self)
        across = row(beside, gap=TOGETHER)
        across.addWidget(self.another)
        across.addStretch(1)
        self.add_below(beside)
        self.add_below(self.sum)
        self.another.clicked.connect(self.add_means)
        QShortcut(QKeySequence("Ctrl+N"), self).activated.connect(self.add_means)
        self.retranslate()
        self.kind.set_value(kind)
        self.kind.changed.connect(self._tell)
        self.day.changed.connect(self._tell)
        self.payer.set_value(payers[0][0])
        due = self._due()
        self.amount.set_value(due if due > 0 else None)
        self._tell()

    def _add_whose(self, *, alone: bool) -> None:
        """What it is, who pays where that isn't plain, and the day it came."""
        self.grid.add(self.kind)
        self.payer.setVisible(not alone)
        if not alone:
            self.grid.add(self.payer)
        self.grid.add(self.day, span=2 if alone else 1)

    def _add_means(self) -> None:
        first = not self._means
        parts = (
            MoneyField(self, required=first),
            ChoiceField[PaymentMeans](self, required=True),
            TextField(self),
        )
        self._means.append(parts)
        for field in parts:
            self.grid.add(field)
            field.changed.connect(self._tell)
        self._name_means(parts)
        parts[1].set_value("cash" if first else "check")

    def add_means(self) -> None:
        """Room for money of another kind: part by card, the rest in cash."""
        if len(self._means) >= MOST_MEANS or not self.another.isEnabled():
            return
        self._add_means()
        left = self._due() - self._cents()
        if left > 0:
            self._means[-1][0].set_value(left)
        self._means[-1][0].focus()
        self._tell()

    def _due(self) -> int:
        """What is to be paid, or given back, for the kind chosen."""
        balance = self._balance
        match self.kind.value():
            case "deposit":
                return max(balance.deposit_asked - balance.deposits, 0)
            case "refund":
                return max(-balance.due, 0)
            case _:
                return max(balance.due, 0)

    def _cents(self) -> int:
        return sum(amount.value() or 0 for amount, _means, _note in self._means)

    def _change(self) -> int:
        """What goes back in cash."""
        cash = sum(a.value() or 0 for a, means, _n in self._means if means.value() == "cash")
        over = self._cents() - self._due()
        return min(max(over, 0), cash) if self.kind.value() == "payment" else 0

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Money"),
            self.tr("Cash above what is due comes back as change."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        for parts in self._means:
            self._name_means(parts)
        self.payer.set_label(self.tr("&Paid by"))
        self.payer.set_choices(list(self._payers))
        self.day.retranslate()
        self.another.setText(self.tr("An&other means (Ctrl+N)"))
        self.kind.set_label(self.tr("&What it is"))
        self.kind.set_choices(
            [
                ("payment", self.tr("payment")),
                ("deposit", self.tr("deposit")),
                ("refund", self.tr("given back")),
                ("write_off", self.tr("written off")),
            ]
        )
        self._tell()

    def _name_means(self, parts: tuple[MoneyField, ChoiceField[PaymentMeans], TextField]) -> None:
        parts[0].set_label(self.tr("&Amount"))
        parts[1].set_label(self.tr("&Means"))
        parts[2].set_label(self.tr("&Note, check number or reason"))
        parts[1].set_choices(
            [
                ("cash", self.tr("cash")),
                ("check", self.tr("check")),
                ("card", self.tr("card")),
                ("transfer", self.tr("transfer")),
                ("other", self.tr("other")),
            ]
        )

    def _tell(self) -> None:
        self._asked = ""
        several = self.kind.value() in ("payment", "deposit")
        self.another.setEnabled(several and len(self._means) < MOST_MEANS)
        due, cents, change = self._due(), self._cents(), self._change()
        said = {
            "refund": self.tr("{due} is owed to the customer."),
            "deposit": self.tr("{due} of the deposit asked for is still to come."),
        }.get(self.kind.value() or "", self.tr("{due} is due."))
        said = said.format(due=money_text(due))
        if change:
            said += " " + self.tr("Change: {change}.").format(change=money_text(change))
        elif self.kind.value() == "payment" and 0 < cents < due:
            said += " " + self.tr("{left} stays open.").format(left=money_text(due - cents))
        self.sum.setText(said)

    def attempt(self) -> str:
        kind = self.kind.value()
        if kind is None:
            return self.tr("Say the amount and how it was paid.")
        doubt = self._doubt()
        if doubt and doubt != self._asked:
            self._asked = doubt
            return doubt + " " + self.tr("Keep it again if that is meant.")
        return self._keep(Given(kind, self._tenders(), self.payer.value(), self.day.said()))

    def _tenders(self) -> tuple[Tender, ...]:
        kept = self._means if self.kind.value() in ("payment", "deposit") else self._means[:1]
        return tuple(
            Tender(means.value() or "cash", cents, note.value() or "")
            for amount, means, note in kept
            if (cents := amount.value()) is not None
        )

    def _doubt(self) -> str:
        """What is asked about before it is kept; "" for nothing."""
        change, cents, due = self._change(), self._cents(), self._due()
        if change > MOST_CHANGE_CENTS:
            return self.tr("{given} is more than the bill: {change} goes back as change.").format(
                given=money_text(cents), change=money_text(change)
            )
        if self.kind.value() == "deposit" and due and cents > due:
            return self.tr("{given} is more than the deposit asked for, {due}.").format(
                given=money_text(cents), due=money_text(due)
            )
        cash = any(one.means == "cash" for one in self._tenders())
        return self.day.doubt(cash=cash and self.kind.value() != "write_off")
