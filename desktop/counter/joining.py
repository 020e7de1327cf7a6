"""Joining two entries of one person, and taking two apart, from the list of orders."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.apart_dialog import ApartDialog
from desktop.counter.join_dialog import JoinDialog

if TYPE_CHECKING:
    from desktop.counter.place import CounterPlace


def join(place: "CounterPlace") -> JoinDialog:
    """Ask who is a duplicate of whom."""
    dialog = JoinDialog(place.bench, place)

    def joined() -> None:
        said = QCoreApplication.translate(
            "Joining", "Joined: both are {name} now. Ctrl+Shift+J takes them apart."
        )
        place.said.emit(said.format(name=dialog.stays.text()))
        place.refresh()

    dialog.accepted.connect(joined)
    dialog.open()
    return dialog


def take_apart(place: "CounterPlace") -> ApartDialog | None:
    """Ask who that was joined is somebody else; None, and said, where nobody is joined."""
    translate = QCoreApplication.translate
    with place.bench.store.read() as work:
        entries = work.customers.joined()
    if not entries:
        place.said.emit(translate("Joining", "Nobody is joined into another entry."))
        return None
    dialog = ApartDialog(place.bench, entries, place)

    def taken_apart() -> None:
        said = translate("Joining", "Taken apart: {name} stands alone again.")
        place.said.emit(said.format(name=dialog.name()))
        place.refresh()

    dialog.accepted.connect(taken_apart)
    dialog.open()
    return dialog
