"""The block reports by keyboard: kept, planned again, told to the counter."""

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.place import BlockPlace
from shared.shop.findings import Finding
from shared.units import Weight
from tests.desktop.audit import unnamed
from tests.desktop.block.hog import hanging, inches
from tests.desktop.block.test_place import begin, shown


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
