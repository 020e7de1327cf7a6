"""One carcass as the block cuts it: released orders, the plan in steps, and what to mind."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from desktop.block.told import Told, untold
from desktop.counter.release import known_allergens
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer
from shared.cutting.breaking import BlockLine, PoolLine, block_lines, pool_lines
from shared.cutting.order import Question
from shared.cutting.plan import plan
from shared.shop.animals import Animal, Loss
from shared.shop.findings import Finding
from shared.shop.lots import Lot
from shared.shop.orders import Order
from shared.shop.sheets import Sheet
from shared.shop.usual import shop_catalogue

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench

Line = BlockLine | PoolLine
# A tick belongs to a line at one place of one carcass: (carcass, side, line, way); it stays where
# it is when what is left is planned again. In the table at the end the way is "pool".
Spot = tuple[int, int, int, str]
POOL = "pool"
AT_BLOCK = ("released", "cut")
ENDED = ("cut", "condemned", "refused", "not_come")


@dataclass(frozen=True, slots=True)
class Step:
    """What is cut together: one primal of one side, or (side 0, primal "") the table at the end."""

    side: int
    primal: str
    lines: tuple[tuple[Spot, Line], ...]


@dataclass(frozen=True, slots=True)
class Cutting:
    """All the block needs of one carcass. `unreleased` are owners whose order isn't released.

    `changed` are the owners whose order was changed after the sheet was released, `told` those
    changes the block has not read yet. `ticked` are the places ticked so far.
    """

    animal: Animal
    lot: Lot
    orders: tuple[Order, ...]
    unreleased: tuple[str, ...]
    changed: tuple[str, ...]
    sheet: Sheet | None
    losses: tuple[Loss, ...]
    question: Question
    answer: Answer
    steps: tuple[Step, ...]
    catalogue: Catalogue
    ticked: frozenset[Spot] = frozenset()
    told: tuple[Told, ...] = ()
    findings: tuple[Finding, ...] = ()
    allergens: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])

    def order_of(self, share: int) -> Order:
        """The order of a share that is on the sheet."""
        return next(one for one in self.orders if one.share == share)

    def owner(self, share: int) -> str:
        """The owner's name."""
        return next((one.owner for one in self.lot.shares if one.number == share), "")

    def made(self) -> frozenset[int]:
        """The lines ticked in the store."""
        return frozenset(one.line for one in self.question.choices if one.made)


def read_cutting(bench: "Bench", animal_id: int) -> Cutting | None:
    """Read one carcass, and plan its lot once; None when it isn't there."""
    with bench.store.read() as work:
        animal = work.animals.get(animal_id)
        lot = work.lots.get(animal.lot_id) if animal else None
        if animal is None or lot is None:
            return None
        orders = [one for one in work.orders.of_lot(lot.id) if _holds(lot, one, animal.index)]
        sheets = work.orders.sheets(lot.id)
        sheet = sheets[-1] if sheets else None
        changed = _changed(work, orders, sheet)
        losses = tuple(one for one in work.animals.losses(animal_id) if not one.void)
        question = work.lots.question(lot.id, at_block=True)
        catalogue = shop_catalogue(animal.species, work.usual.ways(animal.species))
        told = untold(work, orders, sheet)
        ticked = frozenset((animal.index, *one) for one in work.block.ticks(animal_id))
        findings = work.block.of_animal(animal_id)
        recipes = work.recipes.all()
    answer = plan(question, catalogue)
    on_sheet = tuple(one for one in orders if one.state in AT_BLOCK)
    return Cutting(
        animal,
        lot,
        on_sheet,
        tuple(one.owner for one in orders if one.state in ("open", "settled")),
        changed,
        sheet,
        losses,
        question,
        answer,
        steps(question, answer, catalogue, animal.index, {one.share for one in on_sheet}),
        catalogue,
        ticked,
        told,
        findings,
        known_allergens(recipes, catalogue, bench.words.language),
    )


def steps(
    question: Question, answer: Answer, catalogue: Catalogue, carcass: int, shares: set[int]
) -> tuple[Step, ...]:
    """The lines of a carcass for those shares, a primal of a side at a time, then the table."""
    found: list[Step] = []
    for line in block_lines(question, answer, catalogue):
        if line.carcass != carcass or line.share not in shares:
            continue
        spot: Spot = (carcass, line.side, line.line, line.way)
        side = line.side or 1
        if found and (found[-1].side, found[-1].primal) == (side, line.primal):
            found[-1] = replace(found[-1], lines=(*found[-1].lines, (spot, line)))
        else:
            found.append(Step(side, line.primal, ((spot, line),)))
    pools = pool_lines(question, answer, catalogue)
    table = tuple(((carcass, 0, one.line, POOL), one) for one in pools if one.share in shares)
    return (*found, Step(0, "", table)) if table else tuple(found)


def _holds(lot: Lot, order: Order, carcass: int) -> bool:
    share = next(one for one in lot.shares if one.number == order.share)
    return any(one.carcass == carcass for one in share.holdings)


def _changed(work: "Work", orders: list[Order], sheet: Sheet | None) -> tuple[str, ...]:
    """Owners who changed a line after the sheet; the block's own ticks are no change."""
    if sheet is None:
        return ()
    return tuple(
        one.owner
        for one in orders
        if one.changed_since_sheet
        and any(
            each.kind not in ("made", "pin") and each.at > sheet.released_at
            for each in work.orders.changes(one.id)
        )
    )
