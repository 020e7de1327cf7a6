"""A fault of a species file: which rule, where in the file, what was asked and what was found."""

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True)
class Fault:
    """A code with its numbers. `place` is table and code, such as "cut whole_ham way plain"."""

    code: str
    level: Literal["wrong", "information"]
    place: str
    asked: str
    found: str


def wrong(code: str, place: str, asked: object, found: object) -> Fault:
    """Something that must be mended before the species can be used."""
    return Fault(code, "wrong", place, str(asked), str(found))


def information(code: str, place: str, asked: object, found: object) -> Fault:
    """Something worth knowing that is handled."""
    return Fault(code, "information", place, str(asked), str(found))
