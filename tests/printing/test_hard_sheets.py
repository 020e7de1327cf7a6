"""Five hard lots on the block sheet: letters measured, nothing outside, every line whole."""

import re
from collections import Counter
from dataclasses import replace

import pytest

from printing.page import SIZES, PaperName
from printing.words import Words
from shared.carcass.carcass import Age
from shared.carcass.catalogue import Catalogue
from shared.cutting.breaking import block_lines
from tests.printing.hard_lots import HARD, LONG_NOTE, Hard
from tests.printing.rasterised import codes_of, letters_of, pages_of
from tests.printing.sheet_lot import sheet_of
from tests.printing.test_long_names import drawn_over

MM = 72 / 25.4
TONGUES = {"en": ("en", ""), "es": ("es", ""), "both": ("en", "es")}


@pytest.fixture(scope="module")
def hard() -> dict[str, Hard]:
    return {name: make() for name, make in HARD.items()}


def _sheet(lot: Hard, tongue: str, paper: PaperName = "letter") -> bytes:
    language, also = TONGUES[tongue]
    return sheet_of(
        lot.planned,
        paper=paper,
        language=language,
        also=also,
        notes=dict(lot.notes),
        allergens={"seasoned": ("mustard", "milk")},
    )


def _plain(text: str) -> str:
    return " ".join(text.replace("\u00a0", " ").split())


@pytest.mark.parametrize("tongue", TONGUES)
@pytest.mark.parametrize("name", HARD)
def test_counts_stand_eight_and_names_four_millimetres(
    hard: dict[str, Hard], name: str, tongue: str
) -> None:
    """Settled: capitals of main lines at least 4 mm, count and thickness at least 8 mm.

    Heights of the ink itself: every figure of the sheet is of the footer, the small letters or
    at least 8 mm; every capital that begins a cut's name is at least 4 mm.
    """
    pdf = _sheet(hard[name], tongue)
    tall: Counter[str] = Counter()
    for page in range(len(pages_of(pdf))):
        for letter, _left, bottom, _right, top in letters_of(pdf, page):
            height = (top - bottom) / MM
            if letter in "BDEFHIKLMNPRTXYZ" and height >= 4:
                tall["name"] += 1
            if letter in "1234567890" and height >= 8:
                tall["figure"] += 1
    lines = block_lines(hard[name].planned.question, hard[name].planned.answer, _known(hard[name]))
    rows = {(one.side, one.cut, one.thickness) for one in lines if one.count}
    assert tall["figure"] >= len(rows)
    assert tall["name"] >= len(rows)


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("tongue", TONGUES)
@pytest.mark.parametrize("name", HARD)
def test_nothing_lies_outside_or_over_the_footer(
    hard: dict[str, Hard], name: str, tongue: str, paper: PaperName
) -> None:
    pdf = _sheet(hard[name], tongue, paper)
    wide, high = SIZES[paper]
    for page in range(len(pages_of(pdf))):
        for letter, left, bottom, right, top in letters_of(pdf, page):
            if letter.strip():
                assert 30 <= left <= right <= wide - 30, (page, letter)
                assert 30 <= bottom <= top <= high - 30, (page, letter)


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("tongue", TONGUES)
@pytest.mark.parametrize("name", HARD)
def test_nothing_is_drawn_over(
    hard: dict[str, Hard], name: str, tongue: str, paper: PaperName
) -> None:
    """Augusta Lindqvist stood on what her side weighs."""
    assert drawn_over(_sheet(hard[name], tongue, paper)) == []


@pytest.mark.parametrize("tongue", TONGUES)
def test_two_languages_say_everything_twice_and_notes_once(
    hard: dict[str, Hard], tongue: str
) -> None:
    text = _plain(" ".join(pages_of(_sheet(hard["long_note"], tongue))))
    for language in ("en", "es"):
        name = Words(language, strict=True).name("beef", "cut.t_bone_steak", 4)
        shown = name[:1].upper() + name[1:]
        assert (shown in text) is (tongue in (language, "both"))
    assert text.count("the first is dead") == 1
    assert _plain(LONG_NOTE)[:40] in text


def _spoken(text: str) -> set[str]:
    """The words of a page but its footer's, which in two languages names the sheet in short."""
    lines = [one for one in text.splitlines() if "Printed" not in one and "Impreso" not in one]
    return set(re.findall(r"[^\W\d_]{2,}", " ".join(lines).lower()))


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("name", HARD)
def test_every_word_that_has_a_translation_is_there_in_both(
    hard: dict[str, Hard], name: str, paper: PaperName
) -> None:
    """Whatever the English sheet and the Spanish one say, the one of both languages says."""
    both = pages_of(_sheet(hard[name], "both", paper))
    said = _spoken("\n".join(both))
    for tongue in ("en", "es"):
        alone = _spoken("\n".join(pages_of(_sheet(hard[name], tongue, paper))))
        assert alone - said == set(), tongue


@pytest.mark.parametrize("name", HARD)
def test_every_page_of_both_languages_has_its_head_in_both(
    hard: dict[str, Hard], name: str
) -> None:
    species = hard[name].planned.question.carcasses[0].species
    for page in pages_of(_sheet(hard[name], "both")):
        text, spoken = _plain(page), _spoken(page)
        for language in ("en", "es"):
            words = Words(language, strict=True)
            animal = words.name(species, f"species.{species}")
            assert animal in spoken
            for key in ("block_sheet", "lot", "sheet", "regime_custom"):
                told = words.say(f"papers.{key}", lot=12, sheet=2)
                assert told in text, (key, language)
            assert words.say("papers.page", page=1, pages=1).split()[0] in text
            assert words.say("papers.printed", day="", time="").split()[0] in text
        assert "Tag · Arete" in text
        if "% lean" in text:
            assert text.count("% lean") == text.count("% magro")


def test_an_owner_alone_on_a_sheet_is_read_from_afar(hard: dict[str, Hard]) -> None:
    """Where there is room his name's capitals stand 7 mm; beside others those of a main line."""
    for name, least in (("everything_ground", 7.0), ("long_note", 7.0), ("four_owners", 4.0)):
        lot = hard[name]
        owners = {one.owner for one in lot.planned.question.shares}
        letters = [one for one in letters_of(_sheet(lot, "both"), 0) if one[1] > 250]
        initials = {one[0] for one in owners}
        tall = [
            (top - bottom) / MM
            for letter, _, bottom, _, top in letters
            if letter in initials and bottom > 600
        ]
        assert max(tall) >= least, name


def test_four_owners_share_a_row_each_with_his_count(hard: dict[str, Hard]) -> None:
    lot = hard["four_owners"]
    text = _plain(" ".join(pages_of(_sheet(lot, "en"))))
    counts = {
        one.share: one.count
        for one in block_lines(lot.planned.question, lot.planned.answer, _known(lot))
        if one.cut == "t_bone_steak" and one.side == 1
    }
    assert f"{sum(counts.values())} 1¼ in T-bone steaks" in text
    assert f"{counts[2]} Bo Lund" in text
    assert "From the head end" in text
    assert text.count("T-bone steaks") == 2


def test_what_could_hurt_stands_above_every_line(hard: dict[str, Hard]) -> None:
    old = _plain(pages_of(_sheet(hard["over_thirty_months"], "en"))[0])
    assert old.index("30 MONTHS AND OVER") < old.index("abscess") < old.index("Chuck, ground")
    sausage = _plain(pages_of(_sheet(hard["everything_ground"], "en"))[0])
    assert "CONTAINS mustard, milk" in sausage
    assert "old mill mustard" in sausage


@pytest.mark.parametrize("age", ["30_and_over", "unknown"])
def test_an_old_animal_is_told_by_its_regime(age: Age) -> None:
    """9 CFR 310.22 is kept in custom-exempt work too, but no inspector stands there."""
    planned = HARD["over_thirty_months"]().planned
    for regime, inspector in (("inspected", True), ("custom", False)):
        beasts = [replace(one, age=age, regime=regime) for one in planned.question.carcasses]
        lot = replace(planned, question=replace(planned.question, carcasses=tuple(beasts)))
        for tongue, ask, contact in (
            ("en", "inspector", "ask your state or FSIS contact"),
            ("es", "inspector", "pregunte a su contacto estatal o del FSIS"),
        ):
            told = _plain(" ".join(pages_of(_sheet(Hard(lot, {}), tongue))))
            assert (ask in told) is inspector, (regime, tongue)
            assert (contact in told) is not inspector, (regime, tongue)


def test_every_page_of_a_side_carries_its_tag(hard: dict[str, Hard]) -> None:
    pdf = _sheet(hard["two_page_hog"], "both")
    sides = [n for n, page in enumerate(pages_of(pdf)) if "Side" in page]
    assert len(sides) >= 3
    for page in sides:
        assert [code.text for code in codes_of(pdf, page, 300)] == ["2481"]


def _known(lot: Hard) -> Catalogue:
    return lot.planned.catalogue


@pytest.mark.parametrize("tongue", TONGUES)
def test_lard_is_of_fat_alone_and_a_tag_is_one_word(hard: dict[str, Hard], tongue: str) -> None:
    """Nothing is told of 0.0 lb; the screen's word for a tag is the paper's too."""
    text = _plain(" ".join(pages_of(_sheet(hard["two_page_hog"], tongue))))
    assert "Lard" in text or "Manteca" in text
    assert "0.0 lb" not in text.replace("10.0 lb", "")
    assert ("Arete 2481" in text) is (tongue != "en")
    assert ("Tag 2481" in text) is (tongue == "en")
