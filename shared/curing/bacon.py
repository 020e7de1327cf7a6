"""Which cuts are bellies: cured they are bacon, which has nitrite rules of its own."""

from shared.carcass.anatomy import catalogue

BELLY = "belly"


def is_belly(species: str, cut: str) -> bool:
    """Whether a cut is a hog's belly, whole or in pieces; ribs and what is ground are not.

    A skin-on belly is one, spareribs and belly put to trim are not. Bacon is the cured belly of
    swine (9 CFR 319.107; that jowls and loins are no bacon by it is from memory).
    """
    if species != "pork":
        return False
    found = catalogue(species).cuts.get(cut)
    if found is None or found.primal != BELLY or found.kind == "to_trim":
        return False
    return any(way.run is not None and BELLY in way.run.lanes for way in found.ways)
