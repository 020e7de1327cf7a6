"""What is kept of a customer: name, phone, mail, address, language of his papers, rates, notes."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, NoteField, TextField
from printing.words import LANGUAGES
from shared.shop.customers import Customer
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from desktop.bench import Bench

NAMES_OF_LANGUAGES = {"en": "English", "es": "Español"}  # each in its own tongue


class CustomerDialog(FormDialog):
    """Changes what is kept; papers that were issued stay as they are."""

    def __init__(self, bench: "Bench", customer: Customer, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.setMinimumWidth(720)
        self._bench = bench
        self._customer = customer
        self.name = TextField(required=True)
        self.phone = TextField(most=60)  # as it was written: there may be two
        self.email = TextField()
        self.language: ChoiceField[str] = ChoiceField(self, required=True)
        self.address = NoteField(lines=3)
        self.notes = NoteField(lines=3)
        self.group = TextField(most=40)
        fields = (self.name, self.phone, self.email, self.language, self.address, self.notes)
        for field in (*fields, self.group):
            self.grid.add(field)
        self.language.set_choices([(one, NAMES_OF_LANGUAGES[one]) for one in LANGUAGES])
        self.retranslate()
        self._show(customer)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("What is kept of a customer"),
            self.tr(
                "It stands on papers made from now on; bills and sheets that were issued stay as "
                "they are."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.name.set_label(self.tr("&Name"))
        self.phone.set_label(self.tr("&Phone"))
        self.email.set_label(self.tr("&Mail"))
        self.language.set_label(self.tr("Papers &in"))
        self.address.set_label(self.tr("&Address"))
        self.notes.set_label(self.tr("No&tes, on no paper"))
        self.group.set_label(self.tr("&Group, for rates of its own"))

    def attempt(self) -> str:
        changed = replace(
            self._customer,
            name=self.name.value() or "",
            phone=self.phone.value() or "",
            email=self.email.value() or "",
            language=self.language.value() or self._customer.language,
            address=self.address.value() or "",
            notes=self.notes.value() or "",
            group=self.group.value() or "",
        )
        if changed == self._customer:
            return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.customers.save(changed)
            if isinstance(found, Customer):
                work.commit()
                return ""
        if isinstance(found, StaleEdit):
            text = self.tr("{who} has changed this meanwhile. Leave it and open it again.")
            return text.format(who=found.by)
        return self.tr("Write a name here.")

    def _show(self, customer: Customer) -> None:
        self.name.set_value(customer.name)
        self.phone.set_value(customer.phone or None)
        self.email.set_value(customer.email or None)
        self.language.set_value(customer.language)
        self.address.set_value(customer.address or None)
        self.notes.set_value(customer.notes or None)
        self.group.set_value(customer.group or None)


def customer_of(bench: "Bench", customer_id: int | None) -> Customer | None:
    """The customer as kept, through the entry he was joined into; None while nobody is named."""
    if customer_id is None:
        return None
    with bench.store.read() as work:
        found = work.customers.get(customer_id)
        if found is not None and found.joined_into is not None:
            found = work.customers.get(found.joined_into)
    return found
