"""Fields in columns: Tab goes as the eye does, whenever each field was made."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.fields import ChoiceField, TextField
from desktop.fields.grid import FieldGrid
from desktop.office.recipe_dialog import RecipeDialog


def tabbed(window: QWidget, times: int) -> list[QWidget]:
    """Where Tab leads from where the keyboard is, press by press."""
    went = []
    for _ in range(times):
        at = window.focusWidget()
        QTest.keyClick(at, Qt.Key.Key_Tab)
        went.append(window.focusWidget())
    return went


def test_tab_goes_in_the_order_laid_not_made(qtbot: QtBot) -> None:
    grid = FieldGrid(2)
    qtbot.addWidget(grid)
    last: ChoiceField[str] = ChoiceField(grid)
    first, middle = TextField(grid), TextField(grid)
    for field in (first, middle, last):
        grid.add(field)
    with qtbot.waitExposed(grid):
        grid.show()
    first.focus()
    assert tabbed(grid, 2) == [middle.editor, last.editor]


def test_a_recipe_asks_its_ingredients_before_their_language(qtbot: QtBot, bench: Bench) -> None:
    dialog = RecipeDialog(bench)
    qtbot.addWidget(dialog)
    with qtbot.waitExposed(dialog):
        dialog.show()
    dialog.species.focus()
    assert tabbed(dialog, 2) == [dialog.ingredients.editor, dialog.looked.editor]
