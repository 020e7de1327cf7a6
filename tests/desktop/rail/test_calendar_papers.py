"""The sheets due next at the block, as they were kept, in one file."""

from datetime import timedelta
from io import BytesIO

from PySide6.QtWidgets import QDialog
from pytestqt.exceptions import capture_exceptions
from pytestqt.qtbot import QtBot
from reportlab.pdfgen.canvas import Canvas
from shiboken6 import delete

from desktop.bench import Bench
from desktop.rail.calendar_papers import CalendarPapers, next_sheets
from tests.db.examples import lot_of_one, settled
from tests.printing.pages import pages


def sheet(words: str) -> bytes:
    out = BytesIO()
    canvas = Canvas(out, invariant=1)
    canvas.drawString(72, 700, words)
    canvas.showPage()
    canvas.save()
    return out.getvalue()


def test_the_last_sheets_of_the_next_day_are_joined(bench: Bench) -> None:
    """Pork is cut the day after the kill (USUAL_HANG): today's lots tomorrow."""
    assert next_sheets(bench) == b""
    today = bench.today()
    with bench.store.work(bench.person, bench.station) as work:
        first = lot_of_one(work, "Anna Berg", today)
        second = lot_of_one(work, "Bert Iversen", today)
        later = lot_of_one(work, "Carla Olsen", today + timedelta(3))
        lot_of_one(work, "Dora Lind", today)
        for lot in (first, second, later):
            settled(work, lot.shares[0].order_id)
        for lot, words in ((first, "old"), (first, "new"), (second, "other"), (later, "later")):
            work.orders.release(lot.id, [lot.shares[0].order_id], snapshot="{}", pdf=sheet(words))
        work.commit()
    assert [one.strip() for one in pages(next_sheets(bench))] == ["new", "other"]


def test_a_list_that_comes_after_the_calendar_was_closed_is_dropped(
    qtbot: QtBot, bench: Bench
) -> None:
    """It was shown over a window that was gone, and that was told as a fault of ours."""
    over = QDialog()
    papers = CalendarPapers(bench, over)
    papers.day_list(bench.today())
    delete(over)
    with capture_exceptions() as faults:
        qtbot.waitUntil(lambda: not bench.work.busy())
    assert faults == []
