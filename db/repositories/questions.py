"""The question a lot puts to the planner: carcasses, shares, choices and the shop's settings."""

from collections.abc import Iterable
from dataclasses import replace
from typing import Any, cast

from sqlalchemy import Row, bindparam, select

from db.choice_text import choice_from
from db.desk import Desk
from db.problems import StoreBug
from db.repositories.arrivals import dressings_of
from db.repositories.findings import as_the_block_cut
from db.repositories.losses import losses_of, measured_of
from db.repositories.lot_shares import shares_of
from db.repositories.shop import ShopBook
from db.repositories.weighings import weighings_of
from db.tables.lots import Animals, Lots
from db.tables.orders import OrderLines
from db.weights import weight_of
from shared.carcass.carcass import Age, Carcass, Gone, Measured, Regime, Share, SideWeights, Skin
from shared.carcass.dressing import USUAL, Dressing
from shared.carcass.thirty_months import holds_for
from shared.cutting.order import Choice, Question
from shared.shop.animals import Loss, Weighing
from shared.units import Weight

CARCASS_COLUMNS = (
    Animals.id,
    Animals.tag,
    Animals.sex,
    Animals.age,
    Animals.skin,
    Animals.regime,
    Animals.split,
    Animals.state,
    Animals.killed_on,
    Lots.species,
    Lots.booked_count,
    Lots.booked_unit,
    Lots.booked_exponent,
)
_CARCASSES = (
    select(*CARCASS_COLUMNS)
    .join(Lots, Lots.id == Animals.lot_id)
    .where(Animals.lot_id == bindparam("lot"))
    .order_by(Animals.place_in_lot)
)
_CHOICES = (
    select(OrderLines.choice).where(OrderLines.lot_id == bindparam("lot")).order_by(OrderLines.line)
)


NOTHING_LEFT = ("condemned", "refused", "not_come")
"""States of an animal of which nothing is cut; its owners' choices no longer stand."""


KILLED = ("hanging", "on_block", "cut")


def question_of(desk: Desk, lot_id: int, *, at_block: bool | None) -> Question:
    """The whole question; twelve queries however many animals, owners and lines there are.

    `at_block` None: as at the block once an animal hangs whose age nobody knows.
    """
    animals = desk.connection.execute(_CARCASSES, {"lot": lot_id}).all()
    if not animals:
        raise StoreBug(f"no lot {lot_id}")
    ids = [row.id for row in animals]
    weighed = weighings_of(desk.connection, ids)
    weighings = [one for one in weighed if one.current]
    losses = [one for one in losses_of(desk.connection, ids) if not one.void]
    measured = measured_of(desk.connection, ids)
    dressings = dressings_of(desk.connection, ids)
    carcasses = tuple(
        _carcass(
            row,
            [one for one in weighings if one.animal_id == row.id],
            tuple(_gone(one, weighed) for one in losses if one.animal_id == row.id),
            measured.get(row.id, ()),
            dressings.get(row.id, USUAL),
        )
        for row in animals
    )
    shares = tuple(
        Share(one.number, one.owner, one.holdings, one.leader)
        for one in shares_of(desk.connection, lot_id)
    )
    if at_block is None:
        at_block = any(_killed_of_no_age(row, weighings) for row in animals)
    settings = ShopBook(desk).planner_settings(animals[0].species, at_block=at_block)
    choices = as_the_block_cut(desk.connection, ids, choices_of_lot(desk, lot_id))
    return Question(carcasses, shares, choices, settings)


def _killed_of_no_age(row: Row[*tuple[Any, ...]], weighings: list[Weighing]) -> bool:
    """Cattle on the rail whose age isn't known: from then on it counts as 30 months and over."""
    if row.age != "unknown" or row.state in NOTHING_LEFT or not holds_for(row.species):
        return False
    hot = any(one.animal_id == row.id and one.kind != "live" for one in weighings)
    return hot or row.killed_on is not None or row.state in KILLED


def _carcass(
    row: Row[*tuple[Any, ...]],
    weighings: list[Weighing],
    gone: tuple[Gone, ...],
    measured: tuple[Measured, ...],
    dressing: Dressing,
) -> Carcass:
    return Carcass(
        species=row.species,
        tag=row.tag,
        sex=row.sex,
        age=cast("Age", row.age),
        skin=cast("Skin", row.skin),
        regime=cast("Regime", row.regime),
        split=row.split,
        live=_only(weighings, "live"),
        hot=(_side(weighings, "hot", 1), _side(weighings, "hot", 2)),
        chilled=_chilled(weighings),
        hot_whole=_only(weighings, "hot"),
        booked=weight_of(row.booked_count, row.booked_unit, row.booked_exponent),
        gone=gone,
        measured=measured,
        condemned=row.state in NOTHING_LEFT,
        dressing=dressing,
    )


def _gone(loss: Loss, weighed: Iterable[Weighing]) -> Gone:
    """What is gone; it was off before the chilled weight if it was told by then, as at the rail.

    A chilled weight that was corrected stands for the time it was first taken.
    """
    chilled = [
        one.at for one in weighed if one.kind == "chilled" and one.animal_id == loss.animal_id
    ]
    if loss.gone.before_scale or not chilled or loss.at > min(chilled):
        return loss.gone
    return replace(loss.gone, before_chilled=True)


def choices_of_lot(desk: Desk, lot_id: int) -> tuple[Choice, ...]:
    """Every line of every order of a lot as it stands, by line number."""
    rows = desk.connection.execute(_CHOICES, {"lot": lot_id}).scalars()
    return tuple(choice_from(text) for text in rows)


def _only(weighings: Iterable[Weighing], kind: str) -> Weight | None:
    for one in weighings:
        if one.kind == kind and one.side == 0:
            return one.weight
    return None


def _side(weighings: Iterable[Weighing], kind: str, side: int) -> SideWeights:
    found: dict[str, Weight] = {
        one.quarter: one.weight for one in weighings if one.kind == kind and one.side == side
    }
    return SideWeights(found.get(""), found.get("fore"), found.get("hind"))


def _chilled(weighings: list[Weighing]) -> tuple[SideWeights, SideWeights]:
    """Chilled weights by side; one of a whole carcass is halved, the odd nanogram to side 1."""
    whole = _only(weighings, "chilled")
    if whole is None:
        return (_side(weighings, "chilled", 1), _side(weighings, "chilled", 2))
    second, odd = divmod(whole.nanograms, 2)
    if odd == 0:
        half = Weight(whole.count * 5, whole.unit, whole.exponent - 1)
        return (SideWeights(half), SideWeights(half))
    return (
        SideWeights(Weight(second + 1, "kg", -12)),
        SideWeights(Weight(second, "kg", -12)),
    )
