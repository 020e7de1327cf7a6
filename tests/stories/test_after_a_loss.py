"""After a part was recorded as gone the keyboard is still at the Rail."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.rail.correction import CorrectionDialog
from tests.stories.one_shop import OneShop

Key = Qt.Key


def test_f8_corrects_a_weight_right_after_f9(qtbot: QtBot, bench: Bench) -> None:
    """Recording a loss makes the buttons anew, one of which had the keyboard."""
    shop = OneShop(qtbot, bench)
    shop.book("beef", "Hale 555 010 0100", "whole", ["Abbott 555 010 0111"])
    rail = shop.check_in("41")
    shop.weigh("1290 lb", "397.5 lb", "389.25 lb")
    shop.lose(rail, part="liver", how="discarded by the plant", reason="flukes")
    shop.keys.press(Key.Key_F8)
    assert isinstance(rail.dialog, CorrectionDialog)
