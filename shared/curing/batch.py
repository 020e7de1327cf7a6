"""One batch in cure, smoke or the mixer: whose meat may be in it, its states, its division."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction
from typing import Literal

from shared.carcass.carcass import Regime
from shared.curing.nitrite import CureUse
from shared.units import Weight

BatchState = Literal["gathering", "curing", "smoking", "done", "packed"]
Barred = Literal["others_meat", "custom_with_inspected", "species"]
STATES: tuple[BatchState, ...] = ("gathering", "curing", "smoking", "done", "packed")


@dataclass(frozen=True, slots=True)
class PutIn:
    """Pieces or trim of one order's line that went in, as weighed. `void` says why it didn't.

    `agreed`: deer whose hunter agreed in writing that it is batched with others'.
    """

    id: int
    batch_id: int
    order_id: int
    order_number: int
    share: int
    lot_id: int
    customer_id: int | None
    owner: str
    species: str
    regime: Regime
    carcasses: frozenset[int]
    line: int
    cut: str
    weight: Weight
    pieces: int
    at: datetime
    person: str
    void: str = ""
    agreed: bool = False


@dataclass(frozen=True, slots=True)
class Added:
    """Fat or pork from elsewhere; it comes from inspected stock and `source` says which."""

    id: int
    what: str
    weight: Weight
    source: str
    at: datetime
    person: str


@dataclass(frozen=True, slots=True)
class Stage:
    """When the batch came to a state, and who moved it."""

    state: BatchState
    at: datetime
    person: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch whole. `out` is the finished weight, once it is weighed.

    `added` is what stands: what was taken out again is in the store alone, with its reason.
    """

    id: int
    number: int
    recipe_id: int
    recipe: str
    finish: str
    state: BatchState
    put_in: tuple[PutIn, ...] = ()
    added: tuple[Added, ...] = ()
    stages: tuple[Stage, ...] = ()
    cure: CureUse | None = None
    out: Weight | None = None
    note: str = ""
    version: int = 0

    @property
    def standing(self) -> tuple[PutIn, ...]:
        """What is in it; what was taken out again is left out."""
        return tuple(one for one in self.put_in if not one.void)

    @property
    def in_ng(self) -> int:
        """Owners' meat that went in, in nanograms."""
        return sum(one.weight.nanograms for one in self.standing)

    @property
    def whole_ng(self) -> int:
        """All that went in, what the shop added too, in nanograms."""
        return self.in_ng + sum(one.weight.nanograms for one in self.added)

    @property
    def yielded(self) -> Fraction | None:
        """Finished weight over all that went in: 44 lb of 50 lb is 22/25."""
        whole = self.whole_ng
        return Fraction(self.out.nanograms, whole) if self.out is not None and whole else None


@dataclass(frozen=True, slots=True)
class Source:
    """Whose meat it is that would go into a batch, and of which animals of which lot.

    `agreed`: deer whose hunter agreed in writing that it is batched with others'.
    """

    customer_id: int | None
    lot_id: int
    carcasses: frozenset[int]
    regime: Regime
    species: str
    agreed: bool = False


def source_of(one: PutIn) -> Source:
    """Whose a piece is."""
    return Source(one.customer_id, one.lot_id, one.carcasses, one.regime, one.species, one.agreed)


def may_join(there: Sequence[Source], new: Source) -> Barred | None:
    """Why meat may not join a batch, None where it may.

    Custom-exempt meat is for its owner's own use (21 USC 623(a)): a batch holds one owner's, or
    that of co-owners of one animal. Two families with a half each of one hog may share a batch;
    a third family's hog may not join. Custom and inspected meat never mix, nor does game with the
    rest. Inspected meat of several owners may. Deer are game, which that act doesn't name (from
    memory; the state may say otherwise): two hunters' deer share a batch where both agreed to it
    in writing at the intake.
    """
    for one in there:
        if one.regime != new.regime:
            return "custom_with_inspected"
        if one.species != new.species and "deer" in (one.species, new.species):
            return "species"
    if new.regime != "custom":
        return None
    everyone = [*there, new]
    owners = {one.customer_id for one in everyone}
    if len(owners) == 1 and None not in owners:
        return None
    if all(one.species == "deer" and one.agreed for one in everyone):
        return None
    if len({one.lot_id for one in everyone}) != 1:
        return "others_meat"
    together = frozenset[int].intersection(*(one.carcasses for one in everyone))
    return None if together else "others_meat"


def shared_out(out: Weight, parts: Sequence[tuple[int, int]]) -> dict[int, Weight]:
    """The finished weight divided by weight in, exactly, in the scale's own steps.

    `parts` are (order id, nanograms in); what is left over goes by largest remainder, ties to the
    order named first. 44.01 lb of 30 lb and 20 lb in are 26.41 lb and 17.60 lb.
    """
    whole: dict[int, int] = {}
    for order_id, nanograms in parts:
        whole[order_id] = whole.get(order_id, 0) + nanograms
    total = sum(whole.values())
    if total <= 0:
        raise ValueError("nothing went into the batch")
    exact = {one: Fraction(out.count * ng, total) for one, ng in whole.items()}
    counts = {one: part.numerator // part.denominator for one, part in exact.items()}
    left = out.count - sum(counts.values())
    order = list(exact)
    order.sort(key=lambda one: (counts[one] - exact[one], list(exact).index(one)))
    for one in order[:left]:
        counts[one] += 1
    return {one: Weight(count, out.unit, out.exponent) for one, count in counts.items()}
