"""The words and patterns of an animal's state, and the verbs that move it on."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.look.patterns import Mark
from shared.shop.states import AnimalState, Move

if TYPE_CHECKING:
    from printing.words import Words
    from shared.carcass.carcass import Regime

IN_HAND: tuple[AnimalState, ...] = (
    "booked",
    "arrived",
    "weighed",
    "passed",
    "held",
    "hanging",
    "on_block",
)
"""States of an animal that is not yet cut, in their order."""

MARKS: dict[str, Mark] = {
    "booked": Mark.OPEN,
    "held": Mark.TIGHT,
    "condemned": Mark.CONTESTED,
    "refused": Mark.CONTESTED,
    "not_come": Mark.CONTESTED,
    "passed": Mark.SETTLED,
    "hanging": Mark.SETTLED,
}


def state_words(
    state: AnimalState, regime: "Regime", words: "Words", *, on_hold: bool = False
) -> str:
    """The word of a state; a custom animal is accepted or refused, not passed by an inspector.

    An animal on hold is said to be so: a deer that waits for its test hangs, but isn't cut.
    """
    if on_hold:
        return QCoreApplication.translate("AnimalStates", "on hold")
    if state == "held":
        return QCoreApplication.translate("AnimalStates", "retained")
    if state == "passed" and regime == "custom":
        return QCoreApplication.translate("AnimalStates", "accepted")
    return words.name("", f"state.{state}")


def state_mark(state: AnimalState, *, on_hold: bool = False) -> Mark:
    """The pattern of a state."""
    return Mark.CONTESTED if on_hold else MARKS.get(state, Mark.PLAIN)


def move_words(move: Move, regime: "Regime") -> str:
    """The verb on a move's button."""
    if move.start == "not_come":
        return QCoreApplication.translate("AnimalStates", "It came after all, or will")
    if move.back:
        return QCoreApplication.translate("AnimalStates", "Take a step back")
    if move.end == "passed":
        return (
            QCoreApplication.translate("AnimalStates", "&Accepted")
            if regime == "custom"
            else QCoreApplication.translate("AnimalStates", "Inspector &passed")
        )
    texts = {
        "held": QCoreApplication.translate("AnimalStates", "Re&tained"),
        "condemned": QCoreApplication.translate("AnimalStates", "Con&demned"),
        "refused": QCoreApplication.translate("AnimalStates", "&Refuse it"),
        "hanging": QCoreApplication.translate("AnimalStates", "&Hang it"),
        "weighed": QCoreApplication.translate("AnimalStates", "Release it"),
        "not_come": QCoreApplication.translate("AnimalStates", "Didn't come (Ctrl+M)"),
    }
    return texts[move.end]


def reason_words(move: Move) -> str:
    """What is asked before a move that needs a reason."""
    if move.start == "not_come":
        return QCoreApplication.translate("AnimalStates", "Why is it booked again?")
    if move.back:
        return QCoreApplication.translate("AnimalStates", "Why does it go back?")
    texts = {
        "held": QCoreApplication.translate("AnimalStates", "Why did the inspector retain it?"),
        "condemned": QCoreApplication.translate(
            "AnimalStates", "Why did the inspector condemn it?"
        ),
        "refused": QCoreApplication.translate("AnimalStates", "Why is it refused?"),
    }
    return texts[move.end]
