"""Which weights are shown and taken next at each stage: at the pen, the rail, the cooler."""

from typing import Literal

from PySide6.QtCore import QCoreApplication

from desktop.rail.seen import CHILLED_WAYS, LIVE, WAYS, Place

Stage = Literal["all", "pen", "rail", "cooler"]
STAGES: tuple[Stage, ...] = ("all", "pen", "rail", "cooler")
EVERY: tuple[Place, ...] = (
    LIVE,
    *(place for places in WAYS.values() for place in places),
    *(place for places in CHILLED_WAYS.values() for place in places),
)


def shown(stage: Stage, way: str) -> tuple[Place, ...]:
    """The weights that are to be seen."""
    return CHILLED_WAYS[way] if stage == "cooler" else (LIVE, *WAYS[way])


def due(stage: Stage, way: str) -> tuple[Place, ...]:
    """The weights to be taken one after another.

    At the rail a hog by sides has two: side 1, side 2; the live weight is passed over.
    """
    if stage == "pen":
        return (LIVE,)
    return WAYS[way] if stage == "rail" else shown(stage, way)


def stage_words(stage: Stage) -> str:
    """What is weighed."""
    return {
        "all": QCoreApplication.translate("WeightStages", "live, then hot"),
        "pen": QCoreApplication.translate("WeightStages", "live only"),
        "rail": QCoreApplication.translate("WeightStages", "hot only"),
        "cooler": QCoreApplication.translate("WeightStages", "chilled"),
    }[stage]


def way_words(way: str) -> str:
    """How a carcass is weighed."""
    return {
        "sides": QCoreApplication.translate("WeightStages", "sides"),
        "whole": QCoreApplication.translate("WeightStages", "whole carcass"),
        "quarters": QCoreApplication.translate("WeightStages", "quarters"),
    }[way]


def label_words(place: Place) -> str:
    """The label of a weight's field; its letter leads there with Alt."""
    kind, side, quarter = place
    if kind == "live":
        return QCoreApplication.translate("WeightStages", "&Live")
    if side == 0:
        return (
            QCoreApplication.translate("WeightStages", "H&ot, whole")
            if kind == "hot"
            else QCoreApplication.translate("WeightStages", "Chilled, wh&ole")
        )
    if quarter:
        text = (
            QCoreApplication.translate("WeightStages", "Side {side}, fore")
            if quarter == "fore"
            else QCoreApplication.translate("WeightStages", "Side {side}, hind")
        )
    elif kind == "hot":
        text = QCoreApplication.translate("WeightStages", "Hot, side &{side}")
    else:
        text = QCoreApplication.translate("WeightStages", "Chilled, side &{side}")
    return text.format(side=side)
