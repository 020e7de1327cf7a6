"""The cooler on the screen: what is due, wishes, hooks, and temperatures by the shop's limits."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench, Target
from desktop.rail.cooler_dialog import CoolerDialog
from desktop.rail.grades_dialog import GradesDialog
from desktop.rail.seen import see
from shared.shop.cooler import RoomLimits, Temperature
from shared.shop.lots import Lot
from shared.shop.people import SignedOn
from tests.db.examples import arrived, lot_of_halves, moved, weighed
from tests.desktop.audit import unnamed
from tests.desktop.typing_in import type_into
from tests.store_fixture import Clock


@pytest.fixture
def lot(store: Store, signed: SignedOn) -> Lot:
    with store.work(signed.person, signed.station) as work:
        made = lot_of_halves(work, "beef")
        animal = arrived(work, made)
        weighed(work, animal, "367.5", 1)
        weighed(work, animal, "367.5", 2)
        moved(work, animal.id, "passed", "hanging")
        work.cooler.set_limits(RoomLimits("Cooler 1", None, Temperature(400, "F")))
        work.commit()
    return made


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench, lot: Lot) -> CoolerDialog:
    made = CoolerDialog(bench)
    qtbot.addWidget(made)
    made.open()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def shown(dialog: CoolerDialog, key: str) -> str:
    column = next(one for one in dialog.table.rows.columns if one.key == key)
    return str(column.show(dialog.table.rows.row(0)))


def test_it_hangs_until_the_house_s_day(
    qtbot: QtBot, bench: Bench, lot: Lot, clock: Clock, dialog: CoolerDialog
) -> None:
    assert (shown(dialog, "state"), shown(dialog, "wish")) == (
        "hangs",
        "10 to 21",
    )
    # 735 lb less the 2 % of the species file (1 to 2 % in 48 h: Purdue, Lemenager).
    assert shown(dialog, "chilled") == "720.3 lb"
    for days, told in ((10, "due to cut"), (12, "overdue")):
        clock.pass_by(days=days)
        dialog.refresh()
        assert shown(dialog, "state") == told
        counted = f"{int(days == 10)} due to cut, {int(days == 12)} overdue."
        assert dialog.lead.text() == f"1 hang; {counted}"


def test_what_is_on_the_block_is_counted_neither_due_nor_overdue(
    store: Store, signed: SignedOn, lot: Lot, clock: Clock, dialog: CoolerDialog
) -> None:
    with store.work(signed.person, signed.station) as work:
        (animal,) = work.animals.of_lot(lot.id)
        moved(work, animal.id, "on_block")
        work.commit()
    clock.pass_by(days=30)
    dialog.refresh()
    assert shown(dialog, "state") == "on the block"
    assert dialog.lead.text() == "1 hang; 0 due to cut, 0 overdue."


def test_where_there_is_little_room_day_and_state_stay_in_sight(
    qtbot: QtBot, dialog: CoolerDialog
) -> None:
    def hidden() -> list[str]:
        columns = dialog.table.rows.columns
        return [one.key for at, one in enumerate(columns) if dialog.table.isColumnHidden(at)]

    assert hidden() == []
    dialog.resize(1180, 660)
    qtbot.waitUntil(lambda: bool(hidden()))
    assert set(hidden()) <= {"chilled", "wish"}
    qtbot.waitUntil(lambda: dialog.table.horizontalScrollBar().maximum() == 0)


def test_an_owner_s_wish_holds(dialog: CoolerDialog) -> None:
    dialog.say_wish()
    form = dialog.dialog
    assert form is not None
    type_into(form.days.line, "14")  # pyright: ignore
    form.try_it()
    assert shown(dialog, "wish") == "14, wished"


def test_it_hangs_elsewhere(dialog: CoolerDialog, store: Store, lot: Lot) -> None:
    dialog.rehang()
    form = dialog.dialog
    assert form is not None
    type_into(form.place.line, "rail 3")  # pyright: ignore
    form.try_it()
    assert shown(dialog, "place") == "rail 3"


def test_enter_leads_to_the_animal(dialog: CoolerDialog, lot: Lot, qtbot: QtBot) -> None:
    with qtbot.waitSignal(dialog.go) as told:
        QTest.keyClick(dialog.table, Qt.Key.Key_Return)
    assert told.args == [Target("rail", "animal", lot.animals[0].id, lot.id)]


def test_a_warm_room_is_said(dialog: CoolerDialog) -> None:
    panel = dialog.temperatures
    type_into(panel.degrees.line, "38.5")
    QTest.keyClick(panel.degrees.line, Qt.Key.Key_Return)
    assert panel.said.text() == ""
    type_into(panel.degrees.line, "5 C")
    QTest.keyClick(panel.degrees.line, Qt.Key.Key_Return)
    assert "above your limit" in panel.said.text()
    assert [one.temperature.text() for one in panel.table.rows.rows()] == [
        "5.0\u00a0°C",
        "38.5\u00a0°F",
    ]


def test_what_is_no_temperature_is_said_at_the_field(dialog: CoolerDialog, store: Store) -> None:
    panel = dialog.temperatures
    type_into(panel.degrees.line, "cold")
    QTest.keyClick(panel.degrees.line, Qt.Key.Key_Return)
    assert "A temperature" in panel.degrees.complaint.text()
    with store.read() as work:
        assert work.cooler.readings() == ()


def test_all_that_takes_the_keyboard_has_a_name(dialog: CoolerDialog) -> None:
    assert unnamed(dialog) == []


def test_measures_give_their_figures_as_one_types(
    qtbot: QtBot, bench: Bench, lot: Lot, store: Store
) -> None:
    """FT 0.40, KPH 2.5, 735 lb, REA 12.0: 2.95, grade 2 ("How to Yield Grade Beef")."""
    seen = see(bench, lot.animals[0].id)
    assert seen is not None
    form = GradesDialog(bench, seen)
    qtbot.addWidget(form)
    for name, text in (("fat", ".40"), ("ribeye", "12.0"), ("kph", "2.5")):
        type_into(form.measures[name].line, text)
    assert "Grade 2 (2.95), calculated, not a USDA grade." in form.figures.text()
    assert unnamed(form) == []
    form.try_it()
    with store.read() as work:
        measures = work.cooler.measures([lot.animals[0].id])[lot.animals[0].id]
    assert measures == {"fat": "0.40", "ribeye": "12.0", "kph": "2.5"}


def test_a_measure_that_can_t_be_is_said_at_its_field(qtbot: QtBot, bench: Bench, lot: Lot) -> None:
    seen = see(bench, lot.animals[0].id)
    assert seen is not None
    form = GradesDialog(bench, seen)
    qtbot.addWidget(form)
    type_into(form.measures["fat"].line, "40")
    form.try_it()
    assert "A measure" in form.measures["fat"].complaint.text()
