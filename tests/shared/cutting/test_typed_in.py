"""Lines typed in one by one: what the planner kept of the answer before changes nothing."""

import random
from collections.abc import Iterator
from dataclasses import replace

import pytest

from shared.carcass import anatomy
from shared.cutting.answer import Conflict
from shared.cutting.order import Question
from shared.cutting.plan import Planner, plan
from shared.cutting.remedy import remedies
from shared.cutting.settled import Settled
from shared.cutting.settled_groups import SettledGroups
from tests.bench.crowded import question_of
from tests.bench.full_orders import FORMS, Form, full_order
from tests.oracle import random_orders
from tests.oracle.blocks import SPECIES, species_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot


def _last(question: Question, conflict: Conflict) -> Iterator[tuple[Question, Question]]:
    """The order without each line of a conflict in turn, and with it; all else stands."""
    for line in conflict.lines:
        before = [one for one in question.choices if one.line != line]
        yield replace(question, choices=tuple(before)), question


def _alone(question: Question, one: Conflict, conflicts: tuple[Conflict, ...]) -> Question:
    """The order with one of its conflicts only."""
    away = {max(other.lines) for other in conflicts if other is not one} - {*one.lines}
    return replace(question, choices=tuple(c for c in question.choices if c.line not in away))


def _agree(question: Question, name: str) -> int:
    known, tried = anatomy.catalogue(name), 0
    first = plan(question, known)
    for one in first.conflicts:
        for before, typed in _last(_alone(question, one, first.conflicts), one):
            planner = Planner(known)
            planner.answer(before)
            answer = planner.answer(typed)
            assert answer == plan(typed, known)
            assert remedies(typed, answer, known, planner) == remedies(typed, answer, known)
            assert planner.answer(before) == plan(before, known)
            tried += 1
    return tried


@pytest.mark.parametrize("name", SPECIES)
def test_lines_of_random_orders(name: str) -> None:
    orders = [
        random_orders.case(species_of(name), name, f"{name} typed {number}").order
        for number in range(12)
    ]
    assert sum(_agree(question_of(one), name) for one in orders)


@pytest.mark.parametrize("form", FORMS)
def test_lines_of_full_orders(form: Form) -> None:
    orders = [
        full_order(f"typed {number}", form)
        for number in range(12 if form != "quarters of every side" else 30)
    ]
    assert sum(_agree(question_of(one), "beef") for one in orders)


@pytest.mark.parametrize("form", FORMS)
def test_counts_changed_one_after_another(form: Form) -> None:
    known, draw = anatomy.catalogue("beef"), random.Random(f"counts {form}")
    question = question_of(full_order("counts", form))
    planner = Planner(known)
    counted = [place for place, one in enumerate(question.choices) if one.amount.count]
    for _ in range(12):
        place = draw.choice(counted)
        choices = list(question.choices)
        amount = choices[place].amount
        count = max(1, amount.count + draw.choice([-2, -1, 1, 2]))
        choices[place] = replace(choices[place], amount=replace(amount, count=count))
        question = replace(question, choices=tuple(choices))
        assert planner.answer(question) == plan(question, known)


def test_a_group_with_one_line_more_is_as_it_stood_without() -> None:
    ham, steaks = choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 2)
    planner = Planner(catalogue())
    planner.answer(lot(ham))
    (stood,) = _settled(planner)
    planner.answer(lot(ham, steaks))
    (fallen,) = _settled(planner)
    assert fallen.stood is stood
    assert [one.lines for one in fallen.conflicts] == [(1, 2)]
    planner.answer(lot(ham))
    assert _settled(planner) == [stood]


def _settled(planner: Planner) -> list[Settled]:
    groups = planner._groups
    assert isinstance(groups, SettledGroups)
    return list(groups._settled.values())
