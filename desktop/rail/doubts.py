"""What is asked before a weight is kept: off the scale's divisions, or hardly possible."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.dressing import dressing_question
from desktop.rail.seen import Place, SeenAnimal
from shared.scales.reading import on_division
from shared.units import weight_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.scales import Scale
    from shared.units import Weight

AT_THE_SCALE = ("arrived", "weighed", "passed", "held")


def believed(
    bench: "Bench",
    seen: SeenAnimal,
    place: Place,
    weights: "tuple[Weight, Weight]",
    scale: "Scale | None",
    *,
    typed: bool = True,
) -> bool:
    """Whether a weight (gross, net) may be kept: each doubt is asked; nothing is refused."""
    gross, weight = weights
    found = doubts(seen, place, gross, weight, scale)
    if typed and is_a_tag(bench, gross):
        found.insert(0, tag_question(gross))
    for title, question in found:
        yes = QCoreApplication.translate("Doubts", "It is right")
        no = QCoreApplication.translate("Doubts", "Weigh again")
        if not bench.messages.ask(title, question, yes, no):
            return False
    return True


def is_a_tag(bench: "Bench", weight: "Weight") -> bool:
    """Whether what was typed is, digit by digit, the tag of an animal that is weighed today.

    A scanner types into the field that has the keyboard: tag 301, scanned while a weight is
    asked for, would stand as 301 lb.
    """
    if weight.exponent:
        return False
    with bench.store.read() as work:
        found = work.animals.by_tag(str(weight.count))
    return any(one.state in AT_THE_SCALE for one in found)


def tag_question(weight: "Weight") -> tuple[str, str]:
    """The doubt as (title, question)."""
    text = QCoreApplication.translate(
        "Doubts", "{number} is also the tag of an animal here. Is it a weight?"
    )
    title = QCoreApplication.translate("Doubts", "A tag in place of a weight")
    return title, text.format(number=weight.count)


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
        ).format(weight=weight_text(gross), scale=scale.name, division=weight_text(scale.division))
        found.append((QCoreApplication.translate("Doubts", "The scale's divisions"), text))
    dressed = seen.dressed({place: weight}) if place[0] != "chilled" else None
    if dressed is not None and dressed.finding == "question":
        title = QCoreApplication.translate("Doubts", "Dressing")
        found.append((title, dressing_question(dressed)))
    hot = seen.weighing(("hot", place[1], place[2])) if place[0] == "chilled" else None
    if hot is not None and weight > hot.weight:
        text = QCoreApplication.translate(
            "Doubts", "{chilled} chilled is more than {hot} hot. Is the weight right?"
        ).format(chilled=weight_text(weight), hot=weight_text(hot.weight))
        found.append((QCoreApplication.translate("Doubts", "Heavier than hot"), text))
    return found
