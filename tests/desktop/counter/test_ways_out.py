"""What would work for who lost something: planned on a worker, of the order as it is now."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.history_dialog import history
from desktop.counter.order_desk import OrderDesk
from desktop.counter.ways_out import offer_words, offers, wanted, ways_out, ways_words
from desktop.rail.loss import LossDialog
from desktop.rail.seen import see
from desktop.work import slow_turns
from printing.words import Words
from shared.billing.rates import Charge, RateCard
from shared.cutting.order import Amount, Choice
from shared.cutting.plan import plan
from shared.shop.calls import ToRing
from shared.shop.lots import Lot
from shared.shop.news import LostLine, News
from tests.db import examples

DAY = date(2026, 3, 2)
HAM = Choice(0, 0, "whole_ham", Amount("pieces", 1))


def hog(bench: Bench) -> tuple[Lot, int]:
    """Two owners, each a whole ham of his side; the animal's id."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, day=DAY)
        animal = examples.arrived(work, lot)
        for share in (1, 2):
            examples.line(work, examples.order_of(work, lot, share), HAM)
        work.commit()
    return lot, animal.id


def lose(qtbot: QtBot, bench: Bench, animal_id: int, part: str = "part.ham_centre") -> None:
    seen = see(bench, animal_id)  # as the rail shows it before the key is pressed
    assert seen is not None
    qtbot.wait(10)
    dialog = LossDialog(bench, seen)
    qtbot.addWidget(dialog)
    dialog.part.set_value(part)
    dialog.side.set_value(2)
    dialog.reason.set_text("abscess")
    qtbot.waitUntil(lambda: not bench.work.busy())
    dialog.try_it()
    assert dialog.touched


def to_ring(bench: Bench) -> list[ToRing]:
    with bench.store.read() as work:
        return [one for one in work.calls.to_ring(bench.today()) if one.news]


def test_the_loss_is_kept_at_once_and_its_ways_out_stand_when_planned(
    qtbot: QtBot, bench: Bench
) -> None:
    _, animal = hog(bench)
    lose(qtbot, bench, animal)
    ((news,),) = (one.news for one in to_ring(bench))
    assert [(one.cut, one.how) for one in news.lost] == [("whole_ham", "falls")]
    assert news.remedies == ()
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    assert dialog.lost.text().endswith("What would work is being planned…")
    qtbot.waitUntil(lambda: "What works: " in dialog.lost.text())
    assert "planned…" not in dialog.lost.text()


def test_each_way_out_can_be_cut_and_is_spoken_in_the_readers_language(
    qtbot: QtBot, bench: Bench
) -> None:
    lot, animal = hog(bench)
    lose(qtbot, bench, animal)
    found = ways_out(bench.store, wanted(to_ring(bench)))
    (ways,) = found.values()
    assert ways is not None
    for one in ways.remedies:
        changed = {edit.line: edit.choice for edit in one.edits}
        choices = [changed.get(line.line, line) for line in ways.question.choices]
        kept = tuple(line for line in choices if line is not None)
        answer = plan(replace(ways.question, choices=kept), ways.catalogue)
        assert answer.conflicts == (), f"lot {lot.number}: {one}"
    english, spanish = (ways_words(ways, Words(one, strict=True)) for one in ("en", "es"))
    assert len(english) == len(spanish) == len(ways.remedies) > 0
    assert any("ham" in one for one in english)
    assert any("jamón" in one.lower() or "pierna" in one.lower() for one in spanish)


def test_what_was_offered_in_a_call_is_kept_with_its_price_and_who_was_told(
    qtbot: QtBot, bench: Bench
) -> None:
    """A dollar a package: leaving the lost ham out changes nothing, another cut its packages."""
    lot, animal = hog(bench)
    charges = (Charge("package", "per_package", Fraction(100)),)
    with bench.store.work(bench.person, bench.station) as work:
        work.rates.save(RateCard("plain", "Plain", date(2026, 1, 1), charges=charges))
        work.commit()
    lose(qtbot, bench, animal)
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    qtbot.waitUntil(lambda: "What works: " in dialog.lost.text())
    shown = dialog.lost.text().partition("What works: ")[2].split(" · ")
    dialog.outcome.set_value("no_answer")
    dialog.try_it()
    dialog.outcome.set_value("spoke")
    dialog.told_to.set_text("his wife")
    dialog.try_it()
    with bench.store.read() as work:
        order = examples.order_of(work, lot, 2)
        silent, spoke = work.calls.of_order(order.id)
    assert (silent.told_to, silent.offered) == ("", ())
    assert spoke.told_to == "his wife"
    assert [offer_words(one) for one in spoke.offered] == shown
    prices = [one.cents for one in spoke.offered]
    assert all(one is not None and one % 100 == 0 for one in prices)
    assert 0 in prices
    assert max(one or 0 for one in prices) > 0
    assert any("more, estimated)" in one for one in shown)
    told = history(bench, OrderDesk(bench, lot.id, order.id))
    (rung,) = (one for one in told if one.what == "rung: spoke")
    assert rung.was == "told to his wife"
    assert all(one in rung.became for one in shown)


def test_an_order_changed_since_is_offered_nothing(qtbot: QtBot, bench: Bench) -> None:
    lot, animal = hog(bench)
    lose(qtbot, bench, animal)
    with bench.store.work(bench.person, bench.station) as work:
        order = examples.order_of(work, lot, 2)
        (line,) = order.choices
        work.orders.remove_line(order.id, line.line)
        work.commit()
    found = ways_out(bench.store, wanted(to_ring(bench)))
    assert list(found.values()) == [None]


def test_sentences_of_an_earlier_version_are_shown_as_kept(qtbot: QtBot, bench: Bench) -> None:
    lot, animal = hog(bench)
    lost = (LostLine(1, "whole_ham", "falls"),)
    with bench.store.work(bench.person, bench.station) as work:
        order = examples.order_of(work, lot, 1)
        told = ("Take the ham ends as roasts.",)
        work.news.add(News(order.id, animal, "part_gone", "pork", "114", lost=lost, remedies=told))
        work.commit()
    assert wanted(to_ring(bench)) == {}
    dialog = CallsDialog(bench)
    qtbot.addWidget(dialog)
    assert dialog.lost.text().endswith("What works: Take the ham ends as roasts.")


@pytest.mark.timed
def test_recording_a_loss_and_reading_the_list_hold_up_no_key(qtbot: QtBot, bench: Bench) -> None:
    beef = (
        "blade_steak",
        "arm_roast",
        "rib_steak",
        "t_bone_steak",
        "sirloin_steak",
        "flanken_short_ribs",
    )
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, "beef", DAY)
        animal = examples.arrived(work, lot)
        for share in (1, 2):
            order = examples.order_of(work, lot, share)
            for cut in beef:
                examples.line(work, order, Choice(0, 0, cut, Amount("rest")))
        work.commit()
    with slow_turns() as slow:
        qtbot.wait(10)
        lose(qtbot, bench, animal.id, "primal.chuck")
        qtbot.wait(10)
        dialog = CallsDialog(bench)
        qtbot.addWidget(dialog)
        qtbot.wait(10)
        qtbot.waitUntil(lambda: "What works: " in dialog.lost.text(), timeout=10_000)
    assert slow == []


def test_ways_out_that_read_the_same_are_told_once(qtbot: QtBot, bench: Bench) -> None:
    """Of a line that stands there twice either may go; who rings hears one sentence."""
    lot, animal = hog(bench)
    lose(qtbot, bench, animal)
    rows = to_ring(bench)
    (ways,) = ways_out(bench.store, wanted(rows)).values()
    assert ways is not None
    twice = replace(ways, remedies=ways.remedies * 2, cents=ways.cents * 2)
    assert ways_words(twice, bench.words) == ways_words(ways, bench.words)
    assert offers(twice, bench.words) == offers(ways, bench.words)
    assert len(offers(ways, bench.words)) == len(ways.remedies) > 1, lot
