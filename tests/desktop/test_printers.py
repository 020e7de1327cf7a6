"""Printing: pages as they are, on sheets of their own size, and printers that are gone."""

from pathlib import Path

import pypdfium2
import pytest
from PySide6.QtGui import QColor
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo
from PySide6.QtWidgets import QApplication

from desktop.printers import (
    PageSize,
    Printers,
    PrintProblem,
    draw,
    page_image,
    page_sizes,
)
from desktop.settings import SettingsFile
from tests.desktop.paper_to_print import LABEL, LETTER, paper


@pytest.fixture
def printers(qapp: QApplication, tmp_path: Path) -> Printers:
    return Printers(SettingsFile(tmp_path / "settings.json"))


def test_each_page_has_its_own_size() -> None:
    assert page_sizes(paper(LETTER, LABEL)) == [PageSize(*LETTER), PageSize(*LABEL)]


def test_what_is_no_pdf_is_said() -> None:
    with pytest.raises(ValueError, match="not a PDF"):
        page_sizes(b"a letter to the inspector")


def test_a_page_is_drawn_on_white_at_the_printers_dots() -> None:
    # A 4 by 3 in label on a printer of 203 dots to the inch is 812 by 609 dots.
    image = page_image(paper(LABEL), 0, 203)
    assert (image.width(), image.height()) == (812, 609)
    assert image.pixelColor(100, 100) == QColor("black")
    assert image.pixelColor(700, 100) == QColor("white")
    assert image.pixelColor(100, 500) == QColor("white")


def test_a_printer_that_is_gone_is_a_problem_not_a_fault(printers: Printers) -> None:
    assert printers.send(paper(LETTER), "Front desk") == PrintProblem("gone", "Front desk")


def test_printing_keeps_every_pages_size_and_content(qapp: QApplication, tmp_path: Path) -> None:
    target = tmp_path / "printed.pdf"
    device = QPrinter(QPrinter.PrinterMode.ScreenResolution)
    device.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    device.setOutputFileName(str(target))
    device.setResolution(203)
    assert draw(paper(LABEL, LETTER, LABEL), device) is None
    printed = pypdfium2.PdfDocument(target)
    sizes = [printed.get_page_size(at) for at in range(len(printed))]
    for found, wanted in zip(sizes, (LABEL, LETTER, LABEL), strict=True):
        assert found == pytest.approx(wanted, abs=1.0)
    printed.close()
    image = page_image(target.read_bytes(), 0, 72)
    assert image.pixelColor(30, 30).lightness() < 40
    assert image.pixelColor(250, 30).lightness() > 220
    assert image.pixelColor(30, 180).lightness() > 220


def test_a_paper_that_can_not_be_read_is_not_printed(qapp: QApplication, tmp_path: Path) -> None:
    device = QPrinter()
    device.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    device.setOutputFileName(str(tmp_path / "printed.pdf"))
    problem = draw(b"nothing", device)
    assert problem is not None
    assert problem.code == "broken"


def test_the_printer_last_used_for_a_kind_is_usual_while_it_is_there(
    printers: Printers, monkeypatch: pytest.MonkeyPatch
) -> None:
    there = ["Office laser", "Label roll"]
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", lambda: there)
    monkeypatch.setattr(QPrinterInfo, "defaultPrinterName", lambda: "Office laser")
    assert printers.usual("paper") == "Office laser"
    assert printers.usual("label") == ""
    printers.remember("label", "Label roll")
    assert printers.usual("label") == "Label roll"
    there.remove("Label roll")
    assert printers.usual("label") == ""
