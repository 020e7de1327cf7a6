"""Rate cards: every card with its charges, and a new card from a day on."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields.dates import date_text
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.charge_columns import charge_columns
from desktop.office.rate_card_dialog import RateCardDialog
from desktop.office.trial_dialog import TrialDialog
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.tables import Column, Figure, RowsModel, Table
from shared.billing.rates import Charge, RateCard

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
        self.tried = button(self)
        top.addWidget(self.lead, 1)
        top.addWidget(self.tried)
        top.addWidget(self.new)
        down.addLayout(top)
        self.cards: Table[RateCard] = Table(RowsModel(self._card_columns()), self)
        self.charges: Table[Charge] = Table(
            RowsModel(charge_columns(self, bench)), self, sortable=False
        )
        self.none = EmptyState(self)
        self.none.hide()
        down.addWidget(self.cards, 2)
        down.addWidget(self.charges, 3)
        down.addWidget(self.none, 1)
        self.cards.moved.connect(self._moved)
        self.new.clicked.connect(self.new_card)
        self.tried.clicked.connect(self.try_chosen)
        for keys, slot in (("Ctrl+N", self.new_card), ("F7", self.try_chosen)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)
        self.retranslate()

    def retranslate(self) -> None:
        """Every word of the page."""
        self.lead.setText(
            self.tr("A card never changes. New rates are a new card that holds from a later day.")
        )
        self.new.setText(self.tr("&New card… (Ctrl+N)"))
        self.tried.setText(self.tr("&Try it on last month… (F7)"))
        self.none.set_words(
            self.tr("No rate card yet"),
            self.tr(
                "A rate card says what the shop charges, by the head, the pound or the package, "
                "and from which day. Without one there is no bill and no quote. Ctrl+N begins "
                "one: the usual charges are listed, type each rate and press Enter; what is left "
                "empty isn't charged. One card may hold for all animals, or each has its own."
            ),
        )
        self.cards.set_name(self.tr("Rate cards"))
        self.charges.set_name(self.tr("Charges of the card"))

    def refresh(self) -> None:
        """Read the cards again, newest first."""
        with self.bench.store.read() as work:
            cards = sorted(work.rates.all(), key=lambda one: one.holds_from, reverse=True)
        for part in (self.cards, self.charges, self.tried):
            part.setVisible(bool(cards))
        self.none.setVisible(not cards)
        self.cards.show_rows(cards, self.cards.chosen())
        self._moved(self.cards.chosen())

    def first_focus(self) -> QWidget:
        """The cards; where there are none, what begins one."""
        return self.new if self.cards.isHidden() else self.cards

    def new_card(self) -> None:
        """Ask for a new card, begun from the chosen one."""
        self.dialog = RateCardDialog(
            self.bench,
            self.cards.chosen(),
            self.cards.rows.rows(),
            self._keep,
            self._try,
            self,
        )
        self.dialog.open()

    def try_chosen(self) -> None:
        """Try the chosen card on last month's animals."""
        card = self.cards.chosen()
        if card is not None:
            self._try(card, self)

    def _try(self, card: RateCard, over: QWidget) -> None:
        self.trial = TrialDialog(self.bench, card, over)
        self.trial.open()

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
        self.first_focus().setFocus()  # the first one was begun where there was no list

    def _moved(self, card: RateCard | None) -> None:
        self.tried.setEnabled(card is not None)
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
