"""Where a package of the chosen line is told: its weight, or in a shop that counts how many."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.wrap.count_strip import CountStrip
from desktop.wrap.scale_strip import ScaleStrip
from shared.units import Weight, pounds_text, weight_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.wrap.wrapping import WrapLine, Wrapping


class PackageEntry(QWidget):
    """The scale's strip or the count's, by the shop, the order's regime and the line.

    Signals:
        chosen: a line and whether it is weighed from now on, in a shop that counts.
        left: Esc; back to the lines.
        stepped: up or down; carries -1 or 1, to another line of the order.
    """

    chosen = Signal(object, bool)
    left = Signal()
    stepped = Signal(int)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shut = ""
        self._wrapping: Wrapping | None = None
        self._line: WrapLine | None = None
        self._at: tuple[int, int, str] | None = None
        self.strip = ScaleStrip(bench, self)
        self.count = CountStrip(self)
        self.count.hide()
        self.way = button(self, quiet=True)
        self.way.hide()
        self.all = button(self, quiet=True)
        self.all.hide()
        down = column(self, gap=TOGETHER)
        down.addWidget(self.strip)
        down.addWidget(self.count)
        beside = row(gap=GROUP)
        beside.addWidget(self.way)
        beside.addWidget(self.all)
        beside.addStretch(1)
        down.addLayout(beside)
        for one in (self.strip, self.count):
            one.left.connect(self.left)
            one.stepped.connect(self.stepped)
        self.way.clicked.connect(self.change_way)

    def retranslate(self) -> None:
        """Every word of the entry."""
        self.strip.retranslate()
        self.count.retranslate()
        self._say()

    @property
    def by_count(self) -> bool:
        """Whether packages of the line are counted; an odd package is always weighed."""
        if self._wrapping is None or self._line is None or self._line.line == 0:
            return False
        return self._wrapping.by_count and not self._line.weighed

    def show_line(self, wrapping: "Wrapping | None", line: "WrapLine | None") -> None:
        """What the next package holds, and how it is told."""
        before, at = self._at, None
        was = None if self._wrapping is None else self._wrapping.order.id
        if was is not None and (wrapping is None or wrapping.order.id != was):
            self.strip.forget()
            self.count.packages.set_value(None)
        if wrapping is not None and line is not None:
            at = wrapping.order.id, line.line, line.product
        self._wrapping, self._line, self._at = wrapping, line, at
        if at != before:  # read again, the same line keeps what was said of it
            for strip in (self.strip, self.count):
                strip.complain("")
        self._show_way()

    def _show_way(self) -> None:
        self.count.setVisible(self.by_count)
        self.strip.setVisible(not self.by_count)
        may = self._wrapping is not None and self._wrapping.by_count
        self.way.setVisible(may and self._line is not None and self._line.line > 0)
        self.all.setVisible(self._line is not None and self._line.counted > 0)
        self._say()

    def _say(self) -> None:
        product = self._line.product if self._line else self.tr("Choose a line above")
        for strip in (self.strip, self.count):
            strip.show_product(product)
        self.way.setText(
            self.tr("Weigh and label this line (F12)")
            if self.by_count
            else self.tr("Count this line, no weight (F12)")
        )

        self.all.setText(self.tr("Weigh what was counted together… (Shift+F12)"))

    def set_open(self, shut: str) -> None:
        """Why no packages can be made of the line as the order stands; "" where they can."""
        if self._shut and not shut:
            self.complain("")
        self._shut = shut
        for one in (self.strip, self.count, self.way):
            one.setEnabled(not shut)

    def focus(self) -> None:
        """Give the keyboard to the weight, or to the count; say why where nothing is packed."""
        if self._shut:
            self.complain(self._shut)
            return
        (self.count.packages if self.by_count else self.strip.weight).focus()

    def change_way(self) -> None:
        """The line is weighed and labelled after all, or counted again; it is kept so."""
        if self.way.isHidden() or self._wrapping is None or self._line is None:
            return
        self.chosen.emit(self._line, not self._line.weighed)
        self.focus()

    def complain(self, sentence: str) -> None:
        """Say in place why something was not kept."""
        for strip in (self.strip, self.count):
            strip.complain(sentence)

    def weighed(self, net: Weight) -> None:
        """A package was kept: one that hardly is of this line is asked about, and nothing undone.

        1.5 times all that is expected of the line is too heavy for one package of it.
        """
        line = self._line
        if line is None or line.planned is None:
            return
        if line.planned_ng and net.nanograms * 2 > line.planned_ng * 3:
            said = self.tr(
                "{net} is more than all that is expected of {product}, {expected}. Is it the right "
                "line and weight?"
            )
            expected = pounds_text(line.planned_ng, 1)
            self.strip.complain(
                said.format(net=weight_text(net), product=line.product, expected=expected)
            )
        else:
            self._ask_too_many(self.strip, line)

    def _ask_too_many(self, strip: ScaleStrip | CountStrip, line: "WrapLine") -> None:
        if line.planned is None or line.packages <= line.planned.high:
            return
        said = self.tr("{made} made of {product}, {planned} planned at the most. Is that right?")
        strip.complain(
            said.format(made=line.packages, product=line.product, planned=line.planned.high)
        )

    def counted(self) -> None:
        """A count was kept: ready for the next; one above what was planned is asked about."""
        self.count.packages.set_value(None)
        self.count.packages.focus()
        if self._line is not None:
            self._ask_too_many(self.count, self._line)
