"""A finished paper in the window: look at it, print it on any printer, or save it as PDF."""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QImage, QKeyEvent, QKeySequence, QPixmap, QShortcut, QShowEvent
from PySide6.QtWidgets import QDialog, QLabel, QScrollArea, QWidget
from shiboken6 import isValid

from desktop.fields import ChoiceField, CountField
from desktop.file_out import write_out
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words, line
from desktop.printers import Kind, PageSize, PrintProblem, page_image, page_sizes

if TYPE_CHECKING:
    from desktop.bench import Bench

Told = Callable[[PrintProblem | None], object]
Sends = Callable[[str, int, Told], object]
ZOOMS = (50, 75, 100, 150, 200, 300)
MOST_TO_FIT = 200


class PageView(QScrollArea):
    """One page at a zoom in percent of its size on paper, at 96 dots to the inch."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._label = QLabel(self)
        self._label.setFrameShape(QLabel.Shape.Box)
        self._label.setProperty("sheet", "true")
        self._label.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setWidget(self._label)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Leave what turns the pages to the paper: a scroll area takes it, full page or not."""
        if event.key() in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            event.ignore()
        else:
            super().keyPressEvent(event)

    def show_image(self, image: QImage) -> None:
        """Show a page already drawn at the zoom wanted."""
        pixmap = QPixmap.fromImage(image)
        pixmap.setDevicePixelRatio(self.devicePixelRatioF())
        self._label.setPixmap(pixmap)
        self._label.resize(pixmap.deviceIndependentSize().toSize() + QSize(2, 2))

    def image_size(self) -> QSize:
        """The size of what is shown, in logical pixels."""
        return self._label.size() - QSize(2, 2)

    def room(self) -> QSize:
        """The space for a page, in logical pixels."""
        return self.viewport().size() - QSize(2 * GROUP, 2 * GROUP)


class Preview(QDialog):
    """Shows a PDF's pages; Page up and down turn them, Ctrl+P prints, Ctrl+S saves.

    `sends` hands it to a printer and calls back with the problem or None: a place has its own
    where what goes to a printer is kept in mind, though the preview be closed meanwhile.
    """

    def __init__(
        self,
        bench: "Bench",
        pdf: bytes,
        title: str,
        kind: Kind = "paper",
        parent: QWidget | None = None,
        sends: Sends | None = None,
    ) -> None:
        super().__init__(parent)
        self.bench = bench
        self._sends = sends or self._send
        self.pdf = pdf
        self.kind: Kind = kind
        self._title = title
        self.page = 0
        self.pages: list[PageSize] = page_sizes(pdf)
        self.zoom = 100
        self.setWindowFlag(Qt.WindowType.WindowMaximizeButtonHint)
        self.resize(1080, 680)
        self._build()
        self._connect()
        self.retranslate()
        self.turn(0)
        self.view.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.zoom = self.fitting(MOST_TO_FIT)
        self.turn(self.page)

    def fitting(self, most: int) -> int:
        """The zoom at which the whole page is seen, at most so much, in steps of 5 percent."""
        page, room = self.pages[self.page], self.view.room()
        across = room.width() * 100 * 72 / (page.width * 96)
        down = room.height() * 100 * 72 / (page.height * 96)
        return max(min(int(across), int(down), most) // 5 * 5, ZOOMS[0])

    def _build(self) -> None:
        self.view = PageView(self)
        self.where = Words("small", "quiet", self)
        self.printer: ChoiceField[str] = ChoiceField(self)
        self.copies = CountField(self, least=1, most=999)
        self.copies.set_value(1)
        self.print_button = button(self, main=True)
        self.save_button = button(self)
        self.smaller = button(self, quiet=True)
        self.larger = button(self, quiet=True)
        self.leave = button(self)
        self.said = Words("body", "complaint", self).wrapped()
        self.said.hide()
        side = QWidget(self)
        side.setFixedWidth(280)
        down = column(side, gap=GROUP, edge=EDGE)
        self.heading = Words("group", parent=side).wrapped()
        for part in (self.heading, self.printer, self.copies, self.print_button, self.said):
            down.addWidget(part)
        down.addWidget(line(side))
        self.ways = column(gap=TOGETHER)
        self.ways.addWidget(self.save_button)
        down.addLayout(self.ways)
        sizes = row(gap=TOGETHER)
        for part in (self.where, self.smaller, self.larger):
            sizes.addWidget(part)
        sizes.insertStretch(1, 1)
        down.addLayout(sizes)
        down.addStretch(1)
        down.addWidget(self.leave)
        across = row(self, gap=0)
        across.addWidget(self.view, 1)
        across.addWidget(line(self, upright=True))
        across.addWidget(side)

    def _connect(self) -> None:
        names = self.bench.printers.names()
        self.printer.set_choices([(name, name) for name in names])
        usual = self.bench.printers.usual(self.kind)
        self.printer.set_value(usual or (names[0] if len(names) == 1 else None))
        self.printer.setVisible(bool(names))
        self.copies.setVisible(bool(names))
        self.print_button.setEnabled(bool(names))
        self.print_button.clicked.connect(self.print_it)
        self.save_button.clicked.connect(self.save_it)
        self.leave.clicked.connect(self.accept)
        self.smaller.clicked.connect(self._zoom_out)
        self.larger.clicked.connect(self._zoom_in)
        for keys, slot in (
            ("Ctrl+P", self.print_it),
            ("Ctrl+S", self.save_it),
            ("Ctrl++", self._zoom_in),
            ("Ctrl+-", self._zoom_out),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(slot)

    def retranslate(self) -> None:
        """Every word of the preview."""
        self.setWindowTitle(self._title)
        self.heading.setText(self._title)
        self.view.setAccessibleName(self.tr("Page"))
        self.printer.set_label(self.tr("P&rinter"))
        self.copies.set_label(self.tr("&Copies"))
        self.print_button.setText(self.tr("&Print"))
        self.save_button.setText(self.tr("&Save as PDF…"))
        self.smaller.setText("−")
        self.smaller.setAccessibleName(self.tr("Smaller"))
        self.larger.setText("+")
        self.larger.setAccessibleName(self.tr("Larger"))
        self.leave.setText(self.tr("C&lose"))
        if not self.bench.printers.names():
            self._say(self.tr("This computer has no printer set up. Save it as PDF instead."))
        self._tell_where()

    def turn(self, page: int) -> None:
        """Show a page, counted from 0; past either end nothing happens."""
        if not 0 <= page < len(self.pages):
            return
        self.page = page
        dots = 96 * self.zoom / 100 * self.devicePixelRatioF()
        self.view.show_image(page_image(self.pdf, page, dots))
        self._tell_where()

    def print_it(self) -> None:
        """Send it to the chosen printer from a worker; a refusal stands here as a sentence."""
        if not self.print_button.isEnabled():
            return
        self._say("")
        printer, copies = self.printer.value(), self.copies.value()
        if printer is None or copies is None:
            said = self.printer.problem() or self.tr("Choose a printer.")
            if printer is None:
                self.printer.complain(said)
                self.printer.focus()
            else:
                self.copies.show_problem()
                self.copies.focus()
            return
        self.print_button.setEnabled(False)
        self._sends(printer, copies, self._printed)

    def _send(self, printer: str, copies: int, then: Told) -> None:
        self.bench.work.run(self.bench.printers.send, self.pdf, printer, copies, then=then)

    def file_name(self) -> str:
        """The title as a file's name, without what a file system may refuse."""
        return "".join(c if c.isalnum() or c in " -_" else " " for c in self._title).strip()

    def save_it(self) -> None:
        """Write the PDF where the person says."""
        suggested = Path.home() / f"{self.file_name()}.pdf"
        path = self.bench.messages.save_where(self.tr("Save as PDF"), suggested, "PDF (*.pdf)")
        if path is not None:
            write_out(self.bench, path, lambda: self.pdf, self._say, self)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_PageDown:
            self.turn(self.page + 1)
        elif event.key() == Qt.Key.Key_PageUp:
            self.turn(self.page - 1)
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()

    def _printed(self, problem: PrintProblem | None) -> None:
        if not isValid(self):  # closed while the printer had it
            return
        self.print_button.setEnabled(True)
        printer = self.printer.value()
        if problem is None:
            if printer is not None:
                self.bench.printers.remember(self.kind, printer)
            self.accept()
            return
        self._say(self.sentence(problem))

    def sentence(self, problem: PrintProblem) -> str:
        """Why it was not printed, and what would work."""
        words = {
            "gone": self.tr("The printer {printer} is gone. Choose another, or save as PDF."),
            "refused": self.tr(
                "The printer {printer} did not take it. See that it is on and has paper, "
                "then print again."
            ),
            "broken": self.tr("This paper can't be read, so it was not printed."),
        }[problem.code]
        return words.format(printer=problem.printer)

    def _say(self, sentence: str) -> None:
        self.said.setText(sentence)
        self.said.setVisible(bool(sentence))

    def _tell_where(self) -> None:
        self.where.setText(
            self.tr("Page {page} of {pages}, {zoom} %").format(
                page=self.page + 1, pages=len(self.pages), zoom=self.zoom
            )
        )

    def _zoom_in(self) -> None:
        self._zoom_to(next((zoom for zoom in ZOOMS if zoom > self.zoom), ZOOMS[-1]))

    def _zoom_out(self) -> None:
        self._zoom_to(next((zoom for zoom in reversed(ZOOMS) if zoom < self.zoom), ZOOMS[0]))

    def _zoom_to(self, zoom: int) -> None:
        self.zoom = zoom
        self.turn(self.page)


def show_paper(
    bench: "Bench",
    pdf: bytes,
    title: str,
    kind: Kind = "paper",
    parent: QWidget | None = None,
    sends: Sends | None = None,
) -> Preview:
    """Open a preview over the window and return it; it goes when it is closed."""
    preview = Preview(bench, pdf, title, kind, parent, sends)
    preview.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    preview.open()
    return preview
