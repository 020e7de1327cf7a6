"""Who waits for a place on a kill day."""

from datetime import date
from typing import TYPE_CHECKING, cast

from sqlalchemy import select

from db.desk import Desk
from db.tables.calendar import WaitingRows
from db.tables.customers import Customers
from shared.shop.calendar import Comes, Waiting, WaitState
from shared.shop.calls import Outcome
from shared.shop.problems import Refused, StaleEdit

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime, Skin

AS_USUAL = Comes()


class WaitingBook:
    """`work.waiting`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(
        self,
        customer_id: int,
        species: str,
        head: int,
        from_day: date,
        note: str = "",
        *,
        comes: Comes = AS_USUAL,
    ) -> int | Refused:
        """Put someone on the list, and how his animals come; the new id."""
        if head < 1:
            return Refused("no_head")
        desk = self._desk
        row = desk.insert(
            WaitingRows,
            {
                "customer_id": customer_id,
                "species": species,
                "head": head,
                "from_day": from_day,
                "note": note,
                "skin": comes.skin,
                "regime": comes.regime,
                "keeps": comes.keeps.strip(),
                "state": "waiting",
                "version": 1,
                "at": desk.now,
                **desk.stamp,
            },
        )
        desk.record("waiting", row, "added", species=species, head=head)
        return row

    def move(self, waiting_id: int, state: WaitState, *, version: int) -> StaleEdit | None:
        """Told, booked, gone, or waiting again."""
        stale = self._desk.edit(WaitingRows, "waiting", waiting_id, version, {"state": state})
        if stale is None:
            self._desk.record("waiting", waiting_id, state)
        return stale

    def rang(
        self, waiting_id: int, outcome: Outcome, note: str = "", *, version: int
    ) -> StaleEdit | None:
        """A call about a free place; whoever was spoken to counts as told, others wait on."""
        state: WaitState = "told" if outcome == "spoke" else "waiting"
        stale = self._desk.edit(WaitingRows, "waiting", waiting_id, version, {"state": state})
        if stale is None:
            self._desk.record("waiting", waiting_id, f"rang_{outcome}", note.strip())
        return stale

    def list(self, species: str = "", day: date | None = None) -> tuple[Waiting, ...]:
        """Who waits, the longest first; of a species, and for a place on `day`."""
        asked = (
            select(WaitingRows, Customers.name)
            .join(Customers, Customers.id == WaitingRows.customer_id)
            .where(WaitingRows.state.in_(("waiting", "told")))
            .order_by(WaitingRows.id)
        )
        if species:
            asked = asked.where(WaitingRows.species == species)
        if day is not None:
            asked = asked.where(WaitingRows.from_day <= day)
        return tuple(
            Waiting(
                row.id,
                row.customer_id,
                row.name,
                row.species,
                row.head,
                row.from_day,
                row.note,
                cast("WaitState", row.state),
                row.version,
                Comes(cast("Skin", row.skin), cast("Regime", row.regime), row.keeps),
            )
            for row in self._desk.connection.execute(asked)
        )
