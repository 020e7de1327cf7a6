"""Holding an animal for a result at the rail, and letting it go with what came of it."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.seen import SeenAnimal
from shared.shop.arrival import Hold, standing

if TYPE_CHECKING:
    from desktop.bench import Bench


def hold_or_let_go(bench: "Bench", seen: SeenAnimal) -> bool:
    """Ask why it is held, or what the result was; True when something was written."""
    held = standing(seen.holds)
    title = (
        QCoreApplication.translate("Holding", "Let it go")
        if held
        else QCoreApplication.translate("Holding", "Hold it")
    )
    question = (
        QCoreApplication.translate("Holding", "What came of it? It goes to the block again.")
        if held
        else QCoreApplication.translate("Holding", "What is it held for? It isn't cut until then.")
    )
    said = bench.messages.ask_reason(title, question)
    if said is None:
        return False
    animal_id = seen.animal.id
    with bench.store.work(bench.person, bench.station) as work:
        if held:
            made = [work.arrivals.let_go(animal_id, one.kind, said) for one in held]
        else:
            kind = "disease_test" if seen.animal.species == "deer" else "other"
            made = [work.arrivals.hold(animal_id, kind, said)]
        if all(isinstance(one, Hold) for one in made):
            work.commit()
            return True
    return False
