"""What a planner remembers changes no answer: random orders edited step by step, and from scratch.

Lines are let go, put back and asked in other numbers, as at a counter; sometimes only the verdict
is asked, or the ways out, which leave traces of their own in the planner's memory.
"""

import random
from dataclasses import replace

from shared.carcass import anatomy
from shared.cutting.order import Question
from shared.cutting.plan import Planner, plan
from shared.cutting.remedy import remedies
from tests.bench.crowded import question_of
from tests.bench.full_orders import FORMS, full_order
from tests.oracle import random_orders
from tests.oracle.blocks import SPECIES, species_of

STEPS = 6


def first(draw: random.Random, number: int) -> tuple[str, Question]:
    """A beef of four owners, or a lot of any species."""
    if number % 3 == 0:
        return "beef", question_of(full_order(f"edited {number}", draw.choice(FORMS)))
    name = draw.choice(SPECIES)
    return name, question_of(
        random_orders.case(species_of(name), name, f"{name} edited {number}").order
    )


def edited(draw: random.Random, now: Question, whole: Question) -> Question:
    """One line let go, put back, or asked in another number."""
    choices = list(now.choices)
    gone = [one for one in whole.choices if one.line not in {it.line for it in choices}]
    kind = draw.choice(["less", "back", "number"])
    if kind == "back" and gone:
        choices.append(draw.choice(gone))
    elif kind == "less" and len(choices) > 1:
        choices.pop(draw.randrange(len(choices)))
    elif choices:
        place = draw.randrange(len(choices))
        one = choices[place]
        if one.amount.count:
            more = max(1, one.amount.count + draw.choice([-1, 1, 2]))
            one = replace(one, amount=replace(one.amount, count=more))
        choices[place] = replace(one, note=one.note + "!")
    return replace(now, choices=tuple(sorted(choices, key=lambda one: one.line)))


def test_edited_orders_are_answered_as_from_scratch() -> None:
    draw, conflicts = random.Random(26), 0
    for number in range(60):
        name, whole = first(draw, number)
        catalogue = anatomy.catalogue(name)
        planner, now = Planner(catalogue), whole
        for _ in range(STEPS):
            if draw.random() < 0.3:
                planner.verdict(now)
            answer = planner.answer(now)
            assert answer == plan(now, catalogue), (number, name)
            if answer.conflicts and draw.random() < 0.3:
                conflicts += 1
                ways = remedies(now, answer, catalogue, planner)
                assert ways == remedies(now, answer, catalogue), (number, name)
            now = edited(draw, now, whole)
    assert conflicts > 10
