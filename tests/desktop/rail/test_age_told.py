"""An age said at check-in, or later, that brings T-bones down: every owner hears of it."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.counter.calls_dialog import CallsDialog
from desktop.counter.news_words import news_words
from desktop.rail.check_in import CheckInDialog
from desktop.rail.place import RailPlace
from desktop.rail.seen import Place as WeighedAt
from printing.words import Words
from shared.carcass.carcass import Age
from shared.cutting.order import Amount, Choice
from shared.shop.animals import Animal
from shared.shop.calls import ToRing
from shared.shop.holdings import half, whole
from shared.shop.lots import Lot, LotShare, NewLot
from tests.db import examples
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.store_fixture import Clock

DAY = date(2026, 3, 2)
COUNTS_AS_OVER = (
    "Age not known: cut as 30 months and over. Owners stand on the counter's list to ring."
)
T_BONES = Choice(0, 0, "t_bone_steak", Amount("slices", 6), thickness=203_200)


@pytest.fixture
def lot(bench: Bench) -> Lot:
    """A beef of two owners who both settled on T-bones; Bert wants ground beef too."""
    with bench.store.work(bench.person, bench.station) as work:
        made = examples.lot_of_halves(work, "beef", DAY)
        for share in (1, 2):
            order = examples.order_of(work, made, share)
            examples.line(work, order, T_BONES)
            if share == 2:
                examples.line(work, order, Choice(0, 0, "ground_beef", Amount("rest")))
            examples.settled(work, order.id)
        work.commit()
    return made


def inspected_halves(bench: Bench) -> Lot:
    """As `lot`, but inspected: only what an inspector retained is hung without a hot weight."""
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = examples.customer(work), examples.customer(work, "Bert Iversen")
        shares = tuple(
            LotShare(n, one.id, holdings=half(0, n)) for n, one in ((1, anna), (2, bert))
        )
        made = examples.booked(work, NewLot("beef", 1, DAY, anna.id, shares, regime="inspected"))
        for share in (1, 2):
            order = examples.order_of(work, made, share)
            examples.line(work, order, T_BONES)
            examples.settled(work, order.id)
        work.commit()
    return made


def say(qtbot: QtBot, bench: Bench, lot: Lot, age: Age, tag: str = "14") -> CheckInDialog:
    with bench.store.read() as work:
        (animal,) = work.animals.of_lot(lot.id)
    return check_in(qtbot, bench, animal, age, tag)


def check_in(qtbot: QtBot, bench: Bench, animal: Animal, age: Age, tag: str) -> CheckInDialog:
    dialog = CheckInDialog(bench, animal)
    qtbot.addWidget(dialog)
    dialog.tag.set_text(tag)
    dialog.age.set_value(age)
    assert dialog.attempt() == ""
    return dialog


def to_ring(bench: Bench) -> list[ToRing]:
    with bench.store.read() as work:
        return [one for one in work.calls.to_ring(bench.today()) if one.news]


def test_checked_in_as_over_every_owner_is_to_ring_with_what_works(
    qtbot: QtBot, bench: Bench, lot: Lot
) -> None:
    """9 CFR 310.22: the backbone a T-bone is sawn through goes to nobody from 30 months on."""
    dialog = say(qtbot, bench, lot, "30_and_over")
    assert [(one.owner, one.cut, one.how) for one in dialog.touched] == [
        ("Anna Berg", "t_bone_steak", "falls"),
        ("Bert Iversen", "t_bone_steak", "falls"),
    ]
    rung = to_ring(bench)
    assert [one.order.owner for one in rung] == ["Anna Berg", "Bert Iversen"]
    assert [[news.kind for news in one.news] for one in rung] == [["age"], ["age"]]
    (news,) = rung[0].news
    assert news_words(news, Words("en")) == "Tag 14, 30 months and over: no T-bone steak any more."
    calls = CallsDialog(bench)
    qtbot.addWidget(calls)
    qtbot.waitUntil(lambda: "What works: " in calls.lost.text())


@pytest.mark.parametrize("age", ["under_30", "unknown"])
def test_an_age_that_brings_nothing_down_rings_nobody(
    qtbot: QtBot, bench: Bench, lot: Lot, age: Age
) -> None:
    assert say(qtbot, bench, lot, age).touched == ()
    assert to_ring(bench) == []


def test_said_later_it_is_told_too_and_once(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    say(qtbot, bench, lot, "unknown")
    say(qtbot, bench, lot, "30_and_over")
    say(qtbot, bench, lot, "30_and_over", tag="15")
    assert [len(one.news) for one in to_ring(bench)] == [1, 1]


def test_corrected_before_anybody_was_rung_nobody_is(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    say(qtbot, bench, lot, "30_and_over")
    say(qtbot, bench, lot, "under_30")
    assert to_ring(bench) == []


def test_who_heard_that_it_falls_hears_that_it_stands_again(
    qtbot: QtBot, bench: Bench, lot: Lot, clock: Clock
) -> None:
    say(qtbot, bench, lot, "30_and_over")
    with bench.store.work(bench.person, bench.station) as work:
        work.calls.log(examples.order_of(work, lot).id, "spoke")
        work.commit()
    clock.pass_by(hours=1)
    say(qtbot, bench, lot, "under_30")
    (anna,) = to_ring(bench)
    assert anna.order.owner == "Anna Berg"
    assert [news_words(one, Words("en")) for one in anna.news] == [
        "Tag 14, under 30 months: what fell can be had again."
    ]


def told(bench: Bench) -> list[str]:
    return [news_words(news, Words("en")) for one in to_ring(bench) for news in one.news]


def weigh(place: RailPlace, where: WeighedAt, pounds: str) -> None:
    """Type a weight and Enter, as at the scale."""
    line = place.panel.weights.fields[where].line
    type_into(line, pounds)
    QTest.keyClick(line, Qt.Key.Key_Return)


@pytest.mark.parametrize("where", [("hot", 1, ""), ("chilled", 1, "")])
def test_killed_without_an_age_it_counts_as_over_and_owners_are_rung(
    qtbot: QtBot, bench: Bench, lot: Lot, where: WeighedAt
) -> None:
    say(qtbot, bench, lot, "unknown")
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.open(Target("rail", "animal", lot.animals[0].id))
    said: list[str] = []
    place.said.connect(said.append)
    weigh(place, where, "380")
    assert told(bench) == ["Tag 14, age not known: no T-bone steak any more."] * 2
    assert said == [COUNTS_AS_OVER]
    weigh(place, (where[0], 2, ""), "376")
    assert len(told(bench)) == 2
    assert said == [COUNTS_AS_OVER], "said once, not with each weight"
    say(qtbot, bench, lot, "30_and_over")
    assert [len(one.news) for one in to_ring(bench)] == [1, 1]
    say(qtbot, bench, lot, "under_30")
    assert to_ring(bench) == []


def hung(qtbot: QtBot, bench: Bench, lot: Lot) -> list[str]:
    """Retained, released and hung by its buttons, never weighed; what the line below said."""
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.open(Target("rail", "animal", lot.animals[0].id))
    said: list[str] = []
    place.said.connect(said.append)
    for end in ("held", "passed", "hanging"):
        move = next(one for one, _ in place.panel.moves if one.end == end and not one.back)
        place.move_on(move)
    return said


def test_hung_without_a_hot_weight_its_owners_are_rung_all_the_same(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    """A retained animal is released and hung; it may be weighed later, or never."""
    lot = inspected_halves(bench)
    say(qtbot, bench, lot, "unknown")
    messages.answers = ["papers asked for"]
    assert hung(qtbot, bench, lot) == [COUNTS_AS_OVER]
    assert told(bench) == ["Tag 14, age not known: no T-bone steak any more."] * 2
    with bench.store.read() as work:
        (animal,) = work.animals.of_lot(lot.id)
    assert (animal.state, animal.killed_on) == ("hanging", bench.today())
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.open(Target("rail", "animal", animal.id))
    weigh(place, ("hot", 1, ""), "380")
    assert len(told(bench)) == 2, "weighed later, nobody hears it twice"


def test_hung_with_a_known_age_nobody_is_rung(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages
) -> None:
    lot = inspected_halves(bench)
    say(qtbot, bench, lot, "under_30")
    messages.answers = ["papers asked for"]
    assert hung(qtbot, bench, lot) == []
    assert to_ring(bench) == []


def test_of_two_beeves_of_no_known_age_each_line_is_told_once(qtbot: QtBot, bench: Bench) -> None:
    """One of them killed, both are cut as over: the other's kill and age say nothing new."""
    with bench.store.work(bench.person, bench.station) as work:
        owner = examples.customer(work)
        shares = tuple(LotShare(n, owner.id, holdings=whole(n - 1)) for n in (1, 2))
        made = examples.booked(work, NewLot("beef", 2, DAY, owner.id, shares))
        for share in (1, 2):
            order = examples.order_of(work, made, share)
            examples.line(work, order, T_BONES)
            examples.settled(work, order.id)
        work.commit()
    with bench.store.read() as work:
        animals = work.animals.of_lot(made.id)
    for animal, tag in zip(animals, ("14", "15"), strict=True):
        check_in(qtbot, bench, animal, "unknown", tag)
    place = RailPlace(bench)
    qtbot.addWidget(place)
    for animal in animals:
        place.open(Target("rail", "animal", animal.id))
        weigh(place, ("hot", 1, ""), "380")
    assert told(bench) == ["Tag 14, age not known: no T-bone steak any more."] * 2
    with bench.store.read() as work:
        first, second = work.animals.of_lot(made.id)
    check_in(qtbot, bench, second, "30_and_over", "15")
    assert len(told(bench)) == 2
    check_in(qtbot, bench, first, "under_30", "14")
    assert len(told(bench)) == 1, "the first one's T-bones stand again before anybody was rung"


def test_the_rail_says_it_at_once(
    qtbot: QtBot, bench: Bench, lot: Lot, messages: RecordedMessages
) -> None:
    place = RailPlace(bench)
    qtbot.addWidget(place)
    place.show()
    place.open(Target("rail", "animal", lot.animals[0].id))
    place.check_in()
    assert isinstance(place.dialog, CheckInDialog)
    place.dialog.tag.set_text("14")
    place.dialog.age.set_value("30_and_over")
    place.dialog.try_it()
    assert "No longer stands for Anna Berg: T-bone steak." in messages.told[0]
    assert "No longer stands for Bert Iversen: T-bone steak." in messages.told[0]
