"""The columns of the Office's tables: orders to bill, and the lines of a bill."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.look.patterns import Mark
from desktop.office.money_words import basis_words, line_words
from desktop.tables import Column, Figure, count_column, figure, money_column
from printing.written import about_pounds, head_text, number_text, pounds
from shared.billing.bill import Bill, BillLine
from shared.money import money_text, rate_text
from shared.shop.lists import OrderRow

if TYPE_CHECKING:
    from fractions import Fraction

    from desktop.bench import Bench


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

    def lines(self) -> list[Column[BillLine]]:
        """A line of a bill: what for, by what, how much, at what rate."""
        words = self.bench
        return [
            Column(
                "what",
                lambda: self.tr("For"),
                lambda line: line_words(line, words.words),
                stretch=True,
                tip=lambda line: line_words(line, words.words),
            ),
            Column(
                "basis",
                lambda: self.tr("Charged"),
                lambda line: basis_words(line, words.words),
                width=152,
            ),
            Column(
                "quantity", lambda: self.tr("Quantity"), self._quantity, kind="figure", width=130
            ),
            Column(
                "rate",
                lambda: self.tr("Rate"),
                lambda line: Figure("" if line.rate is None else _rate(line.rate)),
                kind="figure",
                width=90,
            ),
            Column(
                "amount",
                lambda: self.tr("Amount"),
                lambda line: Figure(
                    self.tr("waits") if line.kind == "waiting" else money_text(line.amount_cents)
                ),
                kind="figure",
                width=100,
            ),
        ]

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

    def _quantity(self, line: BillLine) -> Figure:
        """How much of it, as paper says it: "½ head", in Spanish "½ cabeza"."""
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
