"""The words and patterns of an animal's state, and the verbs that move it on."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.look.patterns import Mark
from shared.shop.states import AnimalState, Move

if TYPE_CHECKING:
    from printing.words import Words
    from shared.carcass.carcass import Regime

MARKS: dict[str, Mark] = {
    "booked": Mark.OPEN,
    "held": Mark.TIGHT,
    "condemned": Mark.CONTESTED,
    "refused": Mark.CONTESTED,
    "passed": Mark.SETTLED,
    "hanging": Mark.SETTLED,
}


def state_words(state: AnimalState, regime: "Regime", words: "Words") -> str:
    """The word of a state; a custom animal is accepted or refused, not passed by an inspector."""
    if state == "refused":
        return _tr("refused")
    if state == "passed" and regime == "custom":
        return _tr("accepted")
    return words.name("", f"state.{state}")


def state_mark(state: AnimalState) -> Mark:
    """The pattern of a state."""
    return MARKS.get(state, Mark.PLAIN)


def move_words(move: Move, regime: "Regime") -> str:
    """The verb on a move's button."""
    if move.back:
        return _tr("Take a step back")
    if move.end == "passed":
        return _tr("&Accepted") if regime == "custom" else _tr("Inspector &passed")
    texts = {
        "held": _tr("H&eld"),
        "condemned": _tr("Con&demned"),
        "refused": _tr("&Refuse it"),
        "hanging": _tr("&Hang it"),
        "weighed": _tr("Release from hold"),
    }
    return texts[move.end]


def reason_words(move: Move) -> str:
    """What is asked before a move that needs a reason."""
    if move.back:
        return _tr("Why does it go back?")
    texts = {
        "held": _tr("Why did the inspector hold it?"),
        "condemned": _tr("Why did the inspector condemn it?"),
        "refused": _tr("Why is it refused?"),
    }
    return texts[move.end]


def _tr(text: str) -> str:
    return QCoreApplication.translate("AnimalStates", text)
