"""Weights taken at the pen, the rail and the cooler: never overwritten, corrected by a new row."""

from collections.abc import Collection
from typing import cast

from sqlalchemy import Connection, bindparam, select, update

from db.desk import Desk
from db.problems import StoreBug
from db.tables.lots import Animals
from db.tables.people import Persons, Stations
from db.tables.weighings import Weighings
from db.weights import known_weight, weight_of, weight_values
from shared.carcass.catalogue import Quarter
from shared.shop.animals import AlreadyWeighed, Weighing, WeighingKind, WeighingSource
from shared.shop.problems import Refused
from shared.units import Weight

COLUMNS = (
    Weighings.id,
    Weighings.animal_id,
    Weighings.kind,
    Weighings.side,
    Weighings.quarter,
    Weighings.weight_count,
    Weighings.weight_unit,
    Weighings.weight_exponent,
    Weighings.tare_count,
    Weighings.tare_unit,
    Weighings.tare_exponent,
    Weighings.division_count,
    Weighings.division_unit,
    Weighings.division_exponent,
    Weighings.scale,
    Weighings.source,
    Weighings.at,
    Persons.name.label("person"),
    Stations.name.label("station"),
    Weighings.corrects,
    Weighings.withdrawn,
    Weighings.reason,
)
_OF_ANIMALS = (
    select(*COLUMNS)
    .join(Persons, Persons.id == Weighings.person_id)
    .join(Stations, Stations.id == Weighings.station_id)
    .where(Weighings.animal_id.in_(bindparam("animals", expanding=True)))
    .order_by(Weighings.id)
)


def weighings_of(connection: Connection, animal_ids: Collection[int]) -> tuple[Weighing, ...]:
    """Every weighing of those animals, first to last; `current` says which hold."""
    rows = connection.execute(_OF_ANIMALS, {"animals": list(animal_ids)}).all()
    corrected = {row.corrects for row in rows}
    return tuple(
        Weighing(
            id=row.id,
            animal_id=row.animal_id,
            kind=cast("WeighingKind", row.kind),
            side=row.side,
            quarter=cast("Quarter", row.quarter),
            weight=known_weight(row.weight_count, row.weight_unit, row.weight_exponent),
            tare=weight_of(row.tare_count, row.tare_unit, row.tare_exponent),
            division=weight_of(row.division_count, row.division_unit, row.division_exponent),
            scale=row.scale,
            source=cast("WeighingSource", row.source),
            at=row.at,
            person=row.person,
            station=row.station,
            corrects=row.corrects,
            withdrawn=row.withdrawn,
            reason=row.reason,
            current=row.id not in corrected and not row.withdrawn,
        )
        for row in rows
    )


class WeighingBook:
    """`work.weighings`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def of_animal(self, animal_id: int) -> tuple[Weighing, ...]:
        """Every weighing of an animal, first to last, corrected ones too."""
        return weighings_of(self._desk.connection, (animal_id,))

    def of_lot(self, lot_id: int) -> tuple[Weighing, ...]:
        """Every weighing of the animals of a lot."""
        ids = self._desk.connection.execute(
            select(Animals.id).where(Animals.lot_id == lot_id)
        ).scalars()
        return weighings_of(self._desk.connection, list(ids))

    def record(
        self,
        animal_id: int,
        kind: WeighingKind,
        weight: Weight,
        *,
        side: int = 0,
        quarter: Quarter = "",
        tare: Weight | None = None,
        division: Weight | None = None,
        scale: str = "",
        source: WeighingSource = "typed",
    ) -> Weighing | AlreadyWeighed | Refused:
        """Keep a net weight. The first hot weight of an arrived animal makes it weighed.

        What is weighed whole isn't weighed by sides or quarters too: "whole_and_parts".
        """
        barred = self._barred(animal_id, kind, weight, (side, quarter))
        if barred is not None:
            return barred
        new = self._insert(
            animal_id,
            {
                "kind": kind,
                "side": side,
                "quarter": quarter,
                **weight_values("weight", weight),
                **weight_values("tare", tare),
                **weight_values("division", division),
                "scale": scale,
                "source": source,
                "corrects": None,
                "withdrawn": False,
                "reason": "",
            },
        )
        if kind == "hot":
            self._now_weighed(animal_id)
        self._desk.record("animal", animal_id, "weighed", kind=kind, weight=weight.text())
        return new

    def _barred(
        self, animal_id: int, kind: WeighingKind, weight: Weight, place: tuple[int, Quarter]
    ) -> AlreadyWeighed | Refused | None:
        """Why that weight can't be recorded there, if so."""
        if weight.count <= 0:
            return Refused("not_positive")
        current = [one for one in self.of_animal(animal_id) if one.current and one.kind == kind]
        for one in current:
            if (one.side, one.quarter) == place:
                return AlreadyWeighed(one)
        if any(_overlap((one.side, one.quarter), place) for one in current):
            return Refused("whole_and_parts")
        return None

    def correct(self, weighing_id: int, weight: Weight, reason: str) -> Weighing | Refused:
        """The weight was wrong: a new row says what it is, and why; the first stays."""
        if weight.count <= 0:
            return Refused("not_positive")
        return self._again(weighing_id, weight, reason, withdrawn=False)

    def withdraw(self, weighing_id: int, reason: str) -> Weighing | Refused:
        """It was never weighed (the weight was another animal's); the row stays."""
        return self._again(weighing_id, None, reason, withdrawn=True)

    def _again(
        self, weighing_id: int, weight: Weight | None, reason: str, *, withdrawn: bool
    ) -> Weighing | Refused:
        if not reason.strip():
            return Refused("reason_missing")
        animal_id = self._desk.connection.execute(
            select(Weighings.animal_id).where(Weighings.id == weighing_id)
        ).scalar_one_or_none()
        if animal_id is None:
            raise StoreBug(f"no weighing {weighing_id}")
        old = next(one for one in self.of_animal(animal_id) if one.id == weighing_id)
        if not old.current:
            return Refused("already_corrected")
        new = self._insert(
            animal_id,
            {
                "kind": old.kind,
                "side": old.side,
                "quarter": old.quarter,
                **weight_values("weight", weight or old.weight),
                **weight_values("tare", old.tare),
                **weight_values("division", old.division),
                "scale": old.scale,
                "source": "typed",
                "corrects": old.id,
                "withdrawn": withdrawn,
                "reason": reason.strip(),
            },
        )
        what = "weight_withdrawn" if withdrawn else "weight_corrected"
        self._desk.record("animal", animal_id, what, reason, old=old.weight.text())
        return new

    def _insert(self, animal_id: int, values: dict[str, object]) -> Weighing:
        new = self._desk.insert(
            Weighings,
            {"animal_id": animal_id, "at": self._desk.now, **values, **self._desk.stamp},
        )
        return next(one for one in self.of_animal(animal_id) if one.id == new)

    def _now_weighed(self, animal_id: int) -> None:
        self._desk.connection.execute(
            update(Animals)
            .where(Animals.id == animal_id, Animals.state == "arrived")
            .values(state="weighed", version=Animals.version + 1)
        )


def _overlap(one: tuple[int, str], other: tuple[int, str]) -> bool:
    """Whether two places of one animal hold the same meat: side 0 is all, "" the whole side."""
    if one[0] == 0 or other[0] == 0:
        return True
    return one[0] == other[0] and (one[1] == "" or other[1] == "" or one[1] == other[1])
