"""Edits away: a letter more, less or other, two letters swapped; one, in long words two."""

import random

import pytest

from shared.shop.near_names import begins_near, edits_let, is_near, nearly_same, off_by, pieces

ALPHABET = "abcde"


@pytest.mark.parametrize(
    ("typed", "there"),
    [
        ("jonson", "johnson"),
        ("johnsson", "johnson"),
        ("breg", "berg"),
        ("petersen", "pedersen"),
        ("iversn", "iversen"),
    ],
)
def test_one_edit_is_one_off_both_ways(typed: str, there: str) -> None:
    assert off_by(typed, there, 1)
    assert off_by(there, typed, 1)


@pytest.mark.parametrize(("one", "other"), [("meyer", "maier"), ("berg", "berg"), ("ab", "abcd")])
def test_two_edits_or_none_are_not(one: str, other: str) -> None:
    assert not off_by(one, other, 1)


def distance(one: str, other: str) -> int:
    """The optimal string alignment distance by its table, as textbooks give it."""
    rows = [[0] * (len(other) + 1) for _ in range(len(one) + 1)]
    for i in range(len(one) + 1):
        for j in range(len(other) + 1):
            if not i or not j:
                rows[i][j] = i + j
                continue
            cost = one[i - 1] != other[j - 1]
            best = min(rows[i - 1][j] + 1, rows[i][j - 1] + 1, rows[i - 1][j - 1] + cost)
            if i > 1 and j > 1 and one[i - 1] == other[j - 2] and one[i - 2] == other[j - 1]:
                best = min(best, rows[i - 2][j - 2] + 1)
            rows[i][j] = best
    return rows[-1][-1]


def test_it_agrees_with_the_textbook_s_table() -> None:
    draw = random.Random(4)
    for _ in range(20_000):
        one, other = ("".join(draw.choices(ALPHABET, k=draw.randrange(1, 7))) for _ in range(2))
        for most in (1, 2):
            far = distance(one, other)
            assert off_by(one, other, most) == (0 < far <= most), (one, other)


def test_whatever_is_one_off_holds_the_pieces_of_one_way() -> None:
    draw = random.Random(5)
    seen = 0
    while seen < 500:
        one, other = ("".join(draw.choices(ALPHABET, k=draw.randrange(3, 6))) for _ in range(2))
        if off_by(one, other, 1):
            seen += 1
            assert any(all(part in other for part in way) for way in pieces(one)), (one, other)


def test_a_name_is_near_word_by_word() -> None:
    assert is_near("bert ivresen", "bert iversen")
    assert is_near("jonso", "anna johnson")
    assert not is_near("bert iversen", "bert iversen"), "there as typed, so not near"
    assert not is_near("brg", "berg"), "three letters are near too much"
    assert begins_near("jonso", "johnson")


def test_long_words_may_have_two_edits_a_swap_counting_one() -> None:
    assert [edits_let("a" * size) for size in (3, 4, 6, 7, 12)] == [0, 1, 1, 2, 2]
    assert is_near("gundarsen", "anna gunderson")
    assert is_near("gudnersno", "anna gunderson"), "two swaps"
    assert is_near("ostrgard", "vera ostergaard")
    assert not is_near("gandarsin", "anna gunderson"), "three"
    assert not is_near("ivrsan", "bert iversen"), "six letters may have one"
    assert not nearly_same("anna gundarsen", "anna gunderson"), "the notice asks of one edit"


def test_whole_names_are_nearly_the_same() -> None:
    assert nearly_same("anna jonson", "anna johnson")
    assert not nearly_same("anna berg", "anna bergland")
    assert not nearly_same("anna berg", "anna berg")
    assert not nearly_same("ole berg", "ola berg"), "three letters are too few to say"
