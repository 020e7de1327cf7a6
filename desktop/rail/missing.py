"""An animal that was booked and not brought; whether a condemned one had been killed."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.telling import Lost, tell
from shared.money import money_text
from shared.shop.animals import Animal

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.rail.seen import SeenAnimal

NOT_COME = "state.not_come"


def miss(bench: "Bench", seen: "SeenAnimal") -> bool:
    """Ask, then give its place free, put its owners on the list to ring, and say who waits.

    What was paid down stays where it is; False where nothing was kept.
    """
    translate = QCoreApplication.translate
    animal = seen.animal
    owners = _owners(bench, animal) or ", ".join(seen.owners)
    said = bench.messages.ask_reason(
        translate("Missing", "Didn't come"),
        translate(
            "Missing", "An animal of lot {number} ({owners}) didn't come. Why, if known?"
        ).format(number=seen.lot_number, owners=owners),
        optional=True,
    )
    if said is None:
        return False
    with bench.store.work(bench.person, bench.station) as work:
        before = work.lots.question(animal.lot_id)
        made = work.animals.move(animal.id, "not_come", reason=said, version=animal.version)
        if isinstance(made, Animal):
            tell(work, seen, before, "refused", Lost(said, NOT_COME))
            work.commit()
    if not isinstance(made, Animal):
        bench.messages.tell(
            translate("Missing", "Not done"),
            translate("Missing", "Another station has changed this animal. Look again."),
        )
        return True
    _tell(bench, seen, owners)
    return True


def _tell(bench: "Bench", seen: "SeenAnimal", owners: str) -> None:
    from desktop.counter.booking_dialog import free_place

    translate = QCoreApplication.translate
    with bench.store.read() as work:
        lot, paid = work.lots.get(seen.animal.lot_id), _paid(work, seen.animal.lot_id)
    told = [
        translate("Missing", "Its place on the day is free."),
        translate(
            "Missing",
            "Tell {owners}: they stand on the counter's list to ring. For another day book again "
            "at the counter (F2).",
        ).format(owners=owners),
    ]
    if paid > 0:
        told.append(
            translate(
                "Missing", "{amount} was paid on the lot: give it back in the Office (F8)."
            ).format(amount=money_text(paid))
        )
    bench.messages.tell(translate("Missing", "Didn't come"), "\n".join(told))
    if lot is not None:
        free_place(bench, lot)


def _owners(bench: "Bench", animal: Animal) -> str:
    """Whose that animal is, of the owners of its lot."""
    with bench.store.read() as work:
        lot = work.lots.get(animal.lot_id)
    shares = () if lot is None else lot.shares
    mine = [
        one.owner for one in shares if any(held.carcass == animal.index for held in one.holdings)
    ]
    return ", ".join(dict.fromkeys(name for name in mine if name))


def _paid(work: "Work", lot_id: int) -> int:
    return sum(
        -one.cents if one.kind == "refund" else one.cents for one in work.payments.of_lot(lot_id)
    )


def was_killed(bench: "Bench", seen: "SeenAnimal") -> bool:
    """Ask of an animal condemned without a hot weight whether it had been killed.

    The kill is charged of one that was, and not of one that died in the pen.
    """
    weighed = any(one.kind == "hot" for one in seen.weighings)
    if weighed or seen.animal.killed_on is not None:
        return False
    translate = QCoreApplication.translate
    return bench.messages.ask(
        translate("Missing", "Condemned"),
        translate(
            "Missing",
            "Tag {tag} has no hot weight. Had it been killed? The kill is billed only if it had.",
        ).format(tag=seen.animal.tag),
        translate("Missing", "It was killed"),
        translate("Missing", "Not killed"),
    )
