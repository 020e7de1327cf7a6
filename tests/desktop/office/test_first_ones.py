"""The first rate card and the first recipe: the keyboard is in the list that holds them."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.office.rates_page import RatesPage
from desktop.office.recipes_page import RecipesPage
from tests.desktop.typing_in import type_into

CTRL = Qt.KeyboardModifier.ControlModifier


def shown(qtbot: QtBot, page: RatesPage | RecipesPage) -> None:
    qtbot.addWidget(page)
    page.resize(1366, 560)
    page.show()
    page.refresh()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    page.first_focus().setFocus()


def kept(qtbot: QtBot, page: QWidget, dialog: QWidget) -> None:
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    QTest.keyClick(dialog, Qt.Key.Key_Return, CTRL)
    assert not dialog.isVisible()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)


def test_enter_changes_the_recipe_that_was_the_first(qtbot: QtBot, bench: Bench) -> None:
    """The keyboard stayed on the button that begins one, where Enter did nothing."""
    page = RecipesPage(bench)
    shown(qtbot, page)
    QTest.keyClick(page.new, Qt.Key.Key_N, CTRL)
    first = page.dialog
    type_into(first.name.line, "House links")
    first.finish.set_value("seasoned")
    first.ingredients.set_value("2 salt")
    kept(qtbot, page, first)
    assert page.focusWidget() is page.recipes
    QTest.keyClick(page.recipes, Qt.Key.Key_Return)
    assert page.dialog is not first
    assert page.dialog.name.text() == "House links"


def test_the_keyboard_is_in_the_list_of_the_first_card(qtbot: QtBot, bench: Bench) -> None:
    page = RatesPage(bench)
    shown(qtbot, page)
    QTest.keyClick(page.new, Qt.Key.Key_N, CTRL)
    type_into(page.dialog.name.line, "House")
    type_into(page.dialog.rate.line, "25")
    QTest.keyClick(page.dialog.rate.line, Qt.Key.Key_Return)
    kept(qtbot, page, page.dialog)
    assert page.focusWidget() is page.cards
