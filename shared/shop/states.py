"""The states of an animal and an order, and who moves them; a step back needs a reason."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from shared.carcass.carcass import Regime
from shared.cutting.answer import Answer, Where
from shared.shop.problems import MoveRefused

AnimalState = Literal[
    "booked",
    "arrived",
    "weighed",
    "passed",
    "held",
    "condemned",
    "refused",
    "hanging",
    "on_block",
    "cut",
    "not_come",
]
OrderState = Literal["open", "settled", "released", "cut", "ready", "handed_over"]
PlaceName = Literal["counter", "rail", "block", "wrap", "office"]

ANIMAL_STATES: tuple[AnimalState, ...] = (
    "booked",
    "arrived",
    "weighed",
    "passed",
    "held",
    "condemned",
    "refused",
    "hanging",
    "on_block",
    "cut",
    "not_come",
)
ORDER_STATES: tuple[OrderState, ...] = (
    "open",
    "settled",
    "released",
    "cut",
    "ready",
    "handed_over",
)


@dataclass(frozen=True, slots=True)
class Move:
    """One allowed step, the place that makes it, and whether it goes back or asks a reason."""

    start: str
    end: str
    place: PlaceName
    back: bool = False
    needs_reason: bool = False


def _on(start: str, end: str, place: PlaceName, reason: bool = False) -> Move:
    return Move(start, end, place, needs_reason=reason)


def _back(start: str, end: str, place: PlaceName) -> Move:
    return Move(start, end, place, back=True, needs_reason=True)


# An inspected animal may be held or condemned before slaughter as well as after; a custom-exempt
# one has no inspector and is accepted ("passed") or refused at the pen. One that wasn't brought
# is "not_come", the reason as one likes; it may still come, and is then booked again.
ANIMAL_MOVES: tuple[Move, ...] = (
    _on("booked", "arrived", "rail"),
    _on("booked", "not_come", "rail"),
    _on("arrived", "weighed", "rail"),
    _on("arrived", "held", "rail", reason=True),
    _on("arrived", "condemned", "rail", reason=True),
    _on("arrived", "refused", "rail", reason=True),
    _on("weighed", "passed", "rail"),
    _on("weighed", "held", "rail", reason=True),
    _on("weighed", "condemned", "rail", reason=True),
    _on("held", "passed", "rail"),
    _on("held", "weighed", "rail"),
    _on("held", "condemned", "rail", reason=True),
    _on("passed", "hanging", "rail"),
    _on("passed", "held", "rail", reason=True),
    _on("hanging", "held", "rail", reason=True),
    _on("hanging", "on_block", "block"),
    _on("on_block", "cut", "block"),
    _back("not_come", "booked", "rail"),
    _back("arrived", "booked", "rail"),
    _back("weighed", "arrived", "rail"),
    _back("passed", "weighed", "rail"),
    _back("condemned", "held", "rail"),
    _back("refused", "arrived", "rail"),
    _back("hanging", "passed", "rail"),
    _back("on_block", "hanging", "block"),
    _back("cut", "on_block", "block"),
)
ORDER_MOVES: tuple[Move, ...] = (
    _on("open", "settled", "counter"),
    _on("settled", "released", "counter"),
    _on("released", "cut", "block"),
    _on("cut", "ready", "wrap"),
    _on("ready", "handed_over", "counter"),
    _back("settled", "open", "counter"),
    _back("released", "settled", "counter"),
    _back("cut", "released", "block"),
    _back("ready", "cut", "wrap"),
    _back("handed_over", "ready", "counter"),
)
NOT_HERE = frozenset({"booked", "not_come"})
"""States of an animal that is not in the house."""
INSPECTED_ONLY = frozenset({"held", "condemned"})
CUSTOM_ONLY = frozenset({"refused"})


def animal_moves(state: AnimalState, regime: Regime) -> tuple[Move, ...]:
    """Every step open to an animal in that state, forward ones first."""
    barred = CUSTOM_ONLY if regime == "inspected" else INSPECTED_ONLY
    return tuple(move for move in ANIMAL_MOVES if move.start == state and move.end not in barred)


def order_moves(state: OrderState) -> tuple[Move, ...]:
    """Every step open to an order in that state, forward ones first."""
    return tuple(move for move in ORDER_MOVES if move.start == state)


def animal_move(
    start: AnimalState, end: AnimalState, reason: str, regime: Regime = "custom"
) -> Move | MoveRefused:
    """The step from one state to another, or why it can't be made.

    `animal_move("cut", "on_block", "")` is refused: "reason_missing".
    """
    return _chosen(animal_moves(start, regime), start, end, reason)


def order_move(start: OrderState, end: OrderState, reason: str) -> Move | MoveRefused:
    """The step of an order from one state to another, or why it can't be made."""
    return _chosen(order_moves(start), start, end, reason)


def _chosen(moves: Sequence[Move], start: str, end: str, reason: str) -> Move | MoveRefused:
    for move in moves:
        if move.end == end:
            if move.needs_reason and not reason.strip():
                return MoveRefused("reason_missing", start, end)
            return move
    return MoveRefused("no_such_move", start, end)


@dataclass(frozen=True, slots=True)
class ReleaseRefusal:
    """Why a sheet isn't released: "open_part" (with its place), "asks" or "cant"."""

    code: Literal["open_part", "asks", "cant"]
    where: Where | None = None


def release_refusals(
    answer: Answer, share: int, ended: frozenset[int] = frozenset()
) -> tuple[ReleaseRefusal, ...]:
    """Why the order of that share can't be released to the block; empty when it can.

    Refused while one of its parts is open, or the verdict on the lot is "asks" or "cant". The
    `ended` lines, of owners who have no animal any more, hold up nobody.
    """
    verdict = answer.verdict
    if verdict == "cant" and ended and all(ended.issuperset(c.lines) for c in answer.conflicts):
        verdict = "asks" if answer.questions else "sure"
    found = [
        ReleaseRefusal("open_part", Where(part.carcass, part.side, part=part.part))
        for part in answer.open_parts
        if part.share == share
    ]
    if verdict == "asks" or verdict == "cant":
        found.append(ReleaseRefusal(verdict))
    return tuple(found)


def close_refusals(
    state: OrderState, billed: bool, due: int, *, nothing_cut: bool = False
) -> tuple[str, ...]:
    """Why an order can't be closed: goods still here, no bill, or money owed either way.

    `close_refusals("ready", True, 1250)` is `("not_handed_over", "balance")`; of `nothing_cut`
    there is nothing to hand over.
    """
    refusals: list[str] = []
    if state != "handed_over" and not nothing_cut:
        refusals.append("not_handed_over")
    if not billed:
        refusals.append("not_billed")
    if due != 0:
        refusals.append("balance")
    return tuple(refusals)
