"""A new rate card: name, day, animals and customers, and every charge's rate in a list."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from fractions import Fraction
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, DateField, FormDialog, RateField, TextField
from desktop.fields.dates import date_text
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.card_problems import BACK, doubts, never_there, steep
from desktop.office.charge_columns import charge_columns
from desktop.office.charge_dialog import ChargeDialog
from desktop.office.late_dialog import LateDialog
from desktop.office.money_words import charge_words, complaint
from desktop.office.usual_charges import usual_charges
from desktop.panels.buttons import button
from desktop.tables import RowsModel, Table
from shared.billing.rates import Charge, LateTerms, RateCard, check_card
from shared.carcass.anatomy import species
from shared.money import rate_text

if TYPE_CHECKING:
    from PySide6.QtCore import QEvent

    from desktop.bench import Bench
    from shared.carcass.carcass import Regime

Keep = Callable[[RateCard], None]
Try = Callable[[RateCard, QWidget], object]


class RateCardDialog(FormDialog):
    """Begun from `start`; `keep` stores it, `try_card` shows it on last month's animals.

    A charge left at nothing without steps isn't on the card. `cards` are those in use: holes in
    their dates with this one are said once before it is kept.
    """

    def __init__(
        self,
        bench: "Bench",
        start: RateCard | None,
        cards: Sequence[RateCard],
        keep: Keep,
        try_card: Try,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self.setMinimumWidth(1000)
        self.bench = bench
        self._cards, self._keep, self._try = cards, keep, try_card
        self._start = start
        self._late = start.late if start is not None else None
        self._warned = ""
        self.rows: list[Charge] = self._first_rows()
        self._build()
        self.retranslate()
        self._begin()

    def _first_rows(self) -> list[Charge]:
        mine = list(self._start.charges) if self._start is not None else []
        known = {one.code for one in mine}
        return [*mine, *(one for one in usual_charges() if one.code not in known)]

    def _build(self) -> None:
        self.name = TextField(self, required=True)
        self.holds_from = DateField(self.bench.today, self, required=True)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.regime: ChoiceField[Regime | Literal[""]] = ChoiceField(self, required=True)
        self.group = TextField(self)
        for field in (self.name, self.holds_from, self.species, self.regime, self.group):
            self.grid.add(field)
        self.table: Table[Charge] = Table(
            RowsModel(charge_columns(self, self.bench)), self, sortable=False
        )
        self.table.setMinimumSize(820, 232)
        self.rate = RateField(self)
        self.more = button(self)
        self.other = button(self)
        self.late = button(self)
        self.tried = button(self)
        below = QWidget(self)
        down = column(below, gap=TOGETHER)
        down.addWidget(self.table)
        across = row(gap=GROUP)
        across.addWidget(self.rate, 1)
        for one in (self.more, self.other, self.late, self.tried):
            across.addWidget(one, 0, Qt.AlignmentFlag.AlignBottom)
        down.addLayout(across)
        self.add_below(below)
        self._connect()

    def _connect(self) -> None:
        self.table.moved.connect(self._moved)
        self.table.picked.connect(lambda _row: self.rate.focus())
        self.rate.line.installEventFilter(self)
        for one, keys, slot in (
            (self.more, "F2", self.change),
            (self.other, "Ctrl+N", self.add),
            (self.late, "F6", self.ask_late),
            (self.tried, "F7", self.try_it_out),
        ):
            one.clicked.connect(slot)
            one.setAutoDefault(False)
            QShortcut(QKeySequence(keys), self).activated.connect(slot)

    def _begin(self) -> None:
        card = self._start
        self.holds_from.set_value(self.bench.today())
        self.species.set_value("")
        self.regime.set_value("")
        if card is not None:
            self.name.set_value(card.name)
            self.species.set_value(card.species[0] if len(card.species) == 1 else "")
            self.regime.set_value(card.regime)
            self.group.set_value(card.group)
        self.table.show_rows(self.rows)
        self.table.choose(0)

    def retranslate(self) -> None:
        words = self.bench.words
        self.set_words(
            self.tr("New rate card"),
            self.tr("Type each rate and press Enter. What is left empty isn't charged."),
            self.tr("&Keep (Ctrl+Enter)"),
            self.tr("&Leave it"),
        )
        self.name.set_label(self.tr("&Name"))
        self.holds_from.set_label(self.tr("&Holds from"))
        self.species.set_label(self.tr("&For"))
        every = [(one, words.name(one, f"species.{one}")) for one in species()]
        self.species.set_choices([("", self._all_animals()), *every])
        self.regime.set_label(self.tr("K&illed"))
        self.regime.set_choices(
            [
                ("", self.tr("inspected or custom")),
                ("inspected", self.tr("under inspection")),
                ("custom", self.tr("custom")),
            ]
        )
        self.group.set_label(self.tr("Only for customers of &group"))
        self.table.set_name(self.tr("Charges of the card"))
        self.more.setText(self.tr("All a&bout it… (F2)"))
        self.other.setText(self.tr("&Other charge… (Ctrl+N)"))
        self.late.setText(self.tr("L&ate payment… (F6)"))
        self.tried.setText(self.tr("&Try it… (F7)"))

    def _all_animals(self) -> str:
        card = self._start
        if card is None or len(card.species) < 2:
            return self.tr("all animals")
        return ", ".join(self.bench.words.name(one, f"species.{one}") for one in card.species)

    def eventFilter(self, watched: QObject, event: "QEvent") -> bool:
        """Enter in the rate goes on to the next charge; up and down go along the list."""
        if watched is self.rate.line and isinstance(event, QKeyEvent):
            press = event.type() is QKeyEvent.Type.KeyPress
            plain = not event.modifiers() & Qt.KeyboardModifier.ControlModifier
            steps = {
                Qt.Key.Key_Return: 1,
                Qt.Key.Key_Enter: 1,
                Qt.Key.Key_Down: 1,
                Qt.Key.Key_Up: -1,
            }
            step = steps.get(Qt.Key(event.key()))
            if step is not None and plain:
                if press and self.take_rate():
                    self.table.choose(max(self.table.currentIndex().row() + step, 0))
                return True
        return super().eventFilter(watched, event)

    def _moved(self, charge: Charge | None) -> None:
        if charge is None:
            return
        said = charge_words(charge.code, self.bench.words, charge.name)
        basis = self.bench.words.say(f"bills.basis_{charge.basis}")
        self.rate.set_label(self.tr("&Rate: {charge}, {basis}").format(charge=said, basis=basis))
        self.rate.set_value(charge.rate or None)
        self.rate.line.selectAll()

    def take_rate(self) -> bool:
        """Take the rate typed for the chosen charge; complain at the field where it can't be."""
        charge = self.table.chosen()
        if charge is None:
            return True
        if self.rate.show_problem():
            return False
        taken = replace(charge, rate=self.rate.value() or Fraction(0))
        card = RateCard("one", "one", self.bench.today(), charges=(taken,))
        problems = [one for one in check_card(card) if one.code.startswith("rate_")]
        if problems:
            self.rate.complain(complaint(problems[0]))
            return False
        self._put(charge, taken)
        return True

    def _put(self, before: Charge | None, now: Charge) -> None:
        if before is None:
            self.rows.append(now)
        elif before != now:
            self.rows[self.rows.index(before)] = now
        else:
            return
        self.begun = True
        self.table.show_rows(self.rows, now)

    def change(self) -> None:
        """All about the chosen charge."""
        charge = self.table.chosen()
        if charge is not None and self.take_rate():
            self._ask(self.table.chosen())

    def add(self) -> None:
        """A charge that isn't in the list."""
        self._ask(None)

    def _ask(self, charge: Charge | None) -> None:
        others = {one.code for one in self.rows if charge is None or one.code != charge.code}
        self.charge_dialog = ChargeDialog(
            self.bench,
            charge,
            others,
            lambda now: self._put(charge, now),
            self,
            self._animals(),
        )
        self.charge_dialog.open()

    def ask_late(self) -> None:
        """Interest on late payment."""
        self.late_dialog = LateDialog(self._late, self._set_late, self)
        self.late_dialog.open()

    def _set_late(self, terms: LateTerms | None) -> None:
        self._late, self.begun = terms, True

    def card(self) -> RateCard | None:
        """The card as it stands; None where something can't be taken, which is then complained."""
        if not self.take_rate():
            self.rate.focus()
            return None
        if not self.grid.show_problems():
            return None
        name, day = self.name.value(), self.holds_from.value()
        if name is None or day is None:
            return None
        return RateCard(
            code=name.casefold().replace(" ", "-"),
            name=name,
            holds_from=day,
            species=self._animals(),
            regime=self.regime.value() or "",
            group=self.group.value() or "",
            charges=tuple(one for one in self.rows if one.rate or one.steps),
            late=self._late,
        )

    def _animals(self) -> tuple[str, ...]:
        """The species of the card; none means all."""
        chosen = self.species.value()
        several = self._start.species if self._start is not None else ()
        return (chosen,) if chosen else several if len(several) > 1 else ()

    def try_it_out(self) -> None:
        """Show the card as it stands on last month's animals."""
        self.refuse("")
        card = self.card()
        if card is not None and self._can(card):
            self._try(card, self)

    def _can(self, card: RateCard) -> bool:
        if not card.charges:
            self.refuse(self.tr("Say at least one rate."))
            return False
        problems = check_card(card)
        for problem in problems:
            self.refuse(complaint(problem))
            code = problem.data.get("charge", "")
            at = [place for place, one in enumerate(self.rows) if one.code == code]
            if at:
                self.table.choose(at[0])
        return not problems

    def _booked(self) -> set[tuple[str, date]]:
        """The species and days of the last two months' bookings."""
        today = self.bench.today()
        with self.bench.store.read() as work:
            return {(one.species, one.day) for one in work.calendar.lots(today - BACK, today)}

    def attempt(self) -> str:
        card = self.card()
        if card is None or not self._can(card):
            return self.refusal.text() or self.rate.problem()
        said = " ".join(
            one
            for one in (
                doubts(card, self._cards, self.bench.today(), self._doubt, self._booked()),
                *(self._never(one) for one in never_there(card, self.bench.words)),
                *(self._steep(one, rate) for one, rate in steep(card)),
            )
            if one
        )
        if said and said != self._warned:
            self._warned = said
            return said + " " + self.tr("Keep it again if that is meant.")
        self._keep(card)
        return ""

    def _never(self, charge: Charge) -> str:
        said = charge_words(charge.code, self.bench.words, charge.name)
        return self.tr("{charge}: these animals have none of its cuts; it is never billed.").format(
            charge=said
        )

    def _steep(self, charge: Charge, rate: Fraction) -> str:
        said = charge_words(charge.code, self.bench.words, charge.name)
        basis = self.bench.words.say(f"bills.basis_{charge.basis}")
        return self.tr("{charge} at {rate} {basis} is uncommonly much.").format(
            charge=said, rate=rate_text(rate), basis=basis
        )

    def _doubt(self, code: str, data: Mapping[str, str]) -> str:
        """A hole in the dates, or two cards from one day, in a sentence."""
        language = self.bench.words.language
        days = {
            key: date_text(date.fromisoformat(data[key]), language)
            for key in ("start", "end", "day")
            if key in data
        }
        if code == "two_cards":
            return self.tr(
                "{other} holds for the same animals from {day} too; the one kept last is used."
            ).format(other=data["other"], **days)
        name = self.bench.words.name(data["species"], f"species.{data['species']}")
        return self.tr("No card holds for {animal} from {start} to {end}.").format(
            animal=name, **days
        )
