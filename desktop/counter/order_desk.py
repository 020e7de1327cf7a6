"""An order as it lies on the counter: its lot, its lines, what the planner says of them."""

from dataclasses import dataclass, replace
from threading import Lock
from typing import TYPE_CHECKING

from desktop.counter.usual_fill import usual_choices
from shared.cutting.dealt import dealt
from shared.cutting.forecast import forecast
from shared.cutting.plan import Planner
from shared.shop.orders import Order
from shared.shop.problems import MoveRefused, Refused, StaleEdit, UndoRefused
from shared.shop.usual import shop_catalogue

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence
    from datetime import date

    from desktop.bench import Bench
    from desktop.counter.last_time import Again
    from shared.cutting.answer import Answer, OpenPart, Remedy
    from shared.cutting.forecast import LineForecast
    from shared.cutting.order import Choice
    from shared.shop.states import OrderState

Problem = Refused | UndoRefused | StaleEdit | MoveRefused


@dataclass(frozen=True, slots=True)
class NoteStroke:
    """A change of the order's note and day: what stood there, and what stands there now."""

    note: str
    due: "date | None"
    was_note: str
    was_due: "date | None"


@dataclass(frozen=True, slots=True)
class LeadStroke:
    """A change of who says how it is cut, and the lines of its own that it set aside."""

    leader: int | None
    was: int | None
    lines: int


Stroke = int | NoteStroke | LeadStroke  # so many changes of lines, one of the note, a leader


class OrderDesk:
    """One owner's order and the lot it belongs to; every change is stored and planned at once."""

    def __init__(self, bench: "Bench", lot_id: int, order_id: int) -> None:
        self._bench = bench
        self._lot_id = lot_id
        self._order_id = order_id
        self._opened: dict[int, int] = {}
        self._strokes: dict[int, list[Stroke]] = {}
        self._undone: dict[int, list[Stroke]] = {}
        self.last_time: dict[int, Choice] = {}
        self.left_out: dict[int, tuple[Again, ...]] = {}
        self.load()

    def load(self) -> None:
        """Read the lot again and plan it."""
        with self._bench.store.read() as work:
            lot = work.lots.get(self._lot_id)
            if lot is None:
                raise LookupError(f"no lot {self._lot_id}")
            self.lot = lot
            self.orders = work.orders.of_lot(self._lot_id)
            self.question = work.lots.question(self._lot_id)
            graded = work.cooler.meat_factor(self._lot_id)
            own = work.yields.used(lot.species)
            if not hasattr(self, "catalogue"):
                self.catalogue = shop_catalogue(lot.species, work.usual.ways(lot.species))
                self.planner = Planner(self.catalogue)
                self._helper, self._helping = Planner(self.catalogue), Lock()
        self.answer = self.planner.answer(self.question)
        self.forecast = forecast(self.question, self.answer, self.catalogue, own, graded)
        self.dealt = dealt(self.forecast, self.question.shares)
        for order in self.orders:
            self._opened.setdefault(order.id, order.last_change)

    def ways_out(self, answer: "Answer") -> "tuple[tuple[Remedy, ...], ...]":
        """The ways out of an answer's conflicts; for a worker, which has a planner of its own."""
        from shared.cutting.remedy import remedies

        with self._helping:
            return remedies(self.question, answer, self.catalogue, self._helper)

    @property
    def order(self) -> "Order":
        """The order that is shown."""
        return next(one for one in self.orders if one.id == self._order_id)

    @property
    def share(self) -> int:
        """The number of the share the order is for."""
        return self.order.share

    @property
    def leader(self) -> int | None:
        """The share as whose order this one is cut; None on its own."""
        return next(one.leader for one in self.lot.shares if one.number == self.share)

    @property
    def says(self) -> "Order":
        """The order whose lines hold for the shown one: the leader's, else itself."""
        return next(one for one in self.orders if one.share == (self.leader or self.share))

    def part(self, line: int) -> "LineForecast | None":
        """What a line gives the shown owner; None where the plan made nothing of it."""
        mine = self.dealt.of_share(self.share)
        return next((one for one in mine if one.line == line), None)

    def show(self, order_id: int) -> None:
        """Turn to another owner of the lot."""
        self._order_id = order_id

    def open_parts(self, share: int | None = None) -> "tuple[OpenPart, ...]":
        """What nobody has settled yet of that share, the shown one unless told."""
        number = self.share if share is None else share
        return tuple(part for part in self.answer.open_parts if part.share == number)

    def choice(self, line: int) -> "Choice | None":
        """A line of the lot, or None."""
        return next((one for one in self.question.choices if one.line == line), None)

    def add(self, choices: "Iterable[Choice]") -> Problem | None:
        """New lines of the shown order, taken back together by one undo."""
        order_id, lines = self.order.id, tuple(choices)
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.orders.add_lines(order_id, lines)
            if isinstance(found, Refused):
                return found
            work.commit()
        if lines:
            self._stroke(order_id, len(lines))
        self.load()
        return None

    def change(self, choice: "Choice") -> Problem | None:
        """Write a line over."""
        if self.leader is not None:
            return Refused("led")
        return self._write([(self._order_of(choice.line), choice.line, choice)])

    def remove(self, line: int) -> Problem | None:
        """Take a line off the order."""
        if self.leader is not None:
            return Refused("led")
        return self._write([(self._order_of(line), line, None)])

    def take(self, remedy: "Remedy") -> Problem | None:
        """Do what a remedy says."""
        known = {one.line for one in self.question.choices}
        steps: list[tuple[int, int, Choice | None]] = []
        for edit in remedy.edits:
            line = edit.line if edit.line in known else 0
            owner = self._order_of(line) if line else self.order.id
            steps.append((owner, line, edit.choice))
        return self._write(steps)

    def fill_usual(self, primals: "Collection[str]" = ()) -> int:
        """Cut what is still open (of these primals) as usual; how many lines that gave."""
        found = usual_choices(
            self.question, self.answer, self.planner, self.catalogue, self.share, primals
        )
        if found and self.add(found) is not None:
            return 0
        return len(found)

    def take_again(self, lines: "Sequence[Again]") -> Problem | None:
        """Put lines of an earlier order on this one, and keep in mind what they were."""
        before = {one.line for one in self.question.choices}
        wanted = [(one, one.now) for one in lines if one.now is not None]
        found = self.add([now for _, now in wanted])
        if found is None:
            new = sorted({one.line for one in self.order.choices} - before)
            for line, (one, _) in zip(new, wanted, strict=True):
                if one.how != "same":
                    self.last_time[line] = one.before
            self.left_out[self.order.id] = tuple(
                one for one in lines if one.now is None and one.how != "there"
            )
        return found

    def undo(self) -> Problem | None:
        """Take back my last change of the shown order since it was opened."""
        return self._back(self._strokes, self._undone, undo=True)

    def redo(self) -> Problem | None:
        """Do again what was taken back last."""
        return self._back(self._undone, self._strokes, undo=False)

    def move(self, to: "OrderState", reason: str = "") -> Problem | None:
        """Bring the shown order to another state."""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            order = self.order
            found = work.orders.move(order.id, to, reason=reason, version=order.version)
            if isinstance(found, (MoveRefused, StaleEdit)):
                return found
            work.commit()
        self.load()
        return None

    def close(self) -> bool:
        """Close the shown order where nothing is left to do; whether it is closed now."""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.orders.close(self.order.id, version=self.order.version)
            closed = isinstance(found, Order)
            if closed:
                work.commit()
        self.load()
        return closed

    def _order_of(self, line: int) -> int:
        choice = self.choice(line)
        share = self.share if choice is None else choice.share
        return next(one.id for one in self.orders if one.share == share)

    def _write(self, steps: "Sequence[tuple[int, int, Choice | None]]") -> Problem | None:
        """Store the steps together (order, line or 0, what it becomes), then plan again."""
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            for order_id, line, choice in steps:
                if choice is None:
                    found = work.orders.remove_line(order_id, line)
                elif line:
                    found = work.orders.change_line(order_id, replace(choice, line=line))
                else:
                    found = work.orders.add_line(order_id, choice)
                if isinstance(found, Refused):
                    return found
            work.commit()
        for order_id in {step[0] for step in steps}:
            self._stroke(order_id, sum(1 for step in steps if step[0] == order_id))
        self.load()
        return None

    def lead(self, leader: int | None) -> Problem | None:
        """Cut the shown order as another share says, its own lines set aside; None: on its own."""
        order, was = self.order, self.leader
        if leader == was:
            return None
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.orders.lead(order.id, leader, version=order.version)
            if not isinstance(found, Order):
                return found
            work.commit()
        self._stroke(order.id, LeadStroke(leader, was, len(order.choices)))
        self.load()
        return None

    def save_note(self, note: str, due: "date | None") -> Problem | None:
        """Write the note for the block and the day the cut sheet is wanted."""
        order = self.order
        if (order.note, order.due) == (note, due):
            return None
        found = self._put_note(order, note, due)
        if found is None:
            self._stroke(order.id, NoteStroke(note, due, order.note, order.due))
            self.load()
        return found

    def add_note(self, said: str) -> Problem | None:
        """Write what the owner says below the note that is there; nothing where it says so."""
        note = self.order.note
        if not said or said in note:
            return None
        return self.save_note(f"{note}\n{said}" if note else said, self.order.due)

    def _put_note(self, order: Order, note: str, due: "date | None") -> Problem | None:
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = work.orders.save_note(order.id, note, due, version=order.version)
            if isinstance(found, StaleEdit):
                return found
            work.commit()
        return None

    def _stroke(self, order_id: int, stroke: Stroke) -> None:
        self._strokes.setdefault(order_id, []).append(stroke)
        self._undone.pop(order_id, None)

    def _back(
        self, taken: dict[int, list[Stroke]], put: dict[int, list[Stroke]], *, undo: bool
    ) -> Problem | None:
        order_id = self.order.id
        if not taken.get(order_id):
            return UndoRefused("nothing")
        stroke = taken[order_id][-1]
        if isinstance(stroke, NoteStroke):
            found = self._back_to_note(stroke, undo=undo)
        elif isinstance(stroke, LeadStroke):
            found = self._back_to_leader(stroke, undo=undo)
        else:
            found = self._back_lines(stroke, undo=undo)
        if found is not None:
            return found
        put.setdefault(order_id, []).append(taken[order_id].pop())
        self.load()
        return None

    def _back_to_note(self, stroke: NoteStroke, *, undo: bool) -> Problem | None:
        """The note as it was before, or as it was written, unless another wrote it since."""
        order = self.order
        if order.state not in ("open", "settled"):
            return UndoRefused("released")
        new, old = (stroke.note, stroke.due), (stroke.was_note, stroke.was_due)
        there, then = (new, old) if undo else (old, new)
        if (order.note, order.due) != there:
            return self._by_another(order, "note")
        return self._put_note(order, *then)

    def _back_to_leader(self, stroke: LeadStroke, *, undo: bool) -> Problem | None:
        """On its own with the lines it had, or led again; all of it or nothing."""
        order = self.order
        if order.state not in ("open", "settled"):
            return UndoRefused("released")
        there, then = (stroke.leader, stroke.was) if undo else (stroke.was, stroke.leader)
        if self.leader != there:
            return self._by_another(order, "led")
        opened = self._opened[order.id]
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if stroke.lines and not undo:
                gone = work.orders.redo(order.id, opened, stroke.lines)
                if isinstance(gone, UndoRefused):
                    return gone
            found = work.orders.lead(order.id, then, version=order.version)
            if not isinstance(found, Order):
                return found
            if stroke.lines and undo:
                back = work.orders.undo(order.id, opened, stroke.lines)
                if isinstance(back, UndoRefused):
                    return back
            work.commit()
        return None

    def _by_another(self, order: Order, what: str) -> UndoRefused:
        with self._bench.store.read() as work:
            told = work.changes.of("order", order.id)
        by = next((one.person for one in told if one.what == what), "")
        return UndoRefused("changed_by_another", by)

    def _back_lines(self, count: int, *, undo: bool) -> Problem | None:
        order_id = self.order.id
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            step = work.orders.undo if undo else work.orders.redo
            found = step(order_id, self._opened[order_id], count)
            if isinstance(found, UndoRefused):
                return found
            work.commit()
        return None
