"""The block reports by keyboard: kept, planned again, told to the counter."""

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.place import BlockPlace
from shared.shop.findings import Finding
from shared.units import Weight
from tests.desktop.audit import unnamed
from tests.desktop.block.hog import hanging, inches
from tests.desktop.block.test_place import begin, shown
from tests.store_fixture import Clock


def opened(qtbot: QtBot, bench: Bench) -> BlockPlace:
    hanging(bench)
    place = shown(qtbot, bench)
    begin(place)
    place.view.report.click()
    qtbot.waitUntil(place.dialog.isVisible)
    return place


def reports(bench: Bench) -> tuple[Finding, ...]:
    with bench.store.read() as work:
        return work.block.of_animal(1)


def test_tab_goes_through_what_a_length_asks_as_it_stands_on_the_screen(
    qtbot: QtBot, bench: Bench
) -> None:
    dialog = opened(qtbot, bench).dialog
    dialog.kind.set_value("measured")
    dialog.kind.focus()
    seen = [one.editor for one in dialog.grid.fields if one.isVisible()]
    at = sorted(
        seen, key=lambda one: (one.mapTo(dialog, QPoint()).y(), one.mapTo(dialog, QPoint()).x())
    )
    assert len(at) == 4
    for wanted in at[1:]:
        QTest.keyClick(dialog.focusWidget(), Qt.Key.Key_Tab)
        assert dialog.focusWidget() is wanted


def test_a_measured_ham_is_a_fact_of_the_next_plan(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    dialog = place.dialog
    assert unnamed(dialog) == []
    dialog.kind.set_value("measured")
    dialog.stretch.set_value("ham_centre")
    dialog.side.set_value(2)
    dialog.length.set_value(inches("1 in"))
    dialog.try_it()
    assert dialog.result() == 1
    (found,) = reports(bench)
    assert (found.what, found.side, found.length) == ("ham_centre", 2, inches("1 in"))
    after = place.view.cutting
    assert after is not None
    assert after.question.carcasses[0].measured[0].length == inches("1 in")
    with bench.store.read() as work:
        (news,) = (one for all_of in work.news.to_tell().values() for one in all_of)
    assert news.kind == "block"
    assert [(one.cut, one.how) for one in news.lost] == [("ham_steak", "falls")]
    assert "1 in" in news.reason.replace("\u00a0", " ")


def test_a_loss_is_told_and_a_mistake_waits_for_its_credit(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    dialog = place.dialog
    dialog.kind.set_value("lost")
    dialog._show_fields()
    assert dialog.part.isVisible()
    assert not dialog.stretch.isVisible()
    dialog.part.set_value("jowl")
    dialog.side.set_value(1)
    dialog.weight.set_value(Weight(2, "lb"))
    dialog.try_it()
    assert dialog.isVisible()  # it needs a reason
    dialog.reason.set_text("dropped")
    dialog.ours.set_value(True)
    dialog.try_it()
    (found,) = reports(bench)
    assert (found.weight, found.ours, found.reason) == (Weight(2, "lb"), True, "dropped")
    with bench.store.read() as work:
        (loss,) = work.animals.losses(1)
    assert loss.gone.weight == Weight(2, "lb")


def test_a_line_cut_otherwise_is_planned_as_it_was_cut(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    dialog = place.dialog
    dialog.kind.set_value("cut_otherwise")
    cutting = place.view.cutting
    assert cutting is not None
    line = next(one for one in cutting.question.choices if one.thickness == inches("1 1/4 in"))
    dialog.line.set_value((line.line, 1))
    dialog.length.set_value(inches("1 in"))
    dialog.reason.set_text("the stop had slipped")
    dialog.try_it()
    again = place.view.cutting
    assert again is not None
    cut = next(one for one in again.question.choices if one.line == line.line)
    assert cut.thickness == inches("1 in")
    order = again.order_of(cut.share)
    assert next(o for o in order.choices if o.line == line.line).thickness == line.thickness
    with bench.store.read() as work:
        assert work.block.ticks(1)
        (news,) = (one for all_of in work.news.to_tell().values() for one in all_of)
    assert "1 in" in news.reason.replace("\u00a0", " ")


def again(qtbot: QtBot, place: BlockPlace) -> None:
    place.view.report.click()
    qtbot.waitUntil(place.dialog.isVisible)


def take_back(place: BlockPlace, reason: str) -> None:
    dialog = place.dialog
    dialog.kind.set_value("withdraw")
    dialog._show_fields()
    dialog.which.set_value(dialog._standing()[0].id)
    dialog.reason.set_text(reason)
    dialog.try_it()


def test_a_wrong_length_is_taken_back_and_the_one_before_holds(
    qtbot: QtBot, bench: Bench, clock: Clock
) -> None:
    place = opened(qtbot, bench)
    planned = place.view.cutting
    assert planned is not None
    for length in ("10 in", "1 in"):
        dialog = place.dialog
        dialog.kind.set_value("measured")
        dialog.stretch.set_value("ham_centre")
        dialog.side.set_value(2)
        dialog.length.set_value(inches(length))
        dialog.try_it()
        clock.pass_by(minutes=1)
        again(qtbot, place)
    assert unnamed(place.dialog) == []
    take_back(place, "")
    assert "Say why" in place.dialog.refusal.text()
    take_back(place, "read the wrong end")
    after = place.view.cutting
    assert after is not None
    (measured,) = after.question.carcasses[0].measured
    assert measured.length == inches("10 in")
    first, second = reports(bench)
    assert (first.withdrawn, second.withdrawn) == ("", "read the wrong end")
    with bench.store.read() as work:
        told = [one.reason for all_of in work.news.to_tell().values() for one in all_of]
    assert any("taken back" in one and "read the wrong end" in one for one in told)


def test_a_loss_taken_back_gives_its_pounds_back(qtbot: QtBot, bench: Bench, clock: Clock) -> None:
    place = opened(qtbot, bench)
    before = place.view.cutting
    assert before is not None
    dialog = place.dialog
    dialog.kind.set_value("lost")
    dialog.part.set_value("jowl")
    dialog.side.set_value(1)
    dialog.weight.set_value(Weight(2, "lb"))
    dialog.reason.set_text("abscess")
    dialog.try_it()
    clock.pass_by(minutes=1)
    again(qtbot, place)
    assert "jowl 2 lb: abscess" in place.dialog._told(reports(bench)[0]).replace("\u00a0", " ")
    take_back(place, "it was the other side")
    after = place.view.cutting
    assert after is not None
    assert after.question == before.question
    assert after.answer == before.answer
    with bench.store.read() as work:
        (loss,) = work.animals.losses(1)
    assert loss.void == "it was the other side"
    again(qtbot, place)
    assert place.dialog._standing() == []
    place.dialog.reject()


def test_its_words_are_read_at_the_block(qtbot: QtBot, bench: Bench) -> None:
    """The labels are as large as what is typed below them."""
    dialog = opened(qtbot, bench).dialog
    typed = dialog.reason.line.fontMetrics().height()
    assert all(
        one.label.fontMetrics().height() >= typed
        for one in (dialog.kind, dialog.part, dialog.weight, dialog.reason)
    )
