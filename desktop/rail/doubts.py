"""What is asked before a weight is kept: off the scale's divisions, or hardly possible."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.dressing import dressing_question
from desktop.rail.seen import Place, SeenAnimal
from shared.scales.reading import on_division

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.scales import Scale
    from shared.units import Weight


def believed(
    bench: "Bench",
    seen: SeenAnimal,
    place: Place,
    weights: "tuple[Weight, Weight]",
    scale: "Scale | None",
) -> bool:
    """Whether a weight (gross, net) may be kept: each doubt is asked; nothing is refused."""
    gross, weight = weights
    for title, question in doubts(seen, place, gross, weight, scale):
        yes = QCoreApplication.translate("Doubts", "It is right")
        no = QCoreApplication.translate("Doubts", "Weigh again")
        if not bench.messages.ask(title, question, yes, no):
            return False
    return True


def doubts(
    seen: SeenAnimal, place: Place, gross: "Weight", weight: "Weight", scale: "Scale | None"
) -> list[tuple[str, str]]:
    """Each doubt as (title, question).

    98.3 lb on a scale of 0.5 lb divisions is one (NIST Handbook 44); so is a chilled side heavier
    than it was hot.
    """
    found: list[tuple[str, str]] = []
    if scale is not None and scale.division is not None and not on_division(gross, scale.division):
        text = QCoreApplication.translate(
            "Doubts",
            "{weight} can't stand on {scale}: it shows steps of {division}. Is the weight right?",
        ).format(weight=gross.text(), scale=scale.name, division=scale.division.text())
        found.append((QCoreApplication.translate("Doubts", "The scale's divisions"), text))
    dressed = seen.dressed({place: weight}) if place[0] != "chilled" else None
    if dressed is not None and dressed.finding == "question":
        title = QCoreApplication.translate("Doubts", "Dressing")
        found.append((title, dressing_question(dressed)))
    hot = seen.weighing(("hot", place[1], place[2])) if place[0] == "chilled" else None
    if hot is not None and weight > hot.weight:
        text = QCoreApplication.translate(
            "Doubts", "{chilled} chilled is more than {hot} hot. Is the weight right?"
        ).format(chilled=weight.text(), hot=hot.weight.text())
        found.append((QCoreApplication.translate("Doubts", "Heavier than hot"), text))
    return found
