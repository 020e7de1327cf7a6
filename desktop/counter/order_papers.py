"""The papers an owner gets at the counter: the confirmation of his order."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.price import cards_of, price
from desktop.paper_words import words_for
from printing.written import day_text, sender
from shared.cutting.dealt import as_own
from shared.shop.calendar import hang_days
from shared.shop.calls import due_on

if TYPE_CHECKING:
    from datetime import date

    from PySide6.QtWidgets import QWidget

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from desktop.counter.price import Price
    from printing.confirmation import Booking
    from printing.words import Words
    from shared.shop.calls import WithoutAnswer
    from shared.shop.details import ShopDetails
    from shared.shop.lots import LotShare
    from shared.shop.money import Payment
    from shared.shop.orders import Order


def show_confirmation(bench: "Bench", desk: "OrderDesk", parent: "QWidget") -> None:
    """Make the confirmation on a worker, in its owner's language, and show it."""
    with bench.store.read() as work:
        shop = work.shop.details()
        customer_id = desk.order.customer_id
        customer = None if customer_id is None else work.customers.get(customer_id)
        cards, rules, due = cards_of(desk.lot, work), work.calls.rules(), _due(work, desk)
    found = None if cards is None else price(desk, cards)
    words = words_for(customer, bench.words)
    share = next(one for one in desk.lot.shares if one.number == desk.share)
    lines = () if customer is None else (customer.name, *customer.address.splitlines())
    booking = _booking(desk, share, due, rules.without_answer, found, words)
    title = _title(desk.order.number)
    now = bench.now()
    catalogue = desk.catalogue
    question, forecast = as_own(desk.question, desk.dealt)

    def make() -> bytes:
        from printing.confirmation import confirmation

        about = (booking, question, catalogue, forecast, share.number)
        return confirmation(
            *about,
            estimate=None if found is None else found.bill,
            shop=shop,
            customer=lines,
            made=now,
            words=words,
        )

    email = "" if customer is None else customer.email

    def show(pdf: bytes) -> None:
        from desktop.counter.mailed_paper import ToMail, show_to_mail

        subject = words.say("forms.confirm_subject", shop=shop.name, number=desk.order.number)
        to = ToMail(desk.order.owner, email, subject, _mail_text(booking, shop, words))
        show_to_mail(bench, pdf, title, to, parent)

    bench.work.run(make, then=show, key="counter.confirmation")


def _title(number: int) -> str:
    text = QCoreApplication.translate("OrderPapers", "Confirmation of order {number}")
    return text.format(number=number)


def _mail_text(booking: "Booking", shop: "ShopDetails", words: "Words") -> str:
    """What the mail says that the confirmation is attached to, in its owner's language."""
    said = [booking.owner + ",", "", words.say("forms.confirm_mail", number=booking.order_number)]
    if booking.due is not None:
        said.append(words.say("forms.hangs_due", day=day_text(booking.due, words)))
    return "\n".join([*said, "", *sender(shop)])


def _due(work: "Work", desk: "OrderDesk") -> "date":
    """The day its cut sheet is due: as written on it, else by the shop's rules."""
    hang = hang_days(work.calendar.plan(), desk.lot.species)
    return desk.order.due or due_on(work.calls.rules(), desk.lot.day, hang)


def show_receipt(bench: "Bench", order: "Order", payment: "Payment", parent: "QWidget") -> None:
    """The receipt of a deposit in the customer's language, shown before it is printed."""
    with bench.store.read() as work:
        shop, balance = work.shop.details(), work.payments.balance(order.id)
        customer = None if order.customer_id is None else work.customers.get(order.customer_id)
    lines = (order.owner,) if customer is None else (customer.name, *customer.address.splitlines())
    title = QCoreApplication.translate("OrderPapers", "Receipt {number}").format(
        number=payment.number
    )
    now, words = bench.now(), words_for(customer, bench.words)

    def make() -> bytes:
        from printing.receipt import receipt

        return receipt(
            payment,
            balance,
            shop=shop,
            customer=lines,
            order_number=order.number,
            made=now,
            words=words,
        )

    def show(pdf: bytes) -> None:
        from desktop.preview import show_paper

        show_paper(bench, pdf, title, parent=parent)

    bench.work.run(make, then=show, key="counter.receipt")


def _booking(
    desk: "OrderDesk",
    share: "LotShare",
    due: "date",
    without_answer: "WithoutAnswer",
    found: "Price | None",
    words: "Words",
) -> "Booking":
    """What the confirmation says of the booking."""
    from printing.confirmation import Booking
    from printing.words.share_words import share_text

    waits = desk.order.state == "open"
    parts = desk.catalogue.parts
    still = {parts[one.part].primal for one in desk.open_parts()} if waits else set[str]()
    return Booking(
        order_number=desk.order.number,
        lot_number=desk.lot.number,
        species=desk.lot.species,
        tags=tuple(one.tag for one in desk.lot.animals if one.tag),
        day=desk.lot.day,
        owner=desk.order.owner,
        share_text=share_text(share.holdings, words),
        note=desk.order.note,
        deposit_cents=share.deposit_asked,
        due=due if waits else None,
        without_answer=without_answer if waits else "",
        open_primals=tuple(one for one in desk.catalogue.primals if one in still),
        price=None if found is None else (found.low, found.high),
    )
