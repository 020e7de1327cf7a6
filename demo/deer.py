"""The invented plant's deer: one held for its disease test, one whose result is there and hangs."""

from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from demo.lives import Step, made
from demo.week import kill_day
from shared.shop.animals import Animal, Weighing
from shared.shop.arrival import DeerIntake, Hold
from shared.shop.holdings import whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.units import Weight

if TYPE_CHECKING:
    from db.unit_of_work import Work


@dataclass(frozen=True, slots=True)
class Deer:
    """One deer: who brings it (by his place in the list of names), when, and how heavy it hangs."""

    hunter: int
    days: int
    tag: str
    hot: int
    sample: str
    result: str = ""


DEER = (
    Deer(23, -6, "D1", 112, "sample DS-0417 sent", "not detected, by letter of the laboratory"),
    Deer(28, -2, "D2", 96, "sample DS-0431 sent"),
)


class DeerLife:
    """A deer from the counter to the cooler; `people` are the ids of the names in their order."""

    def __init__(self, deer: Deer, today: date, people: tuple[int, ...]) -> None:
        self.deer = deer
        self.today = today
        self.people = people
        self.lot_id = 0

    def steps(self) -> list[tuple[datetime, Step]]:
        """What happens and when, up to this morning."""
        day = self.today + timedelta(days=kill_day("deer", self.deer.days, self.today, 2))
        steps: list[tuple[datetime, Step]] = [
            (datetime.combine(day, time(10), UTC), self._bring),
            (datetime.combine(day, time(17), UTC), self._hang),
        ]
        if self.deer.result:
            told = datetime.combine(self.today - timedelta(days=1), time(11), UTC)
            steps.append((told, self._let_go))
        return steps

    def _bring(self, work: "Work") -> None:
        """Booked and checked in at once, with license, game tag and what is kept; then held."""
        deer, hunter = self.deer, self.people[self.deer.hunter]
        share = LotShare(1, hunter, holdings=whole(0))
        lot = made(work.lots.book(NewLot("deer", 1, work.now.date(), hunter, (share,))), Lot)
        self.lot_id = lot.id
        (animal,) = work.animals.of_lot(lot.id)
        came = work.animals.arrive(animal.id, tag=deer.tag, sex="buck", version=animal.version)
        made(came, Animal)
        intake = DeerIntake(
            hunter=lot.producer,
            license=f"L-0{deer.hot}-88",
            game_tag=f"G-4{deer.hot}",
            killed_on=work.now.date() - timedelta(days=1),
            county="Millrace",
            cape="leave",
            head="keep",
            antlers="keep",
            meat="apart",
        )
        work.arrivals.write_deer(animal.id, intake)
        made(work.arrivals.hold(animal.id, "disease_test", deer.sample), Hold)

    def _hang(self, work: "Work") -> None:
        (animal,) = work.animals.of_lot(self.lot_id)
        made(work.weighings.record(animal.id, "hot", Weight(self.deer.hot, "lb")), Weighing)
        for state in ("passed", "hanging"):
            (animal,) = work.animals.of_lot(self.lot_id)
            made(work.animals.move(animal.id, state, version=animal.version), Animal)
        (animal,) = work.animals.of_lot(self.lot_id)
        shot = work.now.date() - timedelta(days=1)
        made(work.animals.change(replace(animal, place="Deer rail", killed_on=shot)), Animal)

    def _let_go(self, work: "Work") -> None:
        (animal,) = work.animals.of_lot(self.lot_id)
        made(work.arrivals.let_go(animal.id, "disease_test", self.deer.result), Hold)
