"""The five places, in the order an animal walks through the shop, and how each is opened."""

from dataclasses import dataclass
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication

from desktop.places import Place

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from desktop.bench import Bench


@dataclass(frozen=True, slots=True)
class Entry:
    """A place on the bar: its key, word, function key, and where its class lies."""

    key: str
    word: str
    shortcut: str
    made_by: str

    def title(self) -> str:
        """The word on the bar, in the window's language."""
        return QCoreApplication.translate("Places", self.word)


ENTRIES: tuple[Entry, ...] = (
    Entry("counter", str(QT_TRANSLATE_NOOP("Places", "Counter")), "F2", "CounterPlace"),
    Entry("rail", str(QT_TRANSLATE_NOOP("Places", "Rail")), "F3", "RailPlace"),
    Entry("block", str(QT_TRANSLATE_NOOP("Places", "Block")), "F4", "BlockPlace"),
    Entry("wrap", str(QT_TRANSLATE_NOOP("Places", "Wrap")), "F5", "WrapPlace"),
    Entry("office", str(QT_TRANSLATE_NOOP("Places", "Office")), "F6", "OfficePlace"),
)


def make_place(entry: Entry, bench: "Bench", parent: "QWidget") -> Place:
    """Make a place, reading its code now and not before: `desktop.counter.place.CounterPlace`."""
    room = import_module(f"desktop.{entry.key}.place")
    place = getattr(room, entry.made_by)(bench, parent)
    if not isinstance(place, Place):
        raise TypeError(f"desktop.{entry.key}.place.{entry.made_by} is not a Place")
    return place
