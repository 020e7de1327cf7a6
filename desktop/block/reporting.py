"""What the block reports is kept, what is left is planned again, and the counter is told."""

from dataclasses import replace
from typing import TYPE_CHECKING

from desktop.block.measuring import measured, place_name
from desktop.rail.fallen import Fallen, fallen
from shared.carcass.carcass import Gone
from shared.cutting.plan import plan
from shared.shop.findings import Finding
from shared.shop.news import LostLine, News

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.block.cutting import Cutting
    from printing.words import Words
    from shared.cutting.order import Question
    from shared.shop.problems import Refused


def report(bench: "Bench", cutting: "Cutting", found: Finding) -> "tuple[Fallen, ...] | Refused":
    """Keep a report and plan again what is left; the choices that fall or get less.

    In one unit with what the owners must hear, so that no report stands without its calls. A line
    cut otherwise is told to its owner though nothing falls.
    """
    animal = cutting.animal
    with bench.store.work(bench.person, bench.station) as work:
        kept = work.block.report(found)
        if not isinstance(kept, Finding):
            return kept
        if found.kind == "measured" and found.length is not None:
            for one in measured(cutting.catalogue, found.what, found.side, found.length):
                work.animals.measure(animal.id, one)
        elif found.kind == "lost":
            gone = Gone(found.what, found.side, found.weight, found.reason)
            work.animals.record_loss(animal.id, gone)
        after = work.lots.question(animal.lot_id, at_block=True)
        answer = plan(after, cutting.catalogue)
        parts = (found.what,) if found.kind == "lost" else ()
        touched = fallen(after, cutting.answer, answer, parts)
        _tell(work, bench.words, cutting, found, (after, touched))
        work.commit()
    return touched


def withdraw(
    bench: "Bench", cutting: "Cutting", found: Finding, reason: str
) -> "tuple[Fallen, ...] | Refused":
    """Take a report back and plan again from what stands; owners who were told hear that too.

    The loss a report recorded is taken back with it. Answers as `report` does.
    """
    animal = cutting.animal
    with bench.store.work(bench.person, bench.station) as work:
        kept = work.block.withdraw(found, reason)
        if not isinstance(kept, Finding):
            return kept
        if kept.kind == "lost":
            for loss in work.animals.losses(animal.id):
                same = (loss.gone.part, loss.gone.side, loss.at) == (kept.what, kept.side, kept.at)
                if same and not loss.void:
                    work.animals.void_loss(loss.id, reason)
        after = work.lots.question(animal.lot_id, at_block=True)
        answer = plan(after, cutting.catalogue)
        touched = fallen(after, cutting.answer, answer)
        back = replace(kept, reason=reason_words(kept, cutting, bench.words))
        heard = {
            order.id
            for order in work.orders.of_lot(cutting.lot.id)
            for one in work.news.of_order(order.id)
            if one.animal_id == animal.id and one.at == kept.at
        }
        said = bench.words.say("block.taken_back", what=back.reason, reason=reason)
        _tell_back(work, cutting, said, heard, (after, touched))
        work.commit()
    return touched


def _tell_back(
    work: "Work",
    cutting: "Cutting",
    said: str,
    heard: "set[int]",
    planned: "tuple[Question, tuple[Fallen, ...]]",
) -> None:
    """Owners who were told of the report, and those who lose by its being taken back."""
    after, touched = planned
    shares = {one.line: one.share for one in after.choices}
    for order in work.orders.of_lot(cutting.lot.id):
        mine = [one for one in touched if shares[one.line] == order.share]
        if not mine and order.id not in heard:
            continue
        lost = tuple(LostLine(one.line, one.cut, one.how) for one in mine)
        animal = cutting.animal
        work.news.add(
            News(order.id, animal.id, "block", animal.species, animal.tag, "", said, lost)
        )


def _tell(
    work: "Work",
    words: "Words",
    cutting: "Cutting",
    found: Finding,
    planned: "tuple[Question, tuple[Fallen, ...]]",
) -> None:
    """Every owner who loses something of it, and the owner of a line cut otherwise."""
    after, touched = planned
    shares = {one.line: one.share for one in after.choices}
    kind = "part_gone" if found.kind == "lost" else "block"
    for order in work.orders.of_lot(cutting.lot.id):
        mine = [one for one in touched if shares[one.line] == order.share]
        own = found.kind == "cut_otherwise" and shares.get(found.line) == order.share
        if not mine and not own:
            continue
        work.news.add(
            News(
                order.id,
                cutting.animal.id,
                kind,
                cutting.animal.species,
                cutting.animal.tag,
                f"part.{found.what}" if kind == "part_gone" else "",
                reason_words(found, cutting, words),
                tuple(LostLine(one.line, one.cut, one.how) for one in mine),
            )
        )


def reason_words(found: Finding, cutting: "Cutting", words: "Words") -> str:
    """What the block said, as the counter reads it: "the block: loin ran 13½ in, side 1"."""
    from shared.units import length_text

    species = cutting.animal.species
    length = "" if found.length is None else length_text(found.length)
    if found.kind == "measured":
        what = place_name(found.what, species, words)
        return words.say("block.ran", what=what, length=length, side=found.side)
    if found.kind == "lost":
        return found.reason
    what = words.name(species, f"cut.{found.what}", 2)
    key = "block.cut_at" if length else "block.cut_otherwise"
    return words.say(key, what=what, length=length, side=found.side, reason=found.reason)
