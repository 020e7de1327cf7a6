"""Cautions of an arrival by the rule they come from, and what an intake of deer lacks."""

from datetime import UTC, date, datetime, timedelta

from shared.shop.arrival import (
    Arrival,
    DeerIntake,
    Hold,
    arrival_cautions,
    deer_missing,
    standing,
)

NOW = datetime(2026, 3, 9, 8, tzinfo=UTC)
SAID = Arrival("sound", age_by="teeth", healthy=True, withdrawn_drugs=True)


def test_a_sound_animal_with_its_statements_raises_nothing() -> None:
    assert arrival_cautions("beef", "inspected", SAID, NOW) == ()


def test_a_cow_that_cant_walk_is_the_inspectors_to_decide() -> None:
    # 9 CFR 309.2(b), 309.3(e): non-ambulatory disabled cattle; 310.22; 313.2(e): feed after 24 h
    # (all but 310.22 from memory)
    down = Arrival("down", penned_at=NOW - timedelta(hours=25))
    assert arrival_cautions("beef", "inspected", down, NOW) == (
        "down_inspected",
        "not_stated",
        "age_not_shown",
        "feed",
    )
    assert arrival_cautions("pork", "custom", down, NOW)[0] == "down_custom"


def test_drugs_still_running_and_sick_animals_are_said() -> None:
    # 9 CFR 309.16: residues (from memory)
    bad = Arrival("sound", healthy=False, withdrawn_drugs=False, age_by="papers")
    assert arrival_cautions("veal", "custom", bad, NOW) == ("not_healthy", "drugs")


def test_twenty_four_hours_in_the_pen_is_not_over() -> None:
    held = Arrival("sound", healthy=True, withdrawn_drugs=True, penned_at=NOW - timedelta(hours=24))
    assert arrival_cautions("pork", "custom", held, NOW) == ()


def test_a_deer_is_brought_dead_and_carries_no_statement() -> None:
    assert arrival_cautions("deer", "custom", Arrival("dead"), NOW) == ()


def test_a_batch_needs_it_in_writing() -> None:
    full = DeerIntake("Hal Moss", "H-1", "T-9", date(2026, 11, 21), "Alder", meat="batch")
    assert deer_missing(full) == ("signed_by",)
    assert deer_missing(DeerIntake(hunter="Hal Moss")) == (
        "license",
        "game_tag",
        "killed_on",
        "county",
    )


def test_the_last_word_of_a_kind_holds() -> None:
    on = Hold("disease_test", held=True, reason="sample sent")
    other = Hold("other", held=True, reason="owner asked to wait")
    off = Hold("disease_test", held=False, reason="not detected")
    assert standing((on, other)) == (on, other)
    assert standing((on, other, off)) == (other,)
