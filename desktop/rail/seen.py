"""One animal as the rail reads it: its row, every weight, what is gone, and who owns it."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from desktop.rail.dressing import Dressed, dressed
from shared.carcass import anatomy
from shared.carcass.catalogue import Catalogue, Quarter
from shared.carcass.dressing import USUAL, Dressing, on_the_scale
from shared.shop.animals import Animal, Loss, Weighing, WeighingKind
from shared.shop.arrival import Arrival, DeerIntake, Hold, LossHow
from shared.units import Weight

if TYPE_CHECKING:
    from desktop.bench import Bench

Place = tuple[WeighingKind, int, Quarter]
LIVE: Place = ("live", 0, "")
WHOLE: tuple[Place, ...] = (("hot", 0, ""),)
SIDES: tuple[Place, ...] = (("hot", 1, ""), ("hot", 2, ""))
QUARTERS: tuple[Place, ...] = (
    ("hot", 1, "fore"),
    ("hot", 1, "hind"),
    ("hot", 2, "fore"),
    ("hot", 2, "hind"),
)
WAYS: dict[str, tuple[Place, ...]] = {"whole": WHOLE, "sides": SIDES, "quarters": QUARTERS}
CHILLED_WAYS: dict[str, tuple[Place, ...]] = {
    way: tuple(("chilled", side, quarter) for _, side, quarter in places)
    for way, places in WAYS.items()
}


@dataclass(frozen=True, slots=True)
class SeenAnimal:
    """What the side of the rail shows. `owners` are the names of its lot."""

    animal: Animal
    lot_number: int
    owners: tuple[str, ...]
    weighings: tuple[Weighing, ...]
    losses: tuple[Loss, ...]
    findings: Mapping[int, LossHow] = field(default_factory=dict[int, LossHow])
    arrival: Arrival | None = None
    deer: DeerIntake | None = None
    holds: tuple[Hold, ...] = ()
    dressing: Dressing = USUAL

    @property
    def catalogue(self) -> Catalogue:
        """What is known of its species."""
        return anatomy.catalogue(self.animal.species)

    def weighing(self, place: Place) -> Weighing | None:
        """The weight that holds at that place."""
        for one in self.weighings:
            if one.current and (one.kind, one.side, one.quarter) == place:
                return one
        return None

    def way(self) -> str:
        """How its hot weight is taken: as it was begun, else as the species usually is."""
        for way, places in WAYS.items():
            if any(self.weighing(place) for place in places):
                return way
        return "sides" if self.catalogue.usually_split else "whole"

    def hot_ng(self, extra: "dict[Place, Weight] | None" = None) -> int | None:
        """The whole hot weight once every part of it is weighed; `extra` are weights typed."""
        known = self._known(extra)
        for places in WAYS.values():
            if all(place in known for place in places):
                return sum(known[place].nanograms for place in places)
        return None

    def chilled_ng(self) -> int | None:
        """The whole chilled weight once every part of it is weighed."""
        known = self._known(None)
        for places in CHILLED_WAYS.values():
            if all(place in known for place in places):
                return sum(known[place].nanograms for place in places)
        return None

    def taken_between(self) -> tuple[int, bool]:
        """What was taken off after the hot weight and before the chilled one, in nanograms.

        Whether something of it has no weight comes with it. A liver is in neither weight.
        """
        chilled = [one.at for one in self.weighings if one.kind == "chilled"]
        parts, skin = self.catalogue.parts, self.animal.skin
        taken = [
            one.gone
            for one in self.losses
            if chilled
            and not one.gone.before_scale
            and one.at <= min(chilled)
            and one.gone.part in parts
            and on_the_scale(parts[one.gone.part], skin, self.dressing)
        ]
        weighed = [one.weight.nanograms for one in taken if one.weight is not None]
        return sum(weighed), len(weighed) < len(taken)

    def dressed(self, extra: "dict[Place, Weight] | None" = None) -> Dressed | None:
        """The dressing percentage, when live and hot weight are known."""
        live, hot = self._known(extra).get(LIVE), self.hot_ng(extra)
        if live is None or hot is None:
            return None
        animal = self.animal
        ranges = self.catalogue.ranges
        return dressed(ranges, live.nanograms, hot, animal.skin, animal.sex)

    def _known(self, extra: "dict[Place, Weight] | None") -> dict[Place, Weight]:
        known: dict[Place, Weight] = {
            (one.kind, one.side, one.quarter): one.weight for one in self.weighings if one.current
        }
        return {**known, **(extra or {})}


def see(bench: "Bench", animal_id: int) -> SeenAnimal | None:
    """Read one animal; None when there is none such."""
    with bench.store.read() as work:
        animal = work.animals.get(animal_id)
        if animal is None:
            return None
        number, owners = work.lots.named(animal.lot_id)
        losses = tuple(one for one in work.animals.losses(animal_id) if not one.void)
        return SeenAnimal(
            animal,
            number,
            owners,
            work.weighings.of_animal(animal_id),
            losses,
            work.arrivals.findings([one.id for one in losses]),
            work.arrivals.of(animal_id),
            work.arrivals.deer(animal_id) if animal.species == "deer" else None,
            work.arrivals.holds(animal_id),
            work.arrivals.dressing(animal_id),
        )
