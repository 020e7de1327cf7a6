"""The planner's answer as JSON, for another program to read."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import fields, is_dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from shared.cutting.answer import PlanLine
from shared.units import Weight

if TYPE_CHECKING:
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Answer, Remedy
    from shared.orderfile import OrderFile

VERSION = 1


def as_json(
    order: "OrderFile",
    catalogue: "Catalogue",
    answer: "Answer",
    remedies: "Sequence[Sequence[Remedy]]",
) -> str:
    """Verdict, plan, conflicts with their remedies, and the forecast.

    Weights are whole nanograms (names end in _ng), lengths whole 203,200ths of an inch, fractions
    text such as "1/2". Carcasses count from 1, as in the order file.
    """
    from shared.cutting.forecast import forecast

    answered = plain(answer)
    assert isinstance(answered, dict)
    conflicts = [
        {**_mapping(plain(conflict)), "remedies": [plain(one) for one in offered]}
        for conflict, offered in zip(answer.conflicts, remedies, strict=True)
    ]
    document = {
        "steelyard_plan": VERSION,
        "species": order.species,
        "catalogue_version": catalogue.version,
        **answered,
        "conflicts": conflicts,
        "forecast": plain(forecast(order.question, answer, catalogue)),
    }
    return json.dumps(document, indent=2, ensure_ascii=False)


def plain(value: object) -> object:
    """A value of the trade as JSON holds it: no numbers with a point, carcasses from 1."""
    if isinstance(value, Weight):
        return value.text()
    if isinstance(value, Fraction):
        return str(value)
    if isinstance(value, PlanLine):
        return _from_one(value._asdict())
    if is_dataclass(value) and not isinstance(value, type):
        return _from_one({each.name: getattr(value, each.name) for each in fields(value)})
    if isinstance(value, tuple | list):
        return [plain(each) for each in value]
    if isinstance(value, Mapping):
        return {str(key): plain(each) for key, each in value.items()}
    if value is None or isinstance(value, str | int | bool):
        return value
    raise TypeError(f"no JSON for {value!r}")


def _from_one(value: Mapping[str, object]) -> dict[str, object]:
    found = {name: plain(it) for name, it in value.items()}
    carcass = found.get("carcass")
    if isinstance(carcass, int):
        found["carcass"] = carcass + 1
    return found


def _mapping(value: object) -> dict[str, object]:
    assert isinstance(value, dict)
    return value
