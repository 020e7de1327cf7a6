"""The field for a customer: found by any part of the name, or written anew with a phone."""

import re
from typing import TYPE_CHECKING

from PySide6.QtCore import QStringListModel
from PySide6.QtWidgets import QComboBox, QWidget

from desktop.fields import ChoiceField
from shared.shop.customers import Customer, name_key, phone_digits

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from db.unit_of_work import Work
    from desktop.messages import Messages
    from shared.shop.lists import CustomerRow

MOST = 2000
LEAST_LETTERS = 16
_PHONE = re.compile(r"[\s,;]*(\+?[0-9(][0-9() .+-]{5,})\s*$")


def split_phone(text: str) -> tuple[str, str]:
    """A name and the phone written behind it: "Ole Berg 555 010 0199"."""
    found = _PHONE.search(text)
    if found is None:
        return text.strip(), ""
    return text[: found.start()].strip(" ,;"), found.group(1).strip()


class CustomerField(ChoiceField[int]):
    """Takes a customer's id; other words are a new customer, added by `settle`."""

    def __init__(self, parent: QWidget | None = None, *, required: bool = False) -> None:
        super().__init__(parent, required=required, free=True)
        # As wide as its place: else every name of the shop is measured before it is shown.
        self.box.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.box.setMinimumContentsLength(LEAST_LETTERS)

    def known(self, work: "Work", messages: "Messages") -> bool:
        """Whether it can be taken: a new name that looks known is asked about first."""
        if self.is_empty() or self.value() is not None:
            return True
        name, phone = split_phone(self.text())
        if not name:
            self.complain(self.tr("Write the name before the phone."))
            return False
        alike = work.customers.alike(name, phone) or work.customers.nearly(name)
        if not alike:
            return True
        self._offer(alike)
        there = ", ".join(f"{row.name} {row.phone}".strip() for row in alike[:3])
        digits = phone_digits(phone)
        by_phone = any(digits and phone_digits(row.phone) == digits for row in alike)
        if by_phone:
            text = self.tr("{known} is known already, with the same phone.")
        elif all(name_key(row.name) != name_key(name) for row in alike):
            text = self.tr("{known} is known already, written nearly the same.")
        else:
            text = self.tr("{known} is known already, with the same name.")
        text = text.format(known=there)
        add = self.tr("Add {name} as another").format(name=name)
        if messages.ask(self.tr("Known already?"), text, add, self.tr("Go back and choose")):
            return True
        self.complain(text)
        return False

    def _offer(self, known: "Sequence[CustomerRow]") -> None:
        """Whoever is known already can be chosen, however many customers come before him."""
        new = [(row.id, _words(row.name, row.phone)) for row in known if row.id not in self.values]
        if new:
            there = [(value, self.box.itemText(at)) for at, value in enumerate(self.values)]
            self.set_choices([*there, *new])

    def settle(self, work: "Work", added: dict[str, int]) -> int | None:
        """The customer's id, a new one added; None leaves it open.

        `added` holds who was added in this unit by what was typed, so that one typed twice is one.
        """
        if self.is_empty() or self.value() is not None:
            return self.value()
        typed = name_key(self.text())
        if typed not in added:
            name, phone = split_phone(self.text())
            made = work.customers.add(Customer(name=name, phone=phone))
            if not isinstance(made, Customer):
                self.complain(self.tr("Write a name here."))
                return None
            added[typed] = made.id
        return added[typed]


def offer_customers(
    work: "Work", fields: "Iterable[CustomerField]", there: "Iterable[int | None]" = ()
) -> None:
    """Offer the shop's customers in each of the fields, read once; who is `there` is among them."""
    known = [one for one in there if one is not None]
    names = work.customers.names(MOST, known)
    ids = [customer_id for customer_id, _, _ in names]
    words = QStringListModel([_words(name, phone) for _, name, phone in names])
    for field in fields:
        field.share_choices(ids, words)


def _words(name: str, phone: str) -> str:
    return f"{name}  {phone}".strip()
