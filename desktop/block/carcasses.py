"""The carcasses that hang with a released sheet, or are on the block."""

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.look.patterns import Mark
from desktop.tables import Column, figure
from shared.shop.lists import AnimalRow
from shared.units import pounds_text

if TYPE_CHECKING:
    from desktop.bench import Bench


@dataclass(frozen=True, slots=True)
class Waiting:
    """One carcass the block may cut, the sheet it is cut from, and whether that was read."""

    animal: AnimalRow
    sheet: int
    read: bool
    days: int


def waiting(bench: "Bench") -> list[Waiting]:
    """Carcasses on the block first, then those that hang longest; two queries."""
    today = bench.today()
    with bench.store.read() as work:
        orders = work.orders.list(states=("released",))
        animals = work.animals.list(states=("hanging", "on_block"), sort="hung")
    sheets: dict[int, tuple[int, bool]] = {}
    for one in orders:
        number, read = sheets.get(one.lot_id, (0, True))
        sheets[one.lot_id] = (max(number, one.sheet), read and one.acknowledged >= one.sheet)
    found = [
        Waiting(one, *sheets[one.lot_id], _days(one, today))
        for one in animals
        if one.lot_id in sheets
    ]
    return sorted(found, key=lambda one: one.animal.state != "on_block")


def _days(one: AnimalRow, today: date) -> int:
    """Days since it was hung, as the cooler counts them: by the calendar, the day itself is 0."""
    return (today - one.hung_at.astimezone().date()).days if one.hung_at else 0


def carcass_columns(bench: "Bench") -> tuple[Column[Waiting], ...]:
    """Tag, species, owners, days, hook, weight, sheet."""
    return (*_who(bench), *_what(bench))


def _who(bench: "Bench") -> tuple[Column[Waiting], ...]:
    return (
        Column(
            "tag",
            lambda: QCoreApplication.translate("BlockList", "Tag"),
            lambda one: one.animal.tag,
            width=110,
        ),
        Column(
            "species",
            lambda: QCoreApplication.translate("BlockList", "Animal"),
            lambda one: bench.words.name(one.animal.species, f"species.{one.animal.species}"),
            width=116,
        ),
        Column(
            "owners",
            lambda: QCoreApplication.translate("BlockList", "Owners"),
            lambda one: one.animal.owners,
            stretch=True,
            width=200,
            tip=lambda one: one.animal.owners,
        ),
        Column(
            "days",
            lambda: QCoreApplication.translate("BlockList", "Days"),
            lambda one: str(one.days),
            kind="figure",
            sort=lambda one: one.days,
            width=72,
        ),
    )


def _what(bench: "Bench") -> tuple[Column[Waiting], ...]:
    return (
        Column(
            "hook",
            lambda: QCoreApplication.translate("BlockList", "Hangs at"),
            lambda one: one.animal.place,
            width=110,
        ),
        Column(
            "hot",
            lambda: QCoreApplication.translate("BlockList", "Hot"),
            lambda one: figure(pounds_text(one.animal.hot_ng)) if one.animal.hot_ng else "",
            kind="figure",
            sort=lambda one: one.animal.hot_ng,
            width=140,
        ),
        Column(
            "sheet",
            lambda: QCoreApplication.translate("BlockList", "Sheet"),
            _sheet,
            kind="state",
            mark=lambda one: Mark.PLAIN if one.read else Mark.TIGHT,
            width=205,
        ),
        Column(
            "state",
            lambda: QCoreApplication.translate("BlockList", "State"),
            lambda one: bench.words.name("", f"state.{one.animal.state}"),
            width=164,
        ),
    )


def _sheet(one: Waiting) -> str:
    text = (
        QCoreApplication.translate("BlockList", "sheet {number}")
        if one.read
        else QCoreApplication.translate("BlockList", "sheet {number}, new")
    )
    return text.format(number=one.sheet)
