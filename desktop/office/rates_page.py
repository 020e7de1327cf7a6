"""Rate cards: every card with its charges, and a new card from a day on."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields.dates import date_text
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.money_words import charge_words
from desktop.office.rate_card_dialog import RateCardDialog
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.tables import Column, Figure, RowsModel, Table
from shared.billing.rates import Charge, RateCard
from shared.money import money_text, rate_text

if TYPE_CHECKING:
    from desktop.bench import Bench


class RatesPage(QWidget):
    """Cards above, the chosen card's charges below.

    Signals:
        said: a sentence for the status line.
        changed: a card was kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        down = column(self, gap=TOGETHER, edge=GROUP)
        top = row(gap=TOGETHER)
        self.lead = Words("body", "quiet", self).wrapped()
        self.new = button(self, main=True)
        top.addWidget(self.lead, 1)
        top.addWidget(self.new)
        down.addLayout(top)
        self.cards: Table[RateCard] = Table(RowsModel(self._card_columns()), self)
        self.charges: Table[Charge] = Table(RowsModel(self._charge_columns()), self, sortable=False)
        down.addWidget(self.cards, 2)
        down.addWidget(self.charges, 3)
        self.cards.moved.connect(self._moved)
        self.new.clicked.connect(self.new_card)
        shortcut = QShortcut(QKeySequence("Ctrl+N"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.new_card)
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the page."""
        self.lead.setText(
            self.tr("A card never changes. New rates are a new card that holds from a later day.")
        )
        self.new.setText(self.tr("&New card… (Ctrl+N)"))
        self.cards.set_name(self.tr("Rate cards"))
        self.charges.set_name(self.tr("Charges of the card"))

    def refresh(self) -> None:
        """Read the cards again, newest first."""
        with self.bench.store.read() as work:
            cards = sorted(work.rates.all(), key=lambda one: one.holds_from, reverse=True)
        self.cards.show_rows(cards, self.cards.chosen())
        self._moved(self.cards.chosen())

    def new_card(self) -> None:
        """Ask for a new card, begun from the chosen one."""
        self.dialog = RateCardDialog(self.bench, self.cards.chosen(), self._keep, self)
        self.dialog.open()

    def _keep(self, card: RateCard) -> None:
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            kept = work.rates.save(card)
            work.commit()
        self.said.emit(
            self.tr("{name} holds from {day}.").format(
                name=kept.name, day=date_text(kept.holds_from, self.bench.words.language)
            )
        )
        self.changed.emit()
        self.refresh()

    def _moved(self, card: RateCard | None) -> None:
        self.charges.show_rows(list(card.charges) if card is not None else [])

    def _card_columns(self) -> list[Column[RateCard]]:
        return [
            Column("name", lambda: self.tr("Card"), lambda card: card.name, stretch=True),
            Column(
                "from",
                lambda: self.tr("Holds from"),
                lambda card: date_text(card.holds_from, self.bench.words.language),
                kind="date",
                sort=lambda card: card.holds_from,
                width=150,
            ),
            Column("species", lambda: self.tr("For"), self._species, width=220),
            Column(
                "charges",
                lambda: self.tr("Charges"),
                lambda card: Figure(str(len(card.charges))),
                kind="figure",
                width=90,
            ),
        ]

    def _species(self, card: RateCard) -> str:
        if not card.species:
            return self.tr("all animals")
        return ", ".join(self.bench.words.name(one, f"species.{one}") for one in card.species)

    def _charge_columns(self) -> list[Column[Charge]]:
        return [
            Column(
                "what",
                lambda: self.tr("Charge"),
                lambda one: charge_words(one.code, self.bench.words, one.name),
                stretch=True,
            ),
            Column(
                "basis",
                lambda: self.tr("Charged"),
                lambda one: self.bench.words.say(f"bills.basis_{one.basis}"),
                width=200,
            ),
            Column(
                "rate",
                lambda: self.tr("Rate"),
                lambda one: Figure(_shown(one.rate)),
                kind="figure",
                width=110,
            ),
            Column(
                "minimum",
                lambda: self.tr("Minimum"),
                lambda one: Figure(money_text(one.minimum) if one.minimum else ""),
                kind="figure",
                width=110,
            ),
            Column(
                "falls_to",
                lambda: self.tr("Paid by"),
                lambda one: (
                    self.tr("the producer") if one.falls_to == "producer" else self.tr("the owner")
                ),
                width=140,
            ),
        ]


def _shown(rate: Fraction) -> str:
    try:
        return rate_text(rate)
    except ValueError:
        return ""
