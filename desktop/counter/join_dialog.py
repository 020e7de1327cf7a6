"""Two entries that are one person: the first is joined into the second; no paper is rewritten."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.fields import FormDialog
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench


class JoinDialog(FormDialog):
    """Asks who is a duplicate, and of whom; orders and bills stay as they were written."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(720)
        self._bench = bench
        self.duplicate = CustomerField(required=True)
        self.stays = CustomerField(required=True)
        for field in (self.duplicate, self.stays):
            self.grid.add(field)
        offer_customers(bench, (self.duplicate, self.stays))
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Join two entries of one person"),
            self.tr(
                "Orders, bills and payments stay as they were written, and are found under "
                "either name. Lists and new papers show the entry that stays."
            ),
            self.tr("&Join"),
            self.tr("&Leave it"),
        )
        self.duplicate.set_label(self.tr("The &duplicate"))
        self.stays.set_label(self.tr("&The entry that stays"))

    def attempt(self) -> str:
        duplicate, stays = self.duplicate.value(), self.stays.value()
        for field in (self.duplicate, self.stays):
            if field.value() is None:
                field.complain(self.tr("Nobody kept is called this. Choose from the list."))
        if duplicate is None or stays is None:
            return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.customers.join(duplicate, stays)
            if not isinstance(found, Refused):
                work.commit()
                return ""
        return self.tr("That is one and the same entry.")
