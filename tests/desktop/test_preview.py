"""The preview: pages, zoom, saving, and refusals as sentences in it."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.preview import Preview
from desktop.printers import Printers, PrintProblem
from tests.desktop.audit import unnamed
from tests.desktop.paper_to_print import LABEL, LETTER, paper
from tests.desktop.recorded_messages import RecordedMessages


def opened(qtbot: QtBot, bench: Bench, pdf: bytes, kind: str = "paper") -> Preview:
    preview = Preview(bench, pdf, "Bill 12: Jørgen", "label" if kind == "label" else "paper")
    qtbot.addWidget(preview)
    preview.open()
    return preview


def test_page_keys_turn_the_pages(qtbot: QtBot, bench: Bench) -> None:
    preview = opened(qtbot, bench, paper(LETTER, LETTER, LABEL))
    assert preview.where.text() == "Page 1 of 3, 60 %"
    QTest.keyClick(preview, Qt.Key.Key_PageDown)
    QTest.keyClick(preview, Qt.Key.Key_PageDown)
    QTest.keyClick(preview, Qt.Key.Key_PageDown)
    assert preview.where.text() == "Page 3 of 3, 60 %"
    # 4 in at 96 dots to the inch and 60 percent.
    assert preview.view.image_size().width() == 231


def test_page_keys_turn_the_pages_where_the_keyboard_is_at_first(
    qtbot: QtBot, bench: Bench
) -> None:
    preview = opened(qtbot, bench, paper(LETTER, LETTER))
    assert preview.focusWidget() is preview.view
    QTest.keyClick(preview.view, Qt.Key.Key_PageDown)
    assert preview.page == 1
    QTest.keyClick(preview.view, Qt.Key.Key_PageUp)
    assert preview.page == 0


def test_the_whole_page_is_seen_at_first(qtbot: QtBot, bench: Bench) -> None:
    preview = opened(qtbot, bench, paper(LETTER))
    assert not preview.view.verticalScrollBar().isVisible()
    assert not preview.view.horizontalScrollBar().isVisible()


def test_a_label_is_shown_large_enough_to_read(qtbot: QtBot, bench: Bench) -> None:
    preview = opened(qtbot, bench, paper(LABEL), "label")
    assert 150 <= preview.zoom <= 200
    # A 4 in wide label at 96 dots to the inch.
    assert preview.view.image_size().width() == round(384 * preview.zoom / 100)


def test_zoom_stops_at_both_ends(qtbot: QtBot, bench: Bench) -> None:
    preview = opened(qtbot, bench, paper(LETTER))
    for _ in range(9):
        preview.larger.click()
    assert preview.zoom == 300
    for _ in range(9):
        preview.smaller.click()
    assert preview.zoom == 50


def test_without_a_printer_it_says_so_and_saves(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    preview = opened(qtbot, bench, paper(LETTER))
    assert not preview.print_button.isEnabled()
    assert preview.said.text() == ("This computer has no printer set up. Save it as PDF instead.")
    messages.answers = [tmp_path / "bill.pdf"]
    with qtbot.waitSignal(bench.work.idle):
        preview.save_it()
    assert (tmp_path / "bill.pdf").read_bytes() == preview.pdf


def test_a_folder_that_can_not_be_written_is_a_sentence(
    qtbot: QtBot, bench: Bench, messages: RecordedMessages, tmp_path: Path
) -> None:
    preview = opened(qtbot, bench, paper(LETTER))
    messages.answers = [tmp_path / "missing" / "bill.pdf"]
    with qtbot.waitSignal(bench.work.idle):
        preview.save_it()
    assert preview.said.text().startswith("There is no folder")
    assert preview.isVisible()


def test_a_printer_that_went_away_is_a_sentence_and_nothing_is_lost(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Printers, "names", lambda _self: ["Office laser"])
    preview = opened(qtbot, bench, paper(LETTER))
    assert preview.printer.value() == "Office laser"
    with qtbot.waitSignal(bench.work.idle):
        preview.print_button.click()
    assert preview.said.text() == (
        "The printer Office laser is gone. Choose another, or save as PDF."
    )
    assert preview.isVisible()
    assert preview.print_button.isEnabled()


def test_what_is_printed_closes_and_remembers_the_printer(
    qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    sent: list[tuple[str, int]] = []

    def send(_self: Printers, _pdf: bytes, printer: str, copies: int) -> PrintProblem | None:
        sent.append((printer, copies))
        return None

    monkeypatch.setattr(Printers, "names", lambda _self: ["Office laser", "Label roll"])
    monkeypatch.setattr(Printers, "send", send)
    preview = opened(qtbot, bench, paper(LABEL), "label")
    assert preview.printer.value() is None
    preview.print_button.click()
    assert preview.printer.complaint.text() == "Choose a printer."
    preview.printer.set_value("Label roll")
    preview.copies.set_value(2)
    with qtbot.waitSignal(bench.work.idle):
        preview.print_button.click()
    assert sent == [("Label roll", 2)]
    assert not preview.isVisible()
    assert bench.settings.now.printers == {"label": "Label roll"}


def test_all_in_it_has_a_name(qtbot: QtBot, bench: Bench, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Printers, "names", lambda _self: ["Office laser"])
    assert unnamed(opened(qtbot, bench, paper(LETTER))) == []
