"""Headings and quiet words in the type scale, and the hairline that divides."""

from typing import Literal

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QWidget

from desktop.look.type_scale import Size

Role = Literal["", "quiet", "complaint", "settled", "tight", "contested"]


class Words(QLabel):
    """Words on the page: a size of the scale and, if need be, a role's colour."""

    def __init__(self, size: Size = "body", role: Role = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("role", role)
        self.setProperty("type", size)  # the style reads both when it is first asked for

    def set_role(self, role: Role) -> None:
        """Another role's colour, e.g. from quiet to contested."""
        if self.property("role") != role:
            self.setProperty("role", role)
            self.style().unpolish(self)
            self.style().polish(self)

    def wrapped(self) -> "Words":
        """Let the words take as many lines as they need; returns itself."""
        self.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        return self


def line(parent: QWidget | None = None, *, upright: bool = False) -> QFrame:
    """A hairline, lying or upright."""
    frame = QFrame(parent)
    frame.setProperty("line", "true")
    if upright:
        frame.setFixedWidth(1)
    else:
        frame.setFixedHeight(1)
    return frame
