"""Why the records didn't take a change, in a sentence."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from shared.shop.problems import Refused, StaleEdit, UndoRefused

if TYPE_CHECKING:
    from desktop.counter.order_desk import Problem


def problem_words(problem: "Problem") -> str:
    """The sentence for a refusal, with what would work."""
    if isinstance(problem, UndoRefused):
        if problem.code == "changed_by_another":
            return QCoreApplication.translate(
                "RefusalWords", "{name} has changed that line since."
            ).format(name=problem.by)
        if problem.code == "released":
            return QCoreApplication.translate(
                "RefusalWords", "The order is at the block: change the line instead."
            )
        if problem.code == "led":
            return _led()
        return QCoreApplication.translate(
            "RefusalWords", "There is nothing of yours to take back here."
        )
    if isinstance(problem, StaleEdit):
        return QCoreApplication.translate(
            "RefusalWords", "{name} has just changed this order: look again."
        ).format(name=problem.by)
    said = _refused(problem.code) if isinstance(problem, Refused) else ""
    if said:
        return said
    return QCoreApplication.translate(
        "RefusalWords", "The order can't take that step from where it is."
    )


def _refused(code: str) -> str:
    if code == "led":
        return _led()
    translate = QCoreApplication.translate
    words = {
        "closed_to_change": translate(
            "RefusalWords", "The block has cut it: ask them to take the order back first."
        ),
        "not_together": translate(
            "RefusalWords", "Only owners who divide the same side or quarter are cut as one says."
        ),
        "leader_led": translate(
            "RefusalWords", "That owner's order is cut as another says itself: choose that one."
        ),
        "leads_others": translate(
            "RefusalWords", "Others are cut as this order says: take that back on their orders."
        ),
        "cut_already": translate(
            "RefusalWords", "Something of these orders is cut or wrapped: it is too late for that."
        ),
    }
    return words.get(code, "")


def _led() -> str:
    return QCoreApplication.translate(
        "RefusalWords", "It is cut as another owner says: ask on that order, or Ctrl+G here."
    )
