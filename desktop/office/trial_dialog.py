"""A rate card tried on animals already billed: both bills of each owner side by side."""

from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import DateField, FormDialog
from desktop.office.card_trial import trial_of
from desktop.office.progress import ProgressStrip
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table, count_column, money_column
from shared.billing.bill import Bill
from shared.billing.problems import BillingProblem
from shared.billing.trial import Trial, TriedBill
from shared.money import money_text

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.billing.rates import RateCard


class TrialDialog(FormDialog):
    """Tries the card as it opens, on last month's animals; other days can be asked for."""

    asks = False  # days to look at: nothing is kept

    def __init__(self, bench: "Bench", card: "RateCard", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setMinimumWidth(900)
        self.bench, self.card_tried = bench, card
        self._trial: Trial | None = None
        self.start = DateField(bench.today, self, required=True)
        self.end = DateField(bench.today, self, required=True)
        self.grid.add(self.start)
        self.grid.add(self.end)
        self.table: Table[TriedBill] = Table(RowsModel(self._columns()), self)
        self.table.setMinimumSize(820, 260)
        self.sum = Words("body", parent=self).wrapped()
        self.progress = ProgressStrip(bench, self)
        for part in (self.table, self.sum, self.progress):
            self.add_below(part)
        self.retranslate()
        self.end.set_value(bench.today().replace(day=1) - timedelta(days=1))
        last = self.end.value()
        self.start.set_value(last.replace(day=1) if last is not None else bench.today())
        self.try_it()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Try the card {name}").format(name=self.card_tried.name),
            self.tr("What each owner was to pay under the old card, and would under this one."),
            self.tr("&Try these days"),
            self.tr("&Close"),
        )
        self.start.set_label(self.tr("&From"))
        self.end.set_label(self.tr("T&o"))
        self.table.set_name(self.tr("Bills under both cards"))
        self._tell()

    def try_it(self) -> None:
        """Try it on the days said; the dialog stays open."""
        self.refuse("")
        if not self.grid.show_problems() or self.progress.running:
            return
        start, end = self.start.value(), self.end.value()
        if start is None or end is None or start > end:
            self.end.complain(self.tr("The last day lies before the first."))
            return
        self.sum.setText(self.tr("Making both bills of each owner."))
        self.progress.run(self._run(start, end), self._tried)

    def _run(self, start: date, end: date):  # noqa: ANN202 — a closure for the worker
        store, card = self.bench.store, self.card_tried
        return lambda steps: (trial_of(store, card, start, end, steps.over), steps.stopped)

    def _tried(self, found: tuple[Trial, bool]) -> None:
        self._trial = found[0]
        self.table.show_rows(list(found[0].bills))
        self._tell()
        if found[1]:
            self.refuse(self.tr("Stopped: not all animals of these days are in the list."))

    def reject(self) -> None:
        """Close; what runs is stopped."""
        self.progress.stop()
        super().reject()

    def _tell(self) -> None:
        if self._trial is None:
            return
        old, new = self._trial.old_cents, self._trial.new_cents
        if not self._trial.bills:
            self.sum.setText(self.tr("No animals of these days would be billed by this card."))
            return
        sign = "+" if new > old else ""
        self.sum.setText(
            self.tr("Old card {old}, this card {new}: {difference}.").format(
                old=money_text(old), new=money_text(new), difference=sign + money_text(new - old)
            )
        )

    def _columns(self) -> list[Column[TriedBill]]:
        return [
            count_column("lot", lambda: self.tr("Lot"), lambda one: one.lot),
            Column("owner", lambda: self.tr("Owner"), lambda one: one.owner, stretch=True),
            Column("waits", lambda: "", self._note, width=160),
            money_column("old", lambda: self.tr("Old card"), lambda one: _cents(one.old)),
            money_column("new", lambda: self.tr("This card"), lambda one: _cents(one.new)),
            money_column("more", lambda: self.tr("Difference"), lambda one: one.difference),
        ]

    def _note(self, one: TriedBill) -> str:
        if one.difference is None:
            return self.tr("can't be billed")
        waiting = isinstance(one.new, Bill) and bool(one.new.waiting)
        return self.tr("something waits") if waiting else ""


def _cents(bill: Bill | BillingProblem) -> int | None:
    return bill.total_cents if isinstance(bill, Bill) else None
