"""The calendar's papers: a day's list, the block sheets due next, and a calendar file."""

from datetime import date, timedelta
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from desktop.file_out import write_out
from shared.shop.calendar import hang_days

if TYPE_CHECKING:
    from PySide6.QtWidgets import QDialog

    from desktop.bench import Bench
    from desktop.preview import Preview

AHEAD = 31


class CalendarPapers(QObject):
    """Makes papers on a worker and shows them over the calendar."""

    def __init__(self, bench: "Bench", over: "QDialog") -> None:
        super().__init__(over)
        self.bench = bench
        self._over = over
        self.preview: Preview | None = None

    def day_list(self, day: date) -> None:
        """The list of a day, to hang up on the kill floor."""
        bench, made, words = self.bench, self.bench.now(), self.bench.words

        def make() -> bytes:
            from printing.day_list import day_list

            with bench.store.read() as work:
                shop, lots = work.shop.details(), work.calendar.lots(day, day)
                other = work.calendar.filled(day, day, count_lines=False).others.get(day)
            note = "" if other is None else other.note
            return day_list(day, lots, shop=shop, note=note, made=made, words=words)

        bench.work.run(
            make, owner=self, then=lambda pdf: self._show(pdf, self.tr("List of the day"))
        )

    def sheets_of_next_day(self) -> None:
        """The released block sheets of the next day anything is due at the block, as kept."""
        bench = self.bench

        def make() -> bytes:
            return next_sheets(bench)

        bench.work.run(make, then=self._show_sheets)

    def _show_sheets(self, pdf: bytes) -> None:
        if pdf:
            self._show(pdf, self.tr("Block sheets due next"))
        else:
            self.bench.messages.tell(
                self.tr("No block sheets"),
                self.tr("No released sheet is due at the block in the next {days} days.").format(
                    days=AHEAD
                ),
            )

    def save_ics(self, span: tuple[date, date]) -> None:
        """A calendar file (RFC 5545) of the shown days, for a phone or a wall calendar."""
        from desktop.rail.calendar_file import calendar_file

        name = f"kill-days-{span[0].isoformat()}.ics"
        where = self.bench.messages.save_where(
            self.tr("Save as calendar file"), Path(name), "iCalendar (*.ics)"
        )
        if where is None:
            return
        bench, now, words = self.bench, self.bench.now(), self.bench.words

        def content() -> bytes:
            with bench.store.read() as work:
                lots = work.calendar.lots(*span)
            return calendar_file(lots, now, words)

        write_out(bench, where, content, self._written, self)

    def _written(self, fault: str) -> None:
        if fault:
            self.bench.messages.tell(self.tr("The file was not written"), fault)

    def _show(self, pdf: bytes, title: str) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.preview = show_paper(self.bench, pdf, title, parent=self._over)


def next_sheets(bench: "Bench") -> bytes:
    """The last released sheet of each lot due first from tomorrow on, joined; b"" for none.

    Beef killed on the 2nd with 14 days to hang is due on the 16th.
    """
    from pypdf import PdfReader, PdfWriter

    first = bench.today() + timedelta(1)
    due: dict[date, list[bytes]] = {}
    with bench.store.read() as work:
        plan = work.calendar.plan()
        lots = work.calendar.lots(first - timedelta(2 * AHEAD), first + timedelta(AHEAD))
        days = {one.id: one.day + timedelta(hang_days(plan, one.species)) for one in lots}
        coming = [one for one, day in days.items() if first <= day <= first + timedelta(AHEAD)]
        kept = work.calendar.sheets(coming)
    for lot_id, pdf in kept.items():
        due.setdefault(days[lot_id], []).append(pdf)
    if not due:
        return b""
    writer = PdfWriter()
    for pdf in due[min(due)]:
        writer.append(PdfReader(BytesIO(pdf)))
    out = BytesIO()
    writer.write(out)
    return out.getvalue()
