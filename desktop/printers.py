"""Printers of this station: which there are, and sending a finished PDF to one of them."""

import logging
import threading
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QMarginsF, QRectF, QSizeF
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo

if TYPE_CHECKING:
    from pypdfium2 import PdfDocument

    from desktop.settings import SettingsFile

log = logging.getLogger(__name__)

Kind = Literal["paper", "label"]
# pdfium may be used by one thread at a time only.
_pdfium = threading.Lock()


@dataclass(frozen=True, slots=True)
class PrintProblem:
    """Why nothing was printed.

    "gone": no such printer; "refused": it would not start; "broken": the document can't be read.
    """

    code: Literal["gone", "refused", "broken"]
    printer: str


@dataclass(frozen=True, slots=True)
class PageSize:
    """A page's size in points (1/72 in), e.g. 288 by 216 for a 4 by 3 in label."""

    width: float
    height: float


def page_sizes(pdf: bytes) -> list[PageSize]:
    """The size of each page. Raises ValueError when the bytes are no PDF."""
    with _pdfium:
        document = _open(pdf)
        try:
            return [PageSize(*document.get_page_size(at)) for at in range(len(document))]
        finally:
            document.close()


def page_image(pdf: bytes, page: int, dots_per_inch: float) -> QImage:
    """One page (counted from 0) on white, e.g. 203 dots to the inch for a label printer."""
    with _pdfium:
        document = _open(pdf)
        try:
            bitmap = document[page].render(
                scale=dots_per_inch / 72,  # pyright: ignore[reportArgumentType]
                rev_byteorder=True,
            )
            raw = bytes(bitmap.buffer)
            formats = {
                1: QImage.Format.Format_Grayscale8,
                3: QImage.Format.Format_RGB888,
                4: QImage.Format.Format_RGBX8888,
            }
            shape = formats[bitmap.n_channels]
            image = QImage(raw, bitmap.width, bitmap.height, bitmap.stride, shape).copy()
            bitmap.close()
            return image
        finally:
            document.close()


class Printers:
    """What can be printed on, and which printer was last used for a kind of paper."""

    def __init__(self, settings: "SettingsFile") -> None:
        self._settings = settings

    def names(self) -> list[str]:
        """The printers the system knows now."""
        return list(QPrinterInfo.availablePrinterNames())

    def usual(self, kind: Kind) -> str:
        """The printer last used for this kind if it is still there, else the system's, else ""."""
        names = self.names()
        remembered = self._settings.now.printers.get(kind, "")
        if remembered in names:
            return remembered
        fallback = QPrinterInfo.defaultPrinterName()
        return fallback if fallback in names and kind == "paper" else ""

    def remember(self, kind: Kind, printer: str) -> None:
        """Use this printer for this kind from now on."""
        self._settings.change(printers={**self._settings.now.printers, kind: printer})

    def send(self, pdf: bytes, printer: str, copies: int = 1) -> PrintProblem | None:
        """Print every page on the named printer at its own resolution; None when it is sent.

        May run on a worker thread.
        """
        info = QPrinterInfo.printerInfo(printer)
        if info.isNull():
            return PrintProblem("gone", printer)
        return draw(pdf, QPrinter(info, QPrinter.PrinterMode.HighResolution), copies)


def draw(pdf: bytes, device: QPrinter, copies: int = 1) -> PrintProblem | None:
    """Draw every page on a printing device, each on a sheet of its own size."""
    try:
        sizes = page_sizes(pdf)
    except ValueError:
        return PrintProblem("broken", device.printerName())
    device.setCopyCount(copies)
    device.setFullPage(True)
    device.setPageLayout(_layout(sizes[0]))
    painter = QPainter()
    if not painter.begin(device):
        return PrintProblem("refused", device.printerName())
    try:
        for at, size in enumerate(sizes):
            if at:
                device.setPageLayout(_layout(size))
                if not device.newPage():
                    return PrintProblem("refused", device.printerName())
            dots = device.resolution()
            image = page_image(pdf, at, min(dots, 600))
            target = QRectF(0, 0, size.width * dots / 72, size.height * dots / 72)
            painter.drawImage(target, image)
    finally:
        painter.end()
    return None


def _layout(size: PageSize) -> QPageLayout:
    wide = size.width > size.height
    upright = QSizeF(min(size.width, size.height), max(size.width, size.height))
    turn = QPageLayout.Orientation.Landscape if wide else QPageLayout.Orientation.Portrait
    match = QPageSize.SizeMatchPolicy.FuzzyOrientationMatch
    return QPageLayout(
        QPageSize(upright, QPageSize.Unit.Point, "", match), turn, QMarginsF(0, 0, 0, 0)
    )


def _open(pdf: bytes) -> "PdfDocument":
    import pypdfium2  # 40 ms and 9 MB: only when something is printed or shown

    try:
        document = pypdfium2.PdfDocument(pdf)
    except pypdfium2.PdfiumError as fault:
        raise ValueError(f"not a PDF: {fault}") from fault
    if len(document) == 0:
        document.close()
        raise ValueError("a PDF without pages")
    return document
