"""Above the orders to bill: which of them, the bills of all in one go, and what disagrees."""

from collections.abc import Callable
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.day_bills_dialog import DayBillsDialog
from desktop.office.progress import ProgressStrip, Steps
from desktop.office.scale_check import Disagreement, Mended, disagreements
from desktop.office.scale_dialog import ScaleDialog
from desktop.office.to_bill import AT_ONCE, MOST, ToBill, orders_to_bill
from desktop.panels.buttons import button
from desktop.panels.heading import Words

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.states import OrderState

Which = Literal["to_bill", "all"]
TO_BILL: "tuple[OrderState, ...]" = ("ready", "handed_over")


class BillsBar(QWidget):
    """Runs over many orders. The page connects it.

    Signals:
        said: a sentence for the status line.
        changed: bills were issued or credited.
        turned: other orders are to be listed.
    """

    said = Signal(str)
    changed = Signal()
    turned = Signal()

    def __init__(
        self, bench: "Bench", show: Callable[[bytes, str], object], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.bench = bench
        self._show = show
        self._count = 0
        self.which: ChoiceField[Which] = ChoiceField(self, required=True)
        self.day = button(self)
        self.check = button(self)
        self.more = Words("body", "quiet", self).wrapped()
        self.progress = ProgressStrip(bench, self)
        down = column(self, gap=TOGETHER)
        across = row(gap=GROUP)
        across.addWidget(self.which)
        across.addStretch(1)
        for one in (self.check, self.day):
            across.addWidget(one, 0, Qt.AlignmentFlag.AlignBottom)
        down.addLayout(across)
        down.addWidget(self.more)
        down.addWidget(self.progress)
        self.retranslate()
        self.which.set_value("to_bill")
        self.which.committed.connect(self.turned)
        self.day.clicked.connect(self.bill_all)
        self.check.clicked.connect(self.check_scale)
        for keys, slot in (("F7", self.bill_all), ("F6", self.check_scale)):
            shortcut = QShortcut(QKeySequence(keys), parent)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def retranslate(self) -> None:
        """Every word of the bar."""
        self.which.set_label(self.tr("O&rders shown"))
        self.which.set_choices(
            [
                ("to_bill", self.tr("ready or handed over")),
                ("all", self.tr("all that are open")),
            ]
        )
        self.day.setText(self.tr("&Bill all that is ready… (F7)"))
        self.check.setText(self.tr("Chec&k with the scale (F6)"))
        self.progress.retranslate()
        self.show_count(self._count)

    def show_count(self, count: int) -> None:
        """Say where there are more orders than are listed."""
        self._count = count
        self.more.setVisible(count > MOST)
        self.more.setText(
            self.tr(
                "The first {most} of {count} orders by number. Find any other with Ctrl+F."
            ).format(most=MOST, count=count)
        )

    def states(self) -> "tuple[OrderState, ...]":
        """The states of the orders to list."""
        every: tuple[OrderState, ...] = ("open", "settled", "released", "cut", *TO_BILL)
        return TO_BILL if self.which.value() != "all" else every

    def _ready(self) -> ToBill:
        """All that can be billed, at most `AT_ONCE`; on a worker."""
        return orders_to_bill(self.bench.store, TO_BILL, most=AT_ONCE)

    def bill_all(self) -> None:
        """Open the bills of all that is ready."""
        self.bench.work.run(self._ready, then=self._open_bills, key="office.bill_all")

    def _open_bills(self, ready: ToBill) -> None:
        self.dialog = DayBillsDialog(
            self.bench, ready, self._show_bills, self.changed.emit, self.window()
        )
        self.dialog.open()

    def _show_bills(self, pdf: bytes, count: int) -> None:
        self._show(pdf, self.tr("Bills, {count}").format(count=count))

    def check_scale(self) -> None:
        """Compare what was billed with the scale as it stands now."""
        store = self.bench.store

        def read(steps: Steps) -> tuple[tuple[Disagreement, ...], ToBill]:
            ready = self._ready()
            rows = [one for one in ready.rows if one.billed_cents]
            return disagreements(store, rows, steps), ready

        self.progress.run(read, self._checked)

    def _checked(self, read: tuple[tuple[Disagreement, ...], ToBill]) -> None:
        found, ready = read
        bills = {one.bill.id for one in found}
        if not bills:
            self.said.emit(
                self.tr(
                    "The bills of the first {most} of {count} orders by number agree with the "
                    "scale. The others were not checked."
                ).format(most=len(ready.rows), count=ready.count)
                if ready.beyond
                else self.tr("All bills of open orders agree with the scale.")
            )
            return
        self.said.emit(
            self.tr("{count} bills no longer agree with the scale: credit and bill again.").format(
                count=len(bills)
            )
            if len(bills) > 1
            else self.tr("1 bill no longer agrees with the scale: credit and bill again.")
        )
        self.scale_dialog = ScaleDialog(self.bench, found, ready, self._mended, self.window())
        self.scale_dialog.open()

    def _mended(self, found: Mended) -> None:
        self.said.emit(
            self.tr("Credited: {credits}. Billed again: {bills}.").format(
                credits=len(found.credits), bills=len(found.bills)
            )
        )
        self.changed.emit()
