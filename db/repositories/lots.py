"""Lots: book, change, name the owners, cancel; and the question a lot puts to the planner."""

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, Literal, cast

from sqlalchemy import bindparam, delete, exists, func, select, update
from sqlalchemy.orm import aliased

from db.desk import Desk
from db.repositories.animals import animals_of
from db.repositories.lot_lists import lot_rows
from db.repositories.lot_shares import add_share_rows, shares_of
from db.repositories.questions import question_of
from db.tables.customers import Customers
from db.tables.lots import Animals, Holdings, Lots, Shares
from db.tables.orders import OrderLines, Orders
from db.weights import weight_of, weight_values
from shared.cutting.order import Question
from shared.shop.holdings import ShareFault, check_shares
from shared.shop.lists import LotRow
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.problems import Refused, StaleEdit
from shared.shop.states import NOT_HERE

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime, Skin

AFTER_THE_KILL = ("weighed", "passed", "held", "condemned", "hanging", "on_block", "cut")
LotSort = Literal["day", "number", "species", "producer"]


LOT_COLUMNS = (
    Lots.id,
    Lots.number,
    Lots.species,
    Lots.head,
    Lots.day,
    Lots.producer_id,
    Customers.name,
    Lots.skin,
    Lots.regime,
    Lots.booked_count,
    Lots.booked_unit,
    Lots.booked_exponent,
    Lots.keeps,
    Lots.note,
    Lots.cancelled,
    Lots.version,
)
_LOT = (
    select(*LOT_COLUMNS)
    .join(Customers, Customers.id == Lots.producer_id)
    .where(Lots.id == bindparam("lot"))
)

_OWN, _JOINED = aliased(Customers), aliased(Customers)
_NAMED = (  # read at every step down the rail's list
    select(Lots.number, func.coalesce(_JOINED.name, _OWN.name, ""))
    .outerjoin(Shares, Shares.lot_id == Lots.id)
    .outerjoin(_OWN, _OWN.id == Shares.customer_id)
    .outerjoin(_JOINED, _JOINED.id == _OWN.joined_into)
    .where(Lots.id == bindparam("lot"))
    .order_by(Shares.number)
)


class LotBook:
    """`work.lots`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def book(self, new: NewLot) -> Lot | tuple[ShareFault, ...] | Refused:
        """Keep a booking: its animals, its shares, and an open order for each share."""
        refused = _not_bookable(new)
        if refused is not None:
            return refused
        faults = check_shares(new.head, new.shares)
        if faults:
            return faults
        desk = self._desk
        lot_id = desk.insert(
            Lots,
            {
                "number": desk.next_number("lot"),
                "species": new.species,
                "head": new.head,
                "day": new.day,
                "producer_id": new.producer_id,
                "skin": new.skin,
                "regime": new.regime,
                **weight_values("booked", new.booked),
                "keeps": new.keeps,
                "note": new.note,
                "cancelled": "",
                "last_line": 0,
                "version": 1,
            },
        )
        desk.add_rows(Animals, [_animal_row(lot_id, place, new) for place in range(new.head)])
        add_share_rows(desk, lot_id, new.shares)
        self._open_orders(lot_id, new.shares)
        desk.record("lot", lot_id, "booked", species=new.species, head=new.head)
        return self._there(lot_id)

    def _open_orders(self, lot_id: int, shares: Sequence[LotShare]) -> None:
        desk = self._desk
        desk.add_rows(
            Orders,
            [
                {
                    "number": desk.next_number("order"),
                    "lot_id": lot_id,
                    "share": share.number,
                    "state": "open",
                    "note": "",
                    "due": None,
                    "sheet": 0,
                    "sheet_change": 0,
                    "acknowledged": 0,
                    "last_change": 0,
                    "closed_at": None,
                    "version": 1,
                }
                for share in sorted(shares, key=lambda one: one.number)
            ],
        )

    def named(self, lot_id: int) -> tuple[int, tuple[str, ...]]:
        """Its number and the names of its owners today, by share; those to be named left out."""
        rows = self._desk.connection.execute(_NAMED, {"lot": lot_id}).all()
        return rows[0][0], tuple(name for _, name in rows if name)

    def get(self, lot_id: int) -> Lot | None:
        """The lot with its animals and shares, or None."""
        row = self._desk.connection.execute(_LOT, {"lot": lot_id}).one_or_none()
        if row is None:
            return None
        return Lot(
            id=row.id,
            number=row.number,
            species=row.species,
            head=row.head,
            day=row.day,
            producer_id=row.producer_id,
            producer=row.name,
            skin=cast("Skin", row.skin),
            regime=cast("Regime", row.regime),
            booked=weight_of(row.booked_count, row.booked_unit, row.booked_exponent),
            keeps=row.keeps,
            note=row.note,
            shares=shares_of(self._desk.connection, lot_id),
            animals=animals_of(self._desk.connection, lot_id),
            cancelled=row.cancelled,
            version=row.version,
        )

    def _there(self, lot_id: int) -> Lot:
        found = self.get(lot_id)
        assert found is not None
        return found

    def save_details(self, lot: Lot) -> Lot | StaleEdit | Refused:
        """Write day, producer, skin, regime, guess, what is kept and the note.

        Whether a lot is inspected or custom-exempt, and its day, can't change once an animal is
        killed.
        """
        before = self._there(lot.id)
        fixed = (before.regime, before.day) == (lot.regime, lot.day)
        if not fixed and self._killed(lot.id):
            return Refused("already_killed")
        desk = self._desk
        values: dict[str, object] = {
            "day": lot.day,
            "producer_id": lot.producer_id,
            "skin": lot.skin,
            "regime": lot.regime,
            **weight_values("booked", lot.booked),
            "keeps": lot.keeps,
            "note": lot.note,
        }
        stale = desk.edit(Lots, "lot", lot.id, lot.version, values)
        if stale is not None:
            return stale
        changed = {
            name: getattr(lot, name)
            for name in ("skin", "regime")
            if getattr(lot, name) != getattr(before, name)
        }
        if changed:
            desk.connection.execute(
                update(Animals).where(Animals.lot_id == lot.id).values(**changed)
            )
        desk.record("lot", lot.id, "saved", day=lot.day.isoformat())
        return self._there(lot.id)

    def name_share(
        self, lot_id: int, share: int, customer_id: int | None, *, version: int
    ) -> Lot | StaleEdit | Refused:
        """Say whose share it is. Custom-exempt owners are fixed before the kill.

        (21 USC 623(a); 9 CFR 303.1: the owner is the one the animal was slaughtered for.)
        """
        if self._there(lot_id).regime == "custom" and self._killed(lot_id):
            return Refused("already_killed")
        desk = self._desk
        stale = desk.edit(Lots, "lot", lot_id, version, {})
        if stale is not None:
            return stale
        desk.connection.execute(
            update(Shares)
            .where(Shares.lot_id == lot_id, Shares.number == share)
            .values(customer_id=customer_id)
        )
        desk.record("lot", lot_id, "share_named", share=share, customer=customer_id)
        return self._there(lot_id)

    def set_shares(
        self, lot_id: int, shares: Sequence[LotShare], *, version: int
    ) -> Lot | StaleEdit | tuple[ShareFault, ...] | Refused:
        """Share the lot out anew, before the kill. A share whose order has lines can't vanish."""
        lot = self._there(lot_id)
        faults = check_shares(lot.head, shares)
        if faults:
            return faults
        if self._killed(lot_id):
            return Refused("already_killed")
        numbers = {share.number for share in shares}
        gone = [share.number for share in lot.shares if share.number not in numbers]
        if self._in_use(lot_id, gone):
            return Refused("has_lines")
        desk = self._desk
        stale = desk.edit(Lots, "lot", lot_id, version, {})
        if stale is not None:
            return stale
        self._replace_shares(lot, shares, gone)
        desk.record("lot", lot_id, "shared_out", shares=len(shares))
        return self._there(lot_id)

    def _replace_shares(self, lot: Lot, shares: Sequence[LotShare], gone: list[int]) -> None:
        run = self._desk.connection.execute
        run(delete(Holdings).where(Holdings.lot_id == lot.id))
        run(delete(Orders).where(Orders.lot_id == lot.id, Orders.share.in_(gone)))
        run(delete(Shares).where(Shares.lot_id == lot.id, Shares.number.in_(gone)))
        known = {share.number for share in lot.shares}
        add_share_rows(self._desk, lot.id, shares, known)
        self._open_orders(lot.id, [share for share in shares if share.number not in known])

    def _in_use(self, lot_id: int, numbers: list[int]) -> bool:
        lines = exists().where(OrderLines.order_id == Orders.id)
        used = select(Orders.id).where(
            Orders.lot_id == lot_id,
            Orders.share.in_(numbers),
            lines | (Orders.state != "open") | (Orders.last_change != 0),
        )
        return self._desk.connection.execute(used.limit(1)).first() is not None

    def _killed(self, lot_id: int) -> bool:
        found = select(Animals.id).where(
            Animals.lot_id == lot_id, Animals.state.in_(AFTER_THE_KILL)
        )
        return self._desk.connection.execute(found.limit(1)).first() is not None

    def cancel(self, lot_id: int, reason: str, *, version: int) -> Lot | StaleEdit | Refused:
        """Cancel a booking whose animals haven't come; its number stays taken."""
        if not reason.strip():
            return Refused("reason_missing")
        if any(animal.state not in NOT_HERE for animal in self._there(lot_id).animals):
            return Refused("has_arrived")
        stale = self._desk.edit(Lots, "lot", lot_id, version, {"cancelled": reason.strip()})
        if stale is not None:
            return stale
        self._desk.record("lot", lot_id, "cancelled", reason)
        return self._there(lot_id)

    def question(self, lot_id: int, *, at_block: bool | None = None) -> Question:
        """All that the planner is asked about a lot, in a constant number of queries.

        `at_block`: cattle of an age nobody knows count as 30 months and over; left out, they do
        once one of them is killed (settled by the house; 9 CFR 310.22).
        """
        return question_of(self._desk, lot_id, at_block=at_block)

    def list(
        self,
        *,
        text: str = "",
        start: date | None = None,
        end: date | None = None,
        species: str = "",
        cancelled: bool = False,
        sort: LotSort = "day",
        descending: bool = False,
        limit: int = 500,
        offset: int = 0,
    ) -> tuple[LotRow, ...]:
        """Lots by day, species and text, sorted; `end` is within."""
        return lot_rows(
            self._desk.connection,
            text=text,
            days=(start, end),
            species=species,
            cancelled=cancelled,
            order=(sort, descending),
            page=(limit, offset),
        )


def _not_bookable(new: NewLot) -> Refused | None:
    if new.head < 1:
        return Refused("no_head")
    if not new.species:
        return Refused("no_species")
    if new.producer_id <= 0:
        return Refused("no_producer")
    return None


def _animal_row(lot_id: int, place: int, new: NewLot) -> dict[str, object]:
    return {
        "lot_id": lot_id,
        "place_in_lot": place,
        "tag": "",
        "tag_key": "",
        "sex": "",
        "age": "unknown",
        "skin": new.skin,
        "regime": new.regime,
        "state": "booked",
        "split": None,
        "place": "",
        "arrived_at": None,
        "killed_on": None,
        "hung_at": None,
        "held_for": "",
        "version": 1,
    }
