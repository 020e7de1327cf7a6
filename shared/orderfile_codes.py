"""Codes in an order file held against the species: its cuts, ways, finishes, parts, stretches."""

from collections.abc import Collection

from shared.carcass.catalogue import Catalogue
from shared.orderfile_fields import Fields
from shared.orderfile_places import Node, child, children


def check(fields: Fields, root: Node, catalogue: Catalogue) -> None:
    """Note every code the species does not have, where it stands in the file."""
    stretches = {stretch.code for run in catalogue.runs.values() for stretch in run.stretches}
    lengths = child(child(root, "settings"), "own_lengths")
    for code, place in lengths.keys.items() if lengths is not None else ():
        if code not in stretches:
            fields.fault(place, "no_such_stretch", catalogue.species, code)
    for carcass in children(child(root, "carcasses")):
        for gone in children(child(carcass, "gone")):
            _known(fields, child(gone, "part"), catalogue.parts, "no_such_part", catalogue.species)
        for measured in children(child(carcass, "measured")):
            at = child(measured, "stretch")
            _known(fields, at, stretches, "no_such_stretch", catalogue.species)
    for choice in children(child(root, "choices")):
        _check_choice(fields, choice, catalogue)


def _check_choice(fields: Fields, choice: Node, catalogue: Catalogue) -> None:
    at = child(choice, "cut")
    _known(fields, at, catalogue.cuts, "no_such_cut", catalogue.species)
    for finish in children(child(choice, "finishes")):
        _known(fields, finish, catalogue.finishes, "no_such_finish", catalogue.species)
    way = child(choice, "way")
    if at is not None and isinstance(at.value, str) and at.value in catalogue.cuts:
        ways = [one.code for one in catalogue.cuts[at.value].ways]
        if way is not None and way.value != "":
            _known(fields, way, ways, "no_such_way", " | ".join(ways))


def _known(
    fields: Fields, node: Node | None, codes: Collection[str], code: str, asked: str
) -> None:
    if node is not None and isinstance(node.value, str) and node.value not in codes:
        fields.fault(node.place, code, asked, node.value)
