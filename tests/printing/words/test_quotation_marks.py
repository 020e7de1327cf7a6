"""What is quoted stands between “ and ”, in Spanish as in English: so it is written in the US.

Straight marks are left for what is typed as it stands there, such as "3/4 in" in an order file.
"""

import re
from pathlib import Path

import polib
import pytest

from printing.words import LANGUAGES
from tests.test_house import ROOT

WORDS = ROOT / "printing" / "words"
FILES = sorted(path.name for path in (WORDS / "es").glob("*.po"))
LITERAL = re.compile(r'"[^"{}]*"')


def texts(path: Path) -> dict[str, tuple[str, ...]]:
    """What each key says, of one and of several."""
    return {
        one.msgid: tuple(one.msgstr_plural.values()) or (one.msgstr,)
        for one in polib.pofile(str(path))
    }


def quoted_wrongly(text: str) -> bool:
    """Whether it has other marks than “ and ”, or these not in pairs."""
    marks = "".join(one for one in text if one in "“”")
    return bool(set(text) & set("«»„‟‹›")) or marks != "“”" * text.count("“")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", FILES)
def test_what_is_quoted_stands_between_one_kind_of_marks(name: str, language: str) -> None:
    wrong = [
        (key, text)
        for key, said in texts(WORDS / language / name).items()
        for text in said
        if quoted_wrongly(text) or '"' in LITERAL.sub("", text)
    ]
    assert wrong == []


@pytest.mark.parametrize("name", FILES)
def test_what_is_typed_as_it_stands_is_the_same_in_both_languages(name: str) -> None:
    english, spanish = (texts(WORDS / language / name) for language in LANGUAGES)
    for key in english.keys() & spanish.keys():  # each language has other names of its own
        assert LITERAL.findall(english[key][0]) == LITERAL.findall(spanish[key][0]), key


@pytest.mark.parametrize("text", ["«uno»", "“uno", "uno”", "”uno“", "‹uno›", "“uno “dos” tres”"])
def test_other_marks_are_seen(text: str) -> None:
    assert quoted_wrongly(text)
    assert not quoted_wrongly("“uno” y “dos”")
