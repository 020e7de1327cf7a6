"""Values as text: what can't be kept is refused while it is written or read, never guessed."""

from collections.abc import Mapping
from dataclasses import dataclass

import pytest

from shared.billing.canonical import read_text, text_of, to_json


@dataclass(frozen=True)
class Kept:
    numbers: tuple[int, ...]
    word: str | None


@dataclass(frozen=True)
class Pair:
    both: tuple[int, str]


@dataclass(frozen=True)
class Table:
    rows: Mapping[str, int]


def test_a_value_is_written_one_way() -> None:
    text = text_of(Kept((1, 2), None), "kept", 1)
    assert text == '{"kept":1,"value":{"numbers":[1,2],"word":null}}'
    assert read_text(text, "kept", 1, Kept) == Kept((1, 2), None)


@pytest.mark.parametrize(
    ("text", "of"),
    [
        ('{"kept":1,"value":{"both":[1,"a"]}}', Pair),
        ('{"kept":1,"value":{"rows":{}}}', Table),
    ],
)
def test_kinds_that_arent_kept_are_a_mistake_of_ours(text: str, of: type[object]) -> None:
    with pytest.raises(TypeError, match="isn't kept"):
        read_text(text, "kept", 1, of)


def test_what_isnt_a_value_of_ours_isnt_written() -> None:
    for thing in (0.5, {"a": 1}, Kept):
        with pytest.raises(TypeError, match="isn't kept"):
            to_json(thing)
