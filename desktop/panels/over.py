"""How large a list opens over the window: what it needs, and all there is on a large screen."""

from PySide6.QtWidgets import QDialog

from desktop.look.space import EDGE

MOST_WIDE, MOST_HIGH = 1720, 960  # wider, and the eye loses the row


def open_over(dialog: QDialog, width: int, height: int) -> None:
    """At least so many pixels, and as much more as the window below it leaves at its edges.

    1340 by 660 over a window of 1366 by 696 is that; over 1920 by 1010 it is 1720 by 960.
    """
    over = dialog.parentWidget()
    if over is not None:
        room = over.window().size()
        width = max(width, min(room.width() - 2 * EDGE, MOST_WIDE))
        height = max(height, min(room.height() - 2 * EDGE, MOST_HIGH))
    dialog.resize(width, height)
