"""A check-in half typed when the program ends is there again, facts and all; left, it is gone."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.check_in import CheckInDialog
from desktop.rail.place import RailPlace
from tests.db import examples


def shown(qtbot: QtBot, bench: Bench) -> RailPlace:
    made = RailPlace(bench)
    qtbot.addWidget(made)
    made.show()
    return made


def test_what_was_typed_of_an_arrival_is_there_again(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lots = [examples.lot_of_one(work, species="beef") for _ in range(3)]
        work.commit()
    before = shown(qtbot, bench)
    before.table.choose(1)
    before.check_in()
    typing = before.dialog
    assert isinstance(typing, CheckInDialog)
    qtbot.keyClicks(typing.tag.line, "T-77")
    typing.sex.set_value("cow")
    qtbot.keyClicks(typing.facts.statement_of.line, "the owner")
    (name,) = bench.journal.names()
    kept = bench.journal.found(name)
    assert kept is not None
    before.close()  # and the program with it: the dialog was neither taken nor left
    again = shown(qtbot, bench)
    qtbot.waitUntil(lambda: again.dialog is not None)
    dialog = again.dialog
    assert isinstance(dialog, CheckInDialog)
    assert dialog.animal.lot_id == lots[1].id
    assert (dialog.tag.text(), dialog.sex.value()) == ("T-77", "cow")
    assert dialog.facts.statement_of.text() == "the owner"
    dialog.drop()
    typing.drop()
    assert bench.journal.names() == ()


def test_a_draft_of_an_animal_that_is_gone_opens_nothing(qtbot: QtBot, bench: Bench) -> None:
    bench.journal.note("check_in 999", {"tag": "T-1"})
    place = shown(qtbot, bench)
    place.go_on_typing()
    assert place.dialog is None
