"""An animal moved on at the rail or killed, with what its owners must hear, in one unit."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from desktop.rail.age_told import tell_age
from desktop.rail.telling import Lost, tell
from shared.shop.animals import Animal

if TYPE_CHECKING:
    from datetime import date

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.rail.fallen import Fallen
    from desktop.rail.seen import SeenAnimal
    from shared.shop.states import AnimalState


@dataclass(frozen=True, slots=True)
class Moved:
    """The animal as it is now, the choices lost with it, and those that its age brings down."""

    animal: Animal
    lost: "tuple[Fallen, ...]" = ()
    by_age: "tuple[Fallen, ...]" = ()


def moved_on(
    bench: "Bench", seen: "SeenAnimal", end: "AnimalState", reason: str, *, killed: bool
) -> Moved | None:
    """Move an animal to another state; None where another station changed it meanwhile.

    Hung, it is killed, weighed or not: cattle whose age nobody knows count as 30 months and over
    from now on, and their owners hear of it (9 CFR 310.22). `killed`: it was, though condemned.
    """
    animal, today = seen.animal, bench.today()
    with bench.store.work(bench.person, bench.station) as work:
        before = work.lots.question(animal.lot_id)
        made = work.animals.move(animal.id, end, reason=reason, version=animal.version)
        if not isinstance(made, Animal):
            return None
        # A deer was shot elsewhere, on a day its hunter says.
        if killed or (end == "hanging" and animal.species != "deer"):
            made = _killed(work, made, today)
        lost: tuple[Fallen, ...] = ()
        if end == "condemned" or end == "refused":
            lost = tell(work, seen, before, end, Lost(reason))
        by_age = tell_age(work, made)
        work.commit()
    return Moved(made, lost, by_age)


def weighed_on(work: "Work", animal_id: int, today: "date") -> "tuple[Fallen, ...]":
    """The day of the first hot weight is the day of the kill; what its age brings down by that."""
    animal = work.animals.get(animal_id)
    kinds = {one.kind for one in work.weighings.of_animal(animal_id) if one.current}
    if animal is None or kinds <= {"live"}:
        return ()
    return tell_age(work, _killed(work, animal, today) if "hot" in kinds else animal)


def _killed(work: "Work", animal: Animal, today: "date") -> Animal:
    if animal.killed_on is not None:
        return animal
    made = work.animals.change(replace(animal, killed_on=today))
    return made if isinstance(made, Animal) else animal
