"""Values to JSON and back without loss, so that a bill or a card can be kept as text.

A dataclass becomes an object of its fields, a `Fraction` "143/2", a day "2024-04-01", a tuple of
one kind of thing a list. Reading follows the types of the fields and refuses anything else.
"""

import json
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date
from fractions import Fraction
from functools import cache
from types import NoneType, UnionType
from typing import Literal, TypeVar, Union, cast, get_args, get_origin, get_type_hints

from shared.billing.problems import BillingProblem
from shared.shop.papers import Json, canonical_json

T = TypeVar("T")


class _NotOfTypeError(ValueError):
    """The JSON doesn't hold what the field is; the argument is the path to it."""


def text_of(value: object, kind: str, version: int) -> str:
    """The canonical text: `{"<kind>":version, "value":{…}}`."""
    return canonical_json({kind: version, "value": to_json(value)})


def read_text(
    text: str,
    kind: str,
    version: int,
    of: type[T],
    added: Mapping[int, Mapping[str, Json]] | None = None,
) -> T | BillingProblem:
    """The value kept in a text, or "damaged" (with the place) or "too_new".

    `added` are by version the fields that texts up to it lack, with the value they stand for.
    """
    try:
        found = cast("Json", json.loads(text))
    except ValueError:
        return BillingProblem("damaged", {"at": ""})
    if not isinstance(found, Mapping) or set(found) != {kind, "value"}:
        return BillingProblem("damaged", {"at": ""})
    number = found[kind]
    if not isinstance(number, int) or isinstance(number, bool) or number < 1:
        return BillingProblem("damaged", {"at": kind})
    if number > version:
        return BillingProblem("too_new", {"found": str(number), "known": str(version)})
    try:
        return cast("T", _read(_with_added(found["value"], number, added or {}), of, "value"))
    except _NotOfTypeError as wrong:
        return BillingProblem("damaged", {"at": str(wrong)})


def _with_added(value: Json, number: int, added: Mapping[int, Mapping[str, Json]]) -> Json:
    for last, fields_then in added.items():
        if isinstance(value, Mapping) and number <= last and not set(fields_then) & set(value):
            value = {**value, **fields_then}
    return value


def to_json(value: object) -> Json:
    """A value of ours as JSON; TypeError for a kind that isn't kept."""
    if value is None or isinstance(value, str | bool | int):
        return value
    if isinstance(value, Fraction):
        return str(value)
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple | list):
        return [to_json(one) for one in cast("tuple[object, ...]", value)]
    if is_dataclass(value) and not isinstance(value, type):
        return {
            field.name: to_json(cast("object", getattr(value, field.name)))
            for field in fields(value)
        }
    raise TypeError(f"{type(value).__name__} isn't kept as text")


@cache
def _hints(of: type[object]) -> dict[str, object]:
    return dict(get_type_hints(of))


def _read(found: Json, of: object, at: str) -> object:
    origin = get_origin(of)
    if origin is Literal:
        if found not in get_args(of) or isinstance(found, bool):
            raise _NotOfTypeError(at)
        return found
    if origin in (Union, UnionType):
        return _read_either(found, get_args(of), at)
    if origin is tuple:
        return _read_tuple(found, get_args(of), at)
    if not isinstance(of, type):
        raise TypeError(f"{of} isn't kept as text")
    plain = cast("type[object]", of)
    return _read_fields(found, plain, at) if is_dataclass(of) else _read_plain(found, plain, at)


def _read_either(found: Json, kinds: tuple[object, ...], at: str) -> object:
    for kind in kinds:
        if (kind is NoneType) != (found is None):
            continue
        try:
            return None if found is None else _read(found, kind, at)
        except _NotOfTypeError:
            continue
    raise _NotOfTypeError(at)


def _read_tuple(found: Json, kinds: tuple[object, ...], at: str) -> object:
    if not isinstance(found, list):
        raise _NotOfTypeError(at)
    if kinds[1:] != (...,):
        raise TypeError(f"{kinds} isn't kept as text")
    return tuple(_read(one, kinds[0], f"{at}/{place}") for place, one in enumerate(found))


def _read_fields(found: Json, of: type[object], at: str) -> object:
    if not isinstance(found, Mapping):
        raise _NotOfTypeError(at)
    hints = _hints(of)
    if set(found) != set(hints):
        raise _NotOfTypeError(at)
    return of(**{name: _read(found[name], kind, f"{at}/{name}") for name, kind in hints.items()})


def _read_plain(found: Json, of: type[object], at: str) -> object:
    if of is Fraction or of is date:
        if not isinstance(found, str):
            raise _NotOfTypeError(at)
        try:
            return Fraction(found) if of is Fraction else date.fromisoformat(found)
        except (ValueError, ZeroDivisionError) as wrong:
            raise _NotOfTypeError(at) from wrong
    if type(found) is not of:
        raise _NotOfTypeError(at)
    return found
