"""The Office on a file of 50,000 bills; `python -m tests.bench books` prints it for 100,000.

The claim is twice a bare table with 100,000; asserted is twice that with half as many, for a slow
machine. A stopped report is at rest within a second.
"""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from db.store import Store
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.paths import bundled_fonts
from tests.bench.books import (
    ALIVE,
    BILLS,
    LEAST,
    Opened,
    bench_on,
    main,
    measured,
    reports,
    stopped_after,
    too_slow,
)
from tests.bench.full_books import UNPAID_EACH, fill


@pytest.mark.timed
@pytest.mark.timeout(180)
def test_every_list_of_the_office_opens_beside_many_bills(
    qapp: QApplication, store: Store, tmp_path: Path
) -> None:
    theme.apply(qapp, Theme(family=load_fonts(bundled_fonts())))
    bench = bench_on(store, tmp_path)
    fill(store, BILLS // 2, bench.today())
    with store.read() as work:
        assert len(work.books.open_orders()) == BILLS // 2 // UNPAID_EACH
    found = measured(bench, 3)
    run = reports(bench)
    stopped = stopped_after(bench)
    bench.work.finish()
    ALIVE.clear()
    assert [one for one in found if one.times > 4] == []
    assert max(one.rows for one in found) > 1000
    assert sorted(told > 50 for _name, _took, told in run) == [False, *[True] * 6]
    assert stopped < 1000


def test_a_file_of_any_size_from_the_least_can_be_filled(store: Store, tmp_path: Path) -> None:
    """Every payer is one of the file's customers, though it has few of them."""
    fill(store, LEAST, bench_on(store, tmp_path).today())
    with store.read() as work:
        assert len(work.bills.list(limit=2 * LEAST)) == LEAST
        assert len(work.books.open_orders()) == LEAST // UNPAID_EACH
    assert main([str(LEAST - 1)]) == 2


def test_twice_a_bare_table_is_asked_of_the_size_the_claim_is_for() -> None:
    slow, quick = Opened("slow", 120.0, 40.0, 500), Opened("quick", 25.0, 10.0, 10)
    assert too_slow([slow, quick], LEAST) == [slow]
    assert too_slow([slow, quick], BILLS) == [slow, quick]
