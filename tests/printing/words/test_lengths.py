"""Lengths in sixteenths: whatever is rounded, a refusal that is told still is one."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from printing.words import Words, lengths, sentences
from shared.carcass.anatomy import catalogue
from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.cutting.answer import Caution, Conflict, Where
from shared.cutting.order import Amount, Choice, Question
from shared.units import LENGTH_UNITS_PER_INCH, SIXTY_FOURTH, Weight, read_length

LENGTH = st.integers(1, 60 * LENGTH_UNITS_PER_INCH).map(Fraction)
SIXTEENTH = LENGTH_UNITS_PER_INCH // 16
PORK = catalogue("pork")
CENTRE = Where(0, 1, "back", "ham_centre", "meat", "ham_centre")


def inches(text: str) -> Fraction:
    length = read_length(text)
    assert isinstance(length, int)
    return Fraction(length)


def shown(length: Fraction) -> str:
    return lengths.text(length).replace("\u00a0", " ")


def test_what_is_asked_goes_up_and_what_is_there_goes_down() -> None:
    asked, there = inches("4 51/64 in"), inches("4 50/64 in")
    assert shown(lengths.up(asked)) == "4 13/16 in"
    assert shown(lengths.down(there)) == "4¾ in"
    assert lengths.up(inches("4 3/4 in")) == lengths.down(inches("4 3/4 in")) == inches("4 3/4 in")
    assert shown(lengths.down(inches("1/32 in"))) == "1/32 in"
    assert lengths.nearest_eighth(int(inches("5 55/64 in"))).startswith("5⅞")


@given(LENGTH, LENGTH)
def test_more_than_there_is_still_reads_so(asked: Fraction, there: Fraction) -> None:
    if asked > there:
        assert lengths.up(asked) > lengths.down(there)
    assert 0 <= lengths.up(asked) - asked < SIXTEENTH
    assert lengths.up(asked) % SIXTEENTH == 0
    assert 0 <= there - lengths.down(there) < SIXTEENTH
    assert lengths.down(there) > 0


@given(st.lists(LENGTH, min_size=2, max_size=6), LENGTH)
def test_what_each_needs_adds_up_to_no_more_than_all_need(
    amounts: list[Fraction], there: Fraction
) -> None:
    each = lengths.needs(amounts, there)
    assert all(one > 0 for one in each)
    sixteenths = [one for one in each if one % SIXTEENTH == 0]
    assert sum(sixteenths) <= lengths.up(sum(amounts, Fraction(0)))
    for need, amount in zip(each, amounts, strict=True):
        assert abs(need - amount) < SIXTEENTH
        if amount <= there:
            assert need <= max(lengths.down(there), amount)


def two_lines() -> Question:
    side = SideWeights(Weight.from_pounds(98))
    hog = Carcass("pork", tag="9", age="under_30", skin="scalded", hot=(side, side))
    thick = int(inches("3/4 in"))
    lines = [Choice(n, 1, "ham_steak", Amount("slices", 3), thickness=thick) for n in (1, 2)]
    return Question((hog,), (Share(1, "Ann Ostby", (Holding(0, 1),)),), tuple(lines))


def test_a_conflict_is_told_in_sixteenths() -> None:
    half = inches("2 1/32 in")
    found = Conflict(
        (1, 2),
        "length",
        CENTRE,
        2 * half,
        inches("3 51/64 in"),
        inches("4 3/64 in"),
        ((1, half), (2, half)),
    )
    text = sentences.conflict(found, two_lines(), PORK, Words("en", strict=True))
    assert text.replace("\u00a0", " ") == (
        "Side 1, ham center: 3 ham steaks at ¾ in need 2 1/16 in; 3 ham steaks at ¾ in need 2 in; "
        "4 1/16 in together; 3¾ in expected, 4 in at the most."
    )


def test_a_tight_line_is_not_told_as_more_than_there_is_at_the_most() -> None:
    where, asked = CENTRE, Fraction(SIXTY_FOURTH * 306)  # 4 50/64 in
    found = Caution("tight", 1, where, asked, asked - SIXTY_FOURTH, asked)
    text = sentences.caution(found, two_lines(), PORK, Words("en", strict=True))
    assert text.replace("\u00a0", " ").endswith(
        "4 13/16 in needed, 4¾ in expected, 4 13/16 in at the most. "
        "If it comes out short, this gives way first."
    )
