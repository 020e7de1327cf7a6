"""What every page of a block sheet is drawn from, and which side it has come to."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from printing.words import Words
from shared.carcass.carcass import Carcass
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer
from shared.cutting.order import Question


@dataclass(slots=True)
class LotSheet:
    """A lot being printed; `side` 0 is the table of the whole lot at the end.

    `lot` and `number` 0 are not known or not released yet. `owners` and `notes` are by share.
    `also` is the second language, where the sheet speaks two; `allergens` of a finish are those
    of the shop's recipe for it, `packages` how many are expected of a line.
    """

    question: Question
    answer: Answer
    catalogue: Catalogue
    lot: int
    number: int
    words: Words
    owners: Mapping[int, str]
    notes: Mapping[int, str]
    carcass: int = 0
    side: int = 1
    also: Words | None = None
    allergens: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])
    packages: Mapping[int, int] = field(default_factory=dict[int, int])

    def say(self, key: str, **data: str | int) -> str:
        """A sentence in each of the sheet's languages, the same one once."""
        told = [words.say(key, 1, **data) for words in (self.words, self.also) if words]
        return " · ".join(dict.fromkeys(told))

    @property
    def languages(self) -> tuple[Words, ...]:
        """The words of each language the sheet speaks, the first one first."""
        return (self.words,) if self.also is None else (self.words, self.also)

    def second(self) -> "LotSheet | None":
        """The same sheet in its second language."""
        return None if self.also is None else replace(self, words=self.also, also=None)

    @property
    def here(self) -> Carcass:
        """The carcass of this page."""
        return self.question.carcasses[self.carcass]

    def shares_here(self) -> list[int]:
        """Who owns some of this side."""
        return [
            share.number
            for share in self.question.shares
            if any((it.carcass, it.side) == (self.carcass, self.side) for it in share.holdings)
        ]

    def names(self, family: str, codes: tuple[str, ...], apart: str = ", ") -> str:
        """The words of some codes of the species' catalogue; names with commas apart by "; "."""
        species = self.catalogue.species
        return apart.join(self.words.name(species, f"{family}.{one}") for one in codes)
