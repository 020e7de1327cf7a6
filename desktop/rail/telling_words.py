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
    told += fallen_words(bench, touched, seen.animal.species)
    return "\n".join([*told, _counter()])


def lost_words(bench: "Bench", seen: SeenAnimal, touched: Sequence[Fallen]) -> str:
    """Whose choices a lost part touches, and that a released sheet is out of date."""
    told = fallen_words(bench, touched, seen.animal.species)
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


def fallen_words(bench: "Bench", touched: Sequence[Fallen], species: str) -> list[str]:
    """The choices that fall, and those of which there is less: a line for each owner."""
    falls = QCoreApplication.translate("Telling", "No longer stands for {owner}: {cut}.")
    less = QCoreApplication.translate("Telling", "Less than planned for {owner}: {cut}.")
    cuts: dict[tuple[str, str], list[str]] = {}
    for one in touched:
        name = bench.words.name(species, f"cut.{one.cut}")
        cuts.setdefault((one.owner, one.how), []).append(name)
    return [
        (falls if how == "falls" else less).format(owner=owner, cut="; ".join(dict.fromkeys(names)))
        for (owner, how), names in cuts.items()
    ]


def _counter() -> str:
    return QCoreApplication.translate(
        "Telling", "They stand on the counter's list to ring, with what would work."
    )
