"""Reports: chart and table agree, are narrowed, sorted, copied, written, printed and stopped."""

from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.progress import Steps
from desktop.office.reports_page import ReportsPage
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import handed_over
from tests.desktop.recorded_messages import RecordedMessages

KEYS = ("pounds", "head", "hanging", "cut_out", "made", "block", "sitting")


def settled(qtbot: QtBot, bench: Bench) -> None:
    qtbot.waitUntil(lambda: not bench.work.busy())


def opened(qtbot: QtBot, bench: Bench) -> ReportsPage:
    page = ReportsPage(bench)
    qtbot.addWidget(page)
    page.resize(1186, 618)
    page.show()
    page.end.set_value(bench.today() + timedelta(days=30))
    page.refresh()
    settled(qtbot, bench)
    return page


def turned(qtbot: QtBot, bench: Bench, key: str) -> ReportsPage:
    page = opened(qtbot, bench)
    page.which.set_value(KEYS.index(key))
    page.refresh()
    settled(qtbot, bench)
    return page


@pytest.mark.parametrize("key", KEYS)
def test_with_nothing_yet_every_report_teaches_and_offers_nothing(
    qtbot: QtBot, bench: Bench, key: str
) -> None:
    page = turned(qtbot, bench, key)
    assert page.report().key == key
    assert page.empty.isVisible()
    assert page.report().teaches() in page.empty.sentence.text()
    assert not page.csv.isEnabled()
    assert unnamed(page) == []


def test_the_chart_says_what_the_table_has(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = turned(qtbot, bench, "pounds")
    (row,) = page.tables[0].rows.rows()
    assert (row.species, row.head, row.weighed) == ("pork", 1, 1)
    assert "189.8" in page.chart.accessibleDescription()
    assert unnamed(page) == []
    page.species.set_value("beef")
    page._show()
    assert page.empty.isVisible()
    assert "all" in page.empty.sentence.text()
    page.species.set_value("pork")
    page._show()
    assert page.both.isVisible()


def test_who_hasnt_fetched_is_found_sorted_and_copied(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = turned(qtbot, bench, "sitting")
    table = page.tables[KEYS.index("sitting")]
    assert [one.packages_left for one in table.rows.rows()] == [3, 3]
    table.sortByColumn(1, Qt.SortOrder.DescendingOrder)
    first, second = table.rows.rows()
    assert first.owner > second.owner
    page.copy_table()
    lines = QGuiApplication.clipboard().text().splitlines()
    assert len(lines) == 3
    assert first.owner in lines[1]
    page.wanted.set_text(second.owner.split()[0])
    page._show()
    assert [one.owner for one in table.rows.rows()] == [second.owner]
    assert page.chart.chart.top(0) == 1


def test_csv_has_bare_numbers_and_pdf_the_chart(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    messages: RecordedMessages,
    tmp_path: Path,
) -> None:
    handed_over(store, signed)
    page = turned(qtbot, bench, "cut_out")
    path = tmp_path / "cut_out.csv"
    messages.answers.append(path)
    page.save_csv()
    settled(qtbot, bench)
    heads, row = path.read_text("utf-8").splitlines()
    assert "Hot weight (lb)" in heads
    assert row.endswith(",1,1,189.8,55.4,29.2")
    page.show_pdf()
    settled(qtbot, bench)
    assert page.progress.preview is not None
    assert page.progress.preview.pdf.startswith(b"%PDF")
    page.progress.preview.accept()


def test_a_report_is_stopped_between_two_months_and_says_so(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, monkeypatch: pytest.MonkeyPatch
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    read: list[int] = []
    whole = Steps.over

    def stopping(steps: Steps, things: object) -> object:
        for one in whole(steps, things):  # pyright: ignore[reportArgumentType]
            read.append(1)
            steps.stop()
            yield one

    monkeypatch.setattr(Steps, "over", stopping)
    page.refresh()
    settled(qtbot, bench)
    assert read == [1]
    assert "Stopped" in page.status.text()
    assert not page.progress.isVisible()


def test_another_report_asked_for_meanwhile_is_the_one_shown(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = opened(qtbot, bench)
    page.refresh()
    page.which.set_value(KEYS.index("sitting"))
    page.refresh()
    settled(qtbot, bench)
    qtbot.waitUntil(lambda: page.tables[KEYS.index("sitting")].rows.rowCount() == 2)
    assert page.status.text() == "2 rows"


def test_while_another_report_is_read_the_last_one_isnt_under_its_name(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    handed_over(store, signed)
    page = turned(qtbot, bench, "pounds")
    assert page.both.isVisible()
    page.which.set_value(KEYS.index("block"))
    page.refresh()  # still being read
    assert page.empty.isVisible()
    assert not page.csv.isEnabled()
    assert page.empty.sentence.text() == "Reading"
    settled(qtbot, bench)
    assert page.report().teaches() in page.empty.sentence.text()


def test_what_is_half_typed_as_a_report_changes_nothing_of_the_one_shown(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Its rows were drawn as the first report's: a fault at each key in the field beside it."""
    handed_over(store, signed)
    page = turned(qtbot, bench, "cut_out")
    rows = page.tables[KEYS.index("cut_out")].rows.rowCount()
    assert rows
    page.which.set_text("0.005")
    page.wanted.set_text("berg")
    page.wanted.set_text("")
    page.retranslate()
    page.refresh()
    settled(qtbot, bench)
    assert page.report().key == "cut_out"
    assert page.tables[KEYS.index("cut_out")].rows.rowCount() == rows
    page.show_pdf()
    settled(qtbot, bench)
    assert page.progress.preview is not None
    page.progress.preview.accept()
