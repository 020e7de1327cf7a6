"""What is seen and said at the pen: cautions while it is typed, kept with the check-in."""

import re
from datetime import UTC, date, datetime, timedelta
from typing import get_args

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.arrival_words import caution_words
from desktop.rail.check_in import CheckInDialog
from desktop.rail.clock_text import clock_text, read_clock
from desktop.rail.known_words import known_words
from desktop.rail.seen import see
from shared.shop.arrival import ArrivalCaution
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


def test_cautions_name_no_rule_that_could_not_be_looked_up() -> None:
    """Of the numbers only 310.22 stands in our trade reference; the others defer."""
    named = {
        one: re.findall(r"CFR ([\d.]+)", caution_words(one)) for one in get_args(ArrivalCaution)
    }
    assert {one: found for one, found in named.items() if found} == {"age_not_shown": ["310.22"]}


def test_an_animal_that_cant_walk_is_said_at_once_and_left_to_the_inspector(
    qtbot: QtBot, bench: Bench
) -> None:
    made = dialog(qtbot, bench)
    assert unnamed(made) == []
    made.facts.condition.set_value("down")
    made.facts.condition.changed.emit()
    assert "ask your inspection office before anything is done" in made.caution.text()


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
    assert said.startswith("sound, walks, age by teeth (Dr. Hale), in the pen ")
    before = known_words(seen, NOW - timedelta(days=365), "en")
    assert "in the pen" not in before  # a clock set back: no hours below nothing


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
