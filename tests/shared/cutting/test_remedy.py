"""Ways out: concrete, planned, the least change first, never more than five."""

from dataclasses import replace
from fractions import Fraction

from shared.carcass import anatomy
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Remedy
from shared.cutting.asked_weight import asked_ng
from shared.cutting.demand import demand
from shared.cutting.order import Amount, Question
from shared.cutting.plan import compiled, plan, shop_of
from shared.cutting.remedy import remedies
from tests.bench.crowded import question_of
from tests.oracle import random_orders
from tests.oracle.blocks import species_of
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


ANOTHER_CUT = ("neighbour", "other_cut")


def _keeps(question: Question, one: Remedy, known: Catalogue) -> Fraction:
    """What part of the pounds asked a counted way out keeps, 1 where it isn't counted."""
    (edit, *_) = one.edits
    if edit.choice is None or edit.choice.amount.kind not in ("pieces", "slices"):
        return Fraction(1)
    shop = shop_of(question, compiled(known))
    before = next(it for it in question.choices if it.line == edit.line)
    asked = [asked_ng(demand(it, shop), shop.ways) for it in (edit.choice, before)]
    return Fraction(asked[0], asked[1]) if asked[1] else Fraction(1)


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


def test_a_cut_that_leaves_next_to_nothing_is_no_way_out() -> None:
    """An arm steak for a whole picnic, one slice for a belly: only where nothing else is found."""
    pork = anatomy.catalogue("pork")
    found = 0
    for number in range(40):
        lot_ = question_of(random_orders.case(species_of("pork"), "pork", f"little {number}").order)
        answer = plan(lot_, pork)
        for ways_out in remedies(lot_, answer, pork):
            kept = [_keeps(lot_, one, pork) for one in ways_out if one.kind in ANOTHER_CUT]
            found += len(kept)
            others = [one for one in ways_out if one.kind not in (*ANOTHER_CUT, "leave_out")]
            if others or any(part >= Fraction(1, 4) for part in kept):
                assert all(part >= Fraction(1, 4) for part in kept), ways_out
    assert found > 5


def test_what_is_left_of_a_leg_is_not_offered_as_a_whole_ham() -> None:
    half: dict[str, object] = {
        "steelyard_order": 1,
        "species": "pork",
        "catalogue_version": 1,
        "carcasses": [{"skin": "scalded", "hot": [{"whole": "95 lb"}, {"whole": "95 lb"}]}],
        "shares": [{"number": 1, "owner": "A", "holdings": [{"carcass": 1, "side": 1}]}],
        "choices": [
            {"line": 1, "share": 1, "cut": "whole_picnic", "amount": "all"},
            {"line": 2, "share": 1, "cut": "whole_ham", "amount": "all"},
            {"line": 3, "share": 1, "cut": "hock", "amount": {"pieces": 1}},
        ],
    }
    question, pork = question_of(half), anatomy.catalogue("pork")
    (ways_out,) = remedies(question, plan(question, pork), pork)
    assert "rest" not in _kinds(ways_out)
    first = ways_out[0].edits[0].choice
    assert first is not None
    assert (first.line, first.cut) == (2, "short_shank_ham")


def test_a_cut_that_cannot_be_made_any_more_is_carried_over_in_its_pounds() -> None:
    """4 saddle chops of both sides are about 8 loin chops once the lamb is split, not 1."""
    lamb = anatomy.catalogue("lamb")
    split: dict[str, object] = {
        "steelyard_order": 1,
        "species": "lamb",
        "catalogue_version": 1,
        "carcasses": [{"split": True, "hot": [{"whole": "32 lb"}, {"whole": "32 lb"}]}],
        "shares": [
            {
                "number": 1,
                "owner": "A",
                "holdings": [{"carcass": 1, "side": 1}, {"carcass": 1, "side": 2}],
            }
        ],
        "choices": [{"line": 1, "share": 1, "cut": "saddle_chop", "amount": {"slices": 4}}],
    }
    question = question_of(split)
    (ways_out,) = remedies(question, plan(question, lamb), lamb)
    chops = [edit.choice for one in ways_out for edit in one.edits if edit.choice]
    assert [it.amount.count for it in chops if it.cut == "loin_chop"] == [8]


def test_t_bones_of_a_beef_over_age_become_strips_of_the_same_pounds() -> None:
    """9 CFR 310.22 takes the loin's backbone; the meat stays the owner's."""
    beef = anatomy.catalogue("beef")
    order: dict[str, object] = {
        "steelyard_order": 1,
        "species": "beef",
        "catalogue_version": 1,
        "carcasses": [{"age": "30_and_over", "hot": [{"whole": "360 lb"}, {"whole": "360 lb"}]}],
        "shares": [{"number": 1, "owner": "A", "holdings": [{"carcass": 1, "side": 1}]}],
        "choices": [
            {
                "line": 1,
                "share": 1,
                "cut": "t_bone_steak",
                "amount": {"slices": 6},
                "thickness": "1 in",
            }
        ],
    }
    question = question_of(order)
    (ways_out,) = remedies(question, plan(question, beef), beef)
    strips = ways_out[0].edits[0].choice
    assert strips is not None
    assert (strips.cut, strips.amount.count) == ("strip_steak", 9)
    assert ways_out[0].moved_ng < pounds(1).nanograms
