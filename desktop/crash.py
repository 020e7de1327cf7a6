"""What nobody else caught: a fault of ours is reported, what the world refuses is a sentence.

A full disk or records in use isn't a fault of the program, and is never told as one.
"""

import logging
import sys
import threading
import traceback
from types import TracebackType
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPlainTextEdit, QWidget

from desktop.look.space import EDGE, GROUP, column
from desktop.panels.heading import Words

if TYPE_CHECKING:
    from collections.abc import Callable

log = logging.getLogger(__name__)


class CrashCatcher(QObject):
    """Catches what nobody else caught, on any thread, and shows it in the window's thread.

    `of_the_world` answers with a sentence for what the world refuses, and "" for a fault of ours.

    Signals:
        reported: the text of a report that is about to be shown.
        refused: the sentence of what the world refuses.
    """

    reported = Signal(str)
    refused = Signal(str)
    _caught = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.of_the_world: Callable[[BaseException], str] = _ours
        self._report: CrashReport | None = None
        self._before = (sys.excepthook, threading.excepthook)
        self._caught.connect(self._show, Qt.ConnectionType.QueuedConnection)

    def install(self) -> None:
        """Catch from now on."""
        sys.excepthook = self.catch
        threading.excepthook = self._catch_in_thread

    def remove(self) -> None:
        """Put the hooks back that were there before."""
        sys.excepthook, threading.excepthook = self._before

    def catch(
        self,
        kind: type[BaseException],
        fault: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """First the shell and the log, then the dialog in the window's thread."""
        text = "".join(traceback.format_exception(kind, fault, trace))
        if sys.stderr is not None:  # there is none where no shell started the program
            sys.stderr.write(text)
        if issubclass(kind, KeyboardInterrupt):
            return
        said = "" if fault is None else self.of_the_world(fault)
        if said:
            log.error("the world refuses:\n%s", text)
            self.refused.emit(said)
            return
        log.critical("a fault of the program:\n%s", text)
        self._caught.emit(text)

    def _catch_in_thread(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_type is not SystemExit:
            self.catch(args.exc_type, args.exc_value, args.exc_traceback)

    @Slot(str)
    def _show(self, text: str) -> None:
        if self._report is not None:
            return
        self.reported.emit(text)
        # Kept here, for a dialog without a parent goes as soon as nobody holds it.
        self._report = CrashReport(text)
        self._report.finished.connect(self._shown)
        self._report.open()
        QTimer.singleShot(0, self._report.raise_)

    @Slot()
    def _shown(self) -> None:
        if self._report is not None:
            self._report.deleteLater()
        self._report = None


def _ours(_fault: BaseException) -> str:
    return ""


class CrashReport(QDialog):
    """What happened, that the records are safe, and the report to copy."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setMinimumSize(640, 400)
        self.setWindowTitle(self.tr("Steelyard has a fault"))
        lead = Words("group", parent=self).wrapped()
        lead.setText(self.tr("Something in the program went wrong."))
        rest = Words(parent=self).wrapped()
        rest.setText(
            self.tr(
                "What was saved is safe, and you can go on working. If it happens again, copy "
                "this report and send it to whoever looks after the program."
            )
        )
        self.report = QPlainTextEdit(text, self)
        self.report.setReadOnly(True)
        self.report.setTabChangesFocus(True)
        self.report.setAccessibleName(self.tr("Report"))
        buttons = QDialogButtonBox(self)
        copy = buttons.addButton(self.tr("&Copy report"), QDialogButtonBox.ButtonRole.ActionRole)
        close = buttons.addButton(self.tr("C&lose"), QDialogButtonBox.ButtonRole.AcceptRole)
        copy.clicked.connect(self.copy)
        buttons.accepted.connect(self.accept)
        close.setDefault(True)
        layout = column(self, gap=GROUP, edge=EDGE)
        for part in (lead, rest, self.report, buttons):
            layout.addWidget(part)
        close.setFocus()

    def copy(self) -> None:
        """Put the report on the clipboard."""
        QGuiApplication.clipboard().setText(self.report.toPlainText())
