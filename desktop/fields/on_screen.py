"""A dialog never higher than its screen: what has no room is scrolled, its buttons stay in view."""

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QLineEdit, QScrollArea, QVBoxLayout, QWidget

from desktop.look.space import TOGETHER, column

TITLE = 32  # of a window that isn't framed yet
LEAST_IN_VIEW = 120


def screen_of(dialog: QWidget) -> QRect:
    """What the screen has for windows: without its bar, 728 of 768 pixels."""
    screen = dialog.screen() or QGuiApplication.primaryScreen()
    return screen.availableGeometry()


def room_of(dialog: QWidget) -> int:
    """How high the dialog may be, its title left out: 696 where the screen has 728 pixels."""
    title = dialog.frameGeometry().height() - dialog.height()
    return screen_of(dialog).height() - max(title, TITLE)


def keep_on_screen(dialog: QDialog) -> None:
    """Move it up where it has grown over the lower edge of the screen."""
    there, framed = screen_of(dialog), dialog.frameGeometry()
    if framed.bottom() > there.bottom():
        dialog.move(framed.x(), max(there.top(), there.bottom() + 1 - framed.height()))


def bring_into(area: QScrollArea, widget: QWidget) -> None:
    """Scroll so that the whole widget is seen; Qt is content with its text cursor."""
    inside = area.widget()
    if inside is None:
        return
    middle = widget.mapTo(inside, widget.rect().center())
    area.ensureVisible(middle.x(), middle.y(), 0, widget.height() // 2 + TOGETHER)


def scroll_between(layout: QVBoxLayout, first: QWidget, last: QWidget) -> QScrollArea:
    """Put what lies between two widgets of a layout into an area that scrolls; it stays as it is.

    What was hidden is hidden afterwards; what has the keyboard has it, and doesn't know that it
    was without it, so that what is half typed in it is neither taken nor complained of.
    """
    window = first.window()
    area = QScrollArea(window)
    area.setWidgetResizable(True)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    inside = QWidget(area)
    with _keyboard_kept(window):
        _move(layout, layout.indexOf(first) + 1, last, column(inside, gap=layout.spacing()))
        area.setWidget(inside)
        layout.insertWidget(layout.indexOf(first) + 1, area, 1)
        area.show()
    bar = area.verticalScrollBar().sizeHint().width()
    area.setMinimumSize(inside.minimumSizeHint().width() + bar, LEAST_IN_VIEW)
    return area


def _move(layout: QVBoxLayout, at: int, last: QWidget, down: QVBoxLayout) -> None:
    while layout.indexOf(last) > at:
        item = layout.takeAt(at)
        widget = None if item is None else item.widget()
        assert widget is not None, "only widgets stand between"
        hidden = widget.isHidden()
        down.addWidget(widget)
        widget.setVisible(not hidden)


@contextmanager
def _keyboard_kept(window: QWidget) -> Iterator[None]:
    """Qt takes the keyboard from what is put elsewhere; give it back as it was."""
    focused = window.focusWidget()
    lines = [] if focused is None else focused.findChildren(QLineEdit)
    if isinstance(focused, QLineEdit):
        lines.append(focused)
    marked = [(one, one.cursorPosition(), one.selectionStart()) for one in lines]
    marks = [len(one.selectedText()) for one in lines]
    for one in lines:
        one.blockSignals(True)
    yield
    if focused is not None:
        focused.setFocus(Qt.FocusReason.PopupFocusReason)  # the reason that selects nothing
    for (one, cursor, begin), length in zip(marked, marks, strict=True):
        one.blockSignals(False)
        if begin >= 0:
            one.setSelection(begin, length)
        else:
            one.setCursorPosition(cursor)
