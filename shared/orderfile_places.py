"""JSON text read into values that remember where they stand, so that a fault can name its line.

The standard library reads the strings; objects, lists and whole numbers are read here because
its decoder forgets positions, keeps the last of two equal keys and reads numbers with a point.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from json import JSONDecodeError, JSONDecoder

DEEPEST = 32
LONGEST_NUMBER = 15
_SPACE = re.compile(r"[ \t\n\r]*")
_NUMBER = re.compile(r"-?(?:0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]+)?")
_WORD = re.compile(r"[A-Za-z]+")
_WORDS: Mapping[str, bool | None] = {"true": True, "false": False, "null": None}
_STRINGS = JSONDecoder()


@dataclass(frozen=True, slots=True)
class Place:
    """A value of the file: its JSON pointer and where it starts, line and column from 1."""

    pointer: str
    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Node:
    """A value and its place. Objects hold nodes by key, and the place of each key."""

    value: "str | int | bool | list[Node] | dict[str, Node] | None"
    place: Place
    keys: Mapping[str, Place]


def child(node: Node | None, key: str) -> Node | None:
    """A member of an object, None when it is not there."""
    if node is not None and isinstance(node.value, dict):
        return node.value.get(key)
    return None


def children(node: Node | None) -> Sequence[Node]:
    """The items of a list; none when it is no list."""
    return node.value if node is not None and isinstance(node.value, list) else ()


class BadJsonError(Exception):
    """The text is not what the file may hold; carries a code, a place and what was found."""

    def __init__(self, code: str, place: Place, found: str) -> None:
        super().__init__(code)
        self.code = code
        self.place = place
        self.found = found


def parse(text: str) -> Node:
    """The whole text as one node.

    Raises:
        BadJsonError: codes "syntax", "number_with_point", "number_too_long", "key_twice",
            "too_deep", "bad_text" (half of a surrogate pair, or the character zero).
    """
    reader = _Reader(text.removeprefix("\ufeff"))
    return reader.whole()


def _token(key: str) -> str:
    return key.replace("~", "~0").replace("/", "~1")


class _Reader:
    def __init__(self, text: str) -> None:
        self.text = text
        self.at = 0
        self.line_at = 0
        self.line = 1

    def whole(self) -> Node:
        node = self.node("", 0)
        self.skip()
        if self.at < len(self.text):
            raise self.slip("syntax", "")
        return node

    def skip(self) -> None:
        match = _SPACE.match(self.text, self.at)
        if match is not None:
            self.at = match.end()

    def place(self, pointer: str, at: int | None = None) -> Place:
        """Line and column of a position; positions only ever grow, so lines are counted once."""
        where = self.at if at is None else at
        found = self.text.count("\n", self.line_at, where)
        if found:
            self.line += found
            self.line_at = self.text.rindex("\n", self.line_at, where) + 1
        return Place(pointer, self.line, where - self.line_at + 1)

    def slip(self, code: str, pointer: str, found: str | None = None) -> BadJsonError:
        shown = self.text[self.at : self.at + 12] if found is None else found
        return BadJsonError(code, self.place(pointer), shown)

    def node(self, pointer: str, depth: int) -> Node:
        self.skip()
        if depth > DEEPEST:
            raise self.slip("too_deep", pointer)
        mark = self.text[self.at : self.at + 1]
        if mark == "{":
            return self.read_object(pointer, depth)
        if mark == "[":
            return self.read_list(pointer, depth)
        place = self.place(pointer)
        if mark == '"':
            return Node(self.string(pointer), place, {})
        if mark == "-" or "0" <= mark <= "9":
            return Node(self.number(pointer), place, {})
        word = _WORD.match(self.text, self.at)
        if word is None or word.group() not in _WORDS:
            raise self.slip("syntax", pointer)
        self.at = word.end()
        return Node(_WORDS[word.group()], place, {})

    def read_object(self, pointer: str, depth: int) -> Node:
        place = self.place(pointer)
        values: dict[str, Node] = {}
        keys: dict[str, Place] = {}
        self.at += 1
        self.skip()
        while not self.took("}", bool(values), pointer):
            if self.text[self.at : self.at + 1] != '"':
                raise self.slip("syntax", pointer)
            start = self.at
            key = self.string(pointer)
            inner = f"{pointer}/{_token(key)}"
            keys_place = self.place(inner, start)
            if key in values:
                raise BadJsonError("key_twice", keys_place, key)
            keys[key] = keys_place
            self.skip()
            if self.text[self.at : self.at + 1] != ":":
                raise self.slip("syntax", inner)
            self.at += 1
            values[key] = self.node(inner, depth + 1)
        return Node(values, place, keys)

    def read_list(self, pointer: str, depth: int) -> Node:
        place = self.place(pointer)
        items: list[Node] = []
        self.at += 1
        self.skip()
        while not self.took("]", bool(items), pointer):
            items.append(self.node(f"{pointer}/{len(items)}", depth + 1))
        return Node(items, place, {})

    def took(self, close: str, any_before: bool, pointer: str) -> bool:
        """Whether the list or object ends here; else the comma before the next is taken."""
        self.skip()
        if self.text[self.at : self.at + 1] == close:
            self.at += 1
            return True
        if any_before:
            if self.text[self.at : self.at + 1] != ",":
                raise self.slip("syntax", pointer)
            self.at += 1
            self.skip()
        return False

    def string(self, pointer: str) -> str:
        try:
            value, end = _STRINGS.raw_decode(self.text, self.at)
        except JSONDecodeError as error:
            self.at = max(self.at, min(error.pos, len(self.text)))
            raise self.slip("syntax", pointer) from error
        if not isinstance(value, str):
            raise self.slip("syntax", pointer)
        if "\0" in value or any("\ud800" <= letter <= "\udfff" for letter in value):
            raise self.slip("bad_text", pointer)
        self.at = end
        return value

    def number(self, pointer: str) -> int:
        match = _NUMBER.match(self.text, self.at)
        if match is None:
            raise self.slip("syntax", pointer)
        if match.group(1) or match.group(2):
            raise self.slip("number_with_point", pointer, match.group()[:24])
        if len(match.group()) > LONGEST_NUMBER:
            raise self.slip("number_too_long", pointer, match.group()[:24])
        self.at = match.end()
        return int(match.group())
