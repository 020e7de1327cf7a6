"""What was seen and said when an animal came: facts, intake of deer, holds, dressing.

Rows are never changed: the last of an animal holds.
"""

from collections.abc import Collection, Mapping
from dataclasses import asdict
from typing import Any, cast

from sqlalchemy import Connection, Select, bindparam, func, select

from db.desk import Desk
from db.tables.people import Persons, Stations
from db.tables.rail import Arrivals, DeerIntakes, Dressings, Holds, LossFindings
from db.tables.row import Row
from shared.carcass.dressing import USUAL, Dressing, InOut, OnOff
from shared.shop.arrival import (
    AgeBy,
    Arrival,
    Condition,
    DeerIntake,
    Hold,
    HoldKind,
    Keep,
    LossHow,
    Meat,
    standing,
)
from shared.shop.problems import Refused

WHO = ("at", "person", "station")
_DRESSINGS = select(
    Dressings.animal_id,
    Dressings.head,
    Dressings.feet,
    Dressings.leaf,
    Dressings.kidneys,
).where(
    Dressings.id.in_(
        select(func.max(Dressings.id))
        .where(Dressings.animal_id.in_(bindparam("animals", expanding=True)))
        .group_by(Dressings.animal_id)
    )
)


def dressings_of(connection: Connection, animal_ids: Collection[int]) -> Mapping[int, Dressing]:
    """How each of those carcasses was dressed, where somebody said so."""
    rows = connection.execute(_DRESSINGS, {"animals": list(animal_ids)})
    found: dict[int, Dressing] = {}
    for row in rows:
        said = Dressing(
            cast("OnOff", row.head),
            cast("OnOff", row.feet),
            cast("InOut", row.leaf),
            cast("InOut", row.kidneys),
        )
        found[row.animal_id] = USUAL if said == USUAL else said
    return found


def _told(table: type[Row]) -> Select[*tuple[Any, ...]]:
    """What was said of an animal in that table, and by whom."""
    columns: Any = table
    return (
        select(
            *table.__table__.columns,
            Persons.name.label("person"),
            Stations.name.label("station"),
        )
        .join(Persons, Persons.id == columns.person_id)
        .join(Stations, Stations.id == columns.station_id)
        .where(columns.animal_id == bindparam("animal"))
    )


def _last(table: type[Row]) -> Select[*tuple[Any, ...]]:
    columns: Any = table
    return _told(table).order_by(columns.id.desc()).limit(1)


_HOLDS = _told(Holds).order_by(Holds.id)
_ARRIVED, _DEER = _last(Arrivals), _last(DeerIntakes)


class ArrivalBook:
    """`work.arrivals`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def write(self, animal_id: int, arrival: Arrival) -> Arrival:
        """Keep what is known now; what was said before stays to be read."""
        self._keep(Arrivals, animal_id, _values(arrival))
        return self._there(self.of(animal_id))

    def of(self, animal_id: int) -> Arrival | None:
        """The last facts of an animal; None where nothing was ever said."""
        row = self._desk.connection.execute(_ARRIVED, {"animal": animal_id}).one_or_none()
        if row is None:
            return None
        return Arrival(
            cast("Condition", row.condition),
            row.note,
            cast("AgeBy", row.age_by),
            row.age_said,
            row.penned_at,
            row.healthy,
            row.withdrawn_drugs,
            row.drugs,
            row.statement_of,
            row.at,
            row.person,
            row.station,
        )

    def write_deer(self, animal_id: int, intake: DeerIntake) -> DeerIntake:
        """Keep the intake of a deer."""
        self._keep(DeerIntakes, animal_id, _values(intake))
        found = self.deer(animal_id)
        assert found is not None
        return found

    def deer(self, animal_id: int) -> DeerIntake | None:
        """The last intake of a deer."""
        row = self._desk.connection.execute(_DEER, {"animal": animal_id}).one_or_none()
        if row is None:
            return None
        return DeerIntake(
            row.hunter,
            row.license,
            row.game_tag,
            row.killed_on,
            row.county,
            cast("Keep", row.cape),
            cast("Keep", row.head),
            cast("Keep", row.antlers),
            cast("Meat", row.meat),
            row.signed_by,
            row.at,
            row.person,
            row.station,
        )

    def hold(self, animal_id: int, kind: HoldKind, reason: str) -> Hold | Refused:
        """Hold an animal; it isn't cut until it is let go."""
        return self._hold(animal_id, Hold(kind, held=True, reason=reason.strip()))

    def let_go(self, animal_id: int, kind: HoldKind, result: str) -> Hold | Refused:
        """End a hold; says what came of it."""
        if not any(one.kind == kind for one in standing(self.holds(animal_id))):
            return Refused("not_held")
        return self._hold(animal_id, Hold(kind, held=False, reason=result.strip()))

    def _hold(self, animal_id: int, hold: Hold) -> Hold | Refused:
        if not hold.reason:
            return Refused("reason_missing")
        values = {"kind": hold.kind, "held": hold.held, "reason": hold.reason}
        self._keep(Holds, animal_id, values)
        what = "held_for" if hold.held else "let_go"
        self._desk.record("animal", animal_id, what, hold.reason, kind=hold.kind)
        return self.holds(animal_id)[-1]

    def holds(self, animal_id: int) -> tuple[Hold, ...]:
        """Every hold of an animal and every end of one, first to last."""
        rows = self._desk.connection.execute(_HOLDS, {"animal": animal_id})
        return tuple(
            Hold(cast("HoldKind", row.kind), row.held, row.reason, row.at, row.person, row.station)
            for row in rows
        )

    def dress(self, animal_id: int, dressing: Dressing) -> Dressing:
        """Say how the carcass was dressed on the scale."""
        values = {
            "head": dressing.head,
            "feet": dressing.feet,
            "leaf": dressing.leaf,
            "kidneys": dressing.kidneys,
        }
        self._keep(Dressings, animal_id, values)
        self._desk.record("animal", animal_id, "dressed", **dressing.said())
        return self.dressing(animal_id)

    def dressing(self, animal_id: int) -> Dressing:
        """How it was dressed; the usual way where nobody said otherwise."""
        return dressings_of(self._desk.connection, (animal_id,)).get(animal_id, USUAL)

    def found_by(self, loss_id: int, how: LossHow) -> None:
        """Say who took a part: condemned by the inspector, trimmed or discarded by the plant."""
        values = {"loss_id": loss_id, "how": how, "at": self._desk.now, **self._desk.stamp}
        self._desk.insert(LossFindings, values)

    def findings(self, loss_ids: Collection[int]) -> Mapping[int, LossHow]:
        """Who took each of those losses, where it was said."""
        if not loss_ids:
            return {}
        rows = self._desk.connection.execute(
            select(LossFindings.loss_id, LossFindings.how).where(LossFindings.loss_id.in_(loss_ids))
        )
        return {row.loss_id: cast("LossHow", row.how) for row in rows}

    def _keep(self, table: type[Row], animal_id: int, values: Mapping[str, object]) -> None:
        self._desk.insert(
            table, {"animal_id": animal_id, **values, "at": self._desk.now, **self._desk.stamp}
        )

    def _there(self, found: Arrival | None) -> Arrival:
        assert found is not None
        return found


def _values(said: Arrival | DeerIntake) -> dict[str, object]:
    return {field: value for field, value in asdict(said).items() if field not in WHO}
