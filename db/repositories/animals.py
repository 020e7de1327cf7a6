"""Animals: arrival, tag, states, what was taken from them and what the block measured."""

from collections.abc import Collection
from datetime import date
from typing import Any, cast

from sqlalchemy import Connection, Row, Select, bindparam, select

from db.desk import Desk
from db.repositories.animal_lists import AnimalFilter, AnimalSort, animal_count, animal_rows
from db.repositories.arrivals import ArrivalBook
from db.repositories.losses import LossBook
from db.tables.lots import Animals, Lots
from shared.carcass.carcass import Age, Regime, Skin
from shared.shop.animals import Animal
from shared.shop.arrival import standing
from shared.shop.customers import name_key
from shared.shop.lists import AnimalRow
from shared.shop.problems import MoveRefused, Refused, StaleEdit
from shared.shop.states import AnimalState, animal_move

GONE_STATES = ("cut", "condemned", "refused", "not_come")


def animal_columns() -> Select[*tuple[Any, ...]]:
    """The columns an Animal is made of."""
    return select(
        Animals.id,
        Animals.lot_id,
        Animals.place_in_lot,
        Lots.species,
        Animals.tag,
        Animals.sex,
        Animals.age,
        Animals.skin,
        Animals.regime,
        Animals.state,
        Animals.split,
        Animals.place,
        Animals.arrived_at,
        Animals.killed_on,
        Animals.hung_at,
        Animals.held_for,
        Animals.version,
    ).join(Lots, Lots.id == Animals.lot_id)


_OF_LOT = animal_columns().where(Animals.lot_id == bindparam("lot")).order_by(Animals.place_in_lot)
_ONE = animal_columns().where(Animals.id == bindparam("animal"))


def animal_from(row: Row[*tuple[Any, ...]]) -> Animal:
    """The animal of one row of `animal_columns`."""
    return Animal(
        id=row.id,
        lot_id=row.lot_id,
        index=row.place_in_lot,
        species=row.species,
        tag=row.tag,
        sex=row.sex,
        age=cast("Age", row.age),
        skin=cast("Skin", row.skin),
        regime=cast("Regime", row.regime),
        state=cast("AnimalState", row.state),
        split=row.split,
        place=row.place,
        arrived_at=row.arrived_at,
        killed_on=row.killed_on,
        hung_at=row.hung_at,
        held_for=row.held_for,
        version=row.version,
    )


def animals_of(connection: Connection, lot_id: int) -> tuple[Animal, ...]:
    """The animals of a lot in their order."""
    rows = connection.execute(_OF_LOT, {"lot": lot_id})
    return tuple(animal_from(row) for row in rows)


class AnimalBook(LossBook):
    """`work.animals`."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)

    def get(self, animal_id: int) -> Animal | None:
        """The animal, or None."""
        row = self._desk.connection.execute(_ONE, {"animal": animal_id}).one_or_none()
        return None if row is None else animal_from(row)

    def _there(self, animal_id: int) -> Animal:
        found = self.get(animal_id)
        assert found is not None
        return found

    def of_lot(self, lot_id: int) -> tuple[Animal, ...]:
        """The animals of a lot in their order."""
        return animals_of(self._desk.connection, lot_id)

    def by_tag(self, tag: str) -> tuple[Animal, ...]:
        """Animals of that tag, the newest first; tags come back in another year."""
        rows = self._desk.connection.execute(
            animal_columns()
            .where(Animals.tag_key == name_key(tag), Animals.tag_key != "")
            .order_by(Animals.id.desc())
        )
        return tuple(animal_from(row) for row in rows)

    def arrive(
        self,
        animal_id: int,
        *,
        tag: str,
        sex: str = "",
        age: Age = "unknown",
        skin: Skin | None = None,
        version: int,
    ) -> Animal | StaleEdit | MoveRefused | Refused:
        """It has come and is tagged."""
        animal = self._there(animal_id)
        move = animal_move(animal.state, "arrived", "", animal.regime)
        if isinstance(move, MoveRefused):
            return move
        refused = self._tag_refused(animal_id, tag)
        if refused is not None:
            return refused
        values: dict[str, object] = {
            "state": "arrived",
            "tag": tag.strip(),
            "tag_key": name_key(tag),
            "sex": sex,
            "age": age,
            "skin": skin or animal.skin,
            "arrived_at": self._desk.now,
        }
        return self._edited(animal, values, version, "arrived", tag=tag.strip())

    def _tag_refused(self, animal_id: int, tag: str) -> Refused | None:
        """Two animals in the house at once can't carry one tag."""
        key = name_key(tag)
        if not key:
            return Refused("tag_missing")
        other = self._desk.connection.execute(
            select(Animals.id, Lots.number)
            .join(Lots, Lots.id == Animals.lot_id)
            .where(
                Animals.tag_key == key,
                Animals.id != animal_id,
                Animals.state.not_in(GONE_STATES),
                Lots.cancelled == "",
            )
            .limit(1)
        ).one_or_none()
        if other is None:
            return None
        data = {"tag": tag.strip(), "lot": str(other.number), "animal": str(other.id)}
        return Refused("tag_taken", data)

    def swap_tags(self, one_id: int, other_id: int, reason: str) -> Refused | None:
        """Two animals had each other's tag: each gets the other's, in one step.

        What was weighed, lost or found stays with each animal's row. Refused: "reason_missing";
        "not_tagged" where one has none.
        """
        one, other = self._there(one_id), self._there(other_id)
        if not reason.strip():
            return Refused("reason_missing")
        if not one.tag or not other.tag:
            return Refused("not_tagged")
        for animal, tag in ((one, other.tag), (other, one.tag)):
            values: dict[str, object] = {"tag": tag, "tag_key": name_key(tag)}
            self._edited(animal, values, animal.version, "changed", reason, tag=tag)
        return None

    def change(self, animal: Animal) -> Animal | StaleEdit | Refused:
        """Write tag, sex, age, skin, split, place and the day of the kill."""
        if animal.tag or self._there(animal.id).tag:
            refused = self._tag_refused(animal.id, animal.tag)
            if refused is not None:
                return refused
        values: dict[str, object] = {
            "tag": animal.tag.strip(),
            "tag_key": name_key(animal.tag),
            "sex": animal.sex,
            "age": animal.age,
            "skin": animal.skin,
            "split": animal.split,
            "place": animal.place,
            "killed_on": animal.killed_on,
        }
        return self._edited(animal, values, animal.version, "changed", tag=animal.tag)

    def move(
        self, animal_id: int, to: AnimalState, *, reason: str = "", version: int
    ) -> Animal | StaleEdit | MoveRefused:
        """Move it to another state; holding, condemning and going back need a reason.

        One that is held for a result doesn't go to the block: "on_hold".
        """
        animal = self._there(animal_id)
        move = animal_move(animal.state, to, reason, animal.regime)
        if isinstance(move, MoveRefused):
            return move
        if to == "on_block" and standing(ArrivalBook(self._desk).holds(animal_id)):
            return MoveRefused("on_hold", animal.state, to)
        values: dict[str, object] = {"state": to, "held_for": ""}
        if to in ("held", "condemned", "refused", "not_come"):
            values["held_for"] = reason.strip()
        if to == "hanging" and not move.back:
            values["hung_at"] = self._desk.now
        return self._edited(animal, values, version, to, reason, start=animal.state)

    def _edited(
        self,
        animal: Animal,
        values: dict[str, object],
        version: int,
        what: str,
        reason: str = "",
        **data: str,
    ) -> Animal | StaleEdit:
        stale = self._desk.edit(Animals, "animal", animal.id, version, values)
        if stale is not None:
            return stale
        self._desk.record("animal", animal.id, what, reason, **data)
        return self._there(animal.id)

    def list(
        self,
        *,
        states: Collection[AnimalState] = (),
        text: str = "",
        species: str = "",
        start: date | None = None,
        end: date | None = None,
        sort: AnimalSort = "day",
        descending: bool = False,
        limit: int = 500,
        offset: int = 0,
    ) -> tuple[AnimalRow, ...]:
        """Animals of lots that stand, by state, day, species and text, sorted."""
        chosen = AnimalFilter(tuple(states), text, species, start, end)
        return animal_rows(self._desk.connection, chosen, (sort, descending), (limit, offset))

    def count(
        self,
        *,
        states: Collection[AnimalState] = (),
        text: str = "",
        species: str = "",
        start: date | None = None,
        end: date | None = None,
    ) -> int:
        """How many there are in all."""
        chosen = AnimalFilter(tuple(states), text, species, start, end)
        return animal_count(self._desk.connection, chosen)
