"""The one door for telling a person something or asking for a decision.

A rule's complaint is not a message: it stands at its field. Tests put a recorder in this door.
"""

import logging
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QMessageBox, QWidget

log = logging.getLogger(__name__)


class Messages(Protocol):
    """What can be said and asked."""

    def tell(self, title: str, text: str, detail: str = "") -> None:
        """Say one thing the person must see: the world says no, or something is done."""
        ...

    def ask(self, title: str, text: str, yes: str, no: str) -> bool:
        """A decision between two verbs; `no` is what Enter and Esc do."""
        ...

    def ask_reason(self, title: str, text: str, *, optional: bool = False) -> str | None:
        """A reason, typed; None when left. Kept without one it is "", where that is `optional`."""
        ...

    def save_where(self, title: str, suggested: Path, kind: str) -> Path | None:
        """A file to write, e.g. kind "PDF (*.pdf)"; None when left."""
        ...

    def open_which(self, title: str, folder: Path, kind: str) -> Path | None:
        """A file to read; None when left."""
        ...


class WindowMessages:
    """Messages as dialogs over the window in use."""

    def tell(self, title: str, text: str, detail: str = "") -> None:
        box = _box(title, text)
        if detail:
            box.setDetailedText(detail)
        close = QCoreApplication.translate("Messages", "Close")
        box.setEscapeButton(box.addButton(close, QMessageBox.ButtonRole.RejectRole))
        box.exec()
        box.deleteLater()

    def ask(self, title: str, text: str, yes: str, no: str) -> bool:
        box = _box(title, text)
        accept = box.addButton(yes, QMessageBox.ButtonRole.AcceptRole)
        refuse = box.addButton(no, QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(refuse)
        box.setEscapeButton(refuse)
        box.exec()
        chosen = box.clickedButton() is accept
        box.deleteLater()
        return chosen

    def ask_reason(self, title: str, text: str, *, optional: bool = False) -> str | None:
        from desktop.reason_dialog import ReasonDialog  # fields: only when something is asked

        asked = ReasonDialog(title, text, _window(), optional=optional)
        accepted = asked.exec() == QDialog.DialogCode.Accepted
        reason = asked.reason
        asked.deleteLater()
        return reason if accepted else None

    def save_where(self, title: str, suggested: Path, kind: str) -> Path | None:
        name, _ = QFileDialog.getSaveFileName(_window(), title, str(suggested), kind)
        return Path(name) if name else None

    def open_which(self, title: str, folder: Path, kind: str) -> Path | None:
        name, _ = QFileDialog.getOpenFileName(_window(), title, str(folder), kind)
        return Path(name) if name else None


class SilentMessages:
    """Messages where nobody sits: everything goes to the log, every question is answered no."""

    def tell(self, title: str, text: str, detail: str = "") -> None:
        log.error("%s: %s %s", title, text, detail)

    def ask(self, title: str, text: str, yes: str, no: str) -> bool:
        log.warning("%s: %s [%s]", title, text, no)
        return False

    def ask_reason(self, title: str, text: str, *, optional: bool = False) -> str | None:
        log.warning("%s: %s", title, text)
        return None

    def save_where(self, title: str, suggested: Path, kind: str) -> Path | None:
        return None

    def open_which(self, title: str, folder: Path, kind: str) -> Path | None:
        return None


def _window() -> QWidget | None:
    found = QApplication.activeModalWidget() or QApplication.activeWindow()
    # The box just answered may still be the active window while it waits to be deleted.
    return found if found is not None and found.isVisible() else None


def _box(title: str, text: str) -> QMessageBox:
    box = QMessageBox(_window())
    box.setWindowTitle(title)
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setText(text)
    box.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return box
