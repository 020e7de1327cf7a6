"""The Office's papers on the screen: bills and credits as kept, drafts, receipts, statements.

What is made anew speaks the customer's language; what is kept stays as it was.
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.office.billing import Billing, address_lines
from desktop.office.issuing import bill_pdf
from desktop.paper_words import words_for
from desktop.preview import Preview, show_paper
from shared.billing.problems import BillingProblem
from shared.billing.statement import Price, Statement, statement, statement_text

if TYPE_CHECKING:
    from collections.abc import Callable
    from fractions import Fraction

    from PySide6.QtWidgets import QWidget

    from desktop.bench import Bench
    from shared.billing.statement import PriceBasis
    from shared.shop.customers import Customer
    from shared.shop.money import IssuedBill, Payment


class OfficePapers(QObject):
    """Makes papers on a worker and shows each in a preview over the window."""

    def __init__(self, bench: "Bench", page: "QWidget") -> None:
        super().__init__(page)
        self.bench = bench
        self._page = page
        self.preview: Preview | None = None

    def _open(self, pdf: bytes, title: str) -> None:
        self.preview = show_paper(self.bench, pdf, title, "paper", self._page)

    def show_made(self, pdf: bytes, title: str) -> None:
        """A paper that is made already."""
        self._open(pdf, title)

    def show_bill(self, billing: Billing) -> None:
        """The bill as it was kept; a draft of the next one where nothing is issued of it."""
        if billing.bills and not billing.has_next:
            self.show_kept(billing.bills[-1])
            return
        bill = billing.shown
        if bill is None:
            return
        paper = bill_pdf(bill, billing, self.bench.now(), self.bench.words)
        title = self.tr("Bill, draft, order {number}").format(number=billing.order.number)
        self.bench.work.run(paper, 0, then=lambda pdf: self._open(pdf, title))

    def show_kept(self, issued: "IssuedBill") -> None:
        """An issued bill or credit, as kept."""
        with self.bench.store.read() as work:
            paper = work.papers.get(issued.paper_id)
        if paper is None:
            return
        title = self.tr("Bill {number}") if issued.credits is None else self.tr("Credit {number}")
        self._open(paper.pdf, title.format(number=issued.number))

    def show_quote(self, billing: Billing, refused: "Callable[[BillingProblem], object]") -> None:
        """What the order will come to, as a range; `refused` is told why there is none."""
        title = self.tr("Quote, order {number}").format(number=billing.order.number)

        def made(found: bytes | BillingProblem) -> None:
            if isinstance(found, BillingProblem):
                refused(found)
            else:
                self._open(found, title)

        self.bench.work.run(self._quote, billing, then=made)

    def _quote(self, billing: Billing) -> bytes | BillingProblem:
        from desktop.office.quoting import quote_of
        from printing.bill import bill as paper_of

        quote = quote_of(self.bench.store, billing)
        if isinstance(quote, BillingProblem):
            return quote
        return paper_of(
            quote.bill,
            number=0,
            shop=billing.shop,
            customer=address_lines(billing.customer, billing.order.owner),
            made=self.bench.now(),
            words=words_for(billing.customer, self.bench.words),
            order_number=billing.order.number,
            lot_number=billing.lot.number,
            quoted=(quote.low_cents, quote.high_cents),
        )

    def show_ticket(self, billing: Billing, refused: "Callable[[str], object]") -> None:
        """The weight ticket of the order; `refused` is told in words why there is none."""
        from desktop.shell.context import CommandError
        from desktop.shell.stored_papers import ticket_paper

        number = billing.order.number
        title = self.tr("Weight ticket, order {number}").format(number=number)

        def failed(fault: Exception) -> None:
            if not isinstance(fault, CommandError):
                raise fault
            refused(str(fault))

        self.bench.work.run(
            ticket_paper,
            self.bench.store,
            number,
            self.bench.words,
            words_for(billing.customer, self.bench.words),
            then=lambda pdf: self._open(pdf, title),
            failed=failed,
        )

    def show_receipt(self, billing: Billing) -> None:
        """A receipt for the last money taken."""
        payment = billing.payments[-1]
        payer = self._payer(billing, payment)
        customer = address_lines(payer, billing.payer)
        made, words = self.bench.now(), words_for(payer, self.bench.words)

        def paper() -> bytes:
            from printing.receipt import receipt

            return receipt(
                payment,
                billing.balance,
                shop=billing.shop,
                customer=customer,
                order_number=0 if billing.for_producer else billing.order.number,
                made=made,
                words=words,
            )

        title = self.tr("Receipt {number}").format(number=payment.number)
        self.bench.work.run(paper, then=lambda pdf: self._open(pdf, title))

    def _payer(self, billing: Billing, payment: "Payment") -> "Customer | None":
        """Who paid: the owner, or whoever paid for him."""
        usual = billing.customer.id if billing.customer is not None else None
        if payment.customer_id in (None, usual):
            return billing.customer
        with self.bench.store.read() as work:
            return work.customers.get(payment.customer_id or 0)

    def show_statement(
        self, billing: Billing, basis: "PriceBasis", rate: "Fraction", deposit: int
    ) -> BillingProblem | None:
        """The producer's statement to the owner, kept and shown; None, or why it can't be made."""
        if isinstance(billing.billed, BillingProblem):
            return billing.billed
        made = statement(
            billing.billed, billing.order.share, Price(basis, rate), deposit_cents=deposit
        )
        if isinstance(made, BillingProblem):
            return made
        title = self.tr("Producer's statement, order {number}")
        title = title.format(number=billing.order.number)
        self.bench.work.run(
            self._keep_statement, made, billing, then=lambda pdf: self._open(pdf, title)
        )
        return None

    def _keep_statement(self, made: Statement, billing: Billing) -> bytes:
        from printing.statement import statement as paper_of

        pdf = paper_of(
            made,
            producer=address_lines(billing.producer, billing.lot.producer)[1:],
            buyer=address_lines(billing.customer, billing.order.owner)[1:],
            paper=billing.shop.paper,
            made=self.bench.now(),
            words=words_for(billing.customer, self.bench.words),
        )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.papers.keep(
                "statement",
                lot_id=billing.lot.id,
                order_id=billing.order.id,
                snapshot=statement_text(made),
                pdf=pdf,
            )
            work.commit()
        return pdf
