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
        return QCoreApplication.translate(
            "RefusalWords", "There is nothing of yours to take back here."
        )
    if isinstance(problem, StaleEdit):
        return QCoreApplication.translate(
            "RefusalWords", "{name} has just changed this order: look again."
        ).format(name=problem.by)
    if isinstance(problem, Refused) and problem.code == "closed_to_change":
        return QCoreApplication.translate(
            "RefusalWords", "The block has cut it: ask them to take the order back first."
        )
    return QCoreApplication.translate(
        "RefusalWords", "The order can't take that step from where it is."
    )
