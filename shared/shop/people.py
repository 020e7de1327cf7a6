"""Who did it and where: every kept change names a person and a station."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Person:
    """Someone who works in the shop; a person who has left stays, no longer `active`."""

    id: int
    name: str
    active: bool = True


@dataclass(frozen=True, slots=True)
class Station:
    """A place with a screen: the counter's, the rail's, the wrapper's."""

    id: int
    name: str


@dataclass(frozen=True, slots=True)
class SignedOn:
    """The person at work and the station he stands at."""

    person: Person
    station: Station
