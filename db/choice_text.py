"""A choice as it is kept: canonical JSON of whole numbers, so that it comes back exact."""

import json
from fractions import Fraction
from functools import lru_cache
from typing import Any

from shared.cutting.order import Added, Amount, Choice, Package
from shared.shop.papers import Json, canonical_json
from shared.units import Weight, WeightUnit


def choice_text(choice: Choice) -> str:
    """The choice as text; what is unset is left out."""
    amount = choice.amount
    fields: dict[str, Json] = {
        "line": choice.line,
        "share": choice.share,
        "cut": choice.cut,
        "amount": _filled(
            kind=amount.kind,
            count=amount.count or None,
            weight=_weight(amount.weight),
            fraction=_fraction(amount.fraction),
            of="animal" if amount.of == "animal" else None,
        ),
        **_filled(
            way=choice.way or None,
            thickness=choice.thickness,
            piece_weight=_weight(choice.piece_weight),
            ribs=choice.ribs,
            lean=_fraction(choice.lean),
            package=_filled(pieces=choice.package.pieces, weight=_weight(choice.package.weight))
            or None,
            finishes=list(choice.finishes) or None,
            note=choice.note or None,
            pinned=[list(one) for one in choice.pinned] or None,
            made=choice.made or None,
            seasoning=choice.seasoning or None,
            added=None
            if choice.added is None
            else _filled(of=choice.added.of, share=_fraction(choice.added.share)),
        ),
    }
    return canonical_json(fields)


@lru_cache(maxsize=4096)
def choice_from(text: str) -> Choice:
    """The choice again; the same text gives the same choice, which the planner knows at once."""
    read: dict[str, Any] = json.loads(text)
    amount: dict[str, Any] = read["amount"]
    package: dict[str, Any] = read.get("package", {})
    return Choice(
        line=read["line"],
        share=read["share"],
        cut=read["cut"],
        amount=Amount(
            kind=amount["kind"],
            count=amount.get("count", 0),
            weight=_read_weight(amount.get("weight")),
            fraction=_read_fraction(amount.get("fraction")),
            of=amount.get("of", "side"),
        ),
        way=read.get("way", ""),
        thickness=read.get("thickness"),
        piece_weight=_read_weight(read.get("piece_weight")),
        ribs=read.get("ribs"),
        lean=_read_fraction(read.get("lean")),
        package=Package(package.get("pieces"), _read_weight(package.get("weight"))),
        finishes=tuple(read.get("finishes", ())),
        note=read.get("note", ""),
        pinned=tuple((one[0], one[1], one[2]) for one in read.get("pinned", ())),
        made=read.get("made", False),
        seasoning=read.get("seasoning", ""),
        added=_read_added(read.get("added")),
    )


def _filled(**fields: Json) -> dict[str, Json]:
    return {key: value for key, value in fields.items() if value is not None}


def _weight(weight: Weight | None) -> Json:
    return None if weight is None else [weight.count, weight.unit, weight.exponent]


def _read_weight(found: tuple[int, WeightUnit, int] | None) -> Weight | None:
    return None if found is None else Weight(found[0], found[1], found[2])


def _read_added(found: dict[str, Any] | None) -> Added | None:
    return None if found is None else Added(found["of"], _read_fraction(found.get("share")))


def _fraction(fraction: Fraction | None) -> Json:
    return None if fraction is None else [fraction.numerator, fraction.denominator]


def _read_fraction(found: tuple[int, int] | None) -> Fraction | None:
    return None if found is None else Fraction(found[0], found[1])
