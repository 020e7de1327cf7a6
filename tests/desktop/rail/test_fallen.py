"""Which choices fall with a part or with the whole animal: every owner and line is named."""

from dataclasses import replace

from desktop.rail.fallen import SLIGHT_NG, fallen
from shared.carcass.carcass import Gone, Holding
from shared.cutting.order import Amount, Question
from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import catalogue, choice, pounds, shared

SIDES = ((Holding(0, 1),), (Holding(0, 2),))
FIVE = Amount("pounds", weight=pounds(5))


def question() -> Question:
    return shared(
        choice(1, "brisket"),
        choice(2, "chops", "slices", 10, share=2),
        choice(3, "ground", "rest"),
        choice(4, "stew", amount=FIVE, share=2),
        holdings=SIDES,
    )


def told(before: Question, after: Question, *parts: str) -> list[tuple[str, int, str]]:
    animal = catalogue()
    found = fallen(after, plan(before, animal), plan(after, animal), parts)
    return [(one.owner, one.line, one.how) for one in found]


def test_a_condemned_animal_names_every_owner_and_line() -> None:
    before = question()
    after = replace(before, carcasses=(replace(before.carcasses[0], condemned=True),))
    assert told(before, after) == [
        ("Owner 1", 1, "falls"),
        ("Owner 2", 2, "falls"),
        ("Owner 2", 4, "falls"),
        ("Owner 1", 3, "less"),
    ]


def test_a_part_names_only_the_lines_that_took_it() -> None:
    before = question()
    gone = (Gone("brisket", 1, None, "abscess"),)
    after = replace(before, carcasses=(replace(before.carcasses[0], gone=gone),))
    assert told(before, after, "brisket") == [("Owner 1", 1, "falls")]


def test_nobody_is_rung_for_less_than_a_tenth_of_a_pound_that_kerfs_moved() -> None:
    animal = catalogue()
    asked = question()
    old = plan(asked, animal)

    def lighter(by: int) -> list[str]:
        lines = tuple(
            one._replace(weight_ng=one.weight_ng - by) if one.line == 1 else one
            for one in old.lines
        )
        return [one.how for one in fallen(asked, old, replace(old, lines=lines))]

    assert lighter(3_000_000) == []
    assert lighter(SLIGHT_NG) == ["less"]
    fewer = tuple(one._replace(count=one.count - 1) if one.line == 2 else one for one in old.lines)
    assert [one.line for one in fallen(asked, old, replace(old, lines=fewer))] == [2]
