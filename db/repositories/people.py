"""Who works in the shop and at which stations."""

from sqlalchemy import select, update

from db.desk import Desk
from db.tables.people import Persons, Stations
from shared.shop.people import Person, Station


class People:
    """`work.people`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def persons(self) -> tuple[Person, ...]:
        """Everyone, those who have left too, by name."""
        rows = self._desk.connection.execute(
            select(Persons.id, Persons.name, Persons.active).order_by(Persons.name)
        )
        return tuple(Person(*row) for row in rows)

    def stations(self) -> tuple[Station, ...]:
        """All stations, by name."""
        rows = self._desk.connection.execute(
            select(Stations.id, Stations.name).order_by(Stations.name)
        )
        return tuple(Station(*row) for row in rows)

    def add_person(self, name: str) -> Person:
        """The person of that name, added if there is none; one who had left is back."""
        desk, name = self._desk, name.strip()
        found = desk.connection.execute(select(Persons.id).where(Persons.name == name)).scalar()
        if found is None:
            found = desk.insert(Persons, {"name": name, "active": True})
        else:
            desk.must_write()
            desk.connection.execute(update(Persons).where(Persons.id == found).values(active=True))
        return Person(found, name)

    def add_station(self, name: str) -> Station:
        """The station of that name, added if there is none."""
        desk, name = self._desk, name.strip()
        found = desk.connection.execute(select(Stations.id).where(Stations.name == name)).scalar()
        return Station(found or desk.insert(Stations, {"name": name}), name)

    def retire(self, person_id: int) -> None:
        """The person has left; what he did stays under his name."""
        self._desk.must_write()
        self._desk.connection.execute(
            update(Persons).where(Persons.id == person_id).values(active=False)
        )
        self._desk.record("person", person_id, "left")
