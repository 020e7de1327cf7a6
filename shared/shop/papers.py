"""A printed paper kept whole: the values it was printed from, their hash, and its bytes."""

import hashlib
import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

PaperKind = Literal["block_sheet", "bill", "credit", "receipt", "counts", "statement", "ticket"]
Json = str | int | bool | None | Sequence["Json"] | Mapping[str, "Json"]


@dataclass(frozen=True, slots=True)
class PaperRow:
    """A kept paper as a list shows it."""

    id: int
    kind: PaperKind
    lot_id: int | None
    order_id: int | None
    number: int
    sha256: str
    made_at: datetime
    person: str


@dataclass(frozen=True, slots=True)
class Paper:
    """A kept paper whole; printing it again prints `pdf`."""

    id: int
    kind: PaperKind
    lot_id: int | None
    order_id: int | None
    number: int
    snapshot: str
    sha256: str
    pdf: bytes
    made_at: datetime
    person: str


def canonical_json(value: Json) -> str:
    """The one way a value is written: keys sorted, no blanks, no escapes of letters.

    `canonical_json({"b": 1, "a": "ø"})` is `{"a":"ø","b":1}`.
    """
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def digest(text: str) -> str:
    """SHA-256 of the text as UTF-8, in hexadecimal."""
    return hashlib.sha256(text.encode()).hexdigest()
