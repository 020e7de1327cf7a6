"""The block: ticks, what it read, what it reports, and what the office answers."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from typing import Any, cast

from sqlalchemy import Connection, Row, Select, bindparam, func, select

from db.desk import Desk
from db.repositories.order_lists import JOINED, OWN
from db.tables.findings import (
    BlockAnswers,
    BlockFindings,
    BlockReads,
    BlockTicks,
    WithdrawnFindings,
    WithdrawnMeasurements,
)
from db.tables.findings import BlockRules as Rules
from db.tables.lots import Animals, Lots, Shares
from db.tables.orders import OrderLines, Orders
from db.tables.people import Persons
from db.tables.weighings import Measurements
from db.weights import weight_of, weight_values
from shared.cutting.order import Choice
from shared.shop.findings import (
    Answered,
    BlockRules,
    Finding,
    FindingKind,
    SheetWords,
    as_cut,
)
from shared.shop.problems import Refused, StaleEdit

Place = tuple[int, int, str]  # side, line, way


def _asked() -> Select[*tuple[Any, ...]]:
    return (
        select(
            *(one for one in BlockFindings.__table__.columns if one.name != "count"),
            BlockFindings.count.label("came_out"),
            Animals.tag,
            Animals.place_in_lot,
            Lots.species,
            Persons.name.label("person"),
            BlockAnswers.how,
            func.coalesce(WithdrawnFindings.reason, "").label("withdrawn"),
            func.coalesce(Orders.number, 0).label("order_number"),
            func.coalesce(JOINED.name, OWN.name, "").label("owner"),
        )
        .join(Animals, Animals.id == BlockFindings.animal_id)
        .join(Lots, Lots.id == Animals.lot_id)
        .join(Persons, Persons.id == BlockFindings.person_id)
        .outerjoin(BlockAnswers, BlockAnswers.finding_id == BlockFindings.id)
        .outerjoin(WithdrawnFindings, WithdrawnFindings.finding_id == BlockFindings.id)
        .outerjoin(
            OrderLines,
            (OrderLines.lot_id == Lots.id) & (OrderLines.line == BlockFindings.line),
        )
        .outerjoin(Orders, Orders.id == OrderLines.order_id)
        .outerjoin(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .outerjoin(OWN, OWN.id == Shares.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .order_by(BlockFindings.id)
    )


_CUT_OTHERWISE = _asked().where(
    BlockFindings.animal_id.in_(bindparam("animals", expanding=True)),
    BlockFindings.kind == "cut_otherwise",
    WithdrawnFindings.id.is_(None),
)


def _finding(row: Row[*tuple[Any, ...]]) -> Finding:
    return Finding(
        animal_id=row.animal_id,
        kind=cast("FindingKind", row.kind),
        side=row.side,
        what=row.what,
        line=row.line,
        count=row.came_out,
        length=row.length,
        weight=weight_of(row.weight_count, row.weight_unit, row.weight_exponent),
        ours=row.ours,
        reason=row.reason,
        id=row.id,
        at=row.at,
        person=row.person,
        tag=row.tag,
        species=row.species,
        index=row.place_in_lot,
        order_number=row.order_number,
        owner=row.owner,
        credit=cast("Answered | None", row.how),
        withdrawn=row.withdrawn,
    )


def as_the_block_cut(
    connection: Connection, animal_ids: Collection[int], choices: Iterable[Choice]
) -> tuple[Choice, ...]:
    """The choices of a lot with those lines as cut that the block reports otherwise; one query."""
    rows = connection.execute(_CUT_OTHERWISE, {"animals": list(animal_ids)})
    found: dict[int, list[Finding]] = {}
    for row in rows:
        found.setdefault(row.line, []).append(_finding(row))
    made: list[Choice] = []
    for choice in choices:
        for one in found.get(choice.line, ()):
            choice = as_cut(choice, one)  # one report after the other
        made.append(choice)
    return tuple(made)


class BlockBook:
    """`work.block`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def rules(self) -> BlockRules:
        """Own figures and the sheet's language."""
        row = self._desk.connection.execute(
            select(Rules.own_figures, Rules.sheet_words, Rules.version)
        ).one()
        return BlockRules(row[0], cast("SheetWords", row[1]), row[2])

    def save_rules(self, rules: BlockRules) -> BlockRules | StaleEdit:
        """Write them; the version read must still hold."""
        values: dict[str, object] = {
            "own_figures": rules.own_figures,
            "sheet_words": rules.sheet_words,
        }
        stale = self._desk.edit(Rules, "block_rules", 1, rules.version, values)
        if stale is not None:
            return stale
        self._desk.record("block_rules", 1, "saved", own=rules.own_figures, words=rules.sheet_words)
        return self.rules()

    def tick(self, animal_id: int, places: Collection[Place], made: bool) -> None:
        """Places ticked as made, or their ticks taken back."""
        told = {"animal_id": animal_id, "made": made, "at": self._desk.now, **self._desk.stamp}
        self._desk.add_rows(
            BlockTicks,
            [{**told, "side": side, "line": line, "way": way} for side, line, way in places],
        )

    def ticks(self, animal_id: int) -> frozenset[Place]:
        """The places ticked as it stands."""
        last: dict[Place, bool] = {}
        for row in self._desk.connection.execute(
            select(BlockTicks.side, BlockTicks.line, BlockTicks.way, BlockTicks.made)
            .where(BlockTicks.animal_id == animal_id)
            .order_by(BlockTicks.id)
        ):
            last[(row[0], row[1], row[2])] = row[3]
        return frozenset(place for place, made in last.items() if made)

    def read(self, order_id: int, change_id: int) -> None:
        """The block has read the changes of an order up to this one."""
        values = {"order_id": order_id, "change_id": change_id, "at": self._desk.now}
        self._desk.insert(BlockReads, {**values, **self._desk.stamp})

    def read_up_to(self, order_ids: Collection[int]) -> Mapping[int, int]:
        """By order the last change the block knows: on its sheet, or read since."""
        rows = self._desk.connection.execute(
            select(Orders.id, Orders.sheet_change, func.max(BlockReads.change_id))
            .outerjoin(BlockReads, BlockReads.order_id == Orders.id)
            .where(Orders.id.in_(order_ids))
            .group_by(Orders.id, Orders.sheet_change)
        )
        return {row[0]: max(row[1], row[2] or 0) for row in rows}

    def report(self, found: Finding) -> Finding | Refused:
        """Keep a report of the block; one of a loss or of a line cut otherwise says why."""
        if found.kind != "measured" and not found.reason.strip():
            return Refused("reason_missing")
        if found.kind == "measured" and not found.length:
            return Refused("length_missing")
        new = self._desk.insert(
            BlockFindings,
            {
                "animal_id": found.animal_id,
                "kind": found.kind,
                "side": found.side,
                "what": found.what,
                "line": found.line,
                "count": found.count,
                "length": found.length,
                **weight_values("weight", found.weight),
                "ours": found.ours,
                "reason": found.reason.strip(),
                "at": self._desk.now,
                **self._desk.stamp,
            },
        )
        row = self._desk.connection.execute(_asked().where(BlockFindings.id == new)).one()
        return _finding(row)

    def of_animal(self, animal_id: int) -> tuple[Finding, ...]:
        """Everything the block reported of an animal, first to last."""
        rows = self._desk.connection.execute(_asked().where(BlockFindings.animal_id == animal_id))
        return tuple(_finding(row) for row in rows)

    def list(self, *, limit: int = 500) -> tuple[Finding, ...]:
        """Reports of the block, the newest first."""
        rows = self._desk.connection.execute(
            _asked().order_by(None).order_by(BlockFindings.id.desc()).limit(limit)
        )
        return tuple(_finding(row) for row in rows)

    def withdraw(self, finding: Finding, reason: str) -> Finding | Refused:
        """Take a report back, with what it measured; a loss it recorded is taken back beside it.

        The report stays with its reason. Refused: "reason_missing", "answered_already" (its
        credit stands on it), "withdrawn_already".
        """
        if not reason.strip():
            return Refused("reason_missing")
        desk, run = self._desk, self._desk.connection.execute
        now = _finding(run(_asked().where(BlockFindings.id == finding.id)).one())
        if now.credit is not None:
            return Refused("answered_already")
        if now.withdrawn:
            return Refused("withdrawn_already")
        values = {"finding_id": now.id, "reason": reason.strip(), "at": desk.now}
        desk.insert(WithdrawnFindings, {**values, **desk.stamp})
        if now.kind == "measured":
            # A report and what it measured are written in one unit, at one moment.
            measured = run(
                select(Measurements.id).where(
                    Measurements.animal_id == now.animal_id,
                    Measurements.side == now.side,
                    Measurements.at == now.at,
                )
            ).scalars()
            desk.add_rows(
                WithdrawnMeasurements,
                [{"measurement_id": one, "finding_id": now.id} for one in measured],
            )
        desk.record("animal", now.animal_id, "report_withdrawn", reason, finding=now.id)
        return replace(now, withdrawn=reason.strip())

    def answer(self, finding_id: int, how: Answered, reason: str) -> Refused | None:
        """What became of a mistake of ours: a credit, or none, each with its reason; once."""
        if not reason.strip():
            return Refused("reason_missing")
        run = self._desk.connection.execute
        known = run(select(BlockAnswers.id).where(BlockAnswers.finding_id == finding_id)).first()
        if known is not None:
            return Refused("answered_already")
        back = select(WithdrawnFindings.id).where(WithdrawnFindings.finding_id == finding_id)
        if run(back).first() is not None:
            return Refused("withdrawn_already")
        values = {"finding_id": finding_id, "how": how, "reason": reason.strip()}
        self._desk.insert(BlockAnswers, {**values, "at": self._desk.now, **self._desk.stamp})
        return None
