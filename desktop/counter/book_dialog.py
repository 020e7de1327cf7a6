"""Booking: the animals, the day, whose they are and who shares them."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.counter.day_room import DayRoom
from desktop.counter.share_presets import PRESETS, Preset, holdings_of
from desktop.fields import (
    ChoiceField,
    CountField,
    DateField,
    FormDialog,
    MoneyField,
    TextField,
    WeightField,
)
from shared.carcass.anatomy import catalogue, species
from shared.carcass.carcass import Regime, Skin
from shared.shop.calendar import Booking, Comes, Waiting
from shared.shop.lots import Lot, LotShare, NewLot

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.holdings import ShareFault

MOST_SHARES = 12
SKINNED_OR_SCALDED = ("pork",)


class BookDialog(FormDialog):
    """Asks what a booking needs; `lot` is what was booked."""

    def __init__(
        self, bench: "Bench", parent: QWidget | None = None, waits: Waiting | None = None
    ) -> None:
        """`waits` is a row of the waiting list: what it says is filled in, and it is booked."""
        super().__init__(parent, columns=4)
        self._bench = bench
        self.waits = waits
        self.lot: Lot | None = None
        self._day_typed = False
        self._build()
        self.retranslate()
        offer_customers(bench, (self.producer, *self.owners))
        for owner in self.owners:
            owner.offer_new_of((self.producer, *self.owners))
        self.species.set_value("pork")
        self.head.set_value(1)
        self.day.set_value(bench.today())
        self.regime.set_value("custom")
        self.shares.set_value("whole")
        if waits is not None:
            self._take_up(waits)
        self._animal_changed()
        self._propose()

    def as_well_as(self, lot: Lot) -> None:
        """One animal more of a producer who brings more than he booked: his, its kind, its day."""
        self.species.set_value(lot.species)
        self.day.set_value(lot.day)
        self.producer.set_value(lot.producer_id)
        self.regime.set_value(lot.regime)
        self.skin.set_value(lot.skin if lot.skin != "unknown" else None)
        self.keeps.set_value(lot.keeps)
        self._day_typed = True
        self._animal_changed()
        self._look()

    def _take_up(self, waits: Waiting) -> None:
        """What the waiting list says of who waits, and what he brings."""
        self.species.set_value(waits.species)
        self.head.set_value(waits.head)
        self.producer.set_value(waits.customer_id)
        self.regime.set_value(waits.comes.regime)
        self.skin.set_value(waits.comes.skin if waits.comes.skin != "unknown" else None)
        self.keeps.set_value(waits.comes.keeps)

    def _build(self) -> None:
        self.species = ChoiceField[str](required=True)
        self.head = CountField(required=True, least=1, most=200)
        self.day = DateField(self._bench.today, required=True)
        self.producer = CustomerField(required=True)
        self.regime = ChoiceField[Regime](required=True)
        self.skin = ChoiceField[Skin]()
        self.booked = WeightField()
        self.shares = ChoiceField[Preset](required=True)
        self.deposit = MoneyField()
        self.owners = [CustomerField() for _ in range(MOST_SHARES)]
        self.keeps = TextField()
        self.overrule = TextField()
        self.room = DayRoom(self._bench, self)
        for field in (self.species, self.head, self.day, self.regime):
            self.grid.add(field)
        self.grid.add(self.producer, 2)
        self.grid.add(self.booked)
        self.grid.add(self.skin)
        self.grid.add(self.shares, 2)
        self.grid.add(self.keeps)
        self.grid.add(self.deposit)
        for owner in self.owners:
            self.grid.add(owner)
        self.grid.add(self.overrule, 4)
        self.add_below(self.room)
        self.species.changed.connect(self._propose)
        self.day.changed.connect(self._keep_day)
        for field in (self.head, self.day):
            field.changed.connect(self._look)
        self.room.known.connect(self._propose)
        self.room.later.clicked.connect(self._take_next)
        self.room.wait.clicked.connect(self._put_on_list)
        self.species.changed.connect(self._animal_changed)
        self.head.changed.connect(self._fit)
        self.shares.changed.connect(self._fit)

    def retranslate(self) -> None:
        words = self._bench.words
        self.set_words(
            self.tr("Book animals"),
            self.tr("A share left empty is to be named; until then it is the producer's."),
            self.tr("&Book"),
            self.tr("&Leave it"),
        )
        self.species.set_label(self.tr("&Animal"))
        self.species.set_choices([(one, words.name("", f"species.{one}")) for one in kinds()])
        self.head.set_label(self.tr("&Head"))
        self.day.set_label(self.tr("&Day of the kill"))
        self.producer.set_label(self.tr("&Producer"))
        self.producer.hint(self.tr("name, or a new name and phone"))
        self.regime.set_label(self.tr("&Kind"))
        self.regime.set_choices([(one, words.say(f"regime.{one}")) for one in _REGIMES])
        self.skin.set_label(self.tr("Sk&inned or scalded"))
        self.skin.set_choices([(one, words.say(f"skin.{one}")) for one in _SKINS])
        self.booked.set_label(self.tr("Hanging &weight, a guess"))
        self.keeps.set_label(self.tr("Keeps hide, &offal"))
        self.shares.set_label(self.tr("&Shared as"))
        self._offer_presets()
        self.deposit.set_label(self.tr("Deposit asked of &each"))
        for place, owner in enumerate(self.owners, start=1):
            owner.set_label(self.tr("Share {number}").format(number=place))
            owner.hint(self.tr("to be named"))
        self.overrule.set_label(self.tr("Book it all the same, because"))
        self.room.retranslate()

    def attempt(self) -> str:
        self._look()
        if self.room.settle():
            self._look()
        if self.room.full and self.overrule.is_empty():
            self.overrule.complain(self.tr("The day is too full: another day, or say why."))
            return ""
        owners = self.owners[: self._shares()]
        with self._bench.store.read() as work:
            if not all(field.known(work, self._bench.messages) for field in self._named(owners)):
                return ""
        booking = Booking(
            self.day.value() or self._bench.today(),
            self.species.value() or "",
            self.head.value() or 1,
        )
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            added: dict[str, int] = {}
            producer = self.producer.settle(work, added)
            ids = [owner.settle(work, added) for owner in owners]
            if self.grid.problems() or producer is None:
                return ""
            found = work.lots.book(self._new(producer, ids))
            if isinstance(found, Lot):
                if self.room.ask_again(work, booking, found.id):
                    self._look()
                    self.overrule.complain(self.tr("Another station has just taken the place."))
                    return ""
                if self.room.full:
                    work.calendar.overrule(found.id, self.room.full, self.overrule.text())
                if self.waits is not None:
                    work.waiting.move(self.waits.id, "booked", version=self.waits.version)
                work.commit()
                self.lot = found
                return ""
        if isinstance(found, tuple):
            self.shares.complain(self._not_even(found))
            return ""
        return self.tr("This can't be booked as it stands.")

    def _keep_day(self) -> None:
        self._day_typed = True

    def _propose(self) -> None:
        """The first day from today on that can take the animals, until a day is typed."""
        if self._day_typed or self.species.value() is None:
            self._look()
            return
        self.day.set_value(self._bench.today())
        self._look()
        if self.room.next:
            self.day.set_value(self.room.next[0])
            self.room.turn_to_next()
            self._ask_why()

    def _look(self) -> None:
        """What the day has left; the field for a reason is there when it is too full."""
        kind, head, day = self.species.value(), self.head.value(), self.day.value()
        if kind is None or head is None or day is None:
            self.room.look(None)
        else:
            self.room.look(Booking(day, kind, head))
        self._ask_why()

    def _ask_why(self) -> None:
        self.overrule.setVisible(bool(self.room.full))
        self.overrule.setEnabled(bool(self.room.full))
        self.grid.close_up()

    def _take_next(self) -> None:
        self._day_typed = True
        self.day.set_value(self.room.next[0])
        self._look()
        self.day.focus()

    def _put_on_list(self) -> None:
        """The producer waits for a place; nothing is booked."""
        kind, head, day = self.species.value(), self.head.value(), self.day.value()
        if kind is None or head is None or day is None:
            return
        with self._bench.store.read() as work:
            if not self.producer.known(work, self._bench.messages):
                return
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            producer = self.producer.settle(work, {})
            if producer is None:
                self.producer.complain(self.tr("Say who waits."))
                self.producer.focus()
                return
            work.waiting.add(producer, kind, head, day, comes=self._comes())
            work.commit()
        self.room.wait.setEnabled(False)
        self.refuse(self.tr("On the waiting list. Nothing is booked."))

    def _comes(self) -> Comes:
        skin = self.skin.value() if self.skin.isEnabled() else None
        regime = self.regime.value() or "custom"
        return Comes(skin or "unknown", regime, self.keeps.value() or "")

    def _named(self, owners: list[CustomerField]) -> list[CustomerField]:
        """The fields to ask about, one of those in which the same was typed."""
        found: dict[str, CustomerField] = {}
        for field in (self.producer, *owners):
            found.setdefault(field.text().strip().casefold(), field)
        return list(found.values())

    def _new(self, producer: int, ids: list[int | None]) -> NewLot:
        head = self.head.value() or 1
        held = holdings_of(self.shares.value() or "whole", head)
        deposit = self.deposit.value() or 0
        shares = tuple(
            LotShare(number, customer, holdings=holdings, deposit_asked=deposit)
            for number, (customer, holdings) in enumerate(zip(ids, held, strict=True), start=1)
        )
        comes = self._comes()
        return NewLot(
            species=self.species.value() or "",
            head=head,
            day=self.day.value() or self._bench.today(),
            producer_id=producer,
            shares=shares,
            skin=comes.skin,
            regime=comes.regime,
            booked=self.booked.value(),
            keeps=comes.keeps,
        )

    def _not_even(self, faults: "tuple[ShareFault, ...]") -> str:
        if any(fault.code == "over" for fault in faults):
            return self.tr("The shares come to more than the animal.")
        return self.tr("The shares don't come to the whole animal.")

    def _shares(self) -> int:
        preset, head = self.shares.value(), self.head.value()
        if preset is None or head is None:
            return 0
        return len(holdings_of(preset, head))

    def _animal_changed(self) -> None:
        if self.species.value() is not None:
            self._offer_presets()
        self._fit()

    def _fit(self) -> None:
        kind = self.species.value()
        self.skin.setVisible(kind in SKINNED_OR_SCALDED)
        self.skin.setEnabled(kind in SKINNED_OR_SCALDED)
        count = self._shares()
        if count > MOST_SHARES:
            self.shares.complain(
                self.tr("At most {most} owners in one booking: book the others apart.").format(
                    most=MOST_SHARES
                )
            )
        for place, owner in enumerate(self.owners):
            owner.setVisible(place < count)
            owner.setEnabled(place < count)
        self.grid.close_up()

    def _offer_presets(self) -> None:
        self.shares.set_choices(preset_choices(self.species.value()))


_REGIMES: tuple[Regime, ...] = ("custom", "inspected")
_SKINS: tuple[Skin, ...] = ("scalded", "skinned", "unknown")


def preset_choices(kind: str | None) -> list[tuple[Preset, str]]:
    """The ways to share an animal, in words; quarters only where they are told apart."""
    translate = QCoreApplication.translate
    words: dict[Preset, str] = {
        "whole": translate("BookDialog", "whole, one owner"),
        "halves": translate("BookDialog", "two halves"),
        "quarters": translate("BookDialog", "four quarters: fore and hind of each side"),
        "half_and_quarters": translate("BookDialog", "one half, a forequarter and a hindquarter"),
        "split_quarters": translate("BookDialog", "four split quarters: each side shared by two"),
        "each": translate("BookDialog", "each animal its own owner"),
    }
    quartered = kind is None or _quartered(kind)
    return [
        (one, words[one])
        for one in PRESETS
        if quartered or one not in ("quarters", "half_and_quarters")
    ]


def kinds() -> list[str]:
    """The animals there are figures for, the commonest first."""
    usual = ["pork", "beef", "lamb", "goat", "deer"]
    there = species()
    return [one for one in usual if one in there] + [one for one in there if one not in usual]


def _quartered(kind: str) -> bool:
    """Whether fore- and hindquarters of the animal are told apart: hogs' are not."""
    return any(part.quarter for part in catalogue(kind).parts.values())
