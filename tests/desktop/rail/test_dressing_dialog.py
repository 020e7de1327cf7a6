"""How a carcass was dressed: only what its species has, and only where it isn't as usual."""

from datetime import date

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.dressing_dialog import DressingDialog
from desktop.rail.known_words import known_words
from desktop.rail.seen import see
from shared.carcass.dressing import Dressing
from tests.db import examples
from tests.desktop.audit import unnamed


def test_a_hog_with_its_head_on_is_kept_so(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        animal = examples.arrived(work, examples.lot_of_halves(work, day=date(2026, 3, 2)))
        work.commit()
    seen = see(bench, animal.id)
    assert seen is not None
    made = DressingDialog(bench, seen)
    qtbot.addWidget(made)
    assert unnamed(made) == []
    made.fields["head"].set_value("on")
    made.try_it()
    seen = see(bench, animal.id)
    assert seen is not None
    assert seen.dressing == Dressing(head="on")
    assert known_words(seen, bench.now(), "en") == "head on"
