"""What inspection or trimming took from an animal, and what the block measured of it."""

from collections.abc import Collection

from sqlalchemy import Connection, bindparam, func, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.tables.findings import WithdrawnMeasurements
from db.tables.people import Persons, Stations
from db.tables.weighings import Losses, Measurements
from db.weights import weight_of, weight_values
from shared.carcass.carcass import Gone, Measured
from shared.shop.animals import Loss
from shared.shop.problems import Refused

COLUMNS = (
    Losses.id,
    Losses.animal_id,
    Losses.part,
    Losses.side,
    Losses.weight_count,
    Losses.weight_unit,
    Losses.weight_exponent,
    Losses.reason,
    Losses.before_scale,
    Losses.at,
    Persons.name.label("person"),
    Stations.name.label("station"),
    Losses.void,
)
_LOSSES = (
    select(*COLUMNS)
    .join(Persons, Persons.id == Losses.person_id)
    .join(Stations, Stations.id == Losses.station_id)
    .where(Losses.animal_id.in_(bindparam("animals", expanding=True)))
    .order_by(Losses.id)
)
_LATER = aliased(Measurements)
_FALLEN = select(WithdrawnMeasurements.measurement_id)
_MEASURED = (
    select(Measurements.animal_id, Measurements.stretch, Measurements.side, Measurements.length)
    .where(
        Measurements.animal_id.in_(bindparam("animals", expanding=True)),
        Measurements.id
        == select(func.max(_LATER.id))
        .where(
            _LATER.animal_id == Measurements.animal_id,
            _LATER.stretch == Measurements.stretch,
            _LATER.side == Measurements.side,
            _LATER.id.not_in(_FALLEN),
        )
        .scalar_subquery(),
    )
    .order_by(Measurements.animal_id, Measurements.id)
)


def losses_of(connection: Connection, animal_ids: Collection[int]) -> tuple[Loss, ...]:
    """Losses of those animals, first to last, void ones too."""
    rows = connection.execute(_LOSSES, {"animals": list(animal_ids)})
    return tuple(
        Loss(
            id=row.id,
            animal_id=row.animal_id,
            gone=Gone(
                row.part,
                row.side,
                weight_of(row.weight_count, row.weight_unit, row.weight_exponent),
                row.reason,
                row.before_scale,
            ),
            at=row.at,
            person=row.person,
            station=row.station,
            void=row.void,
        )
        for row in rows
    )


def measured_of(
    connection: Connection, animal_ids: Collection[int]
) -> dict[int, tuple[Measured, ...]]:
    """The last measurement of each stretch and side, by animal."""
    found: dict[int, tuple[Measured, ...]] = {}
    of = {"animals": list(animal_ids)}
    for animal_id, stretch, side, length in connection.execute(_MEASURED, of):
        found[animal_id] = (*found.get(animal_id, ()), Measured(stretch, side, length))
    return found


class LossBook:
    """The part of `work.animals` that keeps losses and measurements."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def record_loss(self, animal_id: int, gone: Gone) -> Loss | Refused:
        """A part, or pounds of it, was trimmed, condemned or discarded, with its reason."""
        if not gone.reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        new = desk.insert(
            Losses,
            {
                "animal_id": animal_id,
                "part": gone.part,
                "side": gone.side,
                **weight_values("weight", gone.weight),
                "reason": gone.reason.strip(),
                "before_scale": gone.before_scale,
                "at": desk.now,
                "void": "",
                **desk.stamp,
            },
        )
        desk.record("animal", animal_id, "loss", gone.reason, part=gone.part, side=gone.side)
        return next(one for one in self.losses(animal_id) if one.id == new)

    def void_loss(self, loss_id: int, reason: str) -> Loss | Refused:
        """Take a loss back, with a reason; the row stays."""
        if not reason.strip():
            return Refused("reason_missing")
        desk = self._desk
        desk.must_write()
        animal_id = desk.connection.execute(
            update(Losses)
            .where(Losses.id == loss_id, Losses.void == "")
            .values(void=reason.strip())
            .returning(Losses.animal_id)
        ).scalar_one_or_none()
        if animal_id is None:
            return Refused("already_void")
        desk.record("animal", animal_id, "loss_void", reason, loss=loss_id)
        return next(one for one in self.losses(animal_id) if one.id == loss_id)

    def losses(self, animal_id: int) -> tuple[Loss, ...]:
        """Every loss of an animal, first to last; `void` says which were taken back."""
        return losses_of(self._desk.connection, (animal_id,))

    def measure(self, animal_id: int, measured: Measured) -> None:
        """The block measured a stretch; measured again, the last figure holds."""
        desk = self._desk
        desk.insert(
            Measurements,
            {
                "animal_id": animal_id,
                "stretch": measured.stretch,
                "side": measured.side,
                "length": measured.length,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record(
            "animal",
            animal_id,
            "measured",
            stretch=measured.stretch,
            side=measured.side,
            length=measured.length,
        )

    def measured(self, animal_id: int) -> tuple[Measured, ...]:
        """What was measured of an animal, as it holds now."""
        return measured_of(self._desk.connection, (animal_id,)).get(animal_id, ())
