"""Revision 0022: news of an age may be kept; what was kept stays, locked as before."""

import sqlite3
from pathlib import Path

import pytest

from db import migrate
from db.engine import file_engine
from db.store import Store, open_store
from db.unit_of_work import Work
from shared.shop.news import News
from tests.db import examples


def test_news_kept_before_stay_and_are_locked(store: Store, work: Work, store_path: Path) -> None:
    lot = examples.lot_of_halves(work, "beef")
    order = examples.order_of(work, lot)
    work.news.add(News(order.id, lot.animals[0].id, "part_gone", "beef", "", "part.liver", "spots"))
    kept = work.news.of_order(order.id)
    work.commit()
    store.close()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, "0021")
    with pytest.raises(sqlite3.IntegrityError), sqlite3.connect(store_path) as before:
        before.execute(
            "INSERT INTO order_news (order_id, animal_id, kind, told, at, person_id, station_id)"
            " SELECT order_id, animal_id, 'age', told, at, person_id, station_id FROM order_news"
        )
    before.close()
    migrate.upgrade(engine)
    engine.dispose()
    again = open_store(store_path, keep_copies=False)
    with again.read() as reading:
        assert reading.news.of_order(order.id) == kept
    again.close()
    with sqlite3.connect(store_path) as after:
        for change in ("UPDATE order_news SET kind = 'age'", "DELETE FROM order_news"):
            with pytest.raises(sqlite3.IntegrityError, match="locked"):
                after.execute(change)
        after.execute(
            "INSERT INTO order_news (order_id, animal_id, kind, told, at, person_id, station_id)"
            " SELECT order_id, animal_id, 'age', told, at, person_id, station_id FROM order_news"
        )
        assert after.execute("SELECT count(*) FROM order_news").fetchone() == (2,)
    after.close()
