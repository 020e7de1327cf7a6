"""What comes one to an animal and is shared by the package: each owner's part of liver or tail.

Owners who want it share it by their fractions of the animal; one who alone wants it has all of
it. A tongue or a hanger isn't divided: wanted twice, it is the owners' to settle.
"""

from collections.abc import Iterable, Mapping
from fractions import Fraction

from shared.cutting.capacity import NOTHING, Animal, Held
from shared.cutting.order import Choice
from shared.cutting.ways import Ways

Rooms = dict[tuple[int, int, str], Fraction]


def rooms_of(
    choices: Iterable[Choice],
    by_carcass: Mapping[int, list[tuple[int, list[Held]]]],
    ways: Ways,
) -> Rooms:
    """What each share may have of a divided single: by share, carcass and part; all if not told.

    Worked number: a half and two quarters that all want the liver have 1/2, 1/4 and 1/4 of it;
    if only the half and one of the quarters want it, they have 2/3 and 1/3.
    """
    wanted: dict[tuple[int, str], dict[int, Fraction]] = {}
    for choice in choices:
        if choice.cut not in ways.singles:
            continue
        for way, part in ways.singles[choice.cut]:
            if choice.way and way != choice.way:
                continue
            for carcass, mine in by_carcass.get(choice.share, ()):
                held = sum([one.of_animal for one in mine], NOTHING)
                wanted.setdefault((carcass, part), {})[choice.share] = held
    rooms: Rooms = {}
    for (carcass, part), owners in wanted.items():
        if len(owners) > 1:
            total = sum(owners.values(), NOTHING)
            for share, held in owners.items():
                rooms[share, carcass, part] = held / total
    return rooms


def give_rooms(herd: Iterable[Animal], rooms: Rooms) -> None:
    """Write on each animal what its owners may have of its divided singles."""
    for animal in herd:
        animal.rooms = {
            (share, part): room
            for (share, carcass, part), room in rooms.items()
            if carcass == animal.number
        }
