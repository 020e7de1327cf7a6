"""Batches in cure, smoke and the mixer: what went in by owner, their states, what came out."""

from collections.abc import Collection, Sequence
from fractions import Fraction

from sqlalchemy import select, update

from db.desk import Desk
from db.problems import StoreBug
from db.repositories.batch_rows import batches_where, sources_of
from db.tables.batches import BatchAdded, Batches, BatchMeat, BatchStages
from db.tables.orders import Orders
from db.weights import weight_values
from shared.curing.batch import (
    STATES,
    Batch,
    BatchState,
    Source,
    may_join,
    shared_out,
    source_of,
)
from shared.shop.problems import Refused, StaleEdit
from shared.units import Weight

OPEN: tuple[BatchState, ...] = ("gathering", "curing", "smoking", "done")


class BatchBook:
    """`work.batches`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def begin(self, recipe_id: int, note: str = "") -> Batch:
        """A new batch by a recipe, with the next number."""
        desk = self._desk
        none = {**weight_values("cure", None), **weight_values("brine", None)}
        new = desk.insert(
            Batches,
            {
                "number": desk.next_number("batch"),
                "recipe_id": recipe_id,
                "state": "gathering",
                "note": note,
                **none,
                "pickup": None,
                **weight_values("out", None),
                "version": 1,
            },
        )
        self._stage(new, "gathering", "")
        return self._there(new)

    def get(self, batch_id: int) -> Batch | None:
        """The batch whole, or None."""
        found = batches_where(self._desk.connection, Batches.id == batch_id)
        return found[0] if found else None

    def by_number(self, number: int) -> Batch | None:
        """The batch of that number, or None."""
        found = batches_where(self._desk.connection, Batches.number == number)
        return found[0] if found else None

    def list(self, states: Collection[BatchState] = OPEN) -> tuple[Batch, ...]:
        """Batches in those states, the newest first; four queries however many there are."""
        return batches_where(self._desk.connection, Batches.state.in_(states))

    def of_order(self, order_id: int) -> tuple[Batch, ...]:
        """Every batch that holds meat of an order, packed ones too."""
        holding = select(BatchMeat.batch_id).where(
            BatchMeat.order_id == order_id, BatchMeat.void == ""
        )
        return batches_where(self._desk.connection, Batches.id.in_(holding))

    def of_lot(self, lot_id: int) -> tuple[Batch, ...]:
        """Every batch that holds meat of a lot's orders, packed ones too."""
        holding = (
            select(BatchMeat.batch_id)
            .join(Orders, Orders.id == BatchMeat.order_id)
            .where(Orders.lot_id == lot_id, BatchMeat.void == "")
        )
        return batches_where(self._desk.connection, Batches.id.in_(holding))

    def source(self, order_id: int) -> Source:
        """Whose meat an order's is, and of which animals."""
        return sources_of(self._desk.connection, (order_id,))[order_id]

    def put_in(
        self, batch_id: int, order_id: int, line: int, cut: str, weight: Weight, pieces: int = 0
    ) -> Batch | Refused:
        """Meat of an order's line goes in, as weighed, while the batch is put together.

        Refused: "not_positive", "not_gathering", and why it may not join: "others_meat" (21 USC
        623(a)), "custom_with_inspected", "species".
        """
        batch = self._there(batch_id)
        if weight.count <= 0:
            return Refused("not_positive")
        if batch.state != "gathering":
            return Refused("not_gathering", {"state": batch.state})
        barred = may_join([source_of(one) for one in batch.standing], self.source(order_id))
        if barred is not None:
            return Refused(barred, {"batch": str(batch.number)})
        desk = self._desk
        desk.insert(
            BatchMeat,
            {
                "batch_id": batch_id,
                "order_id": order_id,
                "line": line,
                "cut": cut,
                **weight_values("weight", weight),
                "pieces": pieces,
                "at": desk.now,
                **desk.stamp,
                "void": "",
            },
        )
        return self._there(batch_id)

    def take_out(self, meat_id: int, reason: str) -> Batch | Refused:
        """It doesn't go in after all, with a reason; the row stays."""
        return self._void(BatchMeat, meat_id, reason)

    def add(self, batch_id: int, what: str, weight: Weight, source: str) -> Batch | Refused:
        """Fat or pork from inspected stock goes in; without its source it is refused."""
        if weight.count <= 0:
            return Refused("not_positive")
        if not source.strip():
            return Refused("source_missing")
        desk = self._desk
        desk.insert(
            BatchAdded,
            {
                "batch_id": batch_id,
                "what": what.strip(),
                **weight_values("weight", weight),
                "source": source.strip(),
                "at": desk.now,
                **desk.stamp,
                "void": "",
            },
        )
        return self._there(batch_id)

    def take_added_out(self, added_id: int, reason: str) -> Batch | Refused:
        """What was added doesn't go in after all, with a reason; the row stays."""
        return self._void(BatchAdded, added_id, reason)

    def _void(
        self, table: type[BatchMeat] | type[BatchAdded], row_id: int, reason: str
    ) -> Batch | Refused:
        if not reason.strip():
            return Refused("reason_missing")
        self._desk.must_write()
        batch_id = self._desk.connection.execute(
            update(table)
            .where(table.id == row_id, table.void == "")
            .values(void=reason.strip())
            .returning(table.batch_id)
        ).scalar_one_or_none()
        return Refused("already_void") if batch_id is None else self._there(batch_id)

    def say_cure(
        self,
        batch: Batch,
        *,
        cure: Weight | None,
        brine: Weight | None = None,
        pickup: Fraction | None = None,
    ) -> Batch | StaleEdit:
        """What is known of the cure that went in; the strength is the recipe's."""
        values: dict[str, object] = {
            **weight_values("cure", cure),
            **weight_values("brine", brine),
            "pickup": pickup,
        }
        return self._edit(batch, values)

    def move(
        self, batch: Batch, to: BatchState, note: str = "", out: Weight | None = None
    ) -> Batch | StaleEdit | Refused:
        """On to a later state; "done" needs the finished weight, going back a reason.

        Refused: "empty", "out_missing", "reason_missing", "same_state".
        """
        here, there = STATES.index(batch.state), STATES.index(to)
        if here == there:
            return Refused("same_state")
        if there < here and not note.strip():
            return Refused("reason_missing")
        if not batch.standing:
            return Refused("empty")
        finished = out or batch.out
        if there >= STATES.index("done") and (finished is None or finished.count <= 0):
            return Refused("out_missing")
        values: dict[str, object] = {"state": to, **weight_values("out", finished)}
        made = self._edit(batch, values)
        if isinstance(made, Batch):
            self._stage(batch.id, to, note)
            return self._there(batch.id)
        return made

    def shares(self, batch: Batch) -> dict[int, Weight]:
        """The finished weight by order, divided by weight in; empty until it is weighed."""
        if batch.out is None or not batch.standing:
            return {}
        parts: Sequence[tuple[int, int]] = [
            (one.order_id, one.weight.nanograms)
            for one in sorted(batch.standing, key=lambda one: (one.lot_id, one.share, one.id))
        ]
        return shared_out(batch.out, parts)

    def _edit(self, batch: Batch, values: dict[str, object]) -> Batch | StaleEdit:
        stale = self._desk.edit(Batches, "batch", batch.id, batch.version, values)
        if stale is not None:
            return stale
        self._desk.record("batch", batch.id, "changed")
        return self._there(batch.id)

    def _stage(self, batch_id: int, state: BatchState, note: str) -> None:
        desk = self._desk
        values = {"batch_id": batch_id, "state": state, "note": note.strip(), "at": desk.now}
        desk.insert(BatchStages, {**values, **desk.stamp})
        desk.record("batch", batch_id, state, note)

    def _there(self, batch_id: int) -> Batch:
        found = self.get(batch_id)
        if found is None:
            raise StoreBug(f"no batch {batch_id}")
        return found
