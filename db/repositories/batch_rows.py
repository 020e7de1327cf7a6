"""Reading batches whole: four queries, however many there are."""

from collections.abc import Collection
from typing import TYPE_CHECKING, Any, cast

from sqlalchemy import ColumnElement, Connection, Row, func, select

from db.repositories.order_lists import JOINED, OWN
from db.tables.batches import BatchAdded, Batches, BatchMeat, BatchStages, Recipes
from db.tables.lots import Animals, Holdings, Lots, Shares
from db.tables.orders import Orders
from db.tables.people import Persons
from db.tables.rail import DeerIntakes
from db.weights import known_weight, weight_of
from shared.curing.bacon import is_belly
from shared.curing.batch import Added, Batch, BatchState, PutIn, Source, Stage
from shared.curing.nitrite import CureUse
from shared.units import Weight

if TYPE_CHECKING:
    from shared.carcass.carcass import Regime
    from shared.curing.nitrite import Product


def batches_where(connection: Connection, where: ColumnElement[bool]) -> tuple[Batch, ...]:
    """The batches that fit, the newest first."""
    rows = connection.execute(
        select(
            *(column for column in Batches.__table__.columns),
            Recipes.name.label("recipe"),
            Recipes.finish,
            Recipes.product,
            Recipes.strength,
        )
        .join(Recipes, Recipes.id == Batches.recipe_id)
        .where(where)
        .order_by(Batches.id.desc())
    ).all()
    if not rows:
        return ()
    ids = [row.id for row in rows]
    meat, added, stages = _meat(connection, ids), _added(connection, ids), _stages(connection, ids)
    return tuple(
        _batch(row, meat.get(row.id, ()), added.get(row.id, ()), stages.get(row.id, ()))
        for row in rows
    )


def _batch(
    row: Row[*tuple[Any, ...]],
    meat: tuple[PutIn, ...],
    added: tuple[Added, ...],
    stages: tuple[Stage, ...],
) -> Batch:
    cure = None
    if row.product:
        cure = CureUse(
            product=cast("Product", row.product),
            green=_green([one for one in meat if not one.void]),
            cure=weight_of(row.cure_count, row.cure_unit, row.cure_exponent),
            strength=row.strength,
            brine=weight_of(row.brine_count, row.brine_unit, row.brine_exponent),
            pickup=row.pickup,
            bacon=any(is_belly(one.species, one.cut) for one in meat if not one.void),
        )
    return Batch(
        id=row.id,
        number=row.number,
        recipe_id=row.recipe_id,
        recipe=row.recipe,
        finish=row.finish,
        state=cast("BatchState", row.state),
        put_in=meat,
        added=added,
        stages=stages,
        cure=cure,
        out=weight_of(row.out_count, row.out_unit, row.out_exponent),
        note=row.note,
        version=row.version,
    )


def _green(meat: list[PutIn]) -> Weight | None:
    """The raw weight that went in, whole nanograms."""
    return Weight(sum(one.weight.nanograms for one in meat), "kg", -12) if meat else None


def sources_of(connection: Connection, order_ids: Collection[int]) -> dict[int, Source]:
    """Whose meat each order's is: owner, lot, the carcasses it holds, and their regime."""
    held = (
        select(Holdings.lot_id, Holdings.share, Holdings.carcass)
        .join(Orders, (Orders.lot_id == Holdings.lot_id) & (Orders.share == Holdings.share))
        .where(Orders.id.in_(order_ids))
    )
    carcasses: dict[tuple[int, int], set[int]] = {}
    for lot_id, share, carcass in connection.execute(held):
        carcasses.setdefault((lot_id, share), set()).add(carcass)
    rows = connection.execute(
        select(
            Orders.id,
            Orders.lot_id,
            Orders.share,
            func.coalesce(JOINED.id, OWN.id),
            Lots.species,
            select(func.min(Animals.regime))
            .where(Animals.lot_id == Orders.lot_id)
            .scalar_subquery(),
        )
        .join(Lots, Lots.id == Orders.lot_id)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .outerjoin(OWN, OWN.id == Shares.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .where(Orders.id.in_(order_ids))
    )
    found = rows.all()
    agreed = _agreed(connection, {row[1] for row in found if row[4] == "deer"})
    return {
        row[0]: Source(
            customer_id=row[3],
            lot_id=row[1],
            carcasses=frozenset(carcasses.get((row[1], row[2]), ())),
            regime=cast("Regime", row[5]),
            species=row[4],
            agreed=row[1] in agreed,
        )
        for row in found
    }


def _agreed(connection: Connection, lots: set[int]) -> set[int]:
    """The lots of deer of which every hunter agreed in writing to a batch with others' meat."""
    if not lots:
        return set()
    last = (
        select(func.max(DeerIntakes.id))
        .where(DeerIntakes.animal_id == Animals.id)
        .correlate(Animals)
        .scalar_subquery()
    )
    in_writing = (
        select(DeerIntakes.id)
        .where(DeerIntakes.id == last, DeerIntakes.meat == "batch", DeerIntakes.signed_by != "")
        .exists()
    )
    without = select(Animals.lot_id).where(Animals.lot_id.in_(lots), ~in_writing)
    return lots - set(connection.execute(without).scalars())


def _meat(connection: Connection, ids: list[int]) -> dict[int, tuple[PutIn, ...]]:
    rows = connection.execute(
        select(
            *(column for column in BatchMeat.__table__.columns),
            Orders.number,
            Orders.share,
            func.coalesce(JOINED.name, OWN.name, "").label("owner"),
            Persons.name.label("person"),
        )
        .join(Orders, Orders.id == BatchMeat.order_id)
        .join(Shares, (Shares.lot_id == Orders.lot_id) & (Shares.number == Orders.share))
        .outerjoin(OWN, OWN.id == Shares.customer_id)
        .outerjoin(JOINED, JOINED.id == OWN.joined_into)
        .join(Persons, Persons.id == BatchMeat.person_id)
        .where(BatchMeat.batch_id.in_(ids))
        .order_by(BatchMeat.id)
    ).all()
    sources = sources_of(connection, {row.order_id for row in rows})
    found: dict[int, tuple[PutIn, ...]] = {}
    for row in rows:
        one = _put_in(row, sources[row.order_id])
        found[row.batch_id] = (*found.get(row.batch_id, ()), one)
    return found


def _put_in(row: Row[*tuple[Any, ...]], source: Source) -> PutIn:
    return PutIn(
        id=row.id,
        batch_id=row.batch_id,
        order_id=row.order_id,
        order_number=row.number,
        share=row.share,
        lot_id=source.lot_id,
        customer_id=source.customer_id,
        owner=row.owner,
        species=source.species,
        regime=source.regime,
        carcasses=source.carcasses,
        line=row.line,
        cut=row.cut,
        weight=known_weight(row.weight_count, row.weight_unit, row.weight_exponent),
        pieces=row.pieces,
        at=row.at,
        person=row.person,
        void=row.void,
        agreed=source.agreed,
    )


def _added(connection: Connection, ids: list[int]) -> dict[int, tuple[Added, ...]]:
    found: dict[int, tuple[Added, ...]] = {}
    for row in connection.execute(
        select(*(column for column in BatchAdded.__table__.columns), Persons.name.label("person"))
        .join(Persons, Persons.id == BatchAdded.person_id)
        .where(BatchAdded.batch_id.in_(ids), BatchAdded.void == "")
        .order_by(BatchAdded.id)
    ):
        weight = known_weight(row.weight_count, row.weight_unit, row.weight_exponent)
        one = Added(row.id, row.what, weight, row.source, row.at, row.person)
        found[row.batch_id] = (*found.get(row.batch_id, ()), one)
    return found


def _stages(connection: Connection, ids: list[int]) -> dict[int, tuple[Stage, ...]]:
    found: dict[int, tuple[Stage, ...]] = {}
    for row in connection.execute(
        select(
            BatchStages.batch_id, BatchStages.state, BatchStages.at, Persons.name, BatchStages.note
        )
        .join(Persons, Persons.id == BatchStages.person_id)
        .where(BatchStages.batch_id.in_(ids))
        .order_by(BatchStages.id)
    ):
        one = Stage(cast("BatchState", row[1]), row[2], row[3], row[4])
        found[row[0]] = (*found.get(row[0], ()), one)
    return found
