"""The shop's scales, each at the station whose line it is on."""

from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import Row, bindparam, select, true

from db.desk import Desk
from db.tables.rail import Scales
from db.weights import weight_of, weight_values
from shared.shop.problems import Refused, StaleEdit
from shared.shop.scales import Parity, Scale, own_from, own_text, pattern_of_scale

if TYPE_CHECKING:
    from shared.units import WeightUnit

_OF_STATION = (
    select(*Scales.__table__.columns)
    .where(Scales.at_station == bindparam("station"), Scales.used == true())
    .order_by(Scales.id)
)


class ScaleBook:
    """`work.scales`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def of_station(self, station_id: int) -> tuple[Scale, ...]:
        """The scales in use at a station, in the order they were set up."""
        rows = self._desk.connection.execute(_OF_STATION, {"station": station_id})
        return tuple(_scale(row) for row in rows)

    def get(self, scale_id: int) -> Scale | None:
        """One scale, in use or not."""
        row = self._desk.connection.execute(
            select(*Scales.__table__.columns).where(Scales.id == scale_id)
        ).one_or_none()
        return None if row is None else _scale(row)

    def save(self, scale: Scale) -> Scale | StaleEdit | Refused:
        """Set a scale up at this station, or write it again. Refused: "name_missing", "pattern"."""
        if not scale.name.strip():
            return Refused("name_missing")
        if pattern_of_scale(scale) is None:
            return Refused("pattern")
        values = _values(scale)
        if scale.id:
            stale = self._desk.edit(Scales, "scale", scale.id, scale.version, values)
            if stale is not None:
                return stale
            new = scale.id
        else:
            kept = {"at_station": self._desk.station.id, "version": 1, "at": self._desk.now}
            new = self._desk.insert(Scales, {**values, **kept, **self._desk.stamp})
        self._desk.record("scale", new, "saved", name=scale.name, used=scale.used)
        found = self.get(new)
        assert found is not None
        return found


def _values(scale: Scale) -> dict[str, object]:
    return {
        "name": scale.name.strip(),
        "port": scale.port,
        "baud": scale.baud,
        "bits": scale.bits,
        "parity": scale.parity,
        "stop_bits": scale.stop_bits,
        "pattern": scale.pattern,
        "own_pattern": own_text(scale.own_pattern),
        "unit": scale.unit,
        **weight_values("division", scale.division),
        **weight_values("hook", scale.hook),
        **weight_values("gambrel", scale.gambrel),
        "used": scale.used,
    }


def _scale(row: Row[*tuple[Any, ...]]) -> Scale:
    return Scale(
        id=row.id,
        name=row.name,
        port=row.port,
        baud=row.baud,
        bits=row.bits,
        parity=cast("Parity", row.parity),
        stop_bits=row.stop_bits,
        pattern=row.pattern,
        own_pattern=own_from(row.own_pattern),
        unit=cast("WeightUnit", row.unit),
        division=weight_of(row.division_count, row.division_unit, row.division_exponent),
        hook=weight_of(row.hook_count, row.hook_unit, row.hook_exponent),
        gambrel=weight_of(row.gambrel_count, row.gambrel_unit, row.gambrel_exponent),
        used=row.used,
        version=row.version,
    )
