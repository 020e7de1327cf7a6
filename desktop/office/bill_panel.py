"""The side of the bills page: what is billed, held, paid and due, and what can be done."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QWidget

from desktop.look.space import TOGETHER, row
from desktop.office.billing import Billing
from desktop.office.late_billing import bears_interest
from desktop.panels.buttons import button
from desktop.panels.heading import Words, line
from desktop.panels.side import SidePanel
from shared.money import money_text

SUMS = ("total", "billed", "credited", "deposits", "paid", "due")


class BillPanel(SidePanel):
    """Shows one order's money. The page connects the buttons."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, width=368)
        self.heading = self.add_heading().wrapped()  # with a long name it made the panel wider
        self.state = Words("body", "quiet", self).wrapped()
        self.add(self.state)
        self._names = {key: Words("body", "quiet", self) for key in SUMS}
        self.sums = {key: Words("body", parent=self) for key in SUMS}
        self.sums["due"] = Words("title", parent=self)
        grid = QGridLayout()
        grid.setVerticalSpacing(2)
        for at, key in enumerate(SUMS):
            place = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            grid.addWidget(self._names[key], at, 0)
            grid.addWidget(self.sums[key], at, 1, place)
        self.add(grid)
        self.add(line(self))
        self.said = Words("body", "complaint", self).wrapped()
        self.said.hide()
        self.add(self.said)
        self.notes = Words("small", "quiet", self).wrapped()
        self.add(self.notes)
        self._add_buttons()

    def _add_buttons(self) -> None:
        self.issue = button(self, main=True)
        self.show_bill = button(self)
        self.money = button(self)
        self.receipt = button(self)
        self.credit = button(self)
        self.statement = button(self)
        self.quote = button(self)
        self.ticket = button(self)
        self.extras = button(self)
        self.account = button(self)
        self.move_deposit = button(self)
        self.close_order = button(self)
        self.late = button(self, quiet=True)
        self.producers = button(self, quiet=True)
        self.producers.setCheckable(True)
        self.producers.hide()
        for pair in (
            (self.issue, self.show_bill),
            (self.money, self.receipt),
            (self.credit, self.statement),
            (self.quote, self.ticket),
            (self.extras,),
            (self.close_order, self.producers),
            (self.account, self.move_deposit),
            (self.late,),
        ):
            self.add(_across(*pair))

    def retranslate(self) -> None:
        """Every word of the panel but the order's own."""
        names = {
            "total": self.tr("This bill"),
            "billed": self.tr("Billed"),
            "credited": self.tr("Credited"),
            "deposits": self.tr("Deposits"),
            "paid": self.tr("Paid"),
            "due": self.tr("Balance"),
        }
        for key, words in names.items():
            self._names[key].setText(words)
        self.issue.setText(self.tr("&Issue bill (Ctrl+Enter)"))
        self.show_bill.setText(self.tr("Sho&w bill (F9)"))
        self.money.setText(self.tr("&Money… (F8)"))
        self.receipt.setText(self.tr("R&eceipt"))
        self.credit.setText(self.tr("&Credit…"))
        self.statement.setText(self.tr("Producer's s&tatement…"))
        self.quote.setText(self.tr("&Quote"))
        self.ticket.setText(self.tr("Weig&ht ticket"))
        self.extras.setText(self.tr("&Also on this bill… (F11)"))
        self.account.setText(self.tr("Acco&unt…"))
        self.move_deposit.setText(self.tr("Mo&ve a deposit…"))
        self.close_order.setText(self.tr("C&lose order"))
        self.late.setText(self.tr("Interest on la&te payment…"))
        self.producers.setText(self.tr("&Producer's bill"))

    def show_billing(self, billing: Billing | None, state: str, notes: str) -> None:
        """Show an order's money, or nothing."""
        for words in self.sums.values():
            words.setText("")
        self.notes.setText(notes)
        self.notes.setVisible(bool(notes))
        self.state.setText(state)
        if billing is None:
            self.heading.setText(self.tr("No order chosen"))
        else:
            balance = billing.balance
            self.heading.setText(self._title(billing))
            bill = billing.shown
            for key, cents in (
                ("total", bill.total_cents if bill is not None else 0),
                ("billed", balance.billed),
                ("credited", balance.credited),
                ("deposits", balance.deposits),
                ("paid", balance.paid),
                ("due", balance.due),
            ):
                self.sums[key].setText(money_text(cents))
        can = billing is not None and (billing.order.closed_at is None or billing.for_producer)
        his = billing is not None and (billing.for_producer or billing.producers is not None)
        self.producers.setVisible(his)
        self.producers.setChecked(billing is not None and billing.for_producer)
        self.issue.setEnabled(billing is not None and billing.has_next)
        self.show_bill.setEnabled(billing is not None and billing.shown is not None)
        self.money.setEnabled(can or (billing is not None and billing.balance.due != 0))
        mine = can and billing is not None and not billing.for_producer
        for one in (self.close_order, self.statement, self.quote, self.ticket):
            one.setEnabled(mine)
        self.move_deposit.setEnabled(billing is not None and _held(billing))
        self.late.setVisible(can and billing is not None and bears_interest(billing))
        self.account.setEnabled(billing is not None and billing.customer is not None)
        self.extras.setEnabled(mine and billing is not None and billing.card is not None)
        self.credit.setEnabled(billing is not None and bool(billing.bills))
        self.receipt.setEnabled(billing is not None and bool(billing.payments))

    def _title(self, billing: Billing) -> str:
        if billing.for_producer:
            return self.tr("Lot {number}, {producer}").format(
                number=billing.lot.number, producer=billing.payer
            )
        return self._named(billing.order.number, billing.payer)

    def expect(self, number: int, owner: str) -> None:
        """Name the order whose bill is being read: it is chosen already."""
        self.heading.setText(self._named(number, owner))

    def _named(self, number: int, owner: str) -> str:
        return self.tr("Order {number}, {owner}").format(number=number, owner=owner)

    def say(self, sentence: str) -> None:
        """Say in place why something can't be done."""
        self.said.setText(sentence)
        self.said.setVisible(bool(sentence))


def _held(billing: Billing) -> bool:
    """Whether something is held on the order that could be moved to another."""
    return not billing.for_producer and bool(billing.payments) and billing.balance.due < 0


def _across(*parts: QWidget) -> QHBoxLayout:
    across = row(gap=TOGETHER)
    for part in parts:
        across.addWidget(part)
    across.addStretch(1)
    return across
