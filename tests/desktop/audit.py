"""Asks of any window: has all that takes the keyboard a name, and in which order does Tab go."""

import re
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QApplication,
    QLabel,
    QWidget,
)

_NAMED_BY_OTHERS = {"qt_spinbox_lineedit", "qt_scrollarea_viewport"}


def takes_keyboard(widget: QWidget) -> bool:
    """Whether Tab can come here."""
    return (
        bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
        and widget.isEnabled()
        and widget.objectName() not in _NAMED_BY_OTHERS
        and not isinstance(widget.parentWidget(), QAbstractSpinBox)
    )


def unnamed(window: QWidget) -> list[str]:
    """Everything that takes the keyboard and tells a screen reader no name."""
    return [
        f"{type(widget).__name__} in {type(widget.parentWidget()).__name__}"
        for widget in [window, *window.findChildren(QWidget)]
        if takes_keyboard(widget) and not spoken_name(widget)
    ]


def spoken_name(widget: QWidget) -> str:
    """The name a screen reader says of a widget."""
    interface = QAccessible.queryAccessibleInterface(widget)
    if interface is None:
        return ""
    name = interface.text(QAccessible.Text.Name).strip()
    proxy = widget.focusProxy()
    if not name and proxy is not None:
        return spoken_name(proxy)
    # A combo box says its value where its name should be: only a name set on purpose counts.
    return widget.accessibleName() if widget.inherits("QComboBox") else name


def tab_order(window: QWidget, most: int = 200) -> list[QWidget]:
    """The widgets Tab goes through, from the one that has the keyboard until it comes round."""
    first = QApplication.focusWidget()
    assert first is not None, "nothing in the window has the keyboard"
    order = [first]
    for _ in range(most):
        QTest.keyClick(order[-1], Qt.Key.Key_Tab)
        now = QApplication.focusWidget()
        assert now is not None, "Tab lost the keyboard"
        if now is first:
            return order
        assert now not in order, f"Tab never comes back past {spoken_name(now)!r}"
        order.append(now)
    raise AssertionError(f"Tab does not come round within {most} steps")


def out_of_reading_order(order: list[QWidget], window: QWidget) -> list[str]:
    """Steps of Tab that go up by more than a row without going to a new column at the right."""
    wrong: list[str] = []
    for before, after in pairwise(order):
        here = before.mapTo(window, before.rect().topLeft())
        there = after.mapTo(window, after.rect().topLeft())
        goes_up = there.y() < here.y() - 8
        if goes_up and there.x() <= here.x() and not isinstance(after, QAbstractScrollArea):
            wrong.append(f"{spoken_name(before)} -> {spoken_name(after)}")
    return wrong


def twin_letters(window: QWidget) -> dict[str, list[str]]:
    """Alt letters that more than one thing in sight of a window answers to, with their words."""
    found: dict[str, list[str]] = {}
    for one in window.findChildren(QWidget):
        if not isinstance(one, (QLabel, QAbstractButton)) or not one.isVisibleTo(window):
            continue
        if isinstance(one, QLabel) and one.buddy() is None:
            continue  # its letter leads nowhere, as an "&" of somebody's name
        letter = re.search(r"&([^&\s])", one.text().replace("&&", ""))
        if letter and one.isEnabled():
            found.setdefault(letter[1].lower(), []).append(one.text())
    return {letter: texts for letter, texts in found.items() if len(texts) > 1}
