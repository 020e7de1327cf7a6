"""An animal condemned whole: nothing of it is planned, and every owner's lines say so."""

from dataclasses import replace

from shared.carcass.carcass import Carcass, Holding, Share
from shared.cutting.answer import Answer
from shared.cutting.order import Amount, Question
from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import carcass, catalogue, choice, pounds

GOOD = carcass()
BAD = replace(GOOD, condemned=True)


def answer(*carcasses: Carcass) -> Answer:
    """Two owners, of a side each of the first animal; the second animal is owner 1's."""
    first = [
        Holding(0, 1),
        *(Holding(n, side) for n in range(1, len(carcasses)) for side in (1, 2)),
    ]
    shares = (Share(1, "Anna", tuple(first)), Share(2, "Bert", (Holding(0, 2),)))
    ground = Amount("pounds", weight=pounds(5))
    choices = (
        choice(1, "brisket"),
        choice(2, "chops", "slices", 10, share=2),
        choice(3, "tongue", "pieces", 1, share=2),
        choice(4, "ground", amount=ground, share=2),
    )
    return plan(Question(carcasses, shares, choices), catalogue())


def test_every_line_of_every_owner_falls() -> None:
    assert answer(GOOD).conflicts == ()
    found = answer(BAD)
    assert found.verdict == "cant"
    assert [(one.lines, one.kind) for one in found.conflicts] == [
        ((1,), "gone"),
        ((2,), "gone"),
        ((3,), "gone"),
        ((4,), "trim"),
    ]
    assert found.lines == found.open_parts == found.draws == ()
    assert all(one.lean_ng == one.fat_ng == one.bones_ng == 0 for one in found.trim)


def test_another_animal_of_the_owner_still_gives_his() -> None:
    found = answer(BAD, GOOD)
    standing = {(one.line, one.carcass) for one in found.lines}
    assert standing == {(1, 1)}
    assert {one.lines for one in found.conflicts} == {(2,), (3,), (4,)}
    assert ("lost_part", 1) in {(one.code, one.line) for one in found.cautions}
