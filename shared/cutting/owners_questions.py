"""What the owners must settle, put together for those who ask them."""

from collections.abc import Iterable

from shared.cutting.answer import OwnersQuestion, Where


def put_together(questions: Iterable[OwnersQuestion]) -> tuple[OwnersQuestion, ...]:
    """Questions about one thing as one, in the order they came.

    Each conflict over a single is a question of its own. Worked number: of three who want the one
    tongue the answer asks the first and the second, and the first and the third; that is one
    question to all three.
    """
    found: dict[tuple[str, Where], OwnersQuestion] = {}
    for one in questions:
        key = one.kind, one.where
        other = found.get(key, one)
        lines = tuple(sorted({*one.lines, *other.lines}))
        shares = tuple(sorted({*one.shares, *other.shares}))
        found[key] = OwnersQuestion(one.kind, lines, shares, one.where)
    return tuple(found.values())
