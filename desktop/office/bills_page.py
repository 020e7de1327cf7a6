"""Bills: orders to bill, the bill line by line, issued, paid and closed."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office import issuing
from desktop.office.bill_columns import BillColumns, BillRow
from desktop.office.bill_panel import BillPanel
from desktop.office.billing import Billing
from desktop.office.bills_bar import BillsBar
from desktop.office.deposit_moving import DepositMoving
from desktop.office.extras_dialog import ExtrasDialog
from desktop.office.late_billing import LateBilling
from desktop.office.money_dialog import MoneyDialog
from desktop.office.money_dialogs import CreditDialog, StatementDialog
from desktop.office.money_words import complaint, line_words, not_closed
from desktop.office.scale_check import read_checked
from desktop.office.show_papers import OfficePapers
from desktop.office.to_bill import ToBill, orders_to_bill
from desktop.paid_day import open_days
from desktop.panels.heading import Words
from desktop.tables import RowsModel, Table
from shared.billing.bill import Bill
from shared.billing.extras import Extras
from shared.billing.problems import BillingProblem
from shared.money import money_text
from shared.shop.lists import OrderRow
from shared.shop.money import IssuedBill
from shared.shop.problems import NotClosed, Refused, StaleEdit

if TYPE_CHECKING:
    from collections.abc import Callable

    from desktop.bench import Bench
    from desktop.office.money_dialog import Given
    from shared.billing.statement import PriceBasis
    from shared.shop.money import PaymentKind


class BillsPage(QWidget):
    """Orders above, the chosen order's bill below, its money at the side.

    Signals:
        said: a sentence for the status line. changed: money or a bill was kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.papers = OfficePapers(bench, self)
        self.late = LateBilling(bench, self._issued, self)
        self.moving = DepositMoving(bench, self)
        self.billing: Billing | None = None
        self._owners: Billing | None = None
        self._for_producer = False
        self._asked = self._wanted = 0
        self._reading = False
        self._next: Callable[[], None] | None = None
        self._build()
        self._connect()
        self.retranslate()

    def _build(self) -> None:
        self.columns = BillColumns(self.bench, self)
        across = row(self, gap=0)
        main = QWidget(self)
        down = column(main, gap=TOGETHER, edge=GROUP)
        self.orders: Table[OrderRow] = Table(RowsModel(self.columns.orders()), main)
        self.lines_heading = Words("group", parent=main)
        self.lines: Table[BillRow] = Table(RowsModel(self.columns.lines()), main, sortable=False)
        self.bar = BillsBar(self.bench, self.papers.show_made, main)
        down.addWidget(self.bar)
        down.addWidget(self.orders, 1)
        down.addWidget(self.lines_heading)
        down.addWidget(self.lines, 1)
        self.side = BillPanel(self)
        across.addWidget(main, 1)
        across.addWidget(self.side)

    def _connect(self) -> None:
        self.orders.moved.connect(self._moved)
        for each in (self.bar, self.moving):
            each.said.connect(self.said)
            each.changed.connect(self._done)
        self.bar.turned.connect(self.refresh)
        side = self.side
        for button, slot in (
            (side.issue, self.issue),
            (side.show_bill, self.show_bill),
            (side.money, self.money),
            (side.receipt, self.receipt),
            (side.credit, self.credit),
            (side.statement, self.statement),
            (side.quote, self.quote),
            (side.ticket, self.ticket),
            (side.extras, self.extras),
            (side.close_order, self.close_order),
            (side.late, self.late_interest),
            (side.producers, self.turn_to_producer),
            (side.move_deposit, lambda: self.moving.begin(self.billing)),
        ):
            button.clicked.connect(slot)
        for keys, slot in (
            ("Ctrl+Return", self.issue),
            ("F9", self.show_bill),
            ("F8", self.money),
            ("F11", self.extras),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def retranslate(self) -> None:
        """Every word of the page."""
        self.orders.set_name(self.tr("Orders to bill"))
        self.lines.set_name(self.tr("Lines of the bill"))
        self.bar.retranslate()
        self.side.retranslate()
        self._show(self.billing)

    def refresh(self) -> None:
        """Read the orders again, off the window's thread; the same one stays chosen."""
        self._reading = self._reading or bool(self._asked)
        self.bench.work.run(
            orders_to_bill,
            self.bench.store,
            self.bar.states(),
            self._wanted,
            then=self._show_orders,
            key="office.to_bill",
        )

    def choose(self, order_id: int) -> None:
        """Choose an order; it is listed whatever its state, and though closed."""
        self._asked = self._wanted = order_id
        self.refresh()

    def _show_orders(self, found: ToBill) -> None:
        self.orders.blockSignals(True)
        self.orders.show_rows(list(found.rows), found.row(self._asked))
        self.orders.blockSignals(False)
        self.bar.show_count(found.count)
        self._moved(self.orders.chosen())

    def _moved(self, chosen: OrderRow | None) -> None:
        if chosen is None:
            self._asked, self._reading, self._next = 0, False, None
            self._show(None)
            return
        if self._asked != chosen.id:
            self._next = None
        if self._wanted != chosen.id:
            self._wanted = 0
        if self.billing is None or self.billing.order.id != chosen.id:
            self.side.say("")
            self._for_producer = False
        if self.billing is None:
            self.side.expect(chosen.number, chosen.owner)
            self.lines_heading.setText("")
        self._asked, self._reading = chosen.id, True
        self.bench.work.run(
            read_checked, self.bench.store, chosen.id, then=self._was_read, key="office.bill"
        )

    def _once_read(self, slot: "Callable[[], None]") -> bool:
        """Whether the order is still read; the slot then follows, so F8 is of the bill issued."""
        if self._reading:
            self._next = slot
        return self._reading

    def _was_read(self, found: Billing | None) -> None:
        if found is None or found.order.id != self._asked:
            self._reading = self._reading and found is not None
            return
        self._owners, self._reading = found, False
        his = found.producers if self._for_producer else None
        self._show(his or found)
        following, self._next = self._next, None
        if following is not None:
            following()

    def turn_to_producer(self) -> None:
        """From the owner's bill to what falls to the producer, and back."""
        if self._owners is None:
            return
        self._for_producer = not self._for_producer and self._owners.producers is not None
        self.side.say("")
        self._show(self._owners.producers if self._for_producer else self._owners)

    def _show(self, billing: Billing | None) -> None:
        self.billing = billing
        bill = billing.shown if billing is not None else None
        self.columns.bill = bill
        self.lines.show_rows([] if bill is None else [*bill.lines, *bill.taxes])
        self.lines_heading.setText(self._heading(billing))
        state = "" if billing is None else self.columns.state(billing.order.state)
        self.side.show_billing(billing, state, self._notes(bill))
        if billing is not None and isinstance(billing.next_bill, BillingProblem):
            self.side.say(complaint(billing.next_bill))

    def _heading(self, billing: Billing | None) -> str:
        if billing is None:
            if not self.orders.rows.rowCount():
                return self.tr("Orders come here to be billed once they are wrapped and ready")
            return self.tr("Choose an order above")
        if billing.bills and not billing.has_next:
            return self.tr("Bill {number}, issued").format(number=billing.bills[-1].number)
        return self.tr("Bill to issue") if billing.shown else self.tr("No bill can be made yet")

    def _notes(self, bill: Bill | None) -> str:
        if bill is None:
            return ""
        from printing.bill import ended_notes  # draws PDFs: only when a bill is looked at

        words, codes = self.bench.words, [one.code for one in bill.cautions]
        said = [*ended_notes(bill, words)]
        said += [words.say(f"bills.note_{one}") for one in codes if words.has(f"bills.note_{one}")]
        if "kept_differs" in codes or (self.billing is not None and self.billing.differs):
            said.append(
                self.tr("A weight or rate was changed after the first bill; mend it by a credit.")
            )
        return " ".join(dict.fromkeys(said))

    def issue(self) -> None:
        """Issue the bill shown."""
        if self.billing is None or not self.side.issue.isEnabled():
            return
        self.side.issue.setEnabled(False)
        self._reading = True
        self.bench.work.run(issuing.issue, self.bench, self.billing, then=self._issued)

    def late_interest(self) -> None:
        """Ask whether interest on what is late is billed, and bill it."""
        if not self._once_read(self.late_interest) and self.billing is not None:
            self.late.begin(self.billing)

    def _issued(self, found: IssuedBill | Refused | BillingProblem) -> None:
        self._reading = False
        if isinstance(found, Refused | BillingProblem):
            self._next = None
            self.side.say(complaint(found))
            self._show(self.billing)
            return
        self.said.emit(
            self.tr("Bill {number} is issued: {total}.").format(
                number=found.number, total=money_text(found.total_cents)
            )
        )
        self._done()

    def _done(self) -> None:
        self.side.say("")
        self.changed.emit()
        self.refresh()

    def money(self) -> None:
        """Ask for money taken or given back."""
        if self._once_read(self.money):
            return
        if self.billing is None or not self.side.money.isEnabled():
            return
        kind: PaymentKind = "payment" if self.billing.bills else "deposit"
        if self.billing.balance.due < 0 and self.billing.bills:
            kind = "refund"
        balance, payers = self.billing.balance, self.billing.payers
        self.money_dialog = MoneyDialog(
            kind, balance, payers, self._keep_money, open_days(self.bench), self
        )
        self.money_dialog.open()

    def _keep_money(self, given: "Given") -> str:
        if self.billing is None:
            return self.tr("Choose an order first.")
        found = issuing.take_money(self.bench, self.billing, given)
        if isinstance(found, BillingProblem | Refused):
            return complaint(found)
        _payments, change = found
        said = self.tr("{amount} kept.").format(amount=money_text(given.cents - change))
        if change:
            said += " " + self.tr("Change: {change}.").format(change=money_text(change))
        self.said.emit(said)
        self._done()
        return ""

    def credit(self) -> None:
        """Ask for a credit on the last bill."""
        if self._once_read(self.credit):
            return
        if self.billing is None or self.billing.last_bill is None:
            return
        words = self.bench.words
        lines = [
            (one.key, line_words(one, words))
            for one in self.billing.last_bill.lines
            if one.kind == "charge"
        ]
        self.credit_dialog = CreditDialog(lines, self._keep_credit, self)
        self.credit_dialog.open()

    def _keep_credit(self, reason: str, key: str, cents: int | None) -> None:
        if self.billing is None:
            return
        self.bench.work.run(
            issuing.credit, self.bench, self.billing, reason, key, cents, then=self._credited
        )

    def _credited(self, found: IssuedBill | Refused | BillingProblem) -> None:
        if isinstance(found, BillingProblem | Refused):
            self.credit_dialog.kept(complaint(found))
            return
        self.credit_dialog.kept("")
        self.said.emit(
            self.tr("Credit {number} is issued: {total}.").format(
                number=found.number, total=money_text(found.total_cents)
            )
        )
        self.papers.show_kept(found)
        self._done()

    def extras(self) -> None:
        """Ask what else is on this bill: storage, delivery, or something taken off."""
        if self._once_read(self.extras):
            return
        found = self.billing
        card = None if found is None else found.card
        if found is None or card is None or not self.side.extras.isEnabled():
            return
        self.extras_dialog = ExtrasDialog(
            card, found.extras, found.storing, self._keep_extras, self.bench.words, self
        )
        self.extras_dialog.open()

    def _keep_extras(self, extras: Extras) -> str:
        """Keep them in the store; why not, where somebody said otherwise meanwhile."""
        if self.billing is None:
            return self.tr("Choose an order first.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            said = work.extras.say(self.billing.order.id, extras, self.billing.extras.id)
            if isinstance(said, StaleEdit):
                return self.tr("{who} has changed it meanwhile.").format(who=said.by)
            work.commit()
        self.refresh()
        return ""

    def quote(self) -> None:
        """Show what the order will come to."""
        if self.billing is not None:
            self.papers.show_quote(self.billing, lambda why: self.side.say(complaint(why)))

    def ticket(self) -> None:
        """Show the weight ticket."""
        if self.billing is not None:
            self.papers.show_ticket(self.billing, self.side.say)

    def close_order(self) -> None:
        """Close the order: handed over, billed, paid."""
        if self.billing is None or not self.side.close_order.isEnabled():
            return
        found = issuing.close(self.bench, self.billing)
        if isinstance(found, NotClosed):
            self.side.say(not_closed(found))
        elif isinstance(found, StaleEdit):
            self.side.say(self.tr("{who} has changed it meanwhile.").format(who=found.by))
            self.refresh()
        else:
            self.said.emit(self.tr("Order {number} is closed.").format(number=found.number))
            self._done()

    def show_bill(self) -> None:
        """Show the kept bill, or a draft of the next one."""
        if not self._once_read(self.show_bill) and self.billing is not None:
            self.papers.show_bill(self.billing)

    def receipt(self) -> None:
        """Show a receipt for what was paid last."""
        if self._once_read(self.receipt):
            return
        if self.billing is not None and self.billing.payments:
            self.papers.show_receipt(self.billing)

    def statement(self) -> None:
        """Ask for the producer's price and show his statement."""
        if self.billing is not None:
            self.statement_dialog = StatementDialog(self._show_statement, self)
            self.statement_dialog.open()

    def _show_statement(self, basis: "PriceBasis", rate: Fraction, deposit: int) -> str:
        if self.billing is None:
            return self.tr("Choose an order first.")
        found = self.papers.show_statement(self.billing, basis, rate, deposit)
        return "" if found is None else complaint(found)
