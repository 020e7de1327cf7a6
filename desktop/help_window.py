"""The manual in the program: a page for each place, opened by F1, without any network."""

import logging
from pathlib import Path

from PySide6.QtCore import QEvent, Qt, QUrl
from PySide6.QtGui import QTextCharFormat, QTextCursor, QTextDocument, QTextTable
from PySide6.QtWidgets import QDialog, QTextBrowser, QWidget

from desktop.look.space import EDGE, GROUP, STEP, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button

log = logging.getLogger(__name__)
PAGES = Path(__file__).parent / "help"
FIRST_PAGE = "contents"


def page_path(page: str, language: str) -> Path:
    """The file of a page; in English when the language has none, the contents when nobody has."""
    for folder in (language, "en"):
        path = PAGES / folder / f"{page}.md"
        if path.exists():
            return path
    return PAGES / "en" / f"{FIRST_PAGE}.md"


class HelpWindow(QDialog):
    """One page at a time, with links between them; Alt+Left goes back, Esc closes."""

    def __init__(self, page: str, language: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(760, 620)
        self.language = language
        self.text = QTextBrowser(self)
        self.text.setOpenExternalLinks(False)
        self.text.document().setDocumentMargin(EDGE)
        self.text.setFrameShape(QTextBrowser.Shape.NoFrame)
        self.contents = button(self)
        self.back = button(self)
        self.leave = button(self)
        self.back.setEnabled(False)
        self.text.sourceChanged.connect(self._set_type)
        self.text.backwardAvailable.connect(self.back.setEnabled)
        self.back.clicked.connect(self.text.backward)
        self.contents.clicked.connect(self._to_contents)
        self.leave.clicked.connect(self.accept)
        feet = row(gap=TOGETHER)
        for part in (self.contents, self.back, self.leave):
            feet.addWidget(part)
        feet.insertStretch(2, 1)
        layout = column(self, gap=TOGETHER, edge=GROUP)
        layout.addWidget(self.text, 1)
        layout.addLayout(feet)
        self.show_page(page)
        self.retranslate()
        self.text.setFocus()

    def show_page(self, page: str) -> None:
        """Turn to a page of the manual."""
        path = page_path(page, self.language)
        if path.stem != page:
            log.warning("the manual has no page %r", page)
        self.text.document().setDefaultStyleSheet(f"a {{ color: {theme_of(self).roles.stamp}; }}")
        self.text.setSource(
            QUrl.fromLocalFile(str(path)), QTextDocument.ResourceType.MarkdownResource
        )

    def _set_type(self) -> None:
        """Headings in the scale with space above them, tables with space in their cells."""
        theme = theme_of(self)
        document = self.text.document()
        block = document.begin()
        while block.isValid():
            level = block.blockFormat().headingLevel()
            if level:
                cursor = QTextCursor(block)
                cursor.select(QTextCursor.SelectionType.BlockUnderCursor)
                letters = QTextCharFormat()
                letters.setFont(theme.font("title" if level == 1 else "group"))
                cursor.setCharFormat(letters)
                shape = block.blockFormat()
                shape.setTopMargin(0 if level == 1 else GROUP)
                shape.setBottomMargin(TOGETHER)
                cursor.setBlockFormat(shape)
            block = block.next()
        for frame in document.rootFrame().childFrames():
            if isinstance(frame, QTextTable):
                table = frame.format()
                table.setCellPadding(STEP)
                table.setBorder(0)
                frame.setFormat(table)

    def retranslate(self) -> None:
        """The window's own words."""
        self.setWindowTitle(self.tr("Help"))
        self.text.setAccessibleName(self.tr("Page of the manual"))
        self.contents.setText(self.tr("&Contents"))
        self.back.setText(self.tr("&Back"))
        self.leave.setText(self.tr("C&lose"))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()

    def _to_contents(self) -> None:
        self.show_page(FIRST_PAGE)
