"""The lines of an order: every change is kept, and the lines as they stand are written with it."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from sqlalchemy import bindparam, delete, func, select, update

from db.choice_text import choice_from, choice_text
from db.desk import Desk
from db.problems import StoreBug
from db.tables.lots import Lots, Shares
from db.tables.orders import OrderChanges, OrderLines, Orders
from db.tables.people import Persons, Stations
from shared.cutting.order import Choice
from shared.shop.orders import ChangeKind, OrderChange
from shared.shop.problems import Refused, UndoRefused

OPEN_TO_CHANGE = ("open", "settled", "released")
Pins = Mapping[int, tuple[tuple[int, int, int], ...]]
_CHANGES = (
    select(
        OrderChanges.id,
        OrderChanges.order_id,
        OrderChanges.line,
        OrderChanges.kind,
        OrderChanges.before,
        OrderChanges.after,
        OrderChanges.undoes,
        OrderChanges.reason,
        OrderChanges.at,
        Persons.name,
        Stations.name,
    )
    .join(Persons, Persons.id == OrderChanges.person_id)
    .join(Stations, Stations.id == OrderChanges.station_id)
    .where(OrderChanges.order_id == bindparam("order"), OrderChanges.id > bindparam("after"))
    .order_by(OrderChanges.id)
)
_LINES = (
    select(OrderLines.choice)
    .where(OrderLines.order_id == bindparam("order"))
    .order_by(OrderLines.line)
)
_LAST = select(func.max(OrderChanges.id)).where(OrderChanges.order_id == bindparam("order"))
_ORDER = select(Orders.lot_id, Orders.share, Orders.state).where(Orders.id == bindparam("order"))
_LEADER = select(Shares.leader).where(
    Shares.lot_id == bindparam("lot"), Shares.number == bindparam("share")
)
Step = tuple[Choice | None, Choice | None, int | None]  # before, after, the change it reverses


class OrderLineBook:
    """The part of `work.orders` that changes lines, and takes changes back."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add_line(self, order_id: int, choice: Choice) -> Choice | Refused:
        """A new line; its number is the lot's next and its share the order's own."""
        lot_id, share, state = self._order(order_id)
        if state not in OPEN_TO_CHANGE:
            return Refused("closed_to_change", {"state": state})
        if self._led(lot_id, share):
            return Refused("led")
        self._desk.must_write()
        line = self._desk.connection.execute(
            update(Lots)
            .where(Lots.id == lot_id)
            .values(last_line=Lots.last_line + 1)
            .returning(Lots.last_line)
        ).scalar_one()
        added = replace(choice, line=line, share=share, made=False)
        self._append(order_id, lot_id, "add", None, added)
        return added

    def add_lines(self, order_id: int, choices: Sequence[Choice]) -> tuple[Choice, ...] | Refused:
        """New lines in one go, numbered in order; each is a change of its own."""
        lot_id, share, state = self._order(order_id)
        if state not in OPEN_TO_CHANGE:
            return Refused("closed_to_change", {"state": state})
        if self._led(lot_id, share):
            return Refused("led")
        if not choices:
            return ()
        self._desk.must_write()
        last = self._desk.connection.execute(
            update(Lots)
            .where(Lots.id == lot_id)
            .values(last_line=Lots.last_line + len(choices))
            .returning(Lots.last_line)
        ).scalar_one()
        first = last - len(choices) + 1
        added = tuple(
            replace(one, line=first + place, share=share, made=False)
            for place, one in enumerate(choices)
        )
        self._append_all(order_id, lot_id, "add", [(None, one, None) for one in added])
        return added

    def change_line(self, order_id: int, choice: Choice) -> Choice | Refused:
        """Write a line over; the old one stays in the changes."""
        lot_id, share, state = self._order(order_id)
        before = self._line(order_id, choice.line)
        if before is None:
            return Refused("no_such_line", {"line": str(choice.line)})
        if state not in OPEN_TO_CHANGE or before.made:
            return Refused("closed_to_change", {"state": state})
        after = replace(choice, share=share, made=before.made)
        if after != before:
            self._append(order_id, lot_id, "change", before, after)
        return after

    def remove_line(self, order_id: int, line: int) -> OrderChange | Refused:
        """Take a line off; its number never returns but by undo."""
        lot_id, _, state = self._order(order_id)
        before = self._line(order_id, line)
        if before is None:
            return Refused("no_such_line", {"line": str(line)})
        if state not in OPEN_TO_CHANGE or before.made:
            return Refused("closed_to_change", {"state": state})
        return self._change(self._append(order_id, lot_id, "remove", before, None))

    def mark_made(self, order_id: int, line: int, made: bool = True) -> Choice | Refused:
        """The block ticks a line as cut, or takes the tick back."""
        lot_id, _, _ = self._order(order_id)
        before = self._line(order_id, line)
        if before is None:
            return Refused("no_such_line", {"line": str(line)})
        after = replace(before, made=made)
        if after != before:
            self._append(order_id, lot_id, "made", before, after)
        return after

    def pin(self, order_id: int, pins: Pins) -> None:
        """Fix the sides of lines, as release to the block does; other lines stay as they are."""
        lot_id, _, _ = self._order(order_id)
        for before in self._lines(order_id):
            after = replace(before, pinned=pins.get(before.line, before.pinned))
            if after != before:
                self._append(order_id, lot_id, "pin", before, after)

    def undo(self, order_id: int, after: int, count: int = 1) -> OrderChange | UndoRefused:
        """Take back my last changes since `after`; an undo is a change of its own.

        All of them or none; the last one written is handed back.
        """
        done, _ = self._mine(order_id, after)
        return self._reverse(order_id, done[::-1][:count], "undo")

    def redo(self, order_id: int, after: int, count: int = 1) -> OrderChange | UndoRefused:
        """Do again what I took back last; refused once I have changed something else."""
        _, undone = self._mine(order_id, after)
        return self._reverse(order_id, undone[::-1][:count], "redo")

    def changes(self, order_id: int, after: int = 0) -> tuple[OrderChange, ...]:
        """Every change of an order since `after`, first to last."""
        rows = self._desk.connection.execute(_CHANGES, {"order": order_id, "after": after})
        return tuple(
            OrderChange(
                row[0], row[1], row[2], kind_of(row[3]), _read(row[4]), _read(row[5]), *row[6:]
            )
            for row in rows
        )

    def _mine(self, order_id: int, after: int) -> tuple[list[OrderChange], list[OrderChange]]:
        """My changes that stand, and mine that I took back and may do again."""
        done: list[OrderChange] = []
        undone: list[OrderChange] = []
        desk = self._desk
        for change in self.changes(order_id, after):
            if (change.person, change.station) != (desk.person.name, desk.station.name):
                continue
            if change.kind == "undo" and done:
                undone.append(done.pop())
            elif change.kind == "redo" and undone:
                done.append(undone.pop())
            elif change.kind in ("add", "change", "remove"):
                done.append(change)
                undone.clear()
        return done, undone

    def _reverse(
        self, order_id: int, changes: Sequence[OrderChange], kind: ChangeKind
    ) -> OrderChange | UndoRefused:
        if not changes:
            return UndoRefused("nothing")
        lot_id, share, state = self._order(order_id)
        if state not in ("open", "settled"):
            return UndoRefused("released")
        if self._led(lot_id, share):
            return UndoRefused("led")
        me = (self._desk.person.name, self._desk.station.name)
        later = self.changes(order_id, min(one.id for one in changes))
        for change in changes:
            for one in later:
                after = one.id > change.id and one.line == change.line
                if after and (one.person, one.station) != me:
                    return UndoRefused("changed_by_another", one.person)
        there = {one.line: one for one in self._lines(order_id)}
        steps: list[Step] = []
        for change in changes:
            then = change.before if kind == "undo" else change.after
            steps.append((there.pop(change.line, None), then, change.id))
            if then is not None:
                there[change.line] = then
        return self._change(self._append_all(order_id, lot_id, kind, steps))

    def _append(
        self,
        order_id: int,
        lot_id: int,
        kind: ChangeKind,
        before: Choice | None,
        after: Choice | None,
    ) -> int:
        """One change and the line as it then stands, together."""
        return self._append_all(order_id, lot_id, kind, [(before, after, None)])

    def _append_all(
        self, order_id: int, lot_id: int, kind: ChangeKind, steps: Sequence[Step]
    ) -> int:
        """Changes in their order and the lines as they then stand; the id of the last one."""
        desk, run = self._desk, self._desk.connection.execute
        told = {"order_id": order_id, "kind": kind, "reason": "", "at": desk.now, **desk.stamp}
        rows: list[dict[str, object]] = []
        stand: dict[int, Choice | None] = {}
        for before, after, undoes in steps:
            there = after or before
            if there is None:
                raise StoreBug("a change from nothing to nothing")
            stand[there.line] = after
            old, new = _written(before), _written(after)
            rows.append({**told, "line": there.line, "before": old, "after": new, "undoes": undoes})
        desk.add_rows(OrderChanges, rows)
        run(delete(OrderLines).where(OrderLines.lot_id == lot_id, OrderLines.line.in_(stand)))
        of = {"order_id": order_id, "lot_id": lot_id}
        desk.add_rows(
            OrderLines,
            [
                {**of, "line": line, "cut": one.cut, "choice": choice_text(one)}
                for line, one in stand.items()
                if one is not None
            ],
        )
        last = run(_LAST, {"order": order_id}).scalar_one()
        if kind in ("made", "pin"):
            self._stays_as_on_the_sheet(order_id, int(last))
        run(update(Orders).where(Orders.id == order_id).values(last_change=last))
        return int(last)

    def _stays_as_on_the_sheet(self, order_id: int, last: int) -> None:
        """A tick of the block is no change since its sheet; one made before stays one."""
        self._desk.connection.execute(
            update(Orders)
            .where(Orders.id == order_id, Orders.sheet_change == Orders.last_change)
            .values(sheet_change=last)
        )

    def _change(self, change_id: int) -> OrderChange:
        order_id = self._desk.connection.execute(
            select(OrderChanges.order_id).where(OrderChanges.id == change_id)
        ).scalar_one()
        return self.changes(order_id, change_id - 1)[0]

    def _order(self, order_id: int) -> tuple[int, int, str]:
        row = self._desk.connection.execute(_ORDER, {"order": order_id}).one_or_none()
        if row is None:
            raise StoreBug(f"no order {order_id}")
        return row[0], row[1], row[2]

    def _led(self, lot_id: int, share: int) -> bool:
        """Whether it is cut as another says, and so has no lines of its own."""
        found = self._desk.connection.execute(_LEADER, {"lot": lot_id, "share": share})
        return found.scalar_one() is not None

    def _line(self, order_id: int, line: int) -> Choice | None:
        found = self._desk.connection.execute(
            select(OrderLines.choice).where(
                OrderLines.order_id == order_id, OrderLines.line == line
            )
        ).scalar_one_or_none()
        return _read(found)

    def _lines(self, order_id: int) -> tuple[Choice, ...]:
        rows = self._desk.connection.execute(_LINES, {"order": order_id}).scalars()
        return tuple(choice_from(text) for text in rows)


def kind_of(text: str) -> ChangeKind:
    """The kind of a change as kept."""
    kinds: tuple[ChangeKind, ...] = ("add", "change", "remove", "pin", "made", "undo", "redo")
    for kind in kinds:
        if kind == text:
            return kind
    raise StoreBug(f"no such kind of change: {text}")


def _read(text: str | None) -> Choice | None:
    return None if text is None else choice_from(text)


def _written(choice: Choice | None) -> str | None:
    return None if choice is None else choice_text(choice)
