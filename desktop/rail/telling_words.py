"""What is said at the rail when a part or an animal is lost: whom to tell, and of what."""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.fallen import Fallen
from desktop.rail.seen import SeenAnimal

if TYPE_CHECKING:
    from desktop.bench import Bench


def gone_words(bench: "Bench", seen: SeenAnimal, touched: Sequence[Fallen]) -> str:
    """The owners of an animal that won't be cut, and each choice that falls with it."""
    text = QCoreApplication.translate("Telling", "Nothing of tag {tag} will be cut. Tell {owners}.")
    told = [text.format(tag=seen.animal.tag, owners=", ".join(seen.owners))]
    told += [fallen_words(bench, one, seen.animal.species) for one in touched]
    return "\n".join([*told, _counter()])


def lost_words(bench: "Bench", seen: SeenAnimal, touched: Sequence[Fallen]) -> str:
    """Whose choices a lost part touches, and that a released sheet is out of date."""
    told = [fallen_words(bench, one, seen.animal.species) for one in touched]
    with bench.store.read() as work:
        released = any(one.sheet for one in work.orders.of_lot(seen.animal.lot_id))
    told.append(_counter())
    if released:
        told.append(
            QCoreApplication.translate(
                "Telling", "The counter (F2) must release a new block sheet."
            )
        )
    return "\n".join(told)


def fallen_words(bench: "Bench", one: Fallen, species: str) -> str:
    """One choice that falls, or of which there is less."""
    text = (
        QCoreApplication.translate("Telling", "No longer stands for {owner}: {cut}.")
        if one.how == "falls"
        else QCoreApplication.translate("Telling", "Less than planned for {owner}: {cut}.")
    )
    return text.format(owner=one.owner, cut=bench.words.name(species, f"cut.{one.cut}"))


def _counter() -> str:
    return QCoreApplication.translate(
        "Telling", "They stand on the counter's list to ring, with what would work."
    )
