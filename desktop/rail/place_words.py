"""The words for where a weight was taken: live, side 1, the forequarter of side 2."""

from PySide6.QtCore import QCoreApplication

from desktop.rail.seen import Place


def place_words(place: Place) -> str:
    """The name of a weight."""
    texts: dict[Place, str] = {
        ("live", 0, ""): _tr("Live"),
        ("hot", 0, ""): _tr("Hot, whole"),
        ("hot", 1, ""): _tr("Hot, side 1"),
        ("hot", 2, ""): _tr("Hot, side 2"),
        ("hot", 1, "fore"): _tr("Hot, side 1 fore"),
        ("hot", 1, "hind"): _tr("Hot, side 1 hind"),
        ("hot", 2, "fore"): _tr("Hot, side 2 fore"),
        ("hot", 2, "hind"): _tr("Hot, side 2 hind"),
    }
    return texts.get(place) or _tr("Chilled")


def _tr(text: str) -> str:
    return QCoreApplication.translate("WeightPlaces", text)
