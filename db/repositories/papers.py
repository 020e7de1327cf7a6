"""Kept papers: what was printed, from what, and its bytes; printing again prints the bytes."""

from collections.abc import Mapping, Sequence
from typing import Any, cast

from sqlalchemy import ColumnElement, Select, false, or_, select

from db.desk import Desk
from db.tables.papers import Changes, Papers
from db.tables.people import Persons, Stations
from shared.shop.lists import Change
from shared.shop.papers import Paper, PaperKind, PaperRow, digest


class PaperBook:
    """`work.papers`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def keep(
        self,
        kind: PaperKind,
        *,
        lot_id: int | None = None,
        order_id: int | None = None,
        number: int = 0,
        snapshot: str,
        pdf: bytes,
    ) -> Paper:
        """Keep a paper whole. It can't be changed or removed afterwards."""
        desk = self._desk
        sha256 = digest(snapshot)
        new = desk.insert(
            Papers,
            {
                "kind": kind,
                "lot_id": lot_id,
                "order_id": order_id,
                "number": number,
                "snapshot": snapshot,
                "sha256": sha256,
                "pdf": pdf,
                "made_at": desk.now,
                **desk.stamp,
            },
        )
        return Paper(
            new,
            kind,
            lot_id,
            order_id,
            number,
            snapshot,
            sha256,
            pdf,
            desk.now,
            desk.person.name,
        )

    def get(self, paper_id: int) -> Paper | None:
        """A paper whole, or None."""
        row = self._desk.connection.execute(
            select(
                Papers.id,
                Papers.kind,
                Papers.lot_id,
                Papers.order_id,
                Papers.number,
                Papers.snapshot,
                Papers.sha256,
                Papers.pdf,
                Papers.made_at,
                Persons.name,
            )
            .join(Persons, Persons.id == Papers.person_id)
            .where(Papers.id == paper_id)
        ).one_or_none()
        if row is None:
            return None
        return Paper(row[0], cast("PaperKind", row[1]), *row[2:])

    def of_order(self, order_id: int) -> tuple[PaperRow, ...]:
        """The papers of an order, newest first, without their bytes."""
        return self._rows(Papers.order_id == order_id)

    def of_lot(self, lot_id: int) -> tuple[PaperRow, ...]:
        """The papers of a lot, newest first, without their bytes."""
        return self._rows(Papers.lot_id == lot_id)

    def _rows(self, where: ColumnElement[bool]) -> tuple[PaperRow, ...]:
        rows = self._desk.connection.execute(
            select(
                Papers.id,
                Papers.kind,
                Papers.lot_id,
                Papers.order_id,
                Papers.number,
                Papers.sha256,
                Papers.made_at,
                Persons.name,
            )
            .join(Persons, Persons.id == Papers.person_id)
            .where(where)
            .order_by(Papers.id.desc())
        )
        return tuple(PaperRow(row[0], cast("PaperKind", row[1]), *row[2:]) for row in rows)


class ChangeBook:
    """`work.changes`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def of(self, subject: str, subject_id: int, limit: int = 200) -> tuple[Change, ...]:
        """Who did what to it, newest first."""
        mine = (Changes.subject == subject) & (Changes.subject_id == subject_id)
        rows = self._desk.connection.execute(
            _changes().where(mine).order_by(Changes.id.desc()).limit(limit)
        )
        return tuple(Change(*row) for row in rows)

    def of_all(self, subjects: Mapping[str, Sequence[int]]) -> tuple[Change, ...]:
        """Who did what to any of these, by subject and ids, first to last."""
        theirs = [
            (Changes.subject == subject) & Changes.subject_id.in_(ids)
            for subject, ids in subjects.items()
        ]
        rows = self._desk.connection.execute(
            _changes().where(or_(false(), *theirs)).order_by(Changes.id)
        )
        return tuple(Change(*row) for row in rows)


def _changes() -> Select[*tuple[Any, ...]]:
    return (
        select(
            Changes.id,
            Changes.at,
            Persons.name,
            Stations.name,
            Changes.subject,
            Changes.subject_id,
            Changes.what,
            Changes.reason,
            Changes.data,
        )
        .join(Persons, Persons.id == Changes.person_id)
        .join(Stations, Stations.id == Changes.station_id)
    )
