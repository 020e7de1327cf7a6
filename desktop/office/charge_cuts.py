"""The cuts a charge can be limited to, and in a sentence what it then holds for."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.office.usual_charges import cut_words, finish_words, kind_words
from printing.words.other_names import cut_names
from shared.billing.rates import MADE, AppliesTo, Basis
from shared.carcass.anatomy import catalogue
from shared.shop.other_names import OtherName

if TYPE_CHECKING:
    from printing.words import Words


@dataclass(frozen=True, slots=True)
class CutOffered:
    """A cut of the catalogue: its names, the animals that have it, and of what kinds it is there.

    `species` and `kinds` are empty for a code no catalogue of these animals has. `others` are the
    other names the trade has for it, in layers as they are looked through.
    """

    code: str
    names: tuple[str, ...]
    species: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    others: tuple[tuple[OtherName, ...], ...] = ()

    @property
    def name(self) -> str:
        """All its names; blade roast is one of the chuck in beef and of the shoulder in pork."""
        return " / ".join(self.names)


def cuts_offered(
    animals: Sequence[str], words: "Words", held: Sequence[str] = ()
) -> tuple[CutOffered, ...]:
    """The cuts of these animals by name, and those `held` that none of them has.

    The first call reads the catalogues, some 10 to 20 ms each: call it on a worker.
    """
    names: dict[str, dict[str, None]] = {}
    have: dict[str, list[str]] = {}
    kinds: dict[str, dict[str, None]] = {}
    others: dict[str, list[list[OtherName]]] = {}
    for animal in animals:
        cuts = catalogue(animal).cuts
        layers = cut_names(words, animal, tuple(cuts))
        for at, code in enumerate(cuts):
            for depth, layer in enumerate(layers):
                others.setdefault(code, [[] for _ in layers])[depth].extend(layer[at])
        for cut in cuts.values():
            names.setdefault(cut.code, {})[words.name(animal, f"cut.{cut.code}")] = None
            have.setdefault(cut.code, []).append(animal)
            kinds.setdefault(cut.code, {})[cut.kind] = None
    found = [
        CutOffered(
            code,
            tuple(names[code]),
            tuple(have[code]),
            tuple(kinds[code]),
            tuple(map(tuple, others[code])),
        )
        for code in names
    ]
    found += [CutOffered(one, (cut_words(one, words),)) for one in held if one not in names]
    return tuple(sorted(found, key=lambda one: one.name.casefold()))


def never_billed(limits: AppliesTo, offered: Sequence[CutOffered]) -> bool:
    """Whether no cut it is limited to is of a kind it is limited to: nothing is ever both."""
    if not limits.cuts or not limits.kinds:
        return False
    known = [one for one in offered if one.code in limits.cuts and one.kinds]
    return bool(known) and not any(set(one.kinds) & set(limits.kinds) for one in known)


def holds_for(limits: AppliesTo, basis: Basis, words: "Words", animals: Sequence[str] = ()) -> str:
    """What of an order the charge looks at, in a sentence."""
    translate = QCoreApplication.translate
    either = translate("Charges", " or ")
    parts = [
        either.join(cut_words(one, words, animals) for one in limits.cuts),
        either.join(kind_words(one) for one in limits.kinds),
        either.join(finish_words(one, words) for one in limits.finishes),
    ]
    said = translate("Charges", "; of these only ").join(part for part in parts if part)
    if not said:
        return translate("Charges", "Holds for every cut.")
    if basis in MADE:
        return translate("Charges", "Counts only what is made as: {what}.").format(what=said)
    return translate("Charges", "Billed only to owners who ordered some of: {what}.").format(
        what=said
    )
