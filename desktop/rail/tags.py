"""The tags of a carcass on the rail, as paper."""

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
