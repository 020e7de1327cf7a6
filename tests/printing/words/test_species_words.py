"""Every species' things have a name in English and in Spanish, one and several."""

from itertools import chain

import pytest

from printing.words import LANGUAGES, Words
from shared.carcass.anatomy import catalogue, species
from shared.carcass.catalogue import Catalogue


def keys(of: Catalogue) -> tuple[str, ...]:
    """Every code of a species that people may read, as the words' key for it."""
    runs = of.runs.values()
    found = chain(
        (f"primal.{name}" for name in of.primals),
        (f"part.{name}" for name in of.parts),
        (f"stretch.{one.code}" for run in runs for one in run.stretches),
        (f"lane.{lane}" for run in runs for lane in run.lanes),
        (f"cut.{name}" for name in of.cuts),
        (f"way.{way.code}" for cut in of.cuts.values() for way in cut.ways),
        (f"finish.{name}" for name in of.finishes),
        (f"loss.{part.loss}" for part in of.parts.values() if part.loss),
    )
    return tuple(dict.fromkeys(found))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", species())
def test_everything_has_a_name(name: str, language: str) -> None:
    words = Words(language, strict=True)
    for key in keys(catalogue(name)):
        assert words.name(name, key).strip(), key
        assert words.name(name, key, 2).strip(), key


@pytest.mark.parametrize("name", species())
def test_no_two_cuts_share_a_name(name: str) -> None:
    for language in LANGUAGES:
        words = Words(language, strict=True)
        names = [words.name(name, f"cut.{code}") for code in catalogue(name).cuts]
        assert sorted(names) == sorted(set(names))


def test_counted_cuts_have_their_plural() -> None:
    english, spanish = Words("en", strict=True), Words("es", strict=True)
    assert english.name("pork", "cut.ham_steak") == "ham steak"
    assert english.name("pork", "cut.ham_steak", 6) == "ham steaks"
    assert spanish.name("pork", "cut.ham_steak", 6) == "rebanadas de pierna"
    assert english.name("pork", "cut.foot", 2) == "feet"


def test_american_spelling() -> None:
    """The program's users spell it center and gray."""
    words = Words("en", strict=True)
    for name in species():
        for key in keys(catalogue(name)):
            text = words.name(name, key)
            assert "centre" not in text, key
            assert "colour" not in text, key
