"""The rail's screens on a file of 40,000 animals; `python -m tests.bench rooms` prints the figures.

The claim is twice a bare table and 50 ms in one go; asserted is twice that, for a slow machine.
"""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from db.store import Store
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import bundled_fonts
from tests.bench.full_rail import HANGING, TO_COME, fill
from tests.bench.rooms import ANIMALS, bench_on, measured


@pytest.mark.timed
def test_every_screen_of_the_rail_opens_beside_40_000_animals(
    qapp: QApplication, store: Store, tmp_path: Path
) -> None:
    theme.apply(qapp, Theme(family=load_fonts(bundled_fonts())))
    bench = bench_on(store, tmp_path)
    fill(store, ANIMALS, bench.today())
    with store.read() as work:
        assert work.animals.count(states=("cut",)) == ANIMALS - HANGING - TO_COME
    found = measured(bench, 5)
    bench.work.finish()
    assert len(found) == 7
    assert [one for one in found if one.times > 4 or one.slot > 100] == []
