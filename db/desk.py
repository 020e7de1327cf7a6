"""Who is writing, at which station and moment, on which connection; what every repository needs."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, insert, select, update
from sqlalchemy.orm import InstrumentedAttribute

from db.problems import StoreBug
from db.tables.papers import Changes
from db.tables.people import Counters, Persons
from db.tables.row import Row
from shared.shop.people import Person, Station
from shared.shop.problems import StaleEdit

Written = str | int | bool | None


@dataclass(frozen=True, slots=True)
class Desk:
    """One unit of work's connection, its moment, and who works where. Reading has no person."""

    connection: Connection
    now: datetime
    person: Person
    station: Station
    reading: bool = False

    def must_write(self) -> None:
        """Writing in a unit opened for reading is our mistake."""
        if self.reading:
            raise StoreBug("a unit opened for reading can't write")

    @property
    def stamp(self) -> dict[str, int]:
        """The two columns that every kept row carries."""
        return {"person_id": self.person.id, "station_id": self.station.id}

    def insert(self, table: type[Row], values: Mapping[str, object]) -> int:
        """Add a row; its new id."""
        self.must_write()
        statement = insert(table).values(dict(values))
        key: Any = self.connection.execute(statement).inserted_primary_key
        return int(key[0])

    def add_rows(self, table: type[Row], rows: list[dict[str, object]]) -> None:
        """Add many rows in one statement."""
        self.must_write()
        if rows:
            self.connection.execute(insert(table), rows)

    def record(
        self, subject: str, subject_id: int, what: str, reason: str = "", **data: Written
    ) -> None:
        """Keep who did what when."""
        self.insert(
            Changes,
            {
                "at": self.now,
                "subject": subject,
                "subject_id": subject_id,
                "what": what,
                "reason": reason,
                "data": json.dumps(data, sort_keys=True, ensure_ascii=False),
                **self.stamp,
            },
        )

    def next_number(self, series: str) -> int:
        """The next number of a series. It is lost with the unit if the unit isn't committed.

        The counter's row stays locked until then, so that numbers have no gaps and no twins.
        """
        return self.next_numbers(series, 1)[0]

    def next_numbers(self, series: str, count: int) -> range:
        """The next so many numbers of a series, as `next_number` gives one."""
        self.must_write()
        found = self.connection.execute(
            update(Counters)
            .where(Counters.name == series)
            .values(last=Counters.last + count)
            .returning(Counters.last)
        ).scalar_one_or_none()
        if found is None:
            raise StoreBug(f"no such series of numbers: {series}")
        return range(int(found) - count + 1, int(found) + 1)

    def hold(self, series: str) -> None:
        """Keep a series' row locked until this unit ends, as `next_number` does, and take none.

        Whoever asks what is left and then writes must hold it first, or two take the last place.
        """
        self.must_write()
        self.connection.execute(
            update(Counters).where(Counters.name == series).values(last=Counters.last)
        )

    def edit(
        self,
        table: type[Row],
        subject: str,
        row_id: int,
        version: int,
        values: Mapping[str, object],
    ) -> StaleEdit | None:
        """Write to a row that two may edit; None when it was written.

        Nothing is written when its version is no longer the one that was read.
        """
        self.must_write()
        columns: Any = table
        changed = self.connection.execute(
            update(table)
            .where(columns.id == row_id, columns.version == version)
            .values({**values, "version": version + 1})
        ).rowcount
        return (
            None
            if changed == 1
            else self.stale(columns.version, columns.id, subject, row_id, version)
        )

    def stale(
        self,
        version_column: InstrumentedAttribute[int],
        id_column: InstrumentedAttribute[int],
        subject: str,
        row_id: int,
        asked: int,
    ) -> StaleEdit:
        """Who changed it since."""
        found = self.connection.execute(
            select(version_column).where(id_column == row_id)
        ).scalar_one_or_none()
        if found is None:
            raise StoreBug(f"no {subject} {row_id}")
        last = self.connection.execute(
            select(Persons.name, Changes.at)
            .join(Persons, Persons.id == Changes.person_id)
            .where(Changes.subject == subject, Changes.subject_id == row_id)
            .order_by(Changes.id.desc())
            .limit(1)
        ).one_or_none()
        name, at = ("", None) if last is None else (last[0], last[1])
        return StaleEdit(subject, row_id, asked, found, name, at)
