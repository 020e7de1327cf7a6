"""Writing the kept records out for a span of days, with progress and a way to stop."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from desktop.fields import DateField, FormDialog
from desktop.fields.dates import date_text
from desktop.office.progress import LOOK_MS, Steps
from desktop.panels.heading import Words
from shared.shop.trace import may_go_before

if TYPE_CHECKING:
    from desktop.bench import Bench


class RecordsDialog(FormDialog):
    """First and last day; the tables go into a folder of their own beside the copies."""

    asks = False  # days to look at: nothing is kept

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.first = DateField(bench.today, required=True)
        self.last = DateField(bench.today, required=True)
        self.first.set_value(may_go_before(bench.today()))
        self.last.set_value(bench.today())
        self.grid.add(self.first)
        self.grid.add(self.last)
        self.progress = Words("body", parent=self).wrapped()
        self.add_below(self.progress)
        self.running = False
        self._steps = Steps()
        self._look = QTimer(self)
        self._look.timeout.connect(self._count)
        self.written: Path | None = None
        self.retranslate()

    def retranslate(self) -> None:
        since = date_text(may_go_before(self.bench.today()), self.bench.words.language)
        self.set_words(
            self.tr("Write out the records"),
            self.tr(
                "Animals, owners, weights, losses, packages, bills, payments and changes, as "
                "tables a spreadsheet opens. By 9 CFR 320.3 records since {day} must be kept; "
                "the state may ask for longer. Nothing is removed here."
            ).format(day=since),
            self.tr("&Write them"),
            self.tr("&Stop") if getattr(self, "running", False) else self.tr("&Close"),
        )
        self.first.set_label(self.tr("&First day"))
        self.last.set_label(self.tr("&Last day"))

    def try_it(self) -> None:
        """Start writing; the dialog stays until everything is written."""
        self.refuse("")
        if self.running or not self.grid.show_problems():
            return
        first, last = self.first.value(), self.last.value()
        assert first is not None
        assert last is not None
        if first > last:
            self.first.complain(self.tr("The first day is after the last."))
            self.first.focus()
            return
        self._write(first, last)

    def reject(self) -> None:
        if self.running:
            self._steps.stop()
            return
        super().reject()

    def _write(self, first: date, last: date) -> None:
        from desktop.shell.records import write_records

        folder = self.bench.paths.data / "records" / f"{first.isoformat()}_{last.isoformat()}"
        self.running, self._steps = True, Steps()
        self.main.setEnabled(False)
        self.retranslate()
        self._look.start(LOOK_MS)
        steps = self._steps
        self.destroyed.connect(steps.stop)

        def told(count: int) -> bool:
            steps.done = count
            return not steps.stopped

        self.bench.work.run(
            write_records,
            self.bench.store,
            first,
            last,
            folder,
            told,
            then=lambda count: self._done(folder, count),
            failed=self._failed,
            owner=self,
        )

    def _count(self) -> None:
        count = self._steps.done
        self.progress.setText(self.tr("{count} records…").format(count=f"{count:,}"))

    def _done(self, folder: Path, count: int) -> None:
        self._end()
        if self._steps.stopped:
            self.progress.setText(self.tr("Stopped; the tables are not whole."))
            return
        self.written = folder
        self.refuse("")
        self.progress.setText(
            self.tr("{count} records are in {folder}.").format(count=f"{count:,}", folder=folder)
        )

    def _failed(self, fault: Exception) -> None:
        self._end()
        if not isinstance(fault, OSError):
            raise fault
        self.progress.clear()
        self.refuse(
            self.tr("The disk refused: {detail}.").format(detail=fault.strerror or str(fault))
        )

    def _end(self) -> None:
        self._look.stop()
        self.running = False
        self.main.setEnabled(True)
        self.retranslate()
