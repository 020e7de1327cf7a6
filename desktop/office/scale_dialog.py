"""Bills that no longer agree with the scale: listed, credited with a reason, and billed again."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField
from desktop.office.money_words import complaint, line_words
from desktop.office.progress import ProgressStrip
from desktop.office.scale_check import Disagreement, Mended, credit_and_bill_again
from desktop.tables import Column, RowsModel, Table, count_column, money_column

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.office.scale_check import Checked


class ScaleDialog(FormDialog):
    """Lists them and does it for all; `done` gets what was credited and billed.

    Where the check was stopped, it says how many orders were looked at.
    """

    def __init__(
        self,
        bench: "Bench",
        checked: "Checked",
        done: Callable[[Mended], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setMinimumWidth(940)
        self.bench = bench
        self._checked, self._done = checked, done
        self.table: Table[Disagreement] = Table(RowsModel(self._columns()), self)
        self.table.setMinimumSize(860, 240)
        self.reason = TextField(self, required=True)
        self.progress = ProgressStrip(bench, self)
        self.grid.add(self.reason, span=2)
        self.add_below(self.table)
        self.add_below(self.progress)
        self.retranslate()
        self.table.show_rows(list(checked.found))
        self.reason.set_text(self.tr("Weight corrected after the bill"))

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Bills that no longer agree with the scale"),
            self.tr(
                "A weight was corrected after these lines were billed. Their bills are credited "
                "whole and issued again at the weights that stand now."
            )
            + self._only(),
            self.tr("&Credit and bill again"),
            self.tr("&Leave it"),
        )
        self.table.set_name(self.tr("Lines that differ"))
        self.reason.set_label(self.tr("&Reason, printed on each credit"))

    def _only(self) -> str:
        if self._checked.whole:
            return ""
        only = self.tr("The check was stopped: {done} of {count} orders were looked at.")
        return " " + only.format(
            done=f"{self._checked.looked_at:,}", count=f"{self._checked.orders:,}"
        )

    def attempt(self) -> str:
        """Begin; the dialog closes once it is done, and stays where something is refused."""
        if self.progress.running:
            return self.tr("It is being done.")
        reason = self.reason.value() or ""
        self.main.setEnabled(False)
        self.progress.run(
            lambda steps: credit_and_bill_again(self.bench, self._checked.found, reason, steps),
            self._mended,
        )
        return self.tr("Crediting and billing again.")

    def reject(self) -> None:
        """Leave; what runs stops after the paper it is at."""
        self.progress.stop()
        super().reject()

    def _mended(self, found: Mended) -> None:
        self.main.setEnabled(True)
        if found.problem is not None:
            self.refuse(complaint(found.problem))
        else:
            self.accept()
        self._done(found)

    def _columns(self) -> list[Column[Disagreement]]:
        words = self.bench.words
        return [
            count_column("bill", lambda: self.tr("Bill"), lambda one: one.bill.number),
            Column("payer", lambda: self.tr("Payer"), lambda one: one.billing.payer, stretch=True),
            Column(
                "line", lambda: self.tr("Line"), lambda one: line_words(one.line, words), width=240
            ),
            money_column("billed", lambda: self.tr("Billed"), lambda one: one.billed_cents),
            money_column("now", lambda: self.tr("Now"), lambda one: one.now_cents),
            money_column("more", lambda: self.tr("Difference"), lambda one: one.more_cents),
        ]
