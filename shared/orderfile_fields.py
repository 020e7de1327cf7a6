"""Fields of the order file read one by one; every fault is noted with its place, none is raised.

Each reader gives a harmless stand-in where it notes a fault, so that one reading finds them all.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import TypeVar

from shared.orderfile_places import Node, Place
from shared.units import Weight, read_length, read_weight

T = TypeVar("T")
L = TypeVar("L", bound=str)

VERSION = 1
NUMBER = r"(?:[0-9]{1,7}(?:\.[0-9]{1,9})?|(?:[0-9]{1,7} )?[0-9]{1,7}/[1-9][0-9]{0,6})"
WEIGHT = re.compile(rf"{NUMBER} (?:lb|oz|kg|g)|[0-9]{{1,7}} lb {NUMBER} oz")
LENGTH = re.compile(rf"{NUMBER} (?:in|mm|cm)")
SHARE = re.compile(r"[1-9][0-9]{0,11}/[1-9][0-9]{0,11}|[0-9]{1,3}(?:\.[0-9]{1,9})? %|1")
CODE = re.compile(r"[a-z][a-z0-9_]{0,63}")


@dataclass(frozen=True, slots=True)
class FileFault:
    """One thing wrong in an order file.

    `pointer` is the JSON pointer of the field, `line` and `column` count from 1. `asked` says
    what the field takes (a kind such as "weight", or the words it knows, parted by " | ");
    `found` is what stands there.
    """

    pointer: str
    line: int
    column: int
    code: str
    asked: str
    found: str


@dataclass(slots=True)
class Fields:
    """The faults found so far."""

    faults: list[FileFault] = field(default_factory=list[FileFault])

    def fault(self, place: Place, code: str, asked: str = "", found: str = "") -> None:
        """Note one fault."""
        self.faults.append(
            FileFault(place.pointer, place.line, place.column, code, asked, found[:60])
        )

    def members(
        self, node: Node, required: Sequence[str], optional: Sequence[str] = ()
    ) -> Mapping[str, Node]:
        """The members of an object; notes keys that are missing or not known."""
        if not isinstance(node.value, dict):
            self.fault(node.place, "wrong_kind", "object", shown(node))
            return {}
        known = (*required, *optional)
        for key, place in node.keys.items():
            if key not in known:
                self.fault(place, "unknown_key", " | ".join(known), key)
        for key in required:
            if key not in node.value:
                self.fault(node.place, "missing_key", key)
        return {key: node.value[key] for key in known if key in node.value}

    def items(
        self, node: Node | None, one: Callable[[Node], T], least: int = 0, most: int = 2000
    ) -> tuple[T, ...]:
        """A list, each item read by `one`; an absent one is empty."""
        if node is None:
            return ()
        if not isinstance(node.value, list):
            self.fault(node.place, "wrong_kind", "list", shown(node))
            return ()
        if not least <= len(node.value) <= most:
            self.fault(node.place, "wrong_length", f"{least}..{most}", str(len(node.value)))
            return ()
        return tuple(one(item) for item in node.value)

    def whole(self, node: Node | None, least: int, most: int, absent: int = 0) -> int:
        """A whole number within bounds, both taken."""
        if node is None:
            return absent
        if isinstance(node.value, bool) or not isinstance(node.value, int):
            self.fault(node.place, "wrong_kind", "whole number", shown(node))
            return least
        if not least <= node.value <= most:
            self.fault(node.place, "out_of_range", f"{least}..{most}", shown(node))
            return least
        return node.value

    def flag(self, node: Node | None, absent: bool = False) -> bool:
        """True or false."""
        if node is None:
            return absent
        if not isinstance(node.value, bool):
            self.fault(node.place, "wrong_kind", "true | false", shown(node))
            return absent
        return node.value

    def text(self, node: Node | None) -> str:
        """Any text; an absent one is empty."""
        if node is None:
            return ""
        if not isinstance(node.value, str):
            self.fault(node.place, "wrong_kind", "text", shown(node))
            return ""
        return node.value

    def code(self, node: Node | None) -> str:
        """A code name: small letters, digits and underscores; an absent one is empty."""
        value = self.text(node)
        if node is not None and isinstance(node.value, str) and not CODE.fullmatch(value):
            self.fault(node.place, "not_a_code", "code", value)
        return value

    def one_of(self, node: Node | None, words: tuple[L, ...], absent: L) -> L:
        """One of the words."""
        if node is None:
            return absent
        for word in words:
            if node.value == word:
                return word
        self.fault(node.place, "not_one_of", " | ".join(words), shown(node))
        return absent

    def weight(self, node: Node | None) -> Weight | None:
        """A weight above nothing, such as "93.5 lb", "1 lb 4 oz" or "44.6 kg"."""
        if node is None:
            return None
        text = spelled(node, WEIGHT)
        found = None if text is None else read_weight(text)
        if not isinstance(found, Weight) or found.nanograms <= 0:
            self.fault(node.place, "not_a_weight", "weight", shown(node))
            return None
        return found

    def length(self, node: Node | None, least: int = 1) -> int | None:
        """A length such as "3/4 in" or "20 mm", in 1/203,200 in."""
        if node is None:
            return None
        text = spelled(node, LENGTH)
        found = None if text is None else read_length(text)
        if not isinstance(found, int) or found < least:
            self.fault(node.place, "not_a_length", "length", shown(node))
            return None
        return found

    def share(self, node: Node | None) -> Fraction | None:
        """A fraction above nothing and at most the whole: "1/2" or "80 %"."""
        if node is None:
            return None
        if isinstance(node.value, str) and SHARE.fullmatch(node.value):
            text = node.value.removesuffix(" %")
            found = Fraction(text) / (1 if text == node.value else 100)
            if 0 < found <= 1:
                return found
        self.fault(node.place, "not_a_share", "share", shown(node))
        return None


def spelled(node: Node, pattern: re.Pattern[str]) -> str | None:
    """The text of a node if it is spelled as the pattern says."""
    if isinstance(node.value, str) and pattern.fullmatch(node.value):
        return node.value
    return None


def shown(node: Node) -> str:
    """A value as the fault shows it."""
    if isinstance(node.value, dict):
        return "object"
    if isinstance(node.value, list):
        return "list"
    if node.value is None:
        return "null"
    if isinstance(node.value, bool):
        return "true" if node.value else "false"
    return str(node.value)
