"""A store on the real schema for each test: a template made by the migrations, copied by SQLite."""

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from db.store import Store, open_store
from db.unit_of_work import Work
from shared.shop.people import SignedOn

MORNING = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


@dataclass
class Clock:
    """A clock that stands still unless a test moves it."""

    now: datetime = MORNING

    def __call__(self) -> datetime:
        return self.now

    def pass_by(self, **some: int) -> None:
        self.now += timedelta(**some)


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture(scope="session")
def store_template(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An empty shop, made once through the real migrations."""
    path = tmp_path_factory.mktemp("template") / "template.db"
    open_store(path, keep_copies=False, clock=Clock()).close()
    return path


@pytest.fixture
def store_path(store_template: Path, tmp_path: Path) -> Path:
    """The file of an empty shop of one's own."""
    path = tmp_path / "shop" / "steelyard.db"
    path.parent.mkdir()
    with sqlite3.connect(store_template) as source, sqlite3.connect(path) as copy:
        source.backup(copy)
    source.close()
    copy.close()
    return path


@pytest.fixture
def store(store_path: Path, clock: Clock) -> Iterator[Store]:
    """An open, empty store."""
    opened = open_store(store_path, keep_copies=False, clock=clock)
    yield opened
    opened.close()


@pytest.fixture
def signed(store: Store) -> SignedOn:
    """Someone at work."""
    return store.sign_on("Test", "Bench")


@pytest.fixture
def work(store: Store, signed: SignedOn) -> Iterator[Work]:
    """An open unit of work; rolled back unless the test commits it."""
    with store.work(signed.person, signed.station) as opened:
        yield opened
