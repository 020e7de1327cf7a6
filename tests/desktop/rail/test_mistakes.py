"""What goes wrong at the rail on a real day: a tag in a weight's field, swapped tags, late news."""

from datetime import date

import pytest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.book_dialog import BookDialog
from desktop.rail.check_in import CheckInDialog
from desktop.rail.correction import CorrectionDialog
from desktop.rail.place import RailPlace
from shared.cutting.order import Amount, Choice
from shared.shop.animals import Animal
from shared.shop.problems import Refused
from tests.db import examples
from tests.db.repositories.test_bills import issued
from tests.desktop.rail.test_in_a_row import say, shown
from tests.desktop.recorded_messages import RecordedMessages

DAY = date(2026, 3, 2)


@pytest.fixture
def rail(qtbot: QtBot, bench: Bench) -> RailPlace:
    """Two hogs here, tagged 301 and 302, of two owners."""
    with bench.store.work(bench.person, bench.station) as work:
        for n in (1, 2):
            examples.arrived(work, examples.lot_of_one(work, f"Owner {n}", DAY), f"30{n}")
        work.commit()
    place = shown(qtbot, bench)
    place.in_a_row.tag.focus()
    return place


def tags(bench: Bench) -> list[str]:
    with bench.store.read() as work:
        return [row.tag for row in work.animals.list(sort="lot")]


def kept(bench: Bench, animal_id: int) -> list[str]:
    with bench.store.read() as work:
        return [one.weight.text() for one in work.weighings.of_animal(animal_id)]


def test_the_next_tag_scanned_into_a_weights_field_is_questioned(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    say("301")
    messages.answers = [False]
    say("302")
    assert messages.asked == ["302 is also the tag of an animal here. Is it a weight?"]
    assert kept(bench, 1) == []
    say("270")
    assert kept(bench, 1) == ["270 lb"]


def test_a_weight_that_is_a_tag_too_is_kept_once_it_was_looked_at(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    say("301")
    messages.answers = [True]
    say("302")
    assert kept(bench, 1) == ["302 lb"]
    say("98,5")  # as it is written with a comma
    assert kept(bench, 1) == ["302 lb", "98.5 lb"]


def test_two_animals_that_carry_each_others_tag_are_swapped_with_a_reason(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    say("301")
    rail.check_in()
    dialog = rail.dialog
    assert isinstance(dialog, CheckInDialog)
    dialog.tag.set_text("302")
    messages.answers = [None]
    dialog.try_it()
    assert dialog.tag.complaint.text().startswith("Tag 302 is on an animal of lot 2")
    assert tags(bench) == ["301", "302"]
    messages.answers = ["looked at both ears"]
    dialog.tag.set_text("302")
    dialog.sex.set_value("barrow")
    dialog.try_it()
    assert dialog.result() == CheckInDialog.DialogCode.Accepted
    assert tags(bench) == ["302", "301"]
    with bench.store.read() as work:
        first = work.animals.get(1)
        assert first is not None
        assert first.sex == "barrow"
        reasons = [one.reason for one in work.changes.of("animal", 2)]
    assert "looked at both ears" in reasons


def test_tags_are_not_swapped_without_a_reason_or_where_one_has_none(bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        first = examples.arrived(work, examples.lot_of_one(work, "Anna", DAY), "301")
        booked = work.animals.of_lot(examples.lot_of_one(work, "Bert", DAY).id)[0]
        assert work.animals.swap_tags(first.id, booked.id, " ") == Refused("reason_missing")
        assert work.animals.swap_tags(first.id, booked.id, "mixed up") == Refused("not_tagged")
        assert isinstance(work.animals.get(first.id), Animal)


def test_a_weight_corrected_after_its_bill_tells_which_bill(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    say("301")
    for text in ("270", "101", "99"):
        say(text)
    with bench.store.work(bench.person, bench.station) as work:
        lot = work.lots.get(1)
        assert lot is not None
        order = examples.order_of(work, lot)
        bill = issued(work, order.id, 12_000)
        work.commit()
    rail.correct()
    dialog = rail.dialog
    assert isinstance(dialog, CorrectionDialog)
    dialog.weight.set_text("95")
    dialog.reason.set_text("gambrel on")
    dialog.try_it()
    (told,) = messages.told
    assert told.startswith(f"Made from the weight before: bill {bill.number}.")


def test_a_tag_of_one_that_is_cut_says_what_became_of_it(rail: RailPlace, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        animal = work.animals.get(1)
        assert animal is not None
        work.animals.move(1, "refused", reason="lame", version=animal.version)
        work.commit()
    rail.in_a_row.tag.focus()
    say("301")
    assert rail.in_a_row.tag.complaint.text() == "Tag 301 isn't here any more: refused."
    say("909")
    assert rail.in_a_row.tag.complaint.text() == "No animal here has tag 909."


def test_one_that_dies_in_the_pen_tells_each_owner_in_one_line(
    rail: RailPlace, bench: Bench, messages: RecordedMessages
) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        lot = work.lots.get(1)
        assert lot is not None
        order = examples.order_of(work, lot)
        for cut in ("whole_ham", "hock"):
            examples.line(work, order, Choice(0, 0, cut, Amount("pieces", 1)))
        work.commit()
    say("301")
    messages.answers = ["died in the pen"]
    refuse = next(move for move, _ in rail.panel.moves if move.end == "refused")
    rail.move_on(refuse)
    (told,) = messages.told
    lines = told.split("\n")
    assert lines[0] == "Nothing of tag 301 will be cut. Tell Owner 1."
    assert len([one for one in lines if one.startswith("No longer stands for Owner 1: ")]) == 1


def test_one_more_than_booked_is_booked_where_it_stands_and_checked_in(
    rail: RailPlace, bench: Bench
) -> None:
    say("301")
    rail.book_more()
    dialog = rail.dialog
    assert isinstance(dialog, BookDialog)
    assert (dialog.species.value(), dialog.head.value(), dialog.day.value()) == ("pork", 1, DAY)
    assert dialog.producer.text().startswith("Owner 1")
    dialog.try_it()
    lot = dialog.lot
    assert lot is not None
    assert (lot.head, lot.day, lot.producer) == (1, DAY, "Owner 1")
    seen = rail.panel.seen
    assert seen is not None
    assert (seen.animal.lot_id, seen.animal.state) == (lot.id, "booked")
    rail.check_in()
    assert isinstance(rail.dialog, CheckInDialog)
