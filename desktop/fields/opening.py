"""Waiting until a dialog that was opened has the keyboard, so that no key typed meanwhile is lost.

Where another program gives windows the keyboard (X11), a dialog has it only some time after it is
shown. A key pressed in between comes to the window below, which the dialog has blocked, and Qt
drops it: who typed "kabob" at the table found "kbob" in the dialog. Keys and clicks are held
back meanwhile; they come to the dialog afterwards, in their order.
"""

from PySide6.QtCore import QEvent, QEventLoop, QObject, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

AT_MOST_MS = 1000
GIVEN_LATER = ("xcb",)  # elsewhere a window that is shown has the keyboard at once


class _Opening(QObject):
    """Ends the loop when the dialog has the keyboard or is gone."""

    def __init__(self, loop: QEventLoop) -> None:
        super().__init__()
        self._loop = loop

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.WindowActivate, QEvent.Type.Hide):
            self._loop.quit()
        return super().eventFilter(watched, event)


def wait_for_keyboard(dialog: QWidget) -> None:
    """Return once the dialog has the keyboard; at once where its parent's window hasn't it."""
    over, platform = dialog.parentWidget(), QGuiApplication.platformName()
    if platform not in GIVEN_LATER or over is None or not over.isActiveWindow():
        return
    if dialog.isActiveWindow():
        return
    loop = QEventLoop()
    opening = _Opening(loop)
    dialog.installEventFilter(opening)
    QTimer.singleShot(AT_MOST_MS, loop, loop.quit)
    loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
