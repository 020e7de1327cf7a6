"""What the trade calls a cut besides the catalogue's name, for whoever looks a cut up.

The names are the catalogue's, `other.<cut>` of each species' file in both languages; which cut a
name means is common practice, no source. Papers and screens keep the cut's own name.
"""

from collections.abc import Sequence

from printing.words import LANGUAGES, Words
from shared.shop.other_names import Layer, OtherName


def other_names(words: Words, species: str, code: str) -> tuple[str, ...]:
    """Other names of a cut in one language: of beef's `filet` "filet mignon" and more."""
    return words.listed(species, f"other.{code}")


def cut_names(words: Words, species: str, codes: Sequence[str]) -> tuple[Layer, ...]:
    """Layers of other names for these cuts, as they are looked through.

    First the trade's other names, and the catalogue's own where the shop has named the cut itself;
    then its name with the animal's, for "pork chops"; last all of these in the other language,
    for a customer who speaks that.
    """
    plain = Words(words.language)
    foreign = Words(next(one for one in LANGUAGES if one != words.language))
    return (
        [_others(words, plain, species, code) for code in codes],
        [_with_animal(words, plain, species, code) for code in codes],
        [_foreign(foreign, species, code) for code in codes],
    )


def _others(words: Words, plain: Words, species: str, code: str) -> list[OtherName]:
    """The trade's other names, and the catalogue's where the shop has its own."""
    names = _forms(plain, species, code)
    kept = () if names == _forms(words, species, code) else (OtherName(names[0], names),)
    return [*kept, *map(OtherName, other_names(plain, species, code))]


def _with_animal(words: Words, plain: Words, species: str, code: str) -> list[OtherName]:
    """The cut's name and its others, each with every word for the animal: "liver of pork hog"."""
    of = _animal(plain, species)
    return [
        OtherName("", (" ".join([*_forms(words, species, code), of]),)),
        *(OtherName(one, (f"{one} {of}",)) for one in other_names(plain, species, code)),
    ]


def _foreign(words: Words, species: str, code: str) -> list[OtherName]:
    of, names = _animal(words, species), _forms(words, species, code)
    return [
        OtherName(names[0], (*names, " ".join([*names, of]))),
        *(OtherName(one, (one, f"{one} {of}")) for one in other_names(words, species, code)),
    ]


def _forms(words: Words, species: str, code: str) -> tuple[str, str]:
    one, several = (words.name(species, f"cut.{code}", count) for count in (1, 2))
    return one, several


def _animal(words: Words, species: str) -> str:
    of = "de" if words.language == "es" else "of"
    return " ".join([of, *words.listed(species, "other.animal")])
