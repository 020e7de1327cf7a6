"""Ways out: concrete, planned, the least change first, never more than five."""

from dataclasses import replace

from shared.cutting.answer import Remedy
from shared.cutting.order import Amount, Question
from shared.cutting.plan import plan
from shared.cutting.remedy import remedies
from tests.shared.cutting.tiny_lot import catalogue, choice, inches, lot, pounds


def offered(question: Question) -> list[tuple[Remedy, ...]]:
    answer = plan(question, catalogue())
    found = list(remedies(question, answer, catalogue()))
    aside = [max(one.lines) for one in answer.conflicts]
    for place, ways_out in enumerate(found):
        assert len(ways_out) <= 5
        others = {line for other, line in enumerate(aside) if other != place}
        for one in ways_out:
            edits = {edit.line: edit.choice for edit in one.edits}
            choices = [edits.get(it.line, it) for it in question.choices if it.line not in others]
            changed = replace(question, choices=tuple(it for it in choices if it is not None))
            assert plan(changed, catalogue()).verdict == one.verdict != "cant"
    return found


def _kinds(ways_out: tuple[Remedy, ...]) -> list[str]:
    return [one.kind for one in ways_out]


def test_ham_and_steaks_of_one_side() -> None:
    question = lot(choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 5))
    (ways_out,) = offered(question)
    assert _kinds(ways_out)[0] == "neighbour"
    ends = ways_out[0].edits[0].choice
    assert ends is not None
    assert (ends.line, ends.cut) == (1, "ham_ends")
    assert "leave_out" in _kinds(ways_out)


def test_all_hams_whole_and_steaks_of_both_sides() -> None:
    (ways_out,) = offered(
        lot(choice(1, "whole_ham"), choice(2, "ham_steaks", "slices", 5), sides=2)
    )
    assert _kinds(ways_out)[:2] == ["rest", "other_side"]


def test_too_many_chops_become_the_most_that_fits() -> None:
    (ways_out,) = offered(lot(choice(1, "chops", "slices", 45)))
    first = ways_out[0]
    assert first.kind == "less"
    assert first.edits[0].choice is not None
    assert first.edits[0].choice.amount == Amount("slices", count=38)
    assert first.verdict == "tight"


def test_too_much_ground_becomes_what_is_there() -> None:
    ground = choice(1, "ground", amount=Amount("pounds", weight=pounds(18)))
    (ways_out,) = offered(lot(ground, choice(2, "whole_ham")))
    less = next(one for one in ways_out if one.kind == "less").edits[0].choice
    assert less is not None
    assert less.amount.weight == pounds(10)
    assert "rest" in _kinds(ways_out)
    given = next(one for one in ways_out if one.kind == "other_cut").edits[0]
    assert given.line == 2
    assert given.choice is not None
    assert given.choice.cut == "grind_ham"


def test_too_thin_becomes_as_thin_as_it_can_be() -> None:
    (ways_out,) = offered(lot(choice(1, "chops", "slices", 3, thickness=inches("1/4"))))
    assert ways_out[0].kind == "thicker"
    assert ways_out[0].edits[0].choice is not None
    assert ways_out[0].edits[0].choice.thickness == inches("3/8")


def test_each_conflict_has_its_own() -> None:
    question = lot(
        choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 5),
        choice(3, "chops", "slices", 45),
    )  # fmt: skip
    found = offered(question)
    assert len(found) == 2
    assert all(found)
