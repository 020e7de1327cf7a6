"""Bars over labels with an axis: read by eye, by pointer, by the arrow keys and by a reader."""

from collections.abc import Callable
from fractions import Fraction

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QFocusEvent,
    QFontMetrics,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from desktop.look.theme import Theme, theme_of
from desktop.panels.bar_fill import paint_bar
from shared.shop.charts import Chart, ticks

GAP = 8
SQUARE = 12
TICK = 4
WIDEST_BAR = 56


class BarChart(QWidget):
    """Shows one Chart. Left and right go along the labels and say what stands there.

    `say` writes a value with its unit, for the axis and for what is said of a bar.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.chart = Chart("", (), ())
        self.say: Callable[[Fraction], str] = str
        self.at = -1
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(150)

    def show_chart(self, chart: Chart, say: Callable[[Fraction], str]) -> None:
        """Draw this one from now on."""
        self.chart, self.say, self.at = chart, say, -1
        self.setAccessibleName(chart.title)
        self.setAccessibleDescription(" ".join((self._summary(), chart.note)).strip())
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(640, 240)

    def said_of(self, at: int) -> str:
        """What stands at a label: "Nov 23: beef 3,200 lb, pork 840 lb"."""
        chart = self.chart
        parts = [
            f"{one.name} {self.say(value)}".strip()
            for one in chart.series
            if (value := one.values[at]) is not None
        ]
        return f"{chart.labels[at]}: {', '.join(parts) or '–'}"

    def label_at(self, x: int) -> int:
        """The label under a point; -1 beside them all."""
        plot = self._plot()
        if not self.chart.labels or not plot.left() <= x <= plot.right():
            return -1
        room = plot.width() / len(self.chart.labels)
        return min(int((x - plot.left()) / room), len(self.chart.labels) - 1)

    def _summary(self) -> str:
        if self.chart.empty:
            return ""
        tops = [self.chart.top(at) for at in range(len(self.chart.labels))]
        return self.said_of(tops.index(max(tops)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
        step = steps.get(Qt.Key(event.key()))
        if step is None or not self.chart.labels:
            super().keyPressEvent(event)
            return
        self._go_to(max(0, min(self.at + step, len(self.chart.labels) - 1)))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = self.label_at(int(event.position().x()))
        if at >= 0:
            QToolTip.showText(event.globalPosition().toPoint(), self.said_of(at), self)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = self.label_at(int(event.position().x()))
        if at >= 0:
            self._go_to(at)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self.at = -1
        super().focusOutEvent(event)
        self.update()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        self.update()

    def _go_to(self, at: int) -> None:
        self.at = at
        self.setAccessibleDescription(self.said_of(at))
        self.update()

    def _metrics(self) -> QFontMetrics:
        return QFontMetrics(theme_of(self).font("small"))

    def _plot(self) -> QRectF:
        """Where the bars stand: beside the axis, above the labels, below the legend."""
        metrics, chart = self._metrics(), self.chart
        wide = max(metrics.horizontalAdvance(self.say(one)) for one in ticks(chart.most))
        top = 2 * metrics.height() + 2 * GAP
        foot = metrics.height() + GAP
        left = wide + GAP + TICK
        return QRectF(left, top, self.width() - left - GAP, self.height() - top - foot)

    def paintEvent(self, _event: QPaintEvent) -> None:
        theme = theme_of(self)
        painter = QPainter(self)
        painter.setFont(theme.font("small"))
        painter.fillRect(self.rect(), theme.color("card"))
        if not self.chart.empty:
            plot = self._plot()
            self._draw_head(painter, theme)
            self._draw_axis(painter, plot, theme)
            self._draw_bars(painter, plot, theme)
            self._draw_labels(painter, plot, theme)
        if self.hasFocus():
            painter.setPen(QPen(theme.color("stamp"), 1.0))
            painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        painter.end()

    def _draw_head(self, painter: QPainter, theme: Theme) -> None:
        """What is said of the chosen label, or the note; the legend below it."""
        metrics = self._metrics()
        said = self.said_of(self.at) if self.at >= 0 else self.chart.note
        painter.setPen(theme.color("ink" if self.at >= 0 else "steel"))
        room = self.width() - 2 * GAP
        said = metrics.elidedText(said, Qt.TextElideMode.ElideRight, room)
        painter.drawText(QPointF(GAP, GAP / 2 + metrics.ascent()), said)
        x, y = float(GAP), GAP + metrics.height()
        for kind, one in zip(self.chart.kinds, self.chart.series, strict=True):
            if not one.name:
                continue
            square = QRectF(x, y + (metrics.height() - SQUARE) / 2, SQUARE, SQUARE)
            paint_bar(painter, square, kind, theme)
            painter.setPen(theme.color("ink"))
            painter.drawText(QPointF(x + SQUARE + GAP / 2, y + metrics.ascent()), one.name)
            x += SQUARE + metrics.horizontalAdvance(one.name) + 2.5 * GAP

    def _draw_axis(self, painter: QPainter, plot: QRectF, theme: Theme) -> None:
        metrics, every = self._metrics(), ticks(self.chart.most)
        for one in every:
            y = round(plot.bottom() - plot.height() * float(one / every[-1]))
            painter.setPen(theme.color("edge" if not one else "line"))
            painter.drawLine(QPointF(plot.left() - TICK, y), QPointF(plot.right(), y))
            painter.setPen(theme.color("steel"))
            text = self.say(one)
            x = plot.left() - TICK - GAP / 2 - metrics.horizontalAdvance(text)
            painter.drawText(QPointF(x, y + metrics.ascent() / 2 - 1), text)

    def _draw_bars(self, painter: QPainter, plot: QRectF, theme: Theme) -> None:
        chart, top = self.chart, ticks(self.chart.most)[-1]
        room = plot.width() / len(chart.labels)
        beside = 1 if chart.stacked else len(chart.series)
        wide = min(room * 0.8 / beside, WIDEST_BAR)
        for at in range(len(chart.labels)):
            x = plot.left() + room * at + (room - wide * beside) / 2
            foot = plot.bottom()
            if at == self.at:
                band = QRectF(plot.left() + room * at, plot.top(), room, plot.height())
                painter.fillRect(band, theme.color("tint"))
            for kind, one in zip(chart.kinds, chart.series, strict=True):
                high = plot.height() * float((one.values[at] or Fraction(0)) / top)
                if high > 0:
                    paint_bar(painter, QRectF(x, foot - high, wide - 1, high), kind, theme)
                if chart.stacked:
                    foot -= high
                else:
                    x += wide

    def _draw_labels(self, painter: QPainter, plot: QRectF, theme: Theme) -> None:
        """As many labels as there is room for: every one, every second, every fifth."""
        metrics, labels = self._metrics(), self.chart.labels
        room = plot.width() / len(labels)
        widest = max(metrics.horizontalAdvance(one) for one in labels)
        most = max(room, plot.width() / 6) - GAP
        shown = min(float(widest), most)
        each = max(1, -int(-(shown + GAP) // room))
        painter.setPen(theme.color("steel"))
        for at in range(0, len(labels), each):
            text = metrics.elidedText(labels[at], Qt.TextElideMode.ElideRight, int(most))
            middle = plot.left() + room * (at + 0.5)
            wide = metrics.horizontalAdvance(text)
            x = min(max(middle - wide / 2, 0.0), self.width() - wide)
            painter.drawText(QPointF(x, plot.bottom() + GAP / 2 + metrics.ascent()), text)
