"""Above the orders to bill: which of them, the bills of all in one go, and what disagrees."""

from collections.abc import Callable
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.office.day_bills_dialog import DayBillsDialog
from desktop.office.progress import ProgressStrip
from desktop.office.scale_check import Checked, Mended, disagreements
from desktop.office.scale_dialog import ScaleDialog
from desktop.office.to_bill import MOST
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
        for keys, slot in (("F7", self.bill_all), ("F12", self.check_scale)):
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
        self.check.setText(self.tr("Chec&k with the scale (F12)"))
        self.progress.retranslate()
        self.show_count(self._count)

    def show_count(self, count: int) -> None:
        """Say where there are more orders than are listed."""
        self._count = count
        self.more.setVisible(count > MOST)
        self.more.setText(
            self.tr(
                "{most} of {count} orders, those with no bill first. Find any other with Ctrl+F."
            ).format(most=MOST, count=f"{count:,}")
        )

    def states(self) -> "tuple[OrderState, ...]":
        """The states of the orders to list."""
        every: tuple[OrderState, ...] = ("open", "settled", "released", "cut", *TO_BILL)
        return TO_BILL if self.which.value() != "all" else every

    def bill_all(self) -> None:
        """Open the bills of all that is ready."""
        self.dialog = DayBillsDialog(self.bench, self._show_bills, self.changed.emit, self.window())
        self.dialog.open()

    def _show_bills(self, pdf: bytes, count: int) -> None:
        self._show(pdf, self.tr("Bills, {count}").format(count=count))

    def check_scale(self) -> None:
        """Compare what was billed with the scale as it stands now."""
        store = self.bench.store
        self.progress.run(lambda steps: disagreements(store, steps), self._checked)

    def _checked(self, checked: Checked) -> None:
        bills = {one.bill.id for one in checked.found}
        if not bills:
            stopped = self.tr(
                "Stopped: the bills of {done} of {count} open orders agree with the scale. "
                "The others were not checked."
            ).format(done=f"{checked.looked_at:,}", count=f"{checked.orders:,}")
            whole = self.tr("All bills of open orders agree with the scale.")
            self.said.emit(whole if checked.whole else stopped)
            return
        self.said.emit(
            self.tr("{count} bills no longer agree with the scale: credit and bill again.").format(
                count=len(bills)
            )
            if len(bills) > 1
            else self.tr("1 bill no longer agrees with the scale: credit and bill again.")
        )
        self.scale_dialog = ScaleDialog(self.bench, checked, self._mended, self.window())
        self.scale_dialog.open()

    def _mended(self, found: Mended) -> None:
        self.said.emit(
            self.tr("Credited: {credits}. Billed again: {bills}.").format(
                credits=len(found.credits), bills=len(found.bills)
            )
        )
        self.changed.emit()
