"""What the rail's side says of an arrival, a deer, holds and dressing, in a line each."""

from collections.abc import Iterator
from datetime import datetime

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import date_text
from desktop.rail.arrival_words import age_by_words, condition_words
from desktop.rail.seen import SeenAnimal
from shared.shop.arrival import DeerIntake, standing


def known_words(seen: SeenAnimal, now: datetime, language: str) -> str:
    """Condition, how the age is known, hours in the pen, deer and dressing; "" says nothing."""
    return "\n".join(one for one in _lines(seen, now, language) if one)


def held_words(seen: SeenAnimal) -> tuple[str, ...]:
    """Each hold that stands."""
    said = {
        "disease_test": QCoreApplication.translate(
            "Holds", "Held until its test result: {reason}. Not to the block."
        ),
        "other": QCoreApplication.translate("Holds", "Held: {reason}. Not to the block."),
    }
    return tuple(said[one.kind].format(reason=one.reason) for one in standing(seen.holds))


def _lines(seen: SeenAnimal, now: datetime, language: str) -> Iterator[str]:
    arrival = seen.arrival
    if arrival is not None:
        facts = [condition_words(arrival.condition), arrival.note]
        if arrival.age_by:
            by = QCoreApplication.translate("Holds", "age by {by}")
            who = f" ({arrival.age_said})" if arrival.age_said else ""
            facts.append(by.format(by=age_by_words(arrival.age_by) + who))
        penned = arrival.penned_at
        here = seen.animal.state in ("booked", "arrived")
        if here and penned is not None and penned <= now:  # a clock may have been set back
            hours = int((now - penned).total_seconds() // 3600)
            facts.append(
                QCoreApplication.translate("Holds", "in the pen {hours} h").format(hours=hours)
            )
        yield ", ".join(one.strip() for one in facts if one.strip())
    if seen.deer is not None:
        yield _deer(seen.deer, language)
    yield ", ".join(_dressed(seen))


def _deer(deer: DeerIntake, language: str) -> str:
    day = date_text(deer.killed_on, language) if deer.killed_on else ""
    tag = QCoreApplication.translate("Holds", "game tag {tag}").format(tag=deer.game_tag)
    license_ = QCoreApplication.translate("Holds", "license {number}").format(number=deer.license)
    meat = {
        "": "",
        "apart": QCoreApplication.translate("Holds", "meat kept apart"),
        "batch": QCoreApplication.translate("Holds", "meat to a batch, agreed in writing"),
    }[deer.meat]
    keeps = {
        "cape": QCoreApplication.translate("Holds", "keep the cape"),
        "head": QCoreApplication.translate("Holds", "keep the head"),
        "antlers": QCoreApplication.translate("Holds", "keep the antlers"),
    }
    kept = [keeps[part] for part in keeps if getattr(deer, part) == "keep"]
    facts = [
        license_ if deer.license else "",
        tag if deer.game_tag else "",
        day,
        deer.county,
        meat,
        *kept,
    ]
    return ", ".join(one for one in facts if one)


def _dressed(seen: SeenAnimal) -> Iterator[str]:
    words = {
        ("head", "on"): QCoreApplication.translate("Holds", "head on"),
        ("head", "off"): QCoreApplication.translate("Holds", "head off"),
        ("feet", "on"): QCoreApplication.translate("Holds", "feet on"),
        ("feet", "off"): QCoreApplication.translate("Holds", "feet off"),
        ("leaf", "in"): QCoreApplication.translate("Holds", "leaf fat in"),
        ("leaf", "out"): QCoreApplication.translate("Holds", "leaf fat out"),
        ("kidneys", "in"): QCoreApplication.translate("Holds", "kidneys in"),
        ("kidneys", "out"): QCoreApplication.translate("Holds", "kidneys out"),
    }
    for name, word in seen.dressing.said().items():
        yield words[name, word]
