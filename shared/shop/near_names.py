"""Names that are written nearly alike: one letter more, less, other, or two letters swapped.

Long words may differ in two such places. The distance is that of optimal string alignment, where
a swap counts one, by RapidFuzz.
"""

from collections.abc import Iterator

from rapidfuzz.distance import OSA

SHORTEST_NEAR = 4
SHORTEST_TWO = 7


def edits_let(word: str) -> int:
    """How many edits a typed word may be away: none under four letters, two from seven on."""
    if len(word) < SHORTEST_NEAR:
        return 0
    return 1 if len(word) < SHORTEST_TWO else 2


def off_by(one: str, other: str, most: int) -> bool:
    """Whether so many edits at the most make them the same; alike is not off.

    One does of "jonson" and "johnson" and of "breg" and "berg", two of "gudnerson" and "gundersn".
    """
    return one != other and OSA.distance(one, other, score_cutoff=most) <= most


def begins_near(typed: str, word: str) -> bool:
    """Whether the word, or its beginning, is near what is typed: "jonso", "johnson"."""
    size, most = len(typed), edits_let(typed)
    return any(off_by(typed, word[:end], most) for end in range(size - most, size + most + 1))


def is_near(typed: str, name: str) -> bool:
    """Whether every typed word is in the name or near one of its words, and one is only near.

    Both as `name_key` gives them. "bert ivresen" is near "bert iversen"; words under four letters
    must be there as they are.
    """
    words, near = name.split(), False
    for one in typed.split():
        if one in name:
            continue
        if not edits_let(one) or not any(begins_near(one, word) for word in words):
            return False
        near = True
    return near


def nearly_same(one: str, other: str) -> bool:
    """Whether two whole names are the same but for one edit in a word or two; not the same name.

    One edit in long words too: whoever types a new customer is stopped by it.

    "anna jonson" and "anna johnson"; not "anna berg" and "anna bergland".
    """
    mine, theirs = one.split(), other.split()
    if len(mine) != len(theirs) or one == other:
        return False
    pairs = [pair for pair in zip(mine, theirs, strict=True) if pair[0] != pair[1]]
    return all(
        min(len(first), len(second)) >= SHORTEST_NEAR and off_by(first, second, 1)
        for first, second in pairs
    )


def pieces(word: str) -> Iterator[tuple[str, ...]]:
    """What must lie in a text that has the word with one edit; one tuple for each way, all of it.

    "breg" swapped at the second letter is in a text as ("berg",); with another second letter the
    text has ("b", "eg").
    """
    seen: set[tuple[str, ...]] = set()
    for at in range(len(word)):
        head, tail = word[:at], word[at + 1 :]
        ways = [(head + tail,), (head, tail), (head, word[at:])]
        if tail:
            ways.append((head + tail[0] + word[at] + tail[1:],))
        for way in ways:
            told = tuple(one for one in way if one)
            if told and told not in seen:
                seen.add(told)
                yield told
