"""The row of steps: what there is no room for is in the menu, and every key leads somewhere."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.counter.order_steps import STEPS, OrderSteps


def steps_of_width(qtbot: QtBot, width: int) -> OrderSteps:
    steps = OrderSteps()
    qtbot.addWidget(steps)
    steps.retranslate()
    steps.name_main("Release to the block  Ctrl+Enter", possible=True)
    steps.resize(width, 40)
    steps.show()
    QApplication.processEvents()
    return steps


@pytest.mark.parametrize("width", [400, 560, 700, 910, 1400])
def test_nothing_is_cut_off_and_the_menu_has_all_of_it(qtbot: QtBot, width: int) -> None:
    steps = steps_of_width(qtbot, width)
    shown = [one for one in (steps.main, *steps.buttons.values(), steps.more) if one.isVisible()]
    for one in shown:
        assert one.width() >= one.sizeHint().width()
        assert one.geometry().right() <= width
    assert len(steps.menu.actions()) == len(STEPS)


def test_with_room_the_usual_steps_stand_on_buttons(qtbot: QtBot) -> None:
    steps = steps_of_width(qtbot, 1400)
    assert [code for code, one in steps.buttons.items() if one.isVisible()] == [
        "usual",
        "last_time",
        "note",
    ]


def test_every_step_is_said_by_menu_and_key(qtbot: QtBot) -> None:
    steps = steps_of_width(qtbot, 910)
    wanted: list[str] = []
    steps.wanted.connect(wanted.append)
    for action in steps.menu.actions():
        action.trigger()
    assert wanted == [step.code for step in STEPS]
    assert len({step.keys for step in STEPS}) == len(STEPS)


def test_the_main_step_is_pressed_once(qtbot: QtBot) -> None:
    steps = steps_of_width(qtbot, 910)
    wanted: list[str] = []
    steps.wanted.connect(wanted.append)
    qtbot.mouseClick(steps.main, Qt.MouseButton.LeftButton)
    steps.name_main("Handed over", possible=False)
    qtbot.mouseClick(steps.main, Qt.MouseButton.LeftButton)
    assert wanted == ["main"]
