"""What is seen and said at the pen: cautions while it is typed, kept with the check-in."""

from datetime import UTC, date, datetime

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.check_in import CheckInDialog
from desktop.rail.clock_text import clock_text, read_clock
from desktop.rail.known_words import known_words
from desktop.rail.seen import see
from tests.db import examples
from tests.desktop.audit import unnamed

NOW = datetime(2026, 3, 3, 8, tzinfo=UTC)


def dialog(qtbot: QtBot, bench: Bench) -> CheckInDialog:
    with bench.store.work(bench.person, bench.station) as work:
        lot = examples.lot_of_halves(work, "beef", date(2026, 3, 2))
        (animal,) = work.animals.of_lot(lot.id)
        work.commit()
    made = CheckInDialog(bench, animal)
    qtbot.addWidget(made)
    made.show()
    return made


def test_an_animal_that_cant_walk_is_said_at_once_with_its_rule(qtbot: QtBot, bench: Bench) -> None:
    made = dialog(qtbot, bench)
    assert unnamed(made) == []
    made.facts.condition.set_value("down")
    made.facts.condition.changed.emit()
    assert "9 CFR 309.3" in made.caution.text()


def test_who_said_the_age_and_by_what_is_kept(qtbot: QtBot, bench: Bench) -> None:
    made = dialog(qtbot, bench)
    made.tag.set_text("B7")
    facts = made.facts
    facts.condition.set_value("sound")
    facts.age_by.set_value("teeth")
    facts.age_said.set_text("Dr. Hale")
    facts.penned.set_text("6:00")
    facts.healthy.set_value(value=True)
    facts.withdrawn.set_value(value=True)
    facts.statement_of.set_text("Anna Berg")
    made.try_it()
    with bench.store.read() as work:
        kept = work.arrivals.of(1)
    assert kept is not None
    assert (kept.age_by, kept.age_said, kept.healthy) == ("teeth", "Dr. Hale", True)
    assert kept.penned_at is not None
    assert kept.penned_at < bench.now()
    seen = see(bench, 1)
    assert seen is not None
    said = known_words(seen, bench.now(), "en")
    assert said.startswith("sound, walks, age by teeth Dr. Hale, in the pen ")


def test_nothing_said_writes_nothing(qtbot: QtBot, bench: Bench) -> None:
    made = dialog(qtbot, bench)
    made.tag.set_text("B7")
    made.facts.penned.set_text("soon")
    made.try_it()
    assert made.facts.penned.complaint.text()
    made.facts.penned.set_text("")
    made.try_it()
    with bench.store.read() as work:
        assert work.arrivals.of(1) is None


def test_a_time_is_the_last_one_up_to_now() -> None:
    here = NOW.astimezone()
    for text in (f"{here:%H:%M}", f"{here:%H%M}"):
        assert read_clock(text, NOW) == here
    later = read_clock("11:59 pm", NOW)
    assert later is not None
    assert later <= NOW
    assert clock_text(later) == "23:59"
    assert read_clock("25:00", NOW) is None
    assert read_clock("13 pm", NOW) is None
