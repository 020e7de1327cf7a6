"""The columns of the rail's list of animals."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import day_text
from desktop.rail.state_words import state_mark, state_words
from desktop.tables import Column, pounds_column
from shared.shop.lists import AnimalRow
from shared.shop.states import ANIMAL_STATES

if TYPE_CHECKING:
    from desktop.bench import Bench


def animal_columns(bench: "Bench") -> tuple[Column[AnimalRow], ...]:
    """Tag, state, species, lot, owners, weights, hook and day."""
    return (*_who(bench), *_what(bench))


def _who(bench: "Bench") -> tuple[Column[AnimalRow], ...]:
    return (
        Column(
            "tag",
            lambda: QCoreApplication.translate("AnimalList", "Tag"),
            lambda row: row.tag or "—",
            width=80,
        ),
        Column(
            "state",
            lambda: QCoreApplication.translate("AnimalList", "State"),
            lambda row: state_words(row.state, row.regime, bench.words, on_hold=row.on_hold),
            kind="state",
            sort=lambda row: ANIMAL_STATES.index(row.state),
            mark=lambda row: state_mark(row.state, on_hold=row.on_hold),
            width=128,
        ),
        Column(
            "species",
            lambda: QCoreApplication.translate("AnimalList", "Animal"),
            lambda row: bench.words.name(row.species, f"species.{row.species}"),
            width=80,
        ),
        Column(
            "lot",
            lambda: QCoreApplication.translate("AnimalList", "Lot"),
            lambda row: str(row.lot_number),
            sort=lambda row: (row.lot_number, row.index),
            width=56,
        ),
        Column(
            "owners",
            lambda: QCoreApplication.translate("AnimalList", "Owners"),
            lambda row: row.owners,
            stretch=True,
        ),
    )


def _what(bench: "Bench") -> tuple[Column[AnimalRow], ...]:
    return (
        pounds_column(
            "live",
            lambda: QCoreApplication.translate("AnimalList", "Live"),
            lambda row: row.live_ng,
        ),
        pounds_column(
            "hot", lambda: QCoreApplication.translate("AnimalList", "Hot"), lambda row: row.hot_ng
        ),
        Column(
            "hook",
            lambda: QCoreApplication.translate("AnimalList", "Hangs at"),
            lambda row: row.place,
            width=88,
        ),
        Column(
            "day",
            lambda: QCoreApplication.translate("AnimalList", "Day"),
            lambda row: day_text(row.day, bench.words.language),
            sort=lambda row: row.day,
            width=108,
        ),
    )
