"""The columns of the Office's tables: orders to bill, and the lines of a bill."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.look.patterns import Mark
from desktop.office.money_words import basis_words, line_words
from desktop.tables import Column, Figure, count_column, figure, money_column
from printing.written import about_pounds, head_text, number_text, pounds
from shared.billing.bill import Bill, BillLine, TaxSum
from shared.billing.journal import percent_text
from shared.money import money_text, rate_text
from shared.shop.lists import OrderRow

if TYPE_CHECKING:
    from fractions import Fraction

    from desktop.bench import Bench

BillRow = BillLine | TaxSum


class BillColumns(QObject):
    """Says the columns; a QObject so that its words are translated."""

    def __init__(self, bench: "Bench", parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench
        self.bill: Bill | None = None  # whose lines are shown

    def orders(self) -> list[Column[OrderRow]]:
        """An order with what is billed and due."""
        return [
            count_column("number", lambda: self.tr("Order"), lambda row: row.number, width=70),
            Column("owner", lambda: self.tr("Owner"), lambda row: row.owner, stretch=True),
            Column("animal", lambda: self.tr("Animal"), self._animal, width=130),
            Column(
                "state",
                lambda: self.tr("State"),
                lambda row: self.state(row.state),
                kind="state",
                mark=lambda row: Mark.SETTLED if row.state == "handed_over" else Mark.OPEN,
                width=130,
            ),
            money_column("billed", lambda: self.tr("Billed"), lambda row: row.billed_cents, 100),
            money_column("due", lambda: self.tr("Due"), lambda row: row.due_cents, 100),
        ]

    def lines(self) -> list[Column[BillRow]]:
        """A line of a bill: what for, by what, how much, at what rate; below them the tax."""
        return [
            Column("what", lambda: self.tr("For"), self._what, stretch=True, tip=self._what),
            Column("basis", lambda: self.tr("Charged"), self._basis, width=152),
            Column(
                "quantity", lambda: self.tr("Quantity"), self._quantity, kind="figure", width=130
            ),
            Column("rate", lambda: self.tr("Rate"), self._rate, kind="figure", width=90),
            Column("amount", lambda: self.tr("Amount"), self._amount, kind="figure", width=100),
        ]

    def _what(self, line: BillRow) -> str:
        if isinstance(line, TaxSum):
            return self.bench.words.say("bills.tax_sum")
        return line_words(line, self.bench.words)

    def _basis(self, line: BillRow) -> str:
        if isinstance(line, TaxSum):
            return ""
        return basis_words(line, self.bench.words)

    def _rate(self, line: BillRow) -> Figure:
        if isinstance(line, TaxSum):
            return Figure(percent_text(line.rate), "%")
        return Figure("" if line.rate is None else _rate(line.rate))

    def _amount(self, line: BillRow) -> Figure:
        if isinstance(line, TaxSum):
            return Figure(money_text(line.cents))
        return Figure(self.tr("waits") if line.kind == "waiting" else money_text(line.amount_cents))

    def state(self, state: str) -> str:
        """How far an order is."""
        return {
            "open": self.tr("open"),
            "settled": self.tr("settled"),
            "released": self.tr("at the block"),
            "cut": self.tr("being wrapped"),
            "ready": self.tr("ready"),
            "handed_over": self.tr("handed over"),
        }.get(state, state)

    def _animal(self, row: OrderRow) -> str:
        animal = self.bench.words.name(row.species, f"species.{row.species}")
        return f"{animal} {row.tags}".strip()

    def _quantity(self, line: BillRow) -> Figure:
        """How much of it, as paper says it: "½ head", in Spanish "½ cabeza"."""
        if isinstance(line, TaxSum):
            return Figure(money_text(line.on_cents))
        if line.quantity is None:
            return Figure("")
        if line.unit == "lb":
            expected = self.bill is not None and self.bill.expects(line)
            return figure((about_pounds if expected else pounds)(line.quantity))
        if line.unit == "each":
            return Figure(number_text(line.quantity))
        heads = line.unit == "head"
        text = head_text(line.quantity) if heads else number_text(line.quantity)
        few = 1 if line.quantity <= 1 else 2
        said = self.bench.words.say(f"bills.unit_{line.unit}", few, number="")
        return Figure(text, said.strip())


def _rate(rate: "Fraction") -> str:
    try:
        return rate_text(rate)
    except ValueError:
        return ""
