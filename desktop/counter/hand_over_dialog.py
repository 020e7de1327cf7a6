"""Handing over: the packages that are there, what is owed, and the order leaves the shop."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField
from desktop.look.space import ROW_DENSE
from desktop.panels.heading import Words
from desktop.tables import Column, Figure, RowsModel, Table, figure
from shared.money import money_text
from shared.shop.orders import Order
from shared.shop.packages import CountRow
from shared.units import pounds_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.money import Balance


class HandOverDialog(FormDialog):
    """Shows counts and balance; an unpaid order leaves only with a reason."""

    def __init__(self, bench: "Bench", order: Order, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self._bench = bench
        self._order = order
        with bench.store.read() as work:
            self.balance: Balance = work.payments.balance(order.id)
            self._counts = work.packages.counts(order.id)
            self._billed = bool(work.bills.of_order(order.id))
        self.closed = False
        self.table: Table[CountRow] = Table(
            RowsModel(self._columns()), self, height=ROW_DENSE, sortable=False
        )
        self.table.setMinimumHeight(240)
        self.money = Words("body", parent=self)
        self.fetched = TextField()
        self.reason = TextField(required=self.owes)
        self.grid.add(self.fetched)
        self.grid.add(self.reason)
        self.add_below(self.table)
        self.add_below(self.money)
        self.reason.setVisible(self.owes)
        self.reason.setEnabled(self.owes)
        self.retranslate()
        self.table.show_rows(list(self._counts))

    @property
    def owes(self) -> bool:
        """Whether something is still due, or there is no bill yet."""
        return self.balance.due > 0 or not self._billed

    def retranslate(self) -> None:
        owner = self._order.owner or self.tr("to be named")
        count = sum(row.packages for row in self._counts)
        weight = pounds_text(sum(row.nanograms for row in self._counts), 2)
        self.set_words(
            self.tr("Hand over order {number}").format(number=self._order.number),
            self.tr("{owner}. Packages: {count}, {weight}. Count them off together.").format(
                owner=owner, count=count, weight=weight
            ),
            self.tr("&Hand over"),
            self.tr("Leave"),
        )
        self.fetched.set_label(self.tr("&Fetched by, if another"))
        self.reason.set_label(self.tr("&Why it leaves unpaid"))
        self.table.set_name(self.tr("Packages made"))
        self.money.setText(self._money())

    def attempt(self) -> str:
        fetched, reason = self.fetched.value() or "", self.reason.value() or ""
        said = "; ".join(one for one in (reason, fetched) if one)
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            moved = work.orders.move(
                self._order.id, "handed_over", reason=said, version=self._order.version
            )
            if not isinstance(moved, Order):
                return self.tr("It isn't ready, or another station has changed it: look again.")
            done = work.orders.close(moved.id, version=moved.version)
            self.closed = isinstance(done, Order)
            work.commit()
        return ""

    def _money(self) -> str:
        if not self._billed:
            return self.tr("No bill yet.")
        return self.tr("Billed {billed}, paid {paid}, due {due}.").format(
            billed=money_text(self.balance.billed - self.balance.credited),
            paid=money_text(self.balance.deposits + self.balance.paid),
            due=money_text(self.balance.due),
        )

    def _columns(self) -> list[Column[CountRow]]:
        return [
            Column("product", lambda: self.tr("Package"), lambda row: row.product, stretch=True),
            Column(
                "packages",
                lambda: self.tr("Packages"),
                lambda row: Figure(str(row.packages)),
                "figure",
                width=90,
            ),
            Column(
                "pounds",
                lambda: self.tr("Pounds"),
                lambda row: figure(pounds_text(row.nanograms, 2)),
                "figure",
                width=100,
            ),
        ]
