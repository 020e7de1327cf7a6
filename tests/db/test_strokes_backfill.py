"""Revisions 0020 and 0021: packages kept before get their stroke and count as labelled, locked."""

from pathlib import Path

import pytest
from sqlalchemy.exc import IntegrityError

from db import migrate
from db.engine import file_engine
from db.store import Store
from db.unit_of_work import Work
from tests.db.examples import lot_of_halves, order_of

OLD = (
    # id, label, line, net, made at, order: what one stroke was known by
    (1, 7, 1, 100, "2026-03-02 10:00:00", 1),
    (2, 8, 1, 100, "2026-03-02 10:00:00", 1),
    (3, 9, 1, 100, "2026-03-02 10:00:04", 1),
    (4, 10, 2, 100, "2026-03-02 10:00:00", 1),
    (5, 11, 1, 101, "2026-03-02 10:00:00", 1),
    (6, 12, 1, 100, "2026-03-02 10:00:00", 2),
    (7, 13, 1, 100, "2026-03-02 10:00:00", 1),
)
STROKES = {7: 7, 8: 7, 9: 9, 10: 10, 11: 11, 12: 12, 13: 7}


def test_old_packages_are_of_the_stroke_they_were_known_by(
    store_path: Path, store: Store, work: Work
) -> None:
    lot = lot_of_halves(work)
    assert [order_of(work, lot, share).id for share in (1, 2)] == [1, 2]
    work.commit()
    store.close()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, "0019")
    with engine.begin() as connection:
        for row, label, line, net, at, order in OLD:
            connection.exec_driver_sql(
                "INSERT INTO packages (id, label_number, order_id, line, cut, product, owner,"
                " net_count, net_unit, net_exponent, pieces, finishes, reason, made_at, person_id,"
                " station_id, void) VALUES (?, ?, ?, ?, 'ground', 'Ground', 'A', ?, 'lb', -2, 0,"
                " '[]', '', ?, 1, 1, '')",
                (row, label, order, line, net, at),
            )
    migrate.upgrade(engine, "0020")
    with engine.begin() as connection:
        kept = connection.exec_driver_sql("SELECT label_number, stroke FROM packages").fetchall()
        assert dict(tuple(one) for one in kept) == STROKES
        with pytest.raises(IntegrityError, match="rows are locked"):
            connection.exec_driver_sql("UPDATE packages SET stroke = 1")
        connection.exec_driver_sql("UPDATE packages SET void = 'torn' WHERE id = 1")
    migrate.upgrade(engine, "0021")
    with engine.begin() as connection:
        kept = connection.exec_driver_sql("SELECT made_at, labelled_at FROM packages").fetchall()
        assert len(kept) == len(OLD)
        assert all(made == labelled for made, labelled in kept)
        with pytest.raises(IntegrityError, match="rows are locked"):
            connection.exec_driver_sql("UPDATE packages SET labelled_at = NULL WHERE id = 1")
    engine.dispose()
