"""Orders answered by hand in the trade's words: verdict, reason, place and a way out.

The files beside this one were written from the trade, not made from the species files: they try
the anatomy, which a solver that reads the same figures can't.
"""

import json
import tomllib
from pathlib import Path
from typing import Any

import pytest
from _pytest.mark.structures import ParameterSet

from shared.carcass import anatomy
from shared.carcass.catalogue import Catalogue
from shared.cutting.answer import Answer, Conflict, Edit, PlanLine, Where
from shared.cutting.order import Choice, Question
from shared.cutting.plan import plan
from shared.cutting.remedy import remedies
from shared.orderfile import OrderFile, read
from shared.units import read_length

Order = dict[str, Any]
FOLDER = Path(__file__).parent / "hand_written"
SIDE_1, SIDE_2 = {"carcass": 1, "side": 1}, {"carcass": 1, "side": 2}
HOLDS: dict[str, list[list[Order]]] = {
    "whole": [[SIDE_1, SIDE_2]],
    "half": [[SIDE_1]],
    "halves": [[SIDE_1], [SIDE_2]],
    "fore": [[{**SIDE_1, "quarter": "fore"}]],
    "hind": [[{**SIDE_1, "quarter": "hind"}]],
    "quarters": [[{**SIDE_1, "quarter": "fore"}], [{**SIDE_1, "quarter": "hind"}]],
    "split": [[{**SIDE_1, "fraction": "1/2"}], [{**SIDE_1, "fraction": "1/2"}]],
}


def hand_written() -> list[tuple[str, Order]]:
    found: list[tuple[str, Order]] = []
    for path in sorted(FOLDER.glob("*.toml")):
        read_file = tomllib.loads(path.read_text(encoding="utf-8"))
        for order in read_file["order"]:
            carcass = {**read_file["carcass"], **order.get("carcass", {})}
            found.append((read_file["species"], {**order, "carcass": carcass}))
    return found


ORDERS = hand_written()


def case(species: str, order: Order) -> ParameterSet:
    """One order as a test; `waits` says why it is known not to be answered so yet."""
    marks = [pytest.mark.xfail(reason=order["waits"], strict=True)] if "waits" in order else []
    return pytest.param(species, order, id=f"{species}: {order['name']}", marks=marks)


def question_of(species: str, order: Order) -> Question:
    holds = HOLDS[order["holds"]]
    file = {
        "steelyard_order": 1,
        "species": species,
        "settings": order.get("settings", {}),
        "carcasses": [order["carcass"]] * order.get("carcasses", 1),
        "shares": [
            {
                "number": number,
                "owner": f"Owner {number}",
                "holdings": [
                    {**one, "carcass": carcass}
                    for carcass in range(1, order.get("carcasses", 1) + 1)
                    for one in mine
                ],
            }
            for number, mine in enumerate(holds, start=1)
        ],
        "choices": [
            {"line": number, "share": 1, **line}
            for number, line in enumerate(order["lines"], start=1)
        ],
    }
    found = read(json.dumps(file))
    assert isinstance(found, OrderFile), found
    return found.question


def test_there_are_at_least_sixty_orders() -> None:
    assert len(ORDERS) >= 60
    assert len({order["name"] for _, order in ORDERS}) == len(ORDERS)
    assert all(order["because"] for _, order in ORDERS)


@pytest.mark.parametrize(("species", "order"), [case(*one) for one in ORDERS])
def test_an_order_is_answered_as_the_trade_answers_it(species: str, order: Order) -> None:
    catalogue = anatomy.catalogue(species)
    question = question_of(species, order)
    answer = plan(question, catalogue)
    assert answer.verdict == order["verdict"], (order["because"], answer.conflicts)
    assert [list(one.lines) for one in answer.conflicts] == order.get("conflicts", [])
    for conflict, primal in zip(answer.conflicts, order.get("at", []), strict=False):
        assert primal in primals_of(conflict, catalogue), conflict.where
    assert [list(one.lines) for one in answer.questions if len(one.lines) > 1] == order.get(
        "questions", []
    )
    assert set(order.get("cautions", [])) <= {one.code for one in answer.cautions}
    for made in order.get("made", []):
        check_made(made, answer)
    check_ways_out(order, question, answer, catalogue)


def primals_of(conflict: Conflict, catalogue: Catalogue) -> set[str]:
    """The primals of the place a conflict names."""
    where = conflict.where
    if where.part in catalogue.parts:
        return {catalogue.parts[where.part].primal}
    return {
        part.primal
        for part in catalogue.parts.values()
        if part.run == where.run
        and part.lane == where.lane
        and _within(part.stretch, where, catalogue)
    }


def _within(stretch: str, where: Where, catalogue: Catalogue) -> bool:
    run = catalogue.runs[where.run]
    return run.place(where.stretch) <= run.place(stretch) <= run.place(where.last or where.stretch)


def check_made(made: Order, answer: Answer) -> None:
    """What is said of the plan's lines of one order line."""
    lines: list[PlanLine] = [one for one in answer.lines if one.line == made["line"]]
    assert lines
    if "side" in made:
        assert {one.side for one in lines} == {made["side"]}
    if "way" in made:
        assert {one.way for one in lines} == {made["way"]}
    if "length" in made:
        length = sum(one.end - one.start for one in lines if one.end and one.start is not None)
        assert length == read_length(made["length"])


def check_ways_out(order: Order, question: Question, answer: Answer, catalogue: Catalogue) -> None:
    """Each conflict has remedies, and the one written by hand is among them."""
    offered = remedies(question, answer, catalogue)
    assert len(offered) == len(answer.conflicts)
    for number, wanted in enumerate(order.get("out", [])):
        edits = [one.edits[0] for one in offered[number] if len(one.edits) == 1]
        assert any(does(edit, wanted) for edit in edits), (wanted, offered[number])


def does(edit: Edit, wanted: Order) -> bool:
    """Whether an edit is the one wanted."""
    if edit.line != wanted["line"]:
        return False
    if edit.choice is None or wanted.get("leave_out"):
        return edit.choice is None and bool(wanted.get("leave_out"))
    return all(matches(edit.choice, key, value) for key, value in wanted.items() if key != "line")


def matches(choice: Choice, key: str, value: Any) -> bool:  # noqa: ANN401
    amount = choice.amount
    if key == "amount_kind":
        return amount.kind == value
    if key == "amount":
        if isinstance(value, str):
            return amount.kind == value
        return (amount.kind, amount.count) in value.items()
    if key == "thickness":
        return choice.thickness == read_length(value)
    if key == "lean":
        return choice.lean is not None and f"{choice.lean * 100} %" == value
    return getattr(choice, key) == value
