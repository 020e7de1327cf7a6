"""What hangs in the cooler, how long its owners want it to, and the temperatures read there."""

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from decimal import Decimal
from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import Row, ScalarSelect, Select, bindparam, false, func, select
from sqlalchemy.orm import aliased

from db.columns import Nanograms
from db.desk import Desk
from db.repositories.listing import owners_of_lot
from db.tables.lots import Animals, Lots
from db.tables.orders import Orders
from db.tables.people import Persons
from db.tables.rail import CoolerLimits, CoolerReadings, Gradings, HangWishes
from db.tables.weighings import Weighings
from shared.carcass.gradings import meat_factor
from shared.shop.cooler import CoolerReading, Hanging, RoomLimits, Temperature
from shared.shop.problems import Refused
from shared.units import NG_PER_LB

if TYPE_CHECKING:
    from shared.shop.cooler import DegreeUnit

IN_COOLER = ("hanging", "on_block")
GONE = ("condemned", "refused", "not_come")


_LAST = aliased(Gradings)
_MEASURES = select(Gradings.animal_id, Gradings.measures).where(
    Gradings.animal_id.in_(bindparam("animals", expanding=True)),
    Gradings.id
    == select(func.max(_LAST.id)).where(_LAST.animal_id == Gradings.animal_id).scalar_subquery(),
)


class CoolerBook:
    """`work.cooler`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def hanging(self, limit: int = 2000) -> tuple[Hanging, ...]:
        """Everything that hangs, the longest first; one query."""
        rows = self._desk.connection.execute(
            select(
                Animals.id,
                Animals.lot_id,
                Lots.number,
                Animals.tag,
                Lots.species,
                Animals.state,
                Animals.place,
                owners_of_lot(),
                Animals.hung_at,
                _wish(),
                hot_weight(),
            )
            .join(Lots, Lots.id == Animals.lot_id)
            .where(Animals.state.in_(IN_COOLER), Animals.hung_at.is_not(None))
            .order_by(Animals.hung_at, Animals.id)
            .limit(limit)
        )
        return tuple(_hanging(row) for row in rows)

    def wish(self, order_id: int, days: int | None, note: str = "") -> None:
        """How long an owner wants it to hang; None takes the wish back."""
        desk = self._desk
        values = {"order_id": order_id, "days": days, "note": note.strip(), "at": desk.now}
        desk.insert(HangWishes, {**values, **desk.stamp})
        desk.record("order", order_id, "hang_wish", note, days=days)

    def wish_of(self, order_id: int) -> int | None:
        """The last wish of an order, None where there is none."""
        return self._desk.connection.execute(
            select(HangWishes.days)
            .where(HangWishes.order_id == order_id)
            .order_by(HangWishes.id.desc())
            .limit(1)
        ).scalar_one_or_none()

    def read(
        self, room: str, temperature: Temperature, read_at: datetime, note: str = ""
    ) -> CoolerReading | Refused:
        """Keep a temperature; a room needs a name."""
        if not room.strip():
            return Refused("room_missing")
        return self._kept(room.strip(), temperature, read_at, note)

    def correct(
        self, reading_id: int, temperature: Temperature, reason: str
    ) -> CoolerReading | Refused:
        """It was read wrong: a new row says what it was, and why; the first stays."""
        if not reason.strip():
            return Refused("reason_missing")
        found = [one for one in self.readings(limit=5000) if one.id == reading_id]
        if not found or not found[0].current:
            return Refused("already_corrected")
        old = found[0]
        return self._kept(
            old.room, temperature, old.read_at, old.note, corrects=old.id, reason=reason.strip()
        )

    def _kept(
        self,
        room: str,
        temperature: Temperature,
        read_at: datetime,
        note: str,
        corrects: int | None = None,
        reason: str = "",
    ) -> CoolerReading:
        desk = self._desk
        new = desk.insert(
            CoolerReadings,
            {
                "room": room,
                "read_at": read_at,
                "tenths": temperature.tenths,
                "unit": temperature.unit,
                "note": note.strip(),
                "corrects": corrects,
                "withdrawn": False,
                "reason": reason,
                "at": desk.now,
                **desk.stamp,
            },
        )
        return next(one for one in self.readings(room) if one.id == new)

    def readings(self, room: str = "", limit: int = 200) -> tuple[CoolerReading, ...]:
        """Readings, the newest first; `current` says that no later row corrects it."""
        later = aliased(CoolerReadings)
        found = (
            select(
                CoolerReadings.id,
                CoolerReadings.room,
                CoolerReadings.read_at,
                CoolerReadings.tenths,
                CoolerReadings.unit,
                CoolerReadings.note,
                Persons.name,
                CoolerReadings.corrects,
                CoolerReadings.reason,
                later.id,
            )
            .join(Persons, Persons.id == CoolerReadings.person_id)
            .outerjoin(later, later.corrects == CoolerReadings.id)
            .order_by(CoolerReadings.read_at.desc(), CoolerReadings.id.desc())
            .limit(limit)
        )
        if room:
            found = found.where(CoolerReadings.room == room)
        return tuple(_reading(row) for row in self._desk.connection.execute(found))

    def set_limits(self, limits: RoomLimits, unit: "DegreeUnit" = "F") -> None:
        """The shop's own limits of a room from now on; both None: the room has none."""
        desk = self._desk
        said = limits.high or limits.low
        desk.insert(
            CoolerLimits,
            {
                "room": limits.room.strip(),
                "low_tenths": None if limits.low is None else limits.low.tenths,
                "high_tenths": None if limits.high is None else limits.high.tenths,
                "unit": unit if said is None else said.unit,
                "used": limits.low is not None or limits.high is not None,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("shop", 1, "cooler_limits", room=limits.room)

    def limits(self) -> Mapping[str, RoomLimits]:
        """The limits that hold, by room."""
        found: dict[str, RoomLimits] = {}
        rows = self._desk.connection.execute(
            select(
                CoolerLimits.room,
                CoolerLimits.low_tenths,
                CoolerLimits.high_tenths,
                CoolerLimits.unit,
            ).order_by(CoolerLimits.id)
        )
        for room, low, high, unit in rows:
            said = cast("DegreeUnit", unit)
            found[room] = RoomLimits(
                room,
                None if low is None else Temperature(low, said),
                None if high is None else Temperature(high, said),
            )
        return found

    def rooms(self) -> tuple[str, ...]:
        """Every room that was ever read or has limits, by name."""
        read = select(CoolerReadings.room).union(select(CoolerLimits.room))
        return tuple(sorted(self._desk.connection.execute(read).scalars()))

    def measure(self, animal_id: int, measures: Mapping[str, str], note: str = "") -> None:
        """Keep what was measured for grading; the last measures hold, the first stay."""
        desk = self._desk
        desk.insert(
            Gradings,
            {
                "animal_id": animal_id,
                "measures": json.dumps(dict(sorted(measures.items()))),
                "note": note.strip(),
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("animal", animal_id, "graded", note)

    def measures(self, animal_ids: Sequence[int]) -> Mapping[int, Mapping[str, str]]:
        """The last measures of each animal that has any; one query."""
        rows = self._desk.connection.execute(_MEASURES, {"animals": list(animal_ids)})
        return {row[0]: json.loads(row[1]) for row in rows}

    def meat_factor(self, lot_id: int) -> Fraction:
        """What the calculated grades of a lot move of its forecast; 1 where not all is measured."""
        rows = self._desk.connection.execute(_hung(), {"lot": lot_id}).all()
        known = self.measures([row[0] for row in rows])
        if len(known) < len(rows) or not rows:
            return Fraction(1)
        graded = [(known[row[0]], _pounds(row[2])) for row in rows]
        return meat_factor(rows[0][1], graded)


@cache
def _hung() -> Select[*tuple[Any, ...]]:
    """The animals of a lot that still hang, each with its hot weight."""
    return (
        select(Animals.id, Lots.species, hot_weight())
        .join(Lots, Lots.id == Animals.lot_id)
        .where(Animals.lot_id == bindparam("lot"), Animals.state.not_in(GONE))
    )


def _pounds(nanograms: int | None) -> Decimal | None:
    return None if nanograms is None else Decimal(nanograms) / NG_PER_LB


def _hanging(row: Row[*tuple[Any, ...]]) -> Hanging:
    return Hanging(
        animal_id=row[0],
        lot_id=row[1],
        lot_number=row[2],
        tag=row[3],
        species=row[4],
        state=row[5],
        place=row[6],
        owners=row[7] or "",
        hung_on=row[8].astimezone().date(),
        wish=row[9],
        hot_ng=row[10],
    )


def _reading(row: Row[*tuple[Any, ...]]) -> CoolerReading:
    return CoolerReading(
        id=row[0],
        room=row[1],
        read_at=row[2],
        temperature=Temperature(row[3], cast("DegreeUnit", row[4])),
        note=row[5],
        person=row[6],
        corrects=row[7],
        reason=row[8],
        current=row[9] is None,
    )


def _wish() -> ScalarSelect[int | None]:
    """The longest wish of a lot's orders, each order's last one counting."""
    last, later = aliased(HangWishes), aliased(HangWishes)
    newest = select(func.max(later.id)).where(later.order_id == last.order_id)
    return (
        select(func.max(last.days))
        .select_from(last)
        .join(Orders, Orders.id == last.order_id)
        .where(Orders.lot_id == Animals.lot_id, last.id == newest.scalar_subquery())
        .correlate(Animals)
        .scalar_subquery()
    )


def hot_weight() -> ScalarSelect[int]:
    """The current hot weight: rows nothing corrects, and that aren't withdrawn."""
    one, later = aliased(Weighings), aliased(Weighings)
    corrected = select(later.id).where(later.corrects == one.id).exists()
    return (
        select(func.sum(one.weight_ng, type_=Nanograms()))
        .where(
            one.animal_id == Animals.id,
            one.kind == "hot",
            one.withdrawn == false(),
            ~corrected,
        )
        .correlate(Animals)
        .scalar_subquery()
    )
