"""Every choice comes back from its text as it was."""

from dataclasses import fields
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from db.choice_text import choice_from, choice_text
from shared.cutting.order import Added, Amount, Choice, Package
from shared.units import Weight

WEIGHTS = st.builds(
    Weight, st.integers(1, 99_999), st.sampled_from(("lb", "oz", "kg", "g")), st.integers(-4, 0)
)
FRACTIONS = st.fractions(Fraction(1, 100), 1)
AMOUNTS = st.builds(
    Amount,
    st.sampled_from(("all", "rest", "pieces", "slices", "pounds", "fraction", "up_to", "at_least")),
    st.integers(0, 60),
    st.none() | WEIGHTS,
    st.none() | FRACTIONS,
    st.sampled_from(("side", "animal")),
)
CHOICES = st.builds(
    Choice,
    line=st.integers(1, 99),
    share=st.integers(1, 8),
    cut=st.sampled_from(("whole_ham", "ground")),
    amount=AMOUNTS,
    way=st.sampled_from(("", "from_the_rib")),
    thickness=st.none() | st.integers(1, 999_999),
    piece_weight=st.none() | WEIGHTS,
    ribs=st.none() | st.integers(1, 13),
    lean=st.none() | FRACTIONS,
    package=st.builds(Package, st.none() | st.integers(1, 12), st.none() | WEIGHTS),
    finishes=st.lists(st.sampled_from(("smoked", "sliced")), max_size=2).map(tuple),
    note=st.text(max_size=20),
    seasoning=st.sampled_from(("", "sage", "hot_italian")),
    added=st.none()
    | st.builds(
        Added, st.sampled_from(("pork_fat", "pork_trim", "beef_fat")), st.none() | FRACTIONS
    ),
    pinned=st.lists(
        st.tuples(st.integers(0, 3), st.integers(1, 2), st.integers(0, 20)), max_size=3
    ).map(tuple),
    made=st.booleans(),
)


@given(CHOICES)
def test_a_choice_comes_back_whole(choice: Choice) -> None:
    assert choice_from(choice_text(choice)) == choice


@given(CHOICES)
def test_its_text_is_always_the_same(choice: Choice) -> None:
    assert choice_text(choice_from(choice_text(choice))) == choice_text(choice)


def test_the_text_of_a_plain_line() -> None:
    choice = Choice(3, 1, "whole_ham", Amount("pieces", 1), finishes=("smoked",))
    assert choice_text(choice) == (
        '{"amount":{"count":1,"kind":"pieces"},"cut":"whole_ham",'
        '"finishes":["smoked"],"line":3,"share":1}'
    )


def test_no_field_of_a_choice_is_forgotten() -> None:
    """A new field must be added to the text, and to the choices made above."""
    assert {field.name for field in fields(Choice)} == {
        "line", "share", "cut", "amount", "way", "thickness", "piece_weight", "ribs", "lean",
        "package", "finishes", "note", "pinned", "made", "seasoning", "added",
    }  # fmt: skip
    assert {field.name for field in fields(Amount)} == {
        "kind",
        "count",
        "weight",
        "fraction",
        "of",
    }
