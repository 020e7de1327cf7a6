"""A card tried on animals of other days, both bills side by side."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.trial_dialog import TrialDialog
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import RATES, handed_over


def test_both_bills_stand_side_by_side(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """$70 instead of $60 a head: half of $10 more for each half."""
    handed_over(store, signed)
    kill, *others = RATES.charges
    dearer = replace(RATES, charges=(replace(kill, rate=Fraction(7000)), *others))
    dialog = TrialDialog(bench, dearer)
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert "No animals" in dialog.sum.text()
    dialog.start.set_value(date(2026, 1, 1))
    dialog.end.set_value(date(2026, 12, 31))
    dialog.try_it()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert unnamed(dialog) == []
    assert [one.difference for one in dialog.table.rows.rows()] == [500, 500]
    assert dialog.sum.text() == "Old card $206.91, this card $216.91: +$10.00."
    dialog.end.set_value(date(2025, 12, 31))
    dialog.try_it()
    assert "before the first" in dialog.end.complaint.text()
