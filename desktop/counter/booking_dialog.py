"""A booking afterwards: its day, producer, kind, owners and notes; or cancelled with a reason."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from desktop.counter.book_dialog import MOST_SHARES, SKINNED_OR_SCALDED, preset_choices
from desktop.counter.customer_field import CustomerField, offer_customers
from desktop.counter.day_room import DayRoom
from desktop.counter.one_animal import movable
from desktop.counter.one_animal_dialog import OneAnimalDialog
from desktop.counter.share_presets import Preset, holdings_of
from desktop.fields import ChoiceField, DateField, FormDialog, TextField, WeightField
from desktop.fields.dates import date_text
from desktop.look.space import row
from desktop.panels.buttons import button
from shared.carcass.carcass import Regime, Skin
from shared.money import money_text
from shared.shop.calendar import Booking
from shared.shop.leading import kept_leaders
from shared.shop.lots import Lot, LotShare
from shared.shop.problems import Refused, StaleEdit
from shared.shop.states import NOT_HERE

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench

AS_IT_IS = ""
BEFORE_THE_KILL = ("booked", "arrived", "refused", "not_come")


class BookingDialog(FormDialog):
    """`lot` is the booking as it stands; cancelled when it was cancelled here."""

    def __init__(self, bench: "Bench", lot_id: int, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self._bench = bench
        with bench.store.read() as work:
            found = work.lots.get(lot_id)
            assert found is not None
            self.lot: Lot = found
            self._needed = work.calendar.needed_by(lot_id)
        self._losing: tuple[LotShare, ...] = ()  # who is led, asked about once
        self._build()
        there = [found.producer_id, *(one.customer_id for one in found.shares)]
        offer_customers(bench, (self.producer, *self.owners), there)
        for owner in self.owners:
            owner.offer_new_of((self.producer, *self.owners))
        self.retranslate()
        self._fill()
        self._fit()
        self._look()

    @property
    def killed(self) -> bool:
        """Whether any of its animals is past the kill."""
        return any(one.state not in BEFORE_THE_KILL for one in self.lot.animals)

    def _build(self) -> None:
        self.day = DateField(self._bench.today, required=True)
        self.producer = CustomerField(required=True)
        self.regime = ChoiceField[Regime](required=True)
        self.skin = ChoiceField[Skin]()
        self.booked = WeightField()
        self.keeps = TextField()
        self.note = TextField()
        self.shares: ChoiceField[str] = ChoiceField(required=True)
        most = max(MOST_SHARES, len(self.lot.shares))
        self.owners = [CustomerField() for _ in range(most)]
        self.overrule = TextField()
        self.room = DayRoom(self._bench, self, without=self.lot.id)
        self.cancel = button(self)
        self.one = button(self)
        self.grid.add(self.day)
        self.grid.add(self.producer, 2)
        for field in (self.regime, self.booked, self.keeps, self.skin):
            self.grid.add(field)
        self.grid.add(self.note, 2)
        self.grid.add(self.shares, 3)
        for owner in self.owners:
            self.grid.add(owner)
        self.grid.add(self.overrule, 3)
        self.add_below(self.room)
        apart = QWidget(self)
        across = row(apart)
        across.addWidget(self.cancel)
        across.addWidget(self.one)
        across.addStretch(1)
        self.add_below(apart)
        self.day.changed.connect(self._look)
        self.shares.changed.connect(self._fit)
        self.room.known.connect(self._look)
        self.room.later.clicked.connect(self._take_next)
        self.cancel.clicked.connect(self.cancel_it)
        self.one.clicked.connect(self.move_one)

    def _fill(self) -> None:
        lot = self.lot
        self.day.set_value(lot.day)
        self.producer.set_value(lot.producer_id)
        self.regime.set_value(lot.regime)
        self.skin.set_value(lot.skin)
        self.booked.set_value(lot.booked)
        self.keeps.set_value(lot.keeps)
        self.note.set_value(lot.note)
        self.shares.set_value(AS_IT_IS)
        for share, owner in zip(lot.shares, self.owners, strict=False):
            owner.set_value(share.customer_id)
        scalded = lot.species in SKINNED_OR_SCALDED
        self.skin.setVisible(scalded)
        self.skin.setEnabled(scalded)
        for field in (self.day, self.regime, self.shares):
            field.set_read_only(self.killed)
        for owner in self.owners:
            owner.set_read_only(self.killed and lot.regime == "custom")
        self.one.setVisible(bool(movable(lot)))
        self.cancel.setVisible(all(one.state in NOT_HERE for one in lot.animals))

    def retranslate(self) -> None:
        words, lot = self._bench.words, self.lot
        animals = words.name("", f"species.{lot.species}", lot.head)
        lead = self.tr("Lot {number}: {head} {animals}.").format(
            number=lot.number, head=lot.head, animals=animals
        )
        if self.killed:
            lead += " " + self._fixed()
        self.set_words(self.tr("Change the booking"), lead, self.tr("&Keep"), self.tr("&Leave it"))
        self.day.set_label(self.tr("&Day of the kill"))
        self.producer.set_label(self.tr("&Producer"))
        self.regime.set_label(self.tr("K&ind"))
        kinds: tuple[Regime, ...] = ("custom", "inspected")
        self.regime.set_choices([(one, words.say(f"regime.{one}")) for one in kinds])
        self.skin.set_label(self.tr("Skinned &or scalded"))
        skins: tuple[Skin, ...] = ("scalded", "skinned", "unknown")
        self.skin.set_choices([(one, words.say(f"skin.{one}")) for one in skins])
        self.booked.set_label(self.tr("Hanging &weight, a guess"))
        self.keeps.set_label(self.tr("Keeps &hide, offal"))
        self.note.set_label(self.tr("&Note"))
        self.shares.set_label(self.tr("&Shared as"))
        self.shares.set_choices(
            [(AS_IT_IS, self.tr("as it is"))]
            + [(str(one), said) for one, said in preset_choices(lot.species)]
        )
        for place, owner in enumerate(self.owners, start=1):
            owner.set_label(self.tr("Share {number}").format(number=place))
            owner.hint(self.tr("to be named"))
        self.overrule.set_label(self.tr("Move it all the same, because"))
        self.cancel.setText(self.tr("&Cancel the booking"))
        self.one.setText(self.tr("One animal to ano&ther day…"))
        self.room.retranslate()

    def attempt(self) -> str:
        self._look()
        if self.room.settle():
            self._look()
        if self.room.full and self.overrule.is_empty():
            self.overrule.complain(self.tr("The day is too full: another day, or say why."))
            return ""
        shown = self.owners[: self._count()]
        with self._bench.store.read() as work:
            if not all(one.known(work, self._bench.messages) for one in (self.producer, *shown)):
                return ""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            added: dict[str, int] = {}
            producer = self.producer.settle(work, added)
            ids = [owner.settle(work, added) for owner in shown]
            if producer is None or self.grid.problems():
                return ""
            return self._write(work, producer, ids)

    def _write(self, work: "Work", producer: int, ids: list[int | None]) -> str:
        new = self._wanted(producer)
        moved = new.day != self.lot.day
        if moved and self.room.ask_again(work, self._booking(), self.lot.id):
            self._look()
            return self.tr("Another station has just taken the place.")
        found = work.lots.save_details(new)
        if isinstance(found, Lot):
            found = self._share_out(work, found, ids)
        if not isinstance(found, Lot):
            return self._refused(found)
        if moved and self.room.full:
            work.calendar.overrule(found.id, self.room.full, self.overrule.text())
        work.commit()
        self.lot = found
        return ""

    def _share_out(
        self, work: "Work", lot: Lot, ids: list[int | None]
    ) -> "Lot | StaleEdit | Refused | tuple[object, ...]":
        """The shares anew, or the owners named of those there are."""
        how = self.shares.value() or AS_IT_IS
        if how != AS_IT_IS:
            before = {one.number: one for one in lot.shares}
            held = holdings_of(_preset(how), lot.head)
            asked = lot.shares[0].deposit_asked
            new = [
                LotShare(
                    number,
                    ids[number - 1],
                    holdings=holdings,
                    deposit_asked=before[number].deposit_asked if number in before else asked,
                )
                for number, holdings in enumerate(held, start=1)
            ]
            kept, lost = kept_leaders(lot.shares, new)
            if lost and lost != self._losing:
                self._losing = lost
                return Refused("leads_lost")
            return work.lots.set_shares(lot.id, kept, version=lot.version)
        for share, owner in zip(lot.shares, ids, strict=False):
            if share.customer_id != owner:
                named = work.lots.name_share(lot.id, share.number, owner, version=lot.version)
                if not isinstance(named, Lot):
                    return named
                lot = named
        return lot

    def move_one(self) -> None:
        """Ask which animal goes to which other day; the rest of the booking stays."""
        self.one_dialog = OneAnimalDialog(self._bench, self.lot, self)
        self.one_dialog.accepted.connect(self._moved_one)
        self.one_dialog.open()

    def _moved_one(self) -> None:
        made = self.one_dialog.made
        assert made is not None
        self._bench.messages.tell(
            self.tr("One animal to another day"),
            self.tr("It is lot {number} on {day} now. Tell its owners.").format(
                number=made.number, day=date_text(made.day, self._bench.words.language)
            ),
        )
        free_place(self._bench, self.lot)
        self.accept()

    def cancel_it(self) -> None:
        """Ask why, and give the place free; what was paid is said, for it isn't given back here."""
        with self._bench.store.read() as work:
            paid = sum(
                -one.cents if one.kind == "refund" else one.cents
                for one in work.payments.of_lot(self.lot.id)
            )
        text = self.tr("Why is lot {number} cancelled? The place becomes free.").format(
            number=self.lot.number
        )
        if paid > 0:
            text += " " + self.tr("{amount} was paid: give it back in the Office.").format(
                amount=money_text(paid)
            )
        reason = self._bench.messages.ask_reason(self.tr("Cancel the booking"), text)
        if not reason:
            return
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.lots.cancel(self.lot.id, reason, version=self.lot.version)
            if isinstance(found, Lot):
                work.commit()
                self.lot = found
        if isinstance(found, Lot):
            self.accept()
        else:
            self.refuse(self._refused(found))

    def _refused(self, found: object) -> str:
        if isinstance(found, StaleEdit):
            return self.tr("{name} has just changed this lot: look again.").format(name=found.by)
        code = found.code if isinstance(found, Refused) else ""
        if code == "leads_lost":
            return self._no_longer_led()
        said = {
            "already_killed": self._fixed(),
            "has_lines": self.tr("A share with a cut order would vanish: clear its lines first."),
            "has_arrived": self.tr("The animals have come: the rail says what became of them."),
        }
        return said.get(code, self.tr("The shares don't come to the whole animal."))

    def _no_longer_led(self) -> str:
        names = {one.number: one.owner or self.tr("Share {number}") for one in self.lot.shares}
        named = {number: name.format(number=number) for number, name in names.items()}
        said = self.tr(
            "{owner} is cut as {other} says; shared so that ends, and {owner} is asked for cuts."
        )
        told = [
            said.format(owner=named[one.number], other=named[one.leader])
            for one in self._losing
            if one.leader is not None
        ]
        return " ".join([*told, self.tr("Keep it again if that is meant.")])

    def _fixed(self) -> str:
        if self.lot.regime == "custom":
            return self.tr("After the kill the day, the kind and the owners are fixed.")
        return self.tr("After the kill the day, the kind and the shares are fixed.")

    def _wanted(self, producer: int) -> Lot:
        return replace(
            self.lot,
            day=self.day.value() or self.lot.day,
            producer_id=producer,
            skin=(self.skin.value() or "unknown") if self.skin.isEnabled() else self.lot.skin,
            regime=self.regime.value() or self.lot.regime,
            booked=self.booked.value(),
            keeps=self.keeps.value() or "",
            note=self.note.value() or "",
        )

    def _booking(self) -> Booking:
        day = self.day.value() or self.lot.day
        return Booking(day, self.lot.species, self.lot.head, self._needed)

    def _look(self) -> None:
        """Only another day is asked about: where it stands it has its place."""
        day = self.day.value()
        self.room.look(None if day in (None, self.lot.day) else self._booking())
        self.overrule.setVisible(bool(self.room.full))
        self.overrule.setEnabled(bool(self.room.full))
        self.grid.close_up()

    def _take_next(self) -> None:
        self.day.set_value(self.room.next[0])
        self._look()
        self.day.focus()

    def _count(self) -> int:
        how = self.shares.value() or AS_IT_IS
        if how == AS_IT_IS:
            return len(self.lot.shares)
        return len(holdings_of(_preset(how), self.lot.head))

    def _fit(self) -> None:
        count = self._count()
        if count > len(self.owners):
            self.shares.complain(self.tr("Too many owners for one booking: book them apart."))
        for place, owner in enumerate(self.owners):
            owner.setVisible(place < count)
            owner.setEnabled(place < count)
        self.grid.close_up()


def free_place(bench: "Bench", lot: Lot) -> None:
    """Say who waits for the place a cancelled lot leaves, and mark the first as told."""
    with bench.store.read() as work:
        waits = work.waiting.list(lot.species, lot.day)
        phones = {one.customer_id: work.customers.get(one.customer_id) for one in waits[:1]}
    if not waits:
        return
    first = waits[0]
    who = phones[first.customer_id]
    name = f"{first.customer} {'' if who is None else who.phone}".strip()
    translate = QCoreApplication.translate
    text = translate(
        "BookingDialog", "{name} waits longest for {day}, {head} head. Waiting in all: {count}."
    ).format(
        name=name,
        day=date_text(lot.day, bench.words.language),
        head=first.head,
        count=len(waits),
    )
    if bench.messages.ask(
        translate("BookingDialog", "A place is free"),
        text,
        translate("BookingDialog", "They are told"),
        translate("BookingDialog", "Later"),
    ):
        with bench.store.work(bench.person, bench.station) as work:
            if work.waiting.move(first.id, "told", version=first.version) is None:
                work.commit()


def _preset(text: str) -> Preset:
    found: dict[str, Preset] = {
        "whole": "whole",
        "halves": "halves",
        "quarters": "quarters",
        "half_and_quarters": "half_and_quarters",
        "split_quarters": "split_quarters",
        "each": "each",
    }
    return found[text]
