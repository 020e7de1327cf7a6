"""Reports of the block wait for their credit; own figures are used once they are switched on."""

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.place import OfficePlace
from shared.shop.findings import Finding
from shared.shop.people import SignedOn
from tests.db import examples
from tests.desktop.audit import unnamed
from tests.desktop.office.test_place import opened
from tests.desktop.recorded_messages import RecordedMessages


def page(qtbot: QtBot, bench: Bench) -> OfficePlace:
    place = opened(qtbot, bench)
    place.tabs.setCurrentWidget(place.figures)
    place.figures.refresh()
    return place


def test_a_mistake_of_ours_is_credited_once(
    qtbot: QtBot, bench: Bench, store: Store, messages: RecordedMessages, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        examples.lot_of_halves(work)
        ours = Finding(1, "lost", 1, "jowl", ours=True, reason="dropped")
        work.block.report(ours)
        work.block.report(Finding(1, "measured", 1, "centre", length=203_200))
        work.commit()
    place = page(qtbot, bench)
    assert unnamed(place.figures) == []
    first = place.figures.reports.rows.rows()[0]
    assert first.reason == "dropped"
    place.figures.reports.choose(0)
    assert place.figures.credit.isEnabled()
    messages.answers.append("credit C-12, jowl")
    place.figures.answer("credited")
    with store.read() as work:
        assert {one.credit for one in work.block.list() if one.ours} == {"credited"}


def test_own_figures_are_used_when_switched_on(qtbot: QtBot, bench: Bench, store: Store) -> None:
    place = page(qtbot, bench)
    with store.read() as work:
        assert not work.block.rules().own_figures
    place.figures.used.set_value(True)
    place.figures._switch()
    with store.read() as work:
        assert work.block.rules().own_figures
