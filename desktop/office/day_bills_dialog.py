"""The bills of all that is ready, checked in a list, issued in one go, and shown as one PDF."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QWidget

from desktop.look.patterns import Mark
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.office.day_bills import DayBill, ReadDay, issue_day, one_pdf, read_day
from desktop.office.money_words import complaint
from desktop.office.progress import ProgressStrip
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table, count_column, money_column
from shared.money import money_text

if TYPE_CHECKING:
    from desktop.bench import Bench


class DayBillsDialog(QDialog):
    """Reads the bills when it opens. Space leaves one out or takes it in again; Ctrl+Enter issues.

    `show` gets the PDF of what was issued; `done` is called once anything was.
    """

    def __init__(
        self,
        bench: "Bench",
        show: Callable[[bytes, int], object],
        done: Callable[[], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.bench = bench
        self._read = ReadDay()
        self._show, self._done = show, done
        self._left_out: set[tuple[int, bool]] = set()
        self._bills: list[DayBill] = []
        self.resize(1040, 600)
        self._build()
        self._connect()
        self.retranslate()
        self.progress.run(lambda steps: read_day(bench.store, steps), self._was_read)

    def _build(self) -> None:
        self.heading = Words("group", parent=self)
        self.lead = Words("body", "quiet", self).wrapped()
        self.more = Words("body", parent=self).wrapped()
        self.more.hide()
        self.table: Table[DayBill] = Table(RowsModel(self._columns()), self)
        self.sum = Words("body", parent=self)
        self.said = Words("body", "complaint", self).wrapped()
        self.said.hide()
        self.progress = ProgressStrip(self.bench, self)
        self.issue = button(self, main=True)
        self.toggle = button(self)
        self.papers = button(self)
        self.leave = button(self)
        down = column(self, gap=GROUP, edge=EDGE)
        for part in (self.heading, self.lead, self.more):
            down.addWidget(part)
        down.addWidget(self.table, 1)
        for part in (self.sum, self.said, self.progress):
            down.addWidget(part)
        feet = row(gap=TOGETHER)
        for part in (self.issue, self.toggle, self.papers, self.leave):
            feet.addWidget(part)
        feet.addStretch(1)
        down.addLayout(feet)

    def _connect(self) -> None:
        self.issue.clicked.connect(self.issue_all)
        self.toggle.clicked.connect(self.turn)
        self.papers.clicked.connect(self.show_papers)
        self.leave.clicked.connect(self.reject)
        self.table.moved.connect(lambda _row: self._tell())
        for keys, slot in (
            ("Ctrl+Return", self.issue_all),
            ("F9", self.show_papers),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(slot)
        space = QShortcut(QKeySequence("Space"), self.table)
        space.setContext(Qt.ShortcutContext.WidgetShortcut)
        space.activated.connect(self.turn)

    def retranslate(self) -> None:
        """Every word of the dialog."""
        self.setWindowTitle(self.tr("Bills of all that is ready"))
        self.heading.setText(self.tr("Bills of all that is ready"))
        self.lead.setText(
            self.tr(
                "Look them over, then issue them in one go. A line that waits comes on a bill of "
                "its own later. An issued bill is never changed."
            )
        )
        self.table.set_name(self.tr("Bills to issue"))
        self.leave.setText(self.tr("C&lose"))
        self.papers.setText(self.tr("Sho&w what was issued (F9)"))
        self.progress.retranslate()
        self._tell()

    def _was_read(self, found: ReadDay) -> None:
        self._read = found
        self._bills = list(found.bills)
        if not found.bills and found.looked_at == found.orders:
            self._say(
                self.tr(
                    "Nothing is to be billed: no order is ready or handed over without its bill. "
                    "An order comes here once it is wrapped and ready."
                )
            )
        self._refill()
        self.table.setFocus()

    def _refill(self) -> None:
        self.table.show_rows(self._bills, self.table.chosen())
        self._tell()

    def _tell(self) -> None:
        looked_at, orders = self._read.looked_at, self._read.orders
        self.more.setVisible(looked_at < orders)
        self.more.setText(
            self.tr(
                "Stopped: {done} of {count} orders were looked at, those with no bill first. "
                "Open this again to look at all."
            ).format(done=f"{looked_at:,}", count=f"{orders:,}")
        )
        chosen, to_issue = self.table.chosen(), self._to_issue()
        issued = [one for one in self._bills if one.issued is not None]
        total = sum(one.total_cents or 0 for one in to_issue)
        said = self.tr("To issue: {count}, {total}.").format(
            count=len(to_issue), total=money_text(total)
        )
        if issued:
            of_these = sum(one.issued.total_cents for one in issued if one.issued is not None)
            said += " " + self.tr("Issued: {count}, {total}.").format(
                count=len(issued), total=money_text(of_these)
            )
        self.sum.setText(said)
        idle = not self.progress.running
        self.issue.setText(self.tr("&Issue {count} (Ctrl+Enter)").format(count=len(to_issue)))
        self.issue.setEnabled(idle and bool(to_issue))
        out = chosen is not None and _key(chosen) in self._left_out
        self.toggle.setText(
            self.tr("&Take it in again (Space)") if out else self.tr("Leave it &out (Space)")
        )
        self.toggle.setEnabled(idle and chosen is not None and _can(chosen))
        self.papers.setEnabled(idle and bool(issued))

    def _to_issue(self) -> list[DayBill]:
        return [one for one in self._bills if _can(one) and _key(one) not in self._left_out]

    def turn(self) -> None:
        """Leave the chosen bill out, or take it in again."""
        chosen = self.table.chosen()
        if chosen is None or not self.toggle.isEnabled():
            return
        self._left_out ^= {_key(chosen)}
        self._refill()

    def issue_all(self) -> None:
        """Issue what isn't left out; what is refused says why in its row."""
        if not self.issue.isEnabled():
            return
        bills = self._to_issue()
        self._say("")
        self.progress.run(lambda steps: issue_day(self.bench, bills, steps), self._issued)
        self._tell()

    def _issued(self, found: tuple[DayBill, ...]) -> None:
        now = {_key(one): one for one in found}
        wanted = len(self._to_issue())
        self._bills = [now.get(_key(one), one) for one in self._bills]
        self._refill()
        refused = [one for one in found if one.issued is None]
        if refused:
            self._say(self.tr("Not issued: {count}. The list says why.").format(count=len(refused)))
        elif len(found) < wanted:
            self._say(self.tr("Stopped. What was issued by then stays issued."))
        if len(refused) < len(found):
            self._done()
            if self.isVisible():
                self.show_papers()

    def show_papers(self) -> None:
        """One PDF of all that was issued here."""
        issued = [one.issued for one in self._bills if one.issued is not None]
        if not issued or self.progress.running:
            return
        self.progress.run(
            lambda steps: one_pdf(self.bench.store, issued, steps),
            lambda pdf: (self._tell(), self._show(pdf, len(issued))),
        )
        self._tell()

    def reject(self) -> None:
        """Close; what runs is stopped first."""
        self.progress.stop()
        super().reject()

    def _say(self, sentence: str) -> None:
        self.said.setText(sentence)
        self.said.setVisible(bool(sentence))

    def _columns(self) -> list[Column[DayBill]]:
        return [
            count_column("order", lambda: self.tr("Order"), lambda one: one.billing.order.number),
            Column("payer", lambda: self.tr("Payer"), lambda one: one.billing.payer, stretch=True),
            Column(
                "state",
                lambda: self.tr("Bill"),
                self._state,
                kind="state",
                mark=self._mark,
                width=160,
                tip=self._state,
            ),
            Column("waits", lambda: self.tr("Waits"), self._waits, width=210, tip=self._waits),
            count_column(
                "lines",
                lambda: self.tr("Lines"),
                lambda one: None if one.bill is None else len(one.bill.lines) - one.waits,
            ),
            money_column("total", lambda: self.tr("Total"), lambda one: one.total_cents),
        ]

    def _state(self, one: DayBill) -> str:
        if one.issued is not None:
            return self.tr("issued, no. {number}").format(number=one.issued.number)
        if one.problem is not None:
            return self.tr("can't be issued")
        return self.tr("left out") if _key(one) in self._left_out else self.tr("to issue")

    def _mark(self, one: DayBill) -> Mark:
        if one.issued is not None:
            return Mark.SETTLED
        return Mark.CONTESTED if one.problem is not None else Mark.OPEN

    def _waits(self, one: DayBill) -> str:
        if one.problem is not None:
            return complaint(one.problem)
        if one.bill is None:
            return ""
        words = self.bench.words
        said = [
            words.say(f"bills.waits_{line.waits_for or 'packages'}") for line in one.bill.waiting
        ]
        return ", ".join(dict.fromkeys(said))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()


def _can(one: DayBill) -> bool:
    return one.problem is None and one.issued is None


def _key(one: DayBill) -> tuple[int, bool]:
    return one.billing.order.id, one.billing.for_producer
