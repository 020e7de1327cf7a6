"""One word for one thing in Spanish: half a carcass is a media canal, lado is a direction."""

import re

import pytest

from tests.printing.words.test_quotation_marks import FILES, WORDS, texts

HALF = re.compile(r"\b(?<!blade )(?<!side by )sides?\b(?! by side)", re.IGNORECASE)
LADO = re.compile(r"\blados?\b", re.IGNORECASE)


def calls_a_half_lado(english: str, spanish: str) -> bool:
    """Whether a sentence of a carcass's side has another word for it in Spanish."""
    return bool(HALF.search(english.replace("&", ""))) and bool(
        LADO.search(spanish.replace("&", ""))
    )


@pytest.mark.parametrize("name", FILES)
def test_half_a_carcass_is_a_media_canal(name: str) -> None:
    english, spanish = (texts(WORDS / language / name) for language in ("en", "es"))
    wrong = [
        (key, text)
        for key in english.keys() & spanish.keys()
        for text in spanish[key]
        if calls_a_half_lado(" ".join(english[key]), text)
    ]
    assert wrong == []


@pytest.mark.parametrize(
    ("english", "spanish", "wrong"),
    [
        ("half, side 1", "mitad, lado 1", True),
        ("&Side", "La&do", True),
        ("both sides", "los dos lados", True),
        ("half, side 1", "media canal 1", False),
        ("Owners side by side", "Dueños lado a lado", False),
        ("shoulder, blade side", "paleta, lado de la escápula", False),
        ("planned beside it", "se planean al lado", False),
    ],
)
def test_a_direction_may_be_a_lado(english: str, spanish: str, wrong: bool) -> None:
    assert calls_a_half_lado(english, spanish) is wrong
