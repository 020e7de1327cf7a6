"""The shop's own usual: per species and primal, the first way is what it does unasked."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from shared.carcass.anatomy import catalogue
from shared.carcass.catalogue import Catalogue, UsualLine
from shared.cutting.order import Amount, AmountKind, Choice, Package


@dataclass(frozen=True, slots=True)
class UsualWay:
    """One way of cutting a primal that this shop calls usual; variant 1 is what F9 does."""

    species: str
    primal: str
    variant: int
    lines: tuple[UsualLine, ...]


@dataclass(frozen=True, slots=True)
class UsualRules:
    """`cut_alike`: owners of one side have it cut one way; else each as he likes."""

    cut_alike: bool = True
    version: int = 0


def as_choice(line: UsualLine, share: int = 0) -> Choice:
    """A line of the usual as a line of an order, not yet numbered."""
    known: dict[str, AmountKind] = {"all": "all", "pieces": "pieces", "slices": "slices"}
    return Choice(
        line=0,
        share=share,
        cut=line.cut,
        amount=Amount(known.get(line.amount, "rest"), line.count),
        thickness=line.thickness,
        piece_weight=line.piece_weight,
        package=Package(line.package_pieces, line.package_weight),
        finishes=line.finishes,
    )


def as_usual(choice: Choice, primal: str) -> UsualLine:
    """A line of an order as a usual line of a primal."""
    return UsualLine(
        primal,
        choice.cut,
        choice.amount.kind,
        choice.amount.count,
        choice.thickness,
        choice.piece_weight,
        choice.package.pieces,
        choice.package.weight,
        choice.finishes,
    )


def usual_of(species: str, ways: Iterable[UsualWay]) -> tuple[UsualWay, ...]:
    """Every usual way of a species: the shop's for its own primals, the file's for the others."""
    own = tuple(one for one in ways if one.species == species)
    theirs = {one.primal for one in own}
    file: dict[str, list[UsualLine]] = {}
    for line in catalogue(species).usual:
        if line.primal not in theirs:
            file.setdefault(line.primal, []).append(line)
    rest = (UsualWay(species, primal, 1, tuple(lines)) for primal, lines in file.items())
    order = catalogue(species).primals
    return tuple(sorted((*own, *rest), key=lambda one: (order.index(one.primal), one.variant)))


@lru_cache(maxsize=64)
def shop_catalogue(species: str, ways: tuple[UsualWay, ...] = ()) -> Catalogue:
    """The species as this shop cuts it: `usual` is what F9 does, `also_usual` isn't boxed either.

    The shop's lines of a primal stand in place of the file's; its other primals keep theirs.
    """
    known = catalogue(species)
    if not ways:
        return known
    found = usual_of(species, ways)
    first = tuple(line for one in found if one.variant == 1 for line in one.lines)
    others = tuple(line for one in found if one.variant > 1 for line in one.lines)
    return replace(known, usual=first, also_usual=others)
