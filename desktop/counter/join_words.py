"""What goes along when two entries are joined or taken apart, and who they are, in words."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from shared.shop.customers import Customer, HeldBy


def named(customer: "Customer") -> str:
    """A customer by name and phone within a sentence, so that two of one name are told apart."""
    return ", ".join(one for one in (customer.name, customer.phone) if one)


def held_words(held: "HeldBy") -> str:
    """What is written for an entry, such as "orders 3, bills 2"; "" for nothing."""
    translate = QCoreApplication.translate
    said: list[str] = []
    if held.orders and held.open_orders:
        words = translate("Joining", "orders {count} ({open} not closed)")
        said.append(words.format(count=held.orders, open=held.open_orders))
    elif held.orders:
        said.append(translate("Joining", "orders {count}").format(count=held.orders))
    for count, words in (
        (held.bookings, translate("Joining", "bookings as producer {count}")),
        (held.bills, translate("Joining", "bills {count}")),
        (held.payments, translate("Joining", "payments {count}")),
        (held.waiting, translate("Joining", "on the waiting list {count}")),
    ):
        if count:
            said.append(words.format(count=count))
    return ", ".join(said)


def goes_along(held: "HeldBy") -> str:
    """As a sentence of what moves with an entry that is joined."""
    translate = QCoreApplication.translate
    if held.nothing():
        return translate("Joining", "No order, booking, bill or payment goes along.")
    return translate("Joining", "Goes along: {what}.").format(what=held_words(held))


def goes_back(held: "HeldBy") -> str:
    """As a sentence of what moves with an entry that is taken apart again."""
    translate = QCoreApplication.translate
    if held.nothing():
        return translate("Joining", "No order, booking, bill or payment goes back with it.")
    return translate("Joining", "Goes back with it: {what}.").format(what=held_words(held))


def taken_over(duplicate: "Customer", fields: tuple[str, ...]) -> str:
    """What the entry that stays has none of and takes from the duplicate, "" for nothing."""
    translate = QCoreApplication.translate
    words = {
        "phone": translate("Joining", "the phone {it}").format(it=duplicate.phone),
        "email": translate("Joining", "the mail {it}").format(it=duplicate.email),
        "address": translate("Joining", "the address {it}").format(
            it=", ".join(duplicate.address.split("\n"))
        ),
    }
    if not fields:
        return ""
    what = ", ".join(words[one] for one in fields)
    return translate("Joining", "The entry that stays has none, so it takes over {what}.").format(
        what=what
    )
