"""Names that are written nearly alike: one letter more, less, other, or two letters swapped."""

from collections.abc import Iterator

SHORTEST_NEAR = 4


def one_off(one: str, other: str) -> bool:
    """Whether one edit makes them the same: "jonson" and "johnson", "breg" and "berg".

    Alike is not one off. Two edits are too many: "meyer" and "maier".
    """
    if one == other or abs(len(one) - len(other)) > 1:
        return False
    at = next((n for n, pair in enumerate(zip(one, other, strict=False)) if pair[0] != pair[1]), -1)
    if at < 0:
        return True  # the one is the other and a letter
    if len(one) == len(other):
        swapped = one[at : at + 2] == other[at : at + 2][::-1]
        return one[at + 1 :] == other[at + 1 :] or (swapped and one[at + 2 :] == other[at + 2 :])
    short, long = (one, other) if len(one) < len(other) else (other, one)
    return short[at:] == long[at + 1 :]


def begins_near(typed: str, word: str) -> bool:
    """Whether the word, or its beginning, is one edit from what is typed: "jonso", "johnson"."""
    size = len(typed)
    return any(one_off(typed, word[:most]) for most in (size - 1, size, size + 1))


def is_near(typed: str, name: str) -> bool:
    """Whether every typed word is in the name or near one of its words, and one is only near.

    Both as `name_key` gives them. "bert ivresen" is near "bert iversen"; words under four letters
    must be there as they are.
    """
    words, near = name.split(), False
    for one in typed.split():
        if one in name:
            continue
        if len(one) < SHORTEST_NEAR or not any(begins_near(one, word) for word in words):
            return False
        near = True
    return near


def nearly_same(one: str, other: str) -> bool:
    """Whether two whole names are the same but for one edit in a word or two; not the same name.

    "anna jonson" and "anna johnson"; not "anna berg" and "anna bergland".
    """
    mine, theirs = one.split(), other.split()
    if len(mine) != len(theirs) or one == other:
        return False
    pairs = [pair for pair in zip(mine, theirs, strict=True) if pair[0] != pair[1]]
    return all(
        len(first) >= SHORTEST_NEAR and len(second) >= SHORTEST_NEAR and one_off(first, second)
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
