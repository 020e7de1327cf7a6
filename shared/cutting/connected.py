"""Things that touch one another, directly or through others, together."""

from collections.abc import Hashable, Iterable


def connected(touched: Iterable[Iterable[Hashable]]) -> list[list[int]]:
    """Numbers of things with a key in common, in order; `touched` are each one's keys.

    Worked number: of four things that touch a and b, c, b and d, and c, there are two sets: the
    first and third, the second and fourth.
    """
    parent: list[int] = []
    seen: dict[Hashable, int] = {}
    for number, keys in enumerate(touched):
        parent.append(number)
        for key in keys:
            other = seen.setdefault(key, number)
            if other != number:
                first, second = _root(parent, other), _root(parent, number)
                if first < second:
                    parent[second] = first
                else:
                    parent[first] = second
    found: dict[int, list[int]] = {}
    for number, up in enumerate(parent):
        root = number if up == number else _root(parent, number)
        found.setdefault(root, []).append(number)
    return list(found.values())


def _root(parent: list[int], number: int) -> int:
    while parent[number] != number:
        parent[number] = parent[parent[number]]
        number = parent[number]
    return number
