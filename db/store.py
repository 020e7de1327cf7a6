"""Opening the store: ours, sound, not too new; copied, migrated; and its units of work."""

import sqlite3
from collections.abc import Callable, Generator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, Engine, select
from sqlalchemy.exc import DBAPIError, OperationalError, SQLAlchemyError

from db import migrate
from db.backup import copy_of_today, copy_store, must_be_sound, name_of_copy, of_os
from db.engine import file_engine, reader_of, server_engine
from db.network_drive import on_network_drive
from db.problems import ReadStopped, StoreBug, StoreFault, StoreUnavailable, of_sqlite
from db.tables.people import Persons, Stations
from db.unit_of_work import Work
from shared.shop.people import Person, SignedOn, Station

NOBODY = Person(0, "")
NOWHERE = Station(0, "")
STEPS_BETWEEN = 100_000


def utc_now() -> datetime:
    """The moment, in UTC."""
    return datetime.now(UTC)


class Store:
    """An open store. May be used from any thread; each unit of work belongs to one."""

    def __init__(
        self, engine: Engine, path: Path | None, clock: Callable[[], datetime] = utc_now
    ) -> None:
        self._engine = engine
        self._reader = reader_of(engine)
        self._clock = clock
        self.path = path
        self.url = str(engine.url)

    def close(self) -> None:
        """Let go of the file or server."""
        self._engine.dispose()

    @contextmanager
    def work(self, person: Person | int, station: Station | int) -> Generator[Work]:
        """One user's action. Rolls back unless `work.commit()` was called."""
        with self._errors(), self._engine.connect() as connection:
            connection.begin()
            who = self._person(connection, person)
            where = self._station(connection, station)
            yield Work(connection, self._clock(), who, where, reading=False)

    @contextmanager
    def read(self, stopped: Callable[[], bool] | None = None) -> Generator[Work]:
        """Look something up: all of it as it stood at one moment, and no one has to wait.

        `stopped` is asked while a file is read; once it says yes the query ends in ReadStopped.
        A server's query isn't asked: it ends by itself.
        """
        with self._errors(), self._reader.connect() as connection:
            connection.begin()
            with _watched(connection, stopped):
                yield Work(connection, self._clock(), NOBODY, NOWHERE, reading=True)

    def sign_on(self, person: str, station: str) -> SignedOn:
        """The person and station of those names, added if they aren't known yet."""
        with self._errors(), self._engine.connect() as connection:
            connection.begin()
            work = Work(connection, self._clock(), NOBODY, NOWHERE, reading=False)
            signed = SignedOn(work.people.add_person(person), work.people.add_station(station))
            work.commit()
            return signed

    @staticmethod
    def _person(connection: Connection, person: Person | int) -> Person:
        if isinstance(person, Person):
            return person
        row = connection.execute(
            select(Persons.id, Persons.name, Persons.active).where(Persons.id == person)
        ).one_or_none()
        if row is None:
            raise StoreBug(f"no person {person}")
        return Person(*row)

    @staticmethod
    def _station(connection: Connection, station: Station | int) -> Station:
        if isinstance(station, Station):
            return station
        row = connection.execute(
            select(Stations.id, Stations.name).where(Stations.id == station)
        ).one_or_none()
        if row is None:
            raise StoreBug(f"no station {station}")
        return Station(*row)

    @contextmanager
    def _errors(self) -> Generator[None]:
        try:
            yield
        except SQLAlchemyError as error:
            raise _told(error, str(self.path or "")) from error


@contextmanager
def _watched(connection: Connection, stopped: Callable[[], bool] | None) -> Generator[None]:
    """Ask `stopped` every so many steps of SQLite's machine, for as long as this lasts."""
    driver = connection.connection.driver_connection
    if stopped is None or not isinstance(driver, sqlite3.Connection):
        yield
        return
    driver.set_progress_handler(lambda: int(stopped()), STEPS_BETWEEN)
    try:
        yield
    except OperationalError as error:
        if not stopped():
            raise
        raise ReadStopped from error
    finally:
        driver.set_progress_handler(None, 0)


def _told(error: SQLAlchemyError, path: str) -> StoreUnavailable | StoreBug:
    """The world, or us."""
    if isinstance(error, DBAPIError):
        if isinstance(error.orig, sqlite3.Error):
            return of_sqlite(error.orig, path)
        if isinstance(error, OperationalError) or error.connection_invalidated:
            return StoreUnavailable("server_unreachable", {"detail": str(error.orig)})
    return StoreBug(str(error))


def open_store(
    where: Path | str,
    *,
    copies: Path | None = None,
    clock: Callable[[], datetime] = utc_now,
    keep_copies: bool = True,
) -> Store:
    """Open the store at a path, or on a server by its URL; make it if there is none.

    It is refused (StoreUnavailable) when it is too new, damaged, not ours, on a network drive, or
    can't be written. It is copied before it is migrated and on the first opening of each day.
    """
    if isinstance(where, str) and "://" in where:
        return _open_server(where, clock)
    path = Path(where).absolute()
    folder = copies or path.parent / "copies"
    if on_network_drive(path):
        raise StoreUnavailable("network_drive", {"path": str(path)})
    _must_be_writable(path)
    new = not path.exists() or path.stat().st_size == 0
    found = None if new else must_be_sound(path)
    if migrate.must_migrate(found, str(path)):
        if not new:
            copy_store(path, folder / name_of_copy(path, clock(), "before_migrating"))
        _migrate_file(path)
    if keep_copies:
        copy_of_today(path, folder, clock())
    return Store(file_engine(path), path, clock)


def _must_be_writable(path: Path) -> None:
    """Make the folder if need be, and see that the file can be written."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("ab"):
            pass
    except OSError as error:
        raise of_os(error, path) from error


def _migrate_file(path: Path) -> None:
    engine = file_engine(path, foreign_keys=False)
    try:
        migrate.upgrade(engine)
    except DBAPIError as error:
        problem = _told(error, str(path))
        if isinstance(problem, StoreUnavailable):
            raise problem from error
        raise StoreUnavailable(
            "migration_failed", {"path": str(path), "detail": str(error.orig)}
        ) from error
    finally:
        engine.dispose()


def _open_server(url: str, clock: Callable[[], datetime]) -> Store:
    engine = server_engine(url)
    try:
        with engine.connect() as connection:
            there = engine.dialect.has_table(connection, "alembic_version")
            found = (
                connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
                if there
                else None
            )
        if migrate.must_migrate(found, url):
            migrate.upgrade(engine)
    except SQLAlchemyError as error:
        engine.dispose()
        raise _told(error, "") from error
    except StoreUnavailable:
        engine.dispose()
        raise
    return Store(engine, None, clock)


def check_store(path: Path) -> tuple[StoreFault, ...]:
    """Everything wrong with a store's file: pages, parents, revision. Empty is sound."""
    try:
        found = must_be_sound(path)
    except StoreUnavailable as error:
        return (StoreFault(error.code, error.data),)
    faults: list[StoreFault] = []
    if migrate.must_migrate(found, str(path)):
        faults.append(StoreFault("not_migrated", {"found": str(found), "known": migrate.HEAD}))
    connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)
    try:
        for row in connection.execute("PRAGMA integrity_check").fetchall():
            if row[0] != "ok":
                faults.append(StoreFault("damaged", {"detail": str(row[0])}))
        for row in connection.execute("PRAGMA foreign_key_check").fetchall():
            faults.append(StoreFault("no_parent", {"table": str(row[0]), "row": str(row[1])}))
    finally:
        connection.close()
    return tuple(faults)
