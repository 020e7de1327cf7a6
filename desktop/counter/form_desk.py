"""The customer's own order form at the counter: given out blank, and read back when filled."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.form_dialog import FilledFormDialog

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from desktop.counter.order_view import OrderView
    from printing.words import Words

MOST_BYTES = 30_000_000


def order_form(what: str, bench: "Bench", view: "OrderView") -> FilledFormDialog | None:
    """Show the blank form ("form") or read a filled one ("read_form") of the order shown."""
    desk = view.desk
    if desk is None:
        return None
    if what == "form":
        show_form(bench, desk, view)
        return None
    return read_form(bench, desk, view)


def show_form(bench: "Bench", desk: "OrderDesk", parent: "QWidget") -> None:
    """The blank form of the order, in its owner's language, made on a worker."""
    from printing.order_form import FormFor

    with bench.store.read() as work:
        shop = work.shop.details()
        customer = desk.order.customer_id and work.customers.get(desk.order.customer_id)
        language = customer.language if customer else bench.words.language
        words = _words(language, work.shop.own_names(language))
    order, made, known = desk.order, bench.now(), desk.catalogue
    whose = FormFor(order.owner, desk.lot.number, order.number, desk.lot.day, order.due)

    def make() -> bytes:
        from printing.order_form import order_form as form

        return form(known, whose, shop=shop, made=made, words=words)

    title = QCoreApplication.translate("OrderForm", "Order form of order {number}").format(
        number=order.number
    )

    def show(pdf: bytes) -> None:
        from desktop.preview import show_paper

        show_paper(bench, pdf, title, parent=parent)

    bench.work.run(make, then=show, key="counter.form")


def read_form(bench: "Bench", desk: "OrderDesk", view: "OrderView") -> FilledFormDialog | None:
    """Ask for the file, and show what it says before anything enters the order."""
    from printing.order_form_reading import FormRefused, read_order_form

    title = QCoreApplication.translate("OrderForm", "A filled order form")
    path = bench.messages.open_which(title, Path.home(), "PDF (*.pdf)")
    if path is None:
        return None
    try:
        pdf = path.read_bytes()[:MOST_BYTES]
    except OSError:
        pdf = b""
    found = read_order_form(pdf, desk.catalogue, desk.share, order_number=desk.order.number)
    if isinstance(found, FormRefused):
        view.refuse(bench.words.say(f"forms.refused_{found.code}", found=found.found))
        return None
    dialog = FilledFormDialog(bench, desk, found, view)
    dialog.accepted.connect(lambda: view.form_taken(dialog))
    dialog.open()
    return dialog


def _words(language: str, own: dict[str, str]) -> "Words":
    from printing.words import LANGUAGES, Words

    return Words(language if language in LANGUAGES else "en", own)
