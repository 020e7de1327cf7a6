"""The words for where a weight was taken: live, side 1, the forequarter of side 2."""

from PySide6.QtCore import QCoreApplication

from desktop.rail.seen import Place


def place_words(place: Place) -> str:
    """The name of a weight."""
    texts: dict[Place, str] = {
        ("live", 0, ""): QCoreApplication.translate("WeightPlaces", "Live"),
        ("hot", 0, ""): QCoreApplication.translate("WeightPlaces", "Hot, whole"),
        ("hot", 1, ""): QCoreApplication.translate("WeightPlaces", "Hot, side 1"),
        ("hot", 2, ""): QCoreApplication.translate("WeightPlaces", "Hot, side 2"),
        ("hot", 1, "fore"): QCoreApplication.translate("WeightPlaces", "Hot, side 1 fore"),
        ("hot", 1, "hind"): QCoreApplication.translate("WeightPlaces", "Hot, side 1 hind"),
        ("hot", 2, "fore"): QCoreApplication.translate("WeightPlaces", "Hot, side 2 fore"),
        ("hot", 2, "hind"): QCoreApplication.translate("WeightPlaces", "Hot, side 2 hind"),
    }
    if place in texts:
        return texts[place]
    chilled: dict[tuple[int, str], str] = {
        (0, ""): QCoreApplication.translate("WeightPlaces", "Chilled, whole"),
        (1, ""): QCoreApplication.translate("WeightPlaces", "Chilled, side 1"),
        (2, ""): QCoreApplication.translate("WeightPlaces", "Chilled, side 2"),
        (1, "fore"): QCoreApplication.translate("WeightPlaces", "Chilled, side 1 fore"),
        (1, "hind"): QCoreApplication.translate("WeightPlaces", "Chilled, side 1 hind"),
        (2, "fore"): QCoreApplication.translate("WeightPlaces", "Chilled, side 2 fore"),
        (2, "hind"): QCoreApplication.translate("WeightPlaces", "Chilled, side 2 hind"),
    }
    return chilled[place[1], place[2]]
