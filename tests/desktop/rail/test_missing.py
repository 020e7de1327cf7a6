"""A farmer books four hogs and brings three."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.counter.news_words import news_words
from desktop.office.billing import read_billing
from desktop.rail.place import RailPlace
from desktop.rail.state_words import state_words
from desktop.rail.tags import report_pdf
from desktop.rail.telling import planned
from printing.words import Words
from printing.words.trace_words import event_text
from shared.billing.bill import Bill
from shared.billing.rates import Charge, RateCard
from shared.carcass.anatomy import catalogue
from shared.cutting.order import Amount, Choice
from shared.shop.ended_lines import ended_lines
from shared.shop.holdings import whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.problems import MoveRefused
from shared.shop.states import release_refusals
from shared.shop.trace import events
from tests.db import examples
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.printing.rasterised import text_of

DAY = date(2026, 3, 2)
OWNERS = ("Anna Berg", "Bert Iversen", "Cora Lund", "Dag Moen")


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """Four hogs, each of one owner who wants a ham; Dag has paid $50 down."""
    with bench.store.work(bench.person, bench.station) as work:
        kill = Charge("kill", "per_head", Fraction(6000))
        work.rates.save(RateCard("u", "U", date(2026, 1, 1), charges=(kill,)))
        owners = [examples.customer(work, name) for name in OWNERS]
        shares = tuple(
            LotShare(n, one.id, holdings=whole(n - 1)) for n, one in enumerate(owners, start=1)
        )
        made = examples.booked(work, NewLot("pork", 4, DAY, owners[0].id, shares))
        for share in (1, 2, 3, 4):
            order = examples.order_of(work, made, share)
            examples.line(work, order, Choice(0, 0, "whole_ham", Amount("pieces", 1)))
        for n in range(3):
            examples.arrived(work, made, f"30{n}", n)
        work.payments.take(examples.order_of(work, made, 4).id, "deposit", "cash", 5000)
        work.commit()
    return made


@pytest.fixture
def rail(qtbot: QtBot, bench: Bench, lot: Lot) -> RailPlace:
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    qtbot.waitExposed(place)
    place.open(Target("rail", "animal", lot.animals[3].id))
    return place


def state(bench: Bench, lot: Lot) -> str:
    with bench.store.read() as work:
        found = work.animals.get(lot.animals[3].id)
    assert found is not None
    return found.state


def missed(rail: RailPlace, messages: RecordedMessages, reason: str = "") -> None:
    messages.answers = [reason]
    rail.missed()


def test_it_leaves_its_place_and_its_owner_is_to_ring(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    with bench.store.read() as work:
        assert sum(one.head for one in work.calendar.filled(DAY, DAY).bookings) == 4
    missed(rail, messages, "the trailer broke")
    assert state(bench, lot) == "not_come"
    assert messages.asked[0].startswith("An animal of lot 1 (Dag Moen) didn't come.")
    assert "Tell Dag Moen:" in messages.told[0]
    assert "$50.00 was paid on the lot" in messages.told[0]
    with bench.store.read() as work:
        assert sum(one.head for one in work.calendar.filled(DAY, DAY).bookings) == 3
        told = [one for one in work.calls.to_ring(DAY) if one.news]
        assert [one.order.share for one in told] == [4]
        assert news_words(told[0].news[0], Words("en")) == (
            "The hog didn't come; another day can be offered (the trailer broke)."
        )
        assert work.animals.count(states=("booked",)) == 0
        trace = work.trace.of_lot(lot.id)
    assert trace is not None
    last = [one for one in events(trace, lot.animals[3].id) if one.what == "not_come"]
    assert [event_text(one, trace, Words("en")) for one in last] == ["Didn't come"]


def test_nothing_is_billed_for_it_and_the_deposit_is_owed_back(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    missed(rail, messages)
    with bench.store.read() as work:
        order = examples.order_of(work, lot, 4)
        assert order.id in work.bills.to_bill(("ready",))
    billing = read_billing(bench.store, order.id)
    assert billing is not None
    assert isinstance(billing.next_bill, Bill)
    assert billing.next_bill.lines == ()
    assert billing.balance.due == -5000


def test_who_waits_for_the_day_is_named(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        waits = examples.customer(work, "Elin Dahl", "(555) 010-0999")
        work.waiting.add(waits.id, "pork", 1, DAY)
        work.commit()
    messages.answers = ["", True]
    rail.missed()
    assert "Elin Dahl (555) 010-0999 waits longest" in messages.asked[1]


def test_it_is_taken_back_with_a_reason_and_then_nobody_is_to_be_told(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    missed(rail, messages)
    rail.open(Target("rail", "animal", lot.animals[3].id))
    (back,) = [move for move, _ in rail.panel.moves]
    assert rail.panel.check_in.isHidden()
    messages.answers = ["he came at noon"]
    rail.move_on(back)
    assert state(bench, lot) == "booked"
    with bench.store.read() as work:
        assert [one for one in work.calls.to_ring(DAY) if one.news] == []
        assert sum(one.head for one in work.calendar.filled(DAY, DAY).bookings) == 4


def test_left_without_a_word_nothing_is_kept(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    messages.answers = [None]
    rail.missed()
    assert state(bench, lot) == "booked"


def test_one_that_is_here_can_not_be_missing(
    rail: RailPlace, lot: Lot, messages: RecordedMessages
) -> None:
    rail.open(Target("rail", "animal", lot.animals[0].id))
    rail.missed()
    assert messages.asked == []


def test_the_step_forward_stays_checking_in(rail: RailPlace) -> None:
    assert not rail.panel.focus_forward()
    rail.panel.focus_move()
    assert rail.panel.check_in.hasFocus()
    assert unnamed(rail) == []


def test_its_word() -> None:
    assert state_words("not_come", "custom", Words("en")) == "didn't come"
    assert state_words("not_come", "custom", Words("es")) == "no llegó"


def test_the_missing_ones_lines_hold_up_nobody_else(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    missed(rail, messages)
    now = planned(bench.store, lot.id, catalogue("pork"))
    assert now.answer.verdict == "cant"
    ended = ended_lines(now.question)
    assert ended == {one.line for one in now.question.choices if one.share == 4}
    assert "cant" in {one.code for one in release_refusals(now.answer, 1)}
    assert "cant" not in {one.code for one in release_refusals(now.answer, 1, ended)}


def test_the_producers_report_says_it(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    missed(rail, messages, "the trailer broke")
    assert rail.panel.seen is not None
    pdf = report_pdf(bench, rail.panel.seen)
    assert pdf is not None
    said = text_of(pdf)
    assert "Didn't come" in said
    assert "Animal 4 didn't come" in said
    assert "the trailer broke" in said


def test_a_booking_of_which_nothing_came_can_be_cancelled(bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        made = examples.lot_of_one(work, day=DAY)
        gone = work.animals.move(made.animals[0].id, "not_come", version=made.animals[0].version)
        assert not isinstance(gone, MoveRefused)
        now = work.lots.get(made.id)
        assert now is not None
        assert [one.number for one in work.calendar.lots(DAY, DAY)] == []
        assert isinstance(work.lots.cancel(made.id, "never came", version=now.version), Lot)


def test_an_animal_condemned_without_a_hot_weight_is_asked_about(
    rail: RailPlace, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    """Killed and off the rail before the scale: the kill is billed; dead in the pen: it isn't."""
    for index, killed in ((0, True), (1, False)):
        with bench.store.work(bench.person, bench.station) as work:
            found = work.lots.get(lot.id)
            assert found is not None
            animal = replace(found.animals[index])
            work.lots.save_details(replace(found, regime="inspected"))
            work.commit()
        rail.open(Target("rail", "animal", animal.id))
        condemn = next(move for move, _ in rail.panel.moves if move.end == "condemned")
        messages.answers = ["septicemia", killed]
        rail.move_on(condemn)
        assert messages.asked[-1].startswith("Tag 30")
        order = order_id(bench, lot, index + 1)
        billing = read_billing(bench.store, order)
        assert billing is not None
        assert isinstance(billing.next_bill, Bill)
        assert [one.code for one in billing.next_bill.lines] == (["kill"] if killed else [])


def order_id(bench: Bench, lot: Lot, share: int) -> int:
    with bench.store.read() as work:
        return examples.order_of(work, lot, share).id
