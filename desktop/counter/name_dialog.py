"""Naming the owner of a share that was booked "to be named"."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.fields import FormDialog
from shared.shop.lots import Lot
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from desktop.bench import Bench


class NameDialog(FormDialog):
    """Asks who owns a share; a custom lot takes nobody new after the kill."""

    def __init__(self, bench: "Bench", lot: Lot, share: int, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=1)
        self.setMinimumWidth(480)
        self._bench = bench
        self._lot = lot
        self._share = share
        self.owner = CustomerField(required=True)
        self.grid.add(self.owner)
        self.retranslate()
        there = next((one.customer_id for one in lot.shares if one.number == share), None)
        offer_customers(bench, (self.owner,), (there,))
        self.owner.set_value(there)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Name the owner"),
            self.tr("Lot {number}, share {share}.").format(
                number=self._lot.number, share=self._share
            ),
            self.tr("&Name"),
            self.tr("&Leave it"),
        )
        self.owner.set_label(self.tr("&Owner"))
        self.owner.hint(self.tr("name, or a new name and phone"))

    def attempt(self) -> str:
        with self._bench.store.read() as work:
            if not self.owner.known(work, self._bench.messages):
                return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            customer = self.owner.settle(work, {})
            if customer is None:
                return ""
            found = work.lots.name_share(
                self._lot.id, self._share, customer, version=self._lot.version
            )
            if isinstance(found, Lot):
                work.commit()
                return ""
        if isinstance(found, StaleEdit):
            return self.tr("{name} has just changed this lot: look again.").format(name=found.by)
        return self.tr("Owners of a custom animal are fixed before the kill.")
