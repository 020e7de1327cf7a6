"""The rail's papers: the tags of a carcass, and the producer's report of its lot."""

from typing import TYPE_CHECKING

from desktop.rail.seen import SeenAnimal

if TYPE_CHECKING:
    from desktop.bench import Bench


def tag_pdf(bench: "Bench", seen: SeenAnimal) -> bytes | None:
    """A tag for each side; None when its owners are too many for one tag."""
    from printing.carcass_tag import carcass_tag  # draws: only when a tag is wanted

    animal = seen.animal
    with bench.store.read() as work:
        carcass = work.lots.question(animal.lot_id).carcasses[animal.index]
        shop = work.shop.details()
    try:
        return carcass_tag(
            carcass,
            lot_number=seen.lot_number,
            owners=seen.owners,
            killed_on=animal.killed_on,
            shop=shop,
            words=bench.words,
            dpi=shop.dpi,
        )
    except ValueError:
        return None


def report_pdf(bench: "Bench", seen: SeenAnimal) -> bytes | None:
    """What came, what it weighed, what was lost and what became of it, for its producer."""
    from printing.producer_report import producer_report  # draws: only when it is wanted

    with bench.store.read() as work:
        trace = work.trace.of_lot(seen.animal.lot_id)
        shop = work.shop.details()
    if trace is None:
        return None
    return producer_report(trace, shop=shop, made=bench.now(), words=bench.words)
