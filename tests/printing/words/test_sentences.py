"""Every kind of answer has its sentence in both languages, with the numbers the planner gives."""

import re
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import get_args

import polib
import pytest

import printing.words
import shared.units
from printing.words import LANGUAGES, Words, sentences
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting import answer as answers
from shared.cutting.answer import (
    VERDICTS,
    Caution,
    Conflict,
    Edit,
    OwnersQuestion,
    Remedy,
    Where,
)
from shared.cutting.order import Added, Amount, AmountKind, Choice, Package, Question
from shared.cutting.plan import plan
from shared.cutting.remedy import remedies
from shared.units import NG_PER_LB, SIXTY_FOURTH, Weight, read_length

PORK = catalogue("pork")
ENGLISH = Words("en", strict=True)
SPANISH = Words("es", strict=True)
THREE_QUARTERS = read_length("3/4 in")
assert isinstance(THREE_QUARTERS, int)
HAM = Choice(1, 1, "whole_ham", Amount("pieces", 1))
STEAKS = Choice(2, 1, "ham_steak", Amount("slices", 6), thickness=THREE_QUARTERS)
GROUND = Choice(3, 2, "ground_pork", Amount("rest"), package=Package(weight=Weight(1, "lb")))


def half_hog(*choices: Choice) -> Question:
    side = SideWeights(Weight.from_pounds(98))
    hog = Carcass("pork", tag="9", age="under_30", skin="scalded", hot=(side, side))
    shares = (
        Share(1, "Ann Ostby", (Holding(0, 1),)),
        Share(2, "Bo Trask", (Holding(0, 2),)),
    )
    return Question((hog,), shares, choices)


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def kinds_named(of: type, after: str) -> set[str]:
    """The kinds that a class of the answer promises in its own words."""
    return set(re.findall(r'"([a-z_]+)"', (of.__doc__ or "").split(after, 1)[1]))


@pytest.mark.parametrize(
    ("of", "after", "known"),
    [
        (Conflict, "`kind`:", sentences.CONFLICT_KINDS),
        (OwnersQuestion, "`kind`:", sentences.QUESTION_KINDS),
        (Remedy, "`kind`:", sentences.REMEDY_KINDS),
        (Caution, "Codes:", sentences.CAUTION_CODES),
    ],
)
def test_the_kinds_are_those_of_the_answer(of: type, after: str, known: tuple[str, ...]) -> None:
    assert kinds_named(of, after) == set(known)
    assert of.__module__ == answers.__name__


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", sentences.CONFLICT_KINDS)
@pytest.mark.parametrize("asked", [2, 8])
@pytest.mark.parametrize("met", [True, False])
def test_every_conflict_has_a_sentence(kind: str, language: str, asked: int, met: bool) -> None:
    question = half_hog(HAM, STEAKS, GROUND)
    part = "lean" if kind in ("trim", "leaner") else "ham_centre"
    rivals = ((1, Fraction(1)), (2, Fraction(3))) if met else ()
    figures = Fraction(asked), Fraction(3), Fraction(4)
    x = Conflict((1, 2), kind, Where(0, 1, part=part), *figures, rivals)
    text = sentences.conflict(x, question, PORK, Words(language, strict=True))
    assert_sentence(text)
    assert Words(language).name("pork", "cut.ham_steak", 6) in text


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", sentences.REMEDY_KINDS)
def test_every_remedy_has_a_sentence(kind: str, language: str) -> None:
    question = half_hog(HAM, replace(STEAKS, pinned=((0, 1, 6),)))
    words = Words(language, strict=True)
    for verdict in VERDICTS:
        for new in (replace(STEAKS, amount=Amount("slices", 3)), STEAKS, None):
            x = Remedy(kind, (Edit(2, new),), 2 * NG_PER_LB, verdict)
            text = sentences.remedy(x, question, PORK, words)
            assert_sentence(text)
            assert "2.0 lb" in plain(text)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", sentences.QUESTION_KINDS)
def test_every_question_has_a_sentence(kind: str, language: str) -> None:
    question = half_hog(HAM, replace(STEAKS, share=2))
    x = OwnersQuestion(kind, (1, 2), (1, 2), Where(0, 0, part="tail"))
    text = sentences.owners_question(x, question, PORK, Words(language, strict=True))
    assert "Ann Ostby" in text
    assert "Bo Trask" in text
    assert text.endswith("?")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("code", sentences.CAUTION_CODES)
@pytest.mark.parametrize("where", [None, Where(0, 1, part="ham_centre")])
def test_every_caution_has_a_sentence(code: str, language: str, where: Where | None) -> None:
    x = Caution(code, 2, where, Fraction(3), Fraction(2), Fraction(4))
    text = sentences.caution(x, half_hog(HAM, STEAKS), PORK, Words(language, strict=True))
    assert "{" not in text
    assert text.endswith(".")


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_verdict_and_amount_has_words(language: str) -> None:
    words = Words(language, strict=True)
    assert len({sentences.verdict_text(one, words) for one in VERDICTS}) == len(VERDICTS)
    texts: set[str] = set()
    for kind in get_args(AmountKind):
        amount = Amount(kind, 6, Weight(6, "lb"), Fraction(1, 2))
        choice = Choice(1, 1, "ham_steak", amount)
        texts.add(sentences.choice_text(choice, PORK, words))
        assert sentences.amount_text(choice, PORK, words)
    assert len(texts) == len(get_args(AmountKind)) - 1  # pieces and slices read alike


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_text_shouts_or_is_empty(language: str) -> None:
    texts = polib.pofile(str(Path(printing.words.__file__).parent / language / "answers.po"))
    for entry in texts:
        for text in (entry.msgstr, *entry.msgstr_plural.values()):
            assert "!" not in text
        assert all(entry.msgstr_plural.values()) if entry.msgid_plural else entry.msgstr


def test_both_languages_say_the_same_things() -> None:
    """The same keys, filled with the same data."""
    fields: list[dict[str, set[str]]] = []
    for language in LANGUAGES:
        found = polib.pofile(str(Path(printing.words.__file__).parent / language / "answers.po"))
        fields.append(
            {
                one.msgid: set(
                    re.findall(r"\{\w+\}", one.msgstr + "".join(one.msgstr_plural.values()))
                )
                for one in found
            }
        )
    assert fields[0] == fields[1]


def test_choices_read_as_the_counter_says_them() -> None:
    assert plain(sentences.choice_text(STEAKS, PORK, ENGLISH)) == "6 ham steaks at ¾ in"
    assert sentences.choice_text(HAM, PORK, ENGLISH) == "whole ham, shank on"
    rest = plain(sentences.choice_text(GROUND, PORK, ENGLISH))
    assert rest == "the rest as ground pork, 1 lb packages"
    smoked = replace(STEAKS, finishes=("smoked",), package=Package(pieces=2))
    text = plain(sentences.choice_text(smoked, PORK, ENGLISH))
    assert text == "6 ham steaks at ¾ in, smoked, 2 to a package"


def test_a_place_names_side_and_part() -> None:
    question = half_hog(HAM)
    where = Where(0, 1, "back", "ham_centre", "meat", "ham_centre")
    assert sentences.place_text(where, question, PORK, ENGLISH) == "Side 1, ham center"
    both = Where(0, 0, "back", "ham_butt", "meat", last="ham_centre")
    text = sentences.place_text(both, question, PORK, ENGLISH)
    assert text == "Both sides, butt end of the ham through ham center"
    two = replace(question, carcasses=question.carcasses * 2)
    text = sentences.place_text(Where(1, 2, part="ham_centre"), two, PORK, ENGLISH)
    assert text == "Carcass 2, tag 9, side 2, ham center"
    tail = sentences.place_text(Where(0, 0, part="tail"), question, PORK, ENGLISH)
    assert tail == "The animal, tail"


def test_a_whole_ham_and_six_ham_steaks() -> None:
    """6 steaks at ¾ in with 5 kerfs of 1/16 in between them are 4 13/16 in: by hand, no source."""
    question = half_hog(HAM, STEAKS)
    answer = plan(question, PORK)
    (found,) = answer.conflicts
    text = plain(sentences.conflict(found, question, PORK, ENGLISH))
    assert text.startswith("Side 1, ham center: whole ham, shank on, takes all of it;")
    assert "6 ham steaks at ¾ in need 4 13/16 in;" in text
    expected = Fraction(int(found.expected) // (4 * SIXTY_FOURTH), 16)
    shown = shared.units.length_text(int(expected * shared.units.LENGTH_UNITS_PER_INCH))
    assert f"{plain(shown)} expected, " in text
    assert text.endswith(" in at the most.")
    spanish = plain(sentences.conflict(found, question, PORK, SPANISH))
    assert spanish.startswith("Media canal 1, centro de la pierna: ")
    assert "4 13/16 in" in spanish


def test_a_way_out_says_what_to_take_instead() -> None:
    question = half_hog(HAM, STEAKS)
    (offered,) = remedies(question, plan(question, PORK), PORK)
    texts = [plain(sentences.remedy(one, question, PORK, ENGLISH)) for one in offered]
    assert any(text.startswith("Leave out 6 ham steaks at ¾ in.") for text in texts)
    close = "Take a cut close to it: 2 ham ends as roasts instead of whole ham, shank on."
    assert any(text.startswith(close) for text in texts)


def test_owners_are_named_where_they_want_the_same() -> None:
    tails = [Choice(line, line, "tail", Amount("pieces", 1)) for line in (1, 2)]
    question = half_hog(*tails)
    (asked,) = plan(question, PORK).questions
    text = sentences.owners_question(asked, question, PORK, ENGLISH)
    assert text == (
        "The animal, tail: Ann Ostby and Bo Trask each want it, and there is one to an animal. "
        "Who gets it?"
    )


def test_what_comes_one_to_an_animal_is_added_up_over_the_animals() -> None:
    question = half_hog(Choice(1, 1, "tail", Amount("pieces", 3)))
    two = replace(
        question,
        carcasses=question.carcasses * 2,
        shares=(Share(1, "Ann Ostby", tuple(Holding(n, s) for n in (0, 1) for s in (1, 2))),),
    )
    (found,) = plan(two, PORK).conflicts
    text = sentences.conflict(found, two, PORK, ENGLISH)
    expected = "The animals together, tail: 3 tails need 3; one comes to an animal, 2 in all."
    assert text == expected


def assert_sentence(text: str) -> None:
    assert text[0].isupper() or text[0].isdigit()
    assert text.endswith(".")
    assert "{" not in text
    assert "!" not in text


def test_what_is_ground_in_and_the_seasoning_are_said() -> None:
    """On orders, confirmations and the block's sheet alike, in both languages."""
    choice = Choice(
        1,
        1,
        "ground_pork",
        Amount("rest"),
        seasoning="hot_italian",
        added=Added("pork_fat", Fraction(1, 5)),
    )
    said = sentences.asked_text(choice, catalogue("pork"), Words("en"))
    assert said == "the rest as ground pork, with 20 % pork fat added, seasoning: hot italian"
    left_open = replace(choice, added=Added("beef_fat"), seasoning="")
    spanish = sentences.asked_text(left_open, catalogue("pork"), Words("es"))
    assert spanish.endswith("más grasa de res")
