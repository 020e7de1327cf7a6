"""Log files and Qt's own messages, in one place."""

import logging
import logging.handlers
from pathlib import Path

from PySide6.QtCore import QMessageLogContext, QtMsgType, qInstallMessageHandler

_LEVELS = {
    QtMsgType.QtDebugMsg: logging.DEBUG,
    QtMsgType.QtInfoMsg: logging.INFO,
    QtMsgType.QtWarningMsg: logging.WARNING,
    QtMsgType.QtCriticalMsg: logging.ERROR,
    QtMsgType.QtFatalMsg: logging.CRITICAL,
}
FORMAT = "%(asctime)s %(levelname)s %(name)s: %(message)s"


def write_logs_to(folder: Path) -> Path:
    """Log to `steelyard.log` in a folder, half a megabyte a file, five files; the path of it."""
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / "steelyard.log"
    handler = logging.handlers.RotatingFileHandler(
        path, maxBytes=500_000, backupCount=4, encoding="utf-8", delay=True
    )
    handler.setFormatter(logging.Formatter(FORMAT))
    root = logging.getLogger()
    root.addHandler(handler)
    root.setLevel(logging.INFO)
    return path


def hear_qt() -> None:
    """Send what Qt says to the log instead of the shell."""
    qInstallMessageHandler(_from_qt)


def _from_qt(kind: QtMsgType, _context: QMessageLogContext, message: str) -> None:
    logging.getLogger("qt").log(_LEVELS.get(kind, logging.WARNING), message)
