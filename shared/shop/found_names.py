"""Which of several named things a person means who types some words of a name.

On the phone a name comes in either number and in any order: "feet", "hams whole", "t bones".
A thing is named by its forms, such as one and several of it; endings are common practice of
English and Spanish, no source, and what they don't reach has its forms in the catalogue.
"""

from collections.abc import Iterable, Sequence

from shared.shop.customers import name_key
from shared.shop.near_names import is_near

_ENDINGS = (("ies", "y"), ("ves", "f"), ("ces", "z"), ("es", ""), ("s", ""))
_SHORTEST_STEM = 2
_SHORTEST_JOINED = 4
_SHORTEST_INSIDE = 3

Forms = tuple[str, ...]


def name_forms(names: Iterable[str]) -> Forms:
    """The names as they are searched, each once: "Foot" and "feet" are ("foot", "feet")."""
    return tuple(dict.fromkeys(name_key(one) for one in names))


def stems(word: str) -> frozenset[str]:
    """A word with and without an ending of several: of "patties" also "patty"."""
    return frozenset(
        [word]
        + [
            word.removesuffix(ending) + instead
            for ending, instead in _ENDINGS
            if word.endswith(ending) and len(word) - len(ending) >= _SHORTEST_STEM
        ]
    )


def found_names(typed: str, forms: Sequence[Forms]) -> tuple[int, ...]:
    """Which of the things have what is typed: it as the whole name, then what begins with it.

    What has it as it is written, else without spaces and hyphens, else its words in any order and
    number. "chops" is in whatever has that form; of "rib eye" "ribeye cap" has the letters.
    """
    key = name_key(typed)
    if not key:
        return ()
    whole = [at for at, each in enumerate(forms) if key in each]
    held = [at for at, each in enumerate(forms) if any(key in one for one in each)]
    if not held:
        held = [at for at, each in enumerate(forms) if _has_joined(key, each)]
    if not held:
        held = [at for at, each in enumerate(forms) if _has_words(key, each)]
    begun = [at for at in held if any(one.startswith(key) for one in forms[at])]
    return tuple(dict.fromkeys([*whole, *begun, *held]))


def written_nearly(typed: str, forms: Sequence[Forms]) -> tuple[int, ...]:
    """Which of them are written nearly as typed: "brisquet" is near "brisket"."""
    key = name_key(typed)
    return tuple(
        at for at, each in enumerate(forms) if any(is_near(key, _spaced(one)) for one in each)
    )


def one_meant(typed: str, forms: Sequence[Forms]) -> int | None:
    """The one that is meant for certain: the only one of that whole name, else the only one found.

    "hocks" is "hock, hocks" though "hocks to the grind" holds it; "ham" may be many.
    """
    key = name_key(typed)
    for alike in (
        [at for at, each in enumerate(forms) if each[:1] == (key,)],
        [at for at, each in enumerate(forms) if key in each],
    ):
        if alike:
            return alike[0]
    held = found_names(typed, forms)
    return held[0] if len(held) == 1 else None


def _has_words(key: str, forms: Forms) -> bool:
    """Whether each typed word is in a word of a form, or is one of them in the other number.

    One or two letters must begin the word: the t of "bone t" is in nearly all.
    """
    words = _spaced(key).split()
    theirs = [word for form in forms for word in _spaced(form).split()]
    alike = frozenset(stem for word in theirs for stem in stems(word))
    return bool(words) and all(
        not stems(word).isdisjoint(alike) or any(_in_word(word, one) for one in theirs)
        for word in words
    )


def _in_word(typed: str, word: str) -> bool:
    return word.startswith(typed) or (len(typed) >= _SHORTEST_INSIDE and typed in word)


def _has_joined(key: str, forms: Forms) -> bool:
    """Whether what is typed, written as one word, begins at a word of a form."""
    words = _spaced(key).split()
    if not words:
        return False
    typed = ["".join([*words[:-1], last]) for last in stems(words[-1])]
    for form in forms:
        theirs = _spaced(form).split()
        begun = ["".join(theirs[at:]) for at in range(len(theirs))]
        if any(
            len(one) >= _SHORTEST_JOINED and each.startswith(one) for one in typed for each in begun
        ):
            return True
    return False


def _spaced(text: str) -> str:
    """Only letters and digits, a space for all else: "T-bone" as "t bone"."""
    return "".join(one if one.isalnum() else " " for one in text)
