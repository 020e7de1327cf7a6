"""A verdict foreseen is the verdict planned; where it can't be foreseen nothing is said."""

import random
from dataclasses import replace

import pytest

from shared.carcass import anatomy
from shared.cutting.answer import Verdict
from shared.cutting.demand import demand
from shared.cutting.footprint import Footprints
from shared.cutting.foreseen import Foreseen
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import Planner, compiled, plan, shop_of
from tests.bench.crowded import question_of
from tests.bench.full_orders import FORMS, Form, full_order
from tests.oracle import random_orders
from tests.oracle.blocks import SPECIES, species_of
from tests.shared.cutting.tiny_lot import catalogue, choice, inches, lot, pounds


def _foreseen(question: Question, changed: Question, name: str = "") -> Verdict | None:
    known = anatomy.catalogue(name) if name else catalogue()
    planner = Planner(known)
    answer, shop = planner.answer(question), planner.shop_of(question)
    demands = planner.demands_of(question, shop)
    sets = planner.groups_of(question, shop)
    foreseen = Foreseen(question, answer, demands, shop, planner.gave, sets)
    before = {one.line: one for one in question.choices}
    newest = {max(one.lines) for one in answer.conflicts}
    after = {one.line: one for one in changed.choices}
    others = {line for line in {*before, *after} if before.get(line) != after.get(line)}
    compiled_anew = {line: demand(one, shop) for line, one in after.items()}
    return foreseen.verdict(compiled_anew, frozenset(others | newest))


def _with(question: Question, *choices: Choice) -> Question:
    gone = {one.line for one in choices}
    return replace(
        question, choices=(*[c for c in question.choices if c.line not in gone], *choices)
    )


def test_untouched_groups_stay_as_they_were() -> None:
    question = lot(choice(1, "chops", "slices", 38), choice(2, "ham_steaks", "slices", 2))
    assert dict(plan(question, catalogue()).group_verdicts) == {1: "tight", 2: "sure"}
    assert _foreseen(question, _with(question, choice(2, "ham_steaks", "slices", 4))) == "tight"
    assert _foreseen(question, _with(question, choice(1, "chops", "slices", 10))) == "sure"


def test_nothing_is_foreseen_where_a_kerf_is_longer_than_a_stretch() -> None:
    question = lot(choice(1, "chops", "slices", 10), choice(2, "ham_steaks", "slices", 2))
    other = choice(2, "ham_steaks", "slices", 4)
    assert _foreseen(question, _with(question, other)) == "sure"
    thick = replace(question, settings=replace(question.settings, kerf_saw=inches("7")))
    assert _foreseen(thick, _with(thick, other)) is None


def test_what_cannot_stand_is_foreseen() -> None:
    question = lot(choice(1, "chops", "slices", 10))
    assert _foreseen(question, _with(question, choice(1, "chops", "slices", 50))) == "cant"


def test_pools_are_foreseen_only_while_what_stays_fills_them() -> None:
    ground = choice(9, "ground", amount=Amount("pounds", weight=pounds(2)))
    question = lot(choice(1, "whole_ham"), choice(2, "chops", "slices", 4), ground)
    fewer = _with(question, choice(2, "chops", "slices", 3))
    assert _foreseen(question, fewer) == plan(fewer, catalogue()).verdict == "sure"
    much = choice(9, "ground", amount=Amount("pounds", weight=pounds(18)))
    assert plan(_with(question, much), catalogue()).verdict == "cant"
    assert _foreseen(_with(question, much), _with(fewer, much)) is None
    assert _foreseen(question, _with(question, much)) is None


def test_footprints_of_neighbours_meet_in_the_last_kerf() -> None:
    beef = anatomy.catalogue("beef")
    order = full_order("print", "quarters")
    order["choices"] = [
        {"line": 1, "share": 1, "cut": "chuck_roll", "amount": "all"},
        {"line": 2, "share": 1, "cut": "rib_steak", "amount": {"slices": 2}},
        {"line": 3, "share": 2, "cut": "strip_steak", "amount": {"slices": 2}},
        {"line": 4, "share": 3, "cut": "rib_steak", "amount": {"slices": 2}},
    ]
    question = question_of(order)
    shop, prints = shop_of(question, compiled(beef)), Footprints(compiled(beef))
    chuck, rib, loin, other = (prints.of(demand(one, shop).options[0]) for one in question.choices)
    assert chuck & rib
    assert not chuck & loin
    assert not rib & other


@pytest.mark.parametrize("name", SPECIES)
def test_random_changes_of_random_orders(name: str) -> None:
    known = 0
    for number in range(30):
        seed = f"{name} foreseen {number}"
        order = random_orders.case(species_of(name), name, seed).order
        known += _agree(question_of(order), name, random.Random(seed), 3)
    assert known > 20


@pytest.mark.parametrize("form", FORMS)
def test_random_changes_of_full_orders(form: Form) -> None:
    draw = random.Random(f"foreseen {form}")
    known = sum(
        _agree(question_of(full_order(f"foreseen {number}", form)), "beef", draw, 8)
        for number in range(3)
    )
    assert known > 9


def _agree(question: Question, name: str, draw: random.Random, tries: int) -> int:
    """How many of some random changes of one line were foreseen, each as it is planned."""
    beside = {max(one.lines) for one in plan(question, anatomy.catalogue(name)).conflicts}
    known = 0
    for _ in range(tries if question.choices else 0):
        one = draw.choice(question.choices)
        kept = [it for it in question.choices if it.line not in {*beside, one.line}]
        if draw.random() < 0.8:
            kept.append(_changed(one, draw))
        changed = replace(question, choices=tuple(sorted(kept, key=lambda it: it.line)))
        found = _foreseen(question, changed, name)
        assert found in (None, plan(changed, anatomy.catalogue(name)).verdict)
        known += found is not None
    return known


def _changed(one: Choice, draw: random.Random) -> Choice:
    if one.amount.count:
        count = max(1, one.amount.count + draw.choice([-2, -1, 1, 2]))
        return replace(one, amount=replace(one.amount, count=count), pinned=())
    if one.amount.kind == "rest":
        return replace(one, amount=Amount("all"))
    return replace(one, amount=Amount("rest")) if one.amount.kind == "all" else one
