"""What an order gives and costs, at the foot of the panel: weight, packages, freezer, price."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from desktop.counter.choice_words import range_words
from desktop.look.space import STEP, TOGETHER
from desktop.panels.heading import Words
from printing.words.choice_words import fraction_text
from shared.carcass.weights import side_weights
from shared.cutting.forecast import Range
from shared.cutting.freezer_space import freezer_space
from shared.cutting.promise import promised
from shared.cutting.where_it_went import hanging_ng
from shared.money import money_text
from shared.units import whole_pounds_text

if TYPE_CHECKING:
    from fractions import Fraction

    from desktop.counter.order_desk import OrderDesk
    from desktop.counter.price import Price
    from printing.words import Words as TradeWords
    from shared.billing.bill import BillLine

MOST_CHARGES = 6


class OrderFigures(QWidget):
    """Names in steel at the left, figures at the right; below the price what it is made of."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(TOGETHER)
        self._grid.setVerticalSpacing(STEP)
        self._grid.setColumnStretch(0, 1)
        self._rows: list[tuple[Words, Words]] = []

    def show_figures(self, desk: "OrderDesk", found: "Price | None", words: "TradeWords") -> None:
        """Show what the plan gives the shown owner, and what it comes to so far."""
        mine = [one for one in desk.question.shares if one.number == desk.share]
        hanging = sum(hanging_ng(one, desk.question, desk.catalogue) for one in mine)
        home = promised(desk.dealt, desk.share, hanging, desk.catalogue)
        packages = desk.dealt.packages(desk.share)
        least, most = freezer_space(home.low, home.high)
        none = self.tr("nothing yet")
        rows = [
            self._hanging(desk, words),
            *self._home(desk, home),
            (self.tr("Packages"), range_words(packages) if packages.high else none),
            (
                self.tr("Freezer, 25 to 40 lb a ft³"),
                self.tr("{span} ft³").format(span=_feet(least, most)) if most else none,
            ),
        ]
        self._show(rows, *self._priced(found, words))

    def _home(self, desk: "OrderDesk", home: Range) -> list[tuple[str, str]]:
        """Take-home, and before it what the lines come to where plants see less than that."""
        span = _span(whole_pounds_text(home.low), whole_pounds_text(home.high))
        if not home.high:
            return [(self.tr("Take-home"), self.tr("nothing yet"))]
        lines = desk.dealt.finished(desk.share).mid
        if lines <= home.high:
            return [(self.tr("Take-home"), span)]
        return [
            (self.tr("Lines by the tables"), whole_pounds_text(lines)),
            (self.tr("Take-home as plants see it"), span),
        ]

    def spoken(self) -> list[str]:
        """Every row as "name: figure", first to last."""
        shown = [pair for pair in self._rows if pair[0].isVisibleTo(self)]
        return [f"{name.text()}: {figure.text()}" for name, figure in shown]

    def _hanging(self, desk: "OrderDesk", words: "TradeWords") -> tuple[str, str]:
        total, basis = 0, ""
        for carcass in desk.question.carcasses:
            sides = side_weights(carcass, desk.catalogue)
            total += sum(side.hanging_ng for side in sides)
            basis = sides[0].basis
        name = self.tr("Whole lot chilled, by {basis}").format(basis=words.say(f"basis.{basis}"))
        return name, whole_pounds_text(total)

    def _priced(
        self, found: "Price | None", words: "TradeWords"
    ) -> tuple[tuple[str, str], list[tuple[str, str]]]:
        if found is None:
            return (self.tr("Price so far"), self.tr("no rates for this yet")), []
        charges: dict[str, int] = {}
        waiting: list[str] = []
        for line in found.bill.lines:
            name = charge_words(line, words)
            if line.kind == "waiting":
                waiting.append(name)
            charges[name] = charges.get(name, 0) + line.amount_cents
        rows = [
            (name, self.tr("waits") if name in waiting else money_text(cents))
            for name, cents in charges.items()
            if cents or name in waiting
        ]
        if found.bill.tax_cents:
            rows.append((self.tr("Tax"), money_text(found.bill.tax_cents)))
        if len(rows) > MOST_CHARGES:
            rest = rows[MOST_CHARGES - 1 :]
            rows = rows[: MOST_CHARGES - 1]
            rows.append((self.tr("{count} more").format(count=len(rest)), ""))
        spread = _span(money_text(found.low), money_text(found.high))
        return (self.tr("Price so far, by the rates"), spread), rows

    def _show(
        self,
        rows: list[tuple[str, str]],
        price: tuple[str, str],
        charges: list[tuple[str, str]],
    ) -> None:
        wanted = [(*one, False) for one in [*rows, price]] + [(*one, True) for one in charges]
        while len(self._rows) < len(wanted):
            self._add(small=len(self._rows) > len(rows))
        for place, (name, figure) in enumerate(self._rows):
            shown = place < len(wanted)
            name.setVisible(shown)
            figure.setVisible(shown)
            if shown:
                name.setText(("\u2003" if wanted[place][2] else "") + wanted[place][0])
                figure.setText(wanted[place][1])

    def _add(self, *, small: bool) -> None:
        size = "small" if small else "body"
        name = Words(size, "quiet", self).wrapped()
        figure = Words(size, parent=self)
        figure.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._grid.addWidget(name, len(self._rows), 0)
        self._grid.addWidget(figure, len(self._rows), 1)
        self._rows.append((name, figure))


def charge_words(line: "BillLine", words: "TradeWords") -> str:
    """What a line of a bill is for: the shop's own words, else the catalogue's."""
    if line.name:
        return line.name
    if line.kind == "credit":
        return words.say("bills.credit")
    key = f"charge.{line.code}"
    return words.say(key) if words.has(key) else line.code


def _span(low: str, high: str) -> str:
    return low if low == high else f"{low} – {high}"


def _feet(low: "Fraction", high: "Fraction") -> str:
    return _span(fraction_text(low), fraction_text(high))
