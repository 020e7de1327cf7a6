"""The search box on the bar: any part of a name, tag, number or phone, then up, down, Enter."""

from typing import TYPE_CHECKING

from PySide6.QtCore import (
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QSize,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QLineEdit,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from desktop.look.space import GROUP, ROW_DESK, STEP
from desktop.look.theme import theme_of
from shared.marking.gs1 import FNC1

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from shared.shop.lists import Found

MOST_ROWS = 12
_FOUND = Qt.ItemDataRole.UserRole + 1


class _FoundRow(QStyledItemDelegate):
    """Title in ink, detail in steel at the right; the chosen row by its stamp edge."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        theme = theme_of()
        rect: QRect = option.rect  # pyright: ignore[reportAttributeAccessIssue]
        if index.row() == _current(self.parent()):
            painter.fillRect(rect, theme.color("tint"))
            painter.fillRect(QRect(rect.topLeft(), QSize(3, rect.height())), theme.color("stamp"))
        inner = rect.adjusted(GROUP, 0, -GROUP, 0)
        found: Found | None = index.data(_FOUND)
        if found is None:
            _paint_heading(painter, rect, index.data())
            return
        painter.setFont(theme.font("body"))
        painter.setPen(theme.color("ink"))
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(inner, middle | Qt.AlignmentFlag.AlignLeft, found.title)
        used = painter.fontMetrics().horizontalAdvance(found.title) + GROUP
        rest = inner.adjusted(used, 0, 0, 0)
        painter.setFont(theme.font("small"))
        painter.setPen(theme.color("steel"))
        detail = painter.fontMetrics().elidedText(
            found.detail, Qt.TextElideMode.ElideRight, max(rest.width(), 0)
        )
        painter.drawText(rest, middle | Qt.AlignmentFlag.AlignRight, detail)

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        return QSize(240, ROW_DESK)


def _paint_heading(painter: QPainter, rect: QRect, words: str) -> None:
    """What the rows below it are, in steel over a line."""
    theme = theme_of()
    painter.setFont(theme.font("small"))
    painter.setPen(theme.color("steel"))
    inner = rect.adjusted(GROUP, 0, -GROUP, -STEP)
    painter.drawText(inner, Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft, words)
    painter.setPen(theme.color("line"))
    painter.drawLine(rect.bottomLeft(), rect.bottomRight())


def _current(view: QObject | None) -> int:
    return view.currentIndex().row() if isinstance(view, QListView) else -1


class FindBox(QLineEdit):
    """Types into `search`, shows what it finds below, and says what was chosen.

    Signals:
        chosen: the Found that Enter or a click picked.
        left: Esc was pressed; the keyboard goes back to the place.
    """

    chosen = Signal(object)
    left = Signal()

    def __init__(
        self, search: "Callable[[str], Sequence[Found]]", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._search = search
        self.setClearButtonEnabled(True)
        self._model = QStandardItemModel(self)
        self.list = QListView(parent)
        self.list.setObjectName("found")
        self.list.setModel(self._model)
        self.list.setItemDelegate(_FoundRow(self.list))
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setUniformItemSizes(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.hide()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self._find)
        self.textEdited.connect(self._typed)
        self.textChanged.connect(self._maybe_cleared)
        self.list.clicked.connect(self._pick)
        self.retranslate()

    def retranslate(self) -> None:
        """The box's words in the window's language."""
        self.setPlaceholderText(self.tr("Find (Ctrl+F)"))
        self.setToolTip(self.tr("Any part of a name, tag, number or phone; or scan a label"))
        self.setAccessibleDescription(self.toolTip())
        self.setAccessibleName(self.tr("Find"))
        self.list.setAccessibleName(self.tr("Found"))

    def finds(self) -> "list[Found]":
        """What is shown below the box."""
        rows = [self._model.item(at).data(_FOUND) for at in range(self._model.rowCount())]
        return [one for one in rows if one is not None]

    def close_list(self) -> None:
        """Hide what was found."""
        self.list.hide()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Down, Qt.Key.Key_Up) and self._model.rowCount():
            self._step(1 if key == Qt.Key.Key_Down else -1)
            self._show_list()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._find_now()
            self._pick(self.list.currentIndex())
        elif key == Qt.Key.Key_Escape:
            self.close_list()
            self.clear()
            self.left.emit()
        elif event.text() == FNC1:  # a scanner types it within a GS1 code
            self.insert(FNC1)
        else:
            super().keyPressEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.close_list()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange and hasattr(self, "list"):
            self.retranslate()

    def _typed(self, _text: str) -> None:
        self._soon.start()

    def _maybe_cleared(self, text: str) -> None:
        if not text:
            self._model.clear()
            self.close_list()

    def _step(self, by: int) -> None:
        """To the next row up or down that is something found, round the ends."""
        at, rows = self.list.currentIndex().row(), self._model.rowCount()
        for _ in range(rows):
            at = (at + by) % rows
            if self._model.item(at).data(_FOUND) is not None:
                self.list.setCurrentIndex(self._model.index(at, 0))
                return

    def _find_now(self) -> None:
        if self._soon.isActive():
            self._soon.stop()
            self._find()

    def _find(self) -> None:
        text = self.text().strip()
        self._model.clear()
        near = False
        for found in self._search(text) if text else ():
            if found.near and not near:
                near = True
                self._head(self.tr("Near"))
            item = QStandardItem(f"{found.title}, {found.detail}")
            item.setData(found, _FOUND)
            item.setEditable(False)
            self._model.appendRow(item)
        if self._model.rowCount():
            self.list.setCurrentIndex(QModelIndex())
            self._step(1)
            self._show_list()
        elif text:
            self._head(self.tr("Nothing found"))
            self.list.setCurrentIndex(QModelIndex())
            self._show_list()
        else:
            self.close_list()

    def _head(self, words: str) -> None:
        """A row that can't be chosen: what those below it are, or that there are none."""
        heading = QStandardItem(words)
        heading.setFlags(Qt.ItemFlag.NoItemFlags)
        self._model.appendRow(heading)

    def _show_list(self) -> None:
        window = self.list.parentWidget()
        if window is None:
            return
        rows = min(self._model.rowCount(), MOST_ROWS)
        width = max(self.width(), 480)
        below = self.mapTo(window, QPoint(self.width() - width, self.height() + 2))
        self.list.setGeometry(below.x(), below.y(), width, rows * ROW_DESK + 2)
        self.list.raise_()
        self.list.show()

    def _pick(self, index: QModelIndex) -> None:
        found = index.data(_FOUND) if index.isValid() else None
        if found is None:
            return
        self.close_list()
        self.clear()
        self.chosen.emit(found)
