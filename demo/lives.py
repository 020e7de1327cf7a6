"""The life of one invented lot from booking to closed order, told through the store's door."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, TypeVar

from demo.billing import bill, weigh_packages
from demo.bookings import UNTIL, Booking
from demo.papers import block_sheet
from demo.week import kill_day
from demo.wishes import wanted
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Gone, Holding
from shared.cutting.foretold import foretold
from shared.cutting.plan import plan
from shared.orderfile import write
from shared.shop.animals import Animal, Loss, Weighing
from shared.shop.arrival import Arrival
from shared.shop.holdings import half, quarter, whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.money import Payment
from shared.shop.orders import Order
from shared.shop.sheets import Sheet
from shared.shop.states import AnimalState, OrderState, release_refusals
from shared.units import Weight

if TYPE_CHECKING:
    from db.unit_of_work import Work

Made = TypeVar("Made")
Step = Callable[["Work"], None]
DRESSING = {"pork": 72, "beef": 61, "lamb": 51, "goat": 49}
SEXES = {"pork": "barrow", "beef": "steer", "lamb": "wether", "goat": "wether"}
HUNG_WHOLE = ("lamb", "goat")


def made(found: object, kind: type[Made]) -> Made:
    """What the store gave; in an invented shop it is never a refusal."""
    if not isinstance(found, kind):
        raise RuntimeError(f"the demo shop was refused: {found}")
    return found


@dataclass
class Life:
    """One lot on its way; `place` counts the lots, so that each has its own tag and weights."""

    booking: Booking
    place: int
    today: date
    people: tuple[int, ...]
    lot_id: int = 0

    def steps(self) -> list[tuple[datetime, Step]]:
        """What happens and when, up to this morning."""
        booking, kill = self.booking, self._kill()
        far = UNTIL.index(booking.until)
        lead = 12 if booking.species == "beef" else 7
        steps: list[tuple[datetime, Step]] = [
            (self._at(min(kill - lead, -1), 14), self._book),
            (self._at(min(kill - 2, -1), 16), self._take_orders),
            (self._at(kill, 6), self._arrive),
            (self._at(kill, 15), self._weigh),
        ]
        if far >= UNTIL.index("settled"):
            steps.append((self._at(min(kill + 1, -1), 16), self._settle))
        if far >= UNTIL.index("released"):
            steps.append((self._at(min(booking.cut - 1, -1), 20), self._release))
            steps.append((self._at(booking.cut, 6), self._begin))
            steps.append((self._at(booking.cut, 19), self._cut))
        if booking.until == "wrapping":
            steps.append((self._at(0, 7), self._begin_wrapping))
        if far >= UNTIL.index("ready"):
            steps.append((self._at(booking.cut + 1, 17), self._wrap))
        if far >= UNTIL.index("owing"):
            steps.append((self._at(booking.cut + 3, 15), self._hand_over))
        morning = self._at(0, 8)
        return [(when, step) for when, step in steps if when < morning]

    def _at(self, days: int, hour: int) -> datetime:
        return datetime.combine(self.today + timedelta(days=days), time(hour), UTC)

    def _kill(self) -> int:
        """The day of the kill, in days from today: one on which the shop kills that species."""
        return kill_day(self.booking.species, self.booking.kill, self.today, self.booking.cut)

    def _book(self, work: "Work") -> None:
        booking = self.booking
        shares = tuple(
            LotShare(
                number,
                self.people[wish.owner],
                holdings=self._holdings(number),
                deposit_asked=booking.deposit,
            )
            for number, wish in enumerate(booking.wishes, start=1)
        )
        new = NewLot(
            booking.species,
            1,
            self.today + timedelta(days=self._kill()),
            self.people[booking.producer],
            shares,
            skin="scalded" if booking.species == "pork" else "unknown",
            regime=booking.regime,
            booked=Weight(booking.live * DRESSING[booking.species] // 100, "lb"),
        )
        self.lot_id = made(work.lots.book(new), Lot).id
        if booking.deposit:
            for order in work.orders.of_lot(self.lot_id):
                made(work.payments.take(order.id, "deposit", "check", booking.deposit), Payment)

    def _holdings(self, number: int) -> tuple[Holding, ...]:
        if self.booking.style == "whole":
            return whole(0)
        if self.booking.style == "halves":
            return half(0, number)
        return half(0, 2) if number == 3 else quarter(0, 1, "fore" if number == 1 else "hind")

    def _take_orders(self, work: "Work") -> None:
        """Write the orders; of those half taken only the first lines of the first owner."""
        booking = self.booking
        for order, wish in zip(work.orders.of_lot(self.lot_id), booking.wishes, strict=True):
            lines = wanted(booking.species, wish.changes)
            if booking.until == "half taken":
                lines = lines[: len(lines) // 2] if order.share == 1 else ()
            for line in lines:
                work.orders.add_line(order.id, line)

    def _arrive(self, work: "Work") -> None:
        booking = self.booking
        for animal in work.animals.of_lot(self.lot_id):
            arrived = work.animals.arrive(
                animal.id,
                tag=str(101 + self.place),
                sex="cow" if booking.age == "30_and_over" else SEXES[booking.species],
                age=booking.age if booking.species == "beef" else "under_30",
                version=animal.version,
            )
            made(arrived, Animal)
            work.arrivals.write(animal.id, self._stated(work))
            self._weighing(work, animal.id, "live", Weight(booking.live, "lb"), 0)

    def _stated(self, work: "Work") -> Arrival:
        """Sound, its age by teeth, its producer's word for health and medicines; one is lame."""
        cattle = self.booking.species == "beef"
        lot = made(work.lots.get(self.lot_id), Lot)
        return Arrival(
            condition="lame" if self.place % 19 == 7 else "sound",
            age_by="teeth" if cattle else "",
            age_said="Ottoline" if cattle else "",
            penned_at=work.now - timedelta(minutes=40 + 10 * (self.place % 5)),
            healthy=True,
            withdrawn_drugs=True,
            drugs="wormer in spring" if self.place % 11 == 4 else "",
            statement_of=lot.producer,
        )

    def _weigh(self, work: "Work") -> None:
        """Hot weights, the verdict, and into the cooler."""
        booking = self.booking
        tenths = booking.live * DRESSING[booking.species] // 10 + self.place * 3 % 17
        for animal in work.animals.of_lot(self.lot_id):
            if booking.species in HUNG_WHOLE:
                self._weighing(work, animal.id, "hot", Weight(tenths, "lb", -1), 0)
            else:
                first = tenths // 2 + self.place % 7 - 3
                self._weighing(work, animal.id, "hot", Weight(first, "lb", -1), 1)
                self._weighing(work, animal.id, "hot", Weight(tenths - first, "lb", -1), 2)
            if not booking.liver:
                why = "abscesses; condemned by the inspector"
                made(work.animals.record_loss(animal.id, Gone("liver", 0, None, why, True)), Loss)
            killed = replace(
                made(work.animals.get(animal.id), Animal),
                killed_on=work.now.date(),
                split=booking.species not in HUNG_WHOLE,
                place=f"Rail {1 + self.place % 6}",
            )
            made(work.animals.change(killed), Animal)
        self._move_animals(work, "passed")
        self._move_animals(work, "hanging")

    def _weighing(self, work: "Work", animal_id: int, kind: str, weight: Weight, side: int) -> None:
        found = work.weighings.record(
            animal_id, "live" if kind == "live" else "hot", weight, side=0 if side == 0 else side
        )
        made(found, Weighing)

    def _move_animals(self, work: "Work", to: AnimalState) -> None:
        for animal in work.animals.of_lot(self.lot_id):
            made(work.animals.move(animal.id, to, version=animal.version), Animal)

    def _move_orders(self, work: "Work", to: OrderState) -> None:
        for order in work.orders.of_lot(self.lot_id):
            made(work.orders.move(order.id, to, version=order.version), Order)

    def _settle(self, work: "Work") -> None:
        self._move_orders(work, "settled")

    def _release(self, work: "Work") -> None:
        """Release the lot's sheet; the plan of an invented shop stands, or it is mended."""
        question = work.lots.question(self.lot_id)
        answer = plan(question, catalogue(self.booking.species))
        for share in question.shares:
            refusals = release_refusals(answer, share.number)
            if refusals:
                raise RuntimeError(f"{self.booking} doesn't stand: {refusals} {answer.conflicts}")
        orders = [order.id for order in work.orders.of_lot(self.lot_id)]
        sheet = work.orders.release(
            self.lot_id,
            orders,
            snapshot=write(self.booking.species, question),
            pdf=block_sheet(work, made(work.lots.get(self.lot_id), Lot), question, answer),
        )
        made(sheet, Sheet)

    def _begin(self, work: "Work") -> None:
        """The block takes note of the sheet and the carcass comes off the rail."""
        for sheet in work.orders.sheets(self.lot_id):
            work.orders.acknowledge(sheet.id)
        self._move_animals(work, "on_block")

    def _cut(self, work: "Work") -> None:
        question, found = work.lots.question(self.lot_id), catalogue(self.booking.species)
        orders = {one.share: one.id for one in work.orders.of_lot(self.lot_id)}
        answer = plan(question, found)
        for animal in work.animals.of_lot(self.lot_id):
            lines = foretold(question, answer, found, animal.index)
            work.yields.expect(
                animal.id,
                [
                    (orders[one.share], one.line, one.cut, one.expected_ng, one.carcass_ng)
                    for one in lines
                ],
            )
        self._move_animals(work, "cut")
        self._move_orders(work, "cut")

    def _begin_wrapping(self, work: "Work") -> None:
        """The first lines are wrapped this morning."""
        weigh_packages(work, self.lot_id, self.booking.species, lines=4)

    def _wrap(self, work: "Work") -> None:
        """All packages weighed, everything ready, the bills made."""
        weigh_packages(work, self.lot_id, self.booking.species)
        self._move_orders(work, "ready")
        bill(work, self.lot_id, self.booking.species)

    def _hand_over(self, work: "Work") -> None:
        """Fetched; paid and closed, or something is still owed."""
        owing = self.booking.until == "owing"
        for order in work.orders.of_lot(self.lot_id):
            due = work.payments.balance(order.id).due
            paid = 0 if owing and order.share == 2 else due // 2 if owing else due
            means = ("card", "check", "cash")[(self.place + order.share) % 3]
            if paid:
                made(work.payments.take(order.id, "payment", means, paid), Payment)
            handed = made(work.orders.move(order.id, "handed_over", version=order.version), Order)
            if not owing:
                made(work.orders.close(order.id, version=handed.version), Order)
