"""A mail filled in for the shop's own mail program, as a link (RFC 6068).

A link carries no file: what is on paper is attached by hand. Windows hands a program a link of
at most 2,083 letters (INTERNET_MAX_URL_LENGTH, from memory), others take more; a longer one is
cut there without a word, so the text is made shorter here instead, and the caller is told.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from email.utils import getaddresses
from urllib.parse import quote

from printing.written import NO_BREAK

MOST_LINK = 2000
_ADDRESS = re.compile(r"[^@\s<>()\[\],;:\"\\]+@[^@\s<>()\[\],;:\"\\]+")


@dataclass(frozen=True, slots=True)
class Mail:
    """The link, and whether its text is shorter than it was wanted."""

    link: str
    shortened: bool


def addresses_in(typed: str) -> tuple[str, ...]:
    """The addresses in a field: "ann@x.example; Bo <bo+farm@y.example>" has two; else none."""
    read = getaddresses([typed.replace(";", ",").replace("\n", ",")])
    found = [address for _, address in read if _ADDRESS.fullmatch(address)]
    return tuple(dict.fromkeys(found))


def mail(addresses: Sequence[str], subject: str, texts: Sequence[str]) -> Mail:
    """A link with the first of the texts, longest first, with which it has at most `MOST_LINK`.

    Where none is short enough the last is cut, which an ellipsis says.
    """
    for text in texts:
        link = _link(addresses, subject, text)
        if len(link) <= MOST_LINK:
            return Mail(link, text != texts[0])
    low, high = 0, len(texts[-1])
    while high - low > 1:
        middle = (low + high) // 2
        fits = len(_link(addresses, subject, texts[-1][:middle] + "…")) <= MOST_LINK
        low, high = (middle, high) if fits else (low, middle)
    return Mail(_link(addresses, subject, texts[-1][:low].rstrip() + "…"), shortened=True)


def _link(addresses: Sequence[str], subject: str, text: str) -> str:
    """Every letter but plain ones escaped in UTF-8, line ends as %0D%0A, a plus sign as %2B."""
    to = ",".join("@".join(quote(part, safe="") for part in one.split("@")) for one in addresses)
    lines = "\r\n".join(text.replace(NO_BREAK, " ").splitlines())
    asked = {"subject": " ".join(subject.replace(NO_BREAK, " ").split()), "body": lines}
    fields = "&".join(f"{name}={quote(value, safe='')}" for name, value in asked.items())
    return f"mailto:{to}?{fields}"
