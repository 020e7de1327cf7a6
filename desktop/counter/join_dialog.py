"""Two entries that are one person: the first is joined into the second; no paper is rewritten."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.counter.join_words import goes_along, named, taken_over
from desktop.fields import FormDialog
from desktop.panels.heading import Words
from shared.shop.customers import Customer, HeldBy, lacked
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench


class JoinDialog(FormDialog):
    """Asks who is a duplicate, and of whom; orders and bills stay as they were written.

    What goes along is shown as soon as both are chosen, and asked about before it is done.
    """

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.widen(840)
        self._bench = bench
        self.duplicate = CustomerField(required=True)
        self.stays = CustomerField(required=True)
        for field in (self.duplicate, self.stays):
            self.grid.add(field)
            field.changed.connect(self._show_what)
        self.what = Words("body", parent=self).wrapped()
        self.add_below(self.what)
        self.what.hide()
        offer_customers(bench, (self.duplicate, self.stays))
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Join two entries of one person"),
            self.tr(
                "Orders, bills and payments stay as they were written, and are found under "
                "either name. Lists and new papers show the entry that stays. Ctrl+Shift+J "
                "takes two apart again."
            ),
            self.tr("&Join"),
            self.tr("&Leave it"),
        )
        self.duplicate.set_label(self.tr("The &duplicate"))
        self.stays.set_label(self.tr("&The entry that stays"))
        self._show_what()

    def attempt(self) -> str:
        for field in (self.duplicate, self.stays):
            if field.value() is None:
                field.complain(self.tr("Nobody kept is called this. Choose from the list."))
        two = self._both()
        if two is None:
            return ""
        duplicate, stays, held = two
        if duplicate.id == stays.id:
            return self.tr("That is one and the same entry.")
        text = "\n\n".join((self._becomes(duplicate, stays, held), self._no_paper()))
        if not self._bench.messages.ask(
            self.tr("Join these two?"), text, self.tr("Join them"), self.tr("Go back")
        ):
            return self.tr("Not joined: both entries are as they were.")
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.customers.join(duplicate.id, stays.id)
            if not isinstance(found, Refused):
                work.commit()
                return ""
        return self.tr("That is one and the same entry.")

    def _no_paper(self) -> str:
        return self.tr("No paper is rewritten, and Ctrl+Shift+J takes them apart again.")

    def _becomes(self, duplicate: Customer, stays: Customer, held: HeldBy) -> str:
        becomes = self.tr("{duplicate} becomes {stays}.")
        parts = (
            becomes.format(duplicate=named(duplicate), stays=named(stays)),
            goes_along(held),
            taken_over(duplicate, lacked(duplicate, stays)),
        )
        return "\n".join(one for one in parts if one)

    def _show_what(self) -> None:
        two = self._both()
        different = two is not None and two[0].id != two[1].id
        self.what.setText(self._becomes(*two) if two is not None and different else "")
        self.what.setVisible(different)

    def _both(self) -> tuple[Customer, Customer, HeldBy] | None:
        """Both as kept, and what is written for the duplicate; None until both are chosen."""
        duplicate, stays = self.duplicate.value(), self.stays.value()
        if duplicate is None or stays is None:
            return None
        with self._bench.store.read() as work:
            first, second = work.customers.get(duplicate), work.customers.get(stays)
            held = work.customers.held_by(duplicate)
        return None if first is None or second is None else (first, second, held)
