"""Positions of JSON values, held against the standard library's reader."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.orderfile_places import BadJsonError, Node, parse

Plain = object


def plain(node: Node) -> Plain:
    """The value without its places."""
    if isinstance(node.value, dict):
        return {key: plain(value) for key, value in node.value.items()}
    if isinstance(node.value, list):
        return [plain(value) for value in node.value]
    return node.value


def outcome(text: str) -> Plain:
    try:
        return plain(parse(text))
    except BadJsonError as error:
        return error.code


words = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=8)
values = st.recursive(
    st.none() | st.booleans() | st.integers(-(10**13), 10**13) | words,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(words, inner, max_size=4),
    max_leaves=12,
)


@given(values, st.sampled_from([None, 0, 1, 3]), st.booleans())
def test_every_value_is_read_as_the_standard_library_reads_it(
    value: Plain, indent: int | None, ascii_only: bool
) -> None:
    text = json.dumps(value, indent=indent, ensure_ascii=ascii_only)
    assert plain(parse(text)) == value == json.loads(text)


@given(values, st.integers(0, 60), st.sampled_from(list('{}[]",:1.-e \n')), st.booleans())
def test_broken_text_is_refused_where_the_standard_library_refuses_it(
    value: Plain, at: int, letter: str, instead: bool
) -> None:
    text = json.dumps(value, indent=1)
    broken = text[:at] + letter + text[at + instead :]
    try:
        expected: Plain = json.loads(broken)
    except json.JSONDecodeError:
        assert outcome(broken) in ("syntax", "number_with_point", "number_too_long", "bad_text")
    else:
        assert outcome(broken) in (
            expected, "number_with_point", "key_twice", "number_too_long", "bad_text",
        )  # fmt: skip


def places(node: Node) -> list[Node]:
    inner = node.value.values() if isinstance(node.value, dict) else ()
    if isinstance(node.value, list):
        inner = node.value
    return [node, *(each for one in inner for each in places(one))]


@given(values)
def test_every_place_points_at_its_value(value: Plain) -> None:
    text = json.dumps(value, indent=2)
    lines = text.split("\n")
    for node in places(parse(text)):
        rest = "\n".join([lines[node.place.line - 1][node.place.column - 1 :]])
        whole = rest + "\n" + "\n".join(lines[node.place.line :])
        found, _ = json.JSONDecoder().raw_decode(whole)
        assert found == plain(node)


@pytest.mark.parametrize(
    ("text", "code", "pointer", "line", "column"),
    [
        ('{"a": 1.5}', "number_with_point", "/a", 1, 7),
        ('{"a/b": {"~": 1e3}}', "number_with_point", "/a~1b/~0", 1, 15),
        ('{"a": 1,\n "a": 2}', "key_twice", "/a", 2, 2),
        ('[1,\n\n  x]', "syntax", "/1", 3, 3),
        ("[" * 40 + "]" * 40, "too_deep", "/0" * 33, 1, 34),
    ],
)  # fmt: skip
def test_a_fault_has_pointer_line_and_column(
    text: str, code: str, pointer: str, line: int, column: int
) -> None:
    with pytest.raises(BadJsonError) as caught:
        parse(text)
    place = caught.value.place
    assert (caught.value.code, place.pointer) == (code, pointer)
    assert (place.line, place.column) == (line, column)
