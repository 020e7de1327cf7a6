"""Extras typed on a bill are there again after the program was closed, until they are billed."""

from fractions import Fraction

from desktop.bench import Bench
from desktop.journal import Journal
from desktop.office.extras_dialog import Extras
from desktop.office.kept_extras import DRAFT, KeptExtras
from shared.billing.lot import Asked, Credit

STORAGE = Extras((Asked("storage", Fraction(7, 2)),), (Credit("our mistake", 1250),))


def again(bench: Bench) -> KeptExtras:
    """As another start of the program finds them on the disk."""
    bench.journal.close()
    return KeptExtras(Journal(bench.paths.journal / f"station-{bench.station.id}.json"))


def test_they_are_found_on_the_next_start_and_gone_once_billed(bench: Bench) -> None:
    kept = KeptExtras(bench.journal)
    kept[7] = STORAGE
    kept[8] = Extras((Asked("delivery"),))
    assert again(bench) == {7: STORAGE, 8: Extras((Asked("delivery"),))}
    kept.drop(7)
    kept[8] = Extras()
    assert again(bench) == {}


def test_what_cant_be_read_doesnt_take_the_rest_with_it(bench: Bench) -> None:
    kept = KeptExtras(bench.journal)
    kept[7] = STORAGE
    found = bench.journal.found(DRAFT)
    assert found is not None
    bench.journal.note(DRAFT, {**found, "8": "torn"})
    assert again(bench) == {7: STORAGE}
