"""The plant's marks set in the Office: number, legend, product numbers, faults said in place."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.marks_dialog import MarksDialog, artwork_of
from desktop.office.shop_page import ShopPage
from shared.marking.plant_marks import PlantMarks
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages


def drawn(path: Path, wide: int, high: int) -> Path:
    """An image with a black bar on white: nobody's legend."""
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    for x in range(wide // 4, wide // 2):
        for y in range(high // 4, high // 2):
            image.setPixelColor(x, y, Qt.GlobalColor.black)
    assert image.save(str(path))
    return path


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench) -> MarksDialog:
    made = MarksDialog(bench)
    qtbot.addWidget(made)
    made.show()
    return made


def kept(store: Store) -> PlantMarks:
    with store.read() as work:
        return work.marks.now()


def test_number_and_legend_of_the_stock_are_kept(dialog: MarksDialog, store: Store) -> None:
    assert unnamed(dialog) == []
    dialog.establishment.set_value("M1234")
    dialog.legend.set_value("stock")
    dialog.keep.set_value("keep_refrigerated")
    dialog.try_it()
    assert not dialog.isVisible()
    found = kept(store)
    assert (found.establishment, found.legend, found.keep) == (
        "M1234",
        "stock",
        "keep_refrigerated",
    )


def test_a_legend_without_its_number_is_asked_for_it(dialog: MarksDialog, store: Store) -> None:
    dialog.legend.set_value("stock")
    dialog.try_it()
    assert dialog.isVisible()
    assert "number" in dialog.establishment.complaint.text()
    dialog.establishment.set_value("Est. 12/3")
    dialog.try_it()
    assert "at most 12" in dialog.establishment.complaint.text()
    assert kept(store) == PlantMarks(version=1)


def test_the_artwork_is_taken_and_shown(
    dialog: MarksDialog, store: Store, messages: RecordedMessages, tmp_path: Path
) -> None:
    messages.answers = [drawn(tmp_path / "ours.jpg", 400, 300)]
    dialog.choose_artwork()
    assert dialog.legend.value() == "artwork"
    assert dialog.picture.isVisible()
    assert dialog.said.text() == "ours.jpg"
    dialog.establishment.set_value("M1")
    dialog.try_it()
    artwork = kept(store).artwork
    assert artwork is not None
    assert (artwork.name, artwork.wide, artwork.high) == ("ours.jpg", 400, 300)
    image = QImage.fromData(artwork.png)
    assert image.pixelColor(150, 100) == Qt.GlobalColor.black
    assert image.pixelColor(10, 10) == Qt.GlobalColor.white


def test_a_coarse_image_and_no_image_are_refused(
    dialog: MarksDialog, messages: RecordedMessages, tmp_path: Path
) -> None:
    messages.answers = [drawn(tmp_path / "small.png", 100, 80)]
    dialog.choose_artwork()
    assert "100 × 80 dots; this printer needs 164" in dialog.refusal.text()
    text = tmp_path / "letter.png"
    text.write_text("not an image", encoding="utf-8")
    messages.answers = [text]
    dialog.choose_artwork()
    assert "letter.png is no picture" in dialog.refusal.text()
    assert dialog.artwork is None
    dialog.legend.set_value("artwork")
    dialog.try_it()
    assert "Choose the artwork" in dialog.refusal.text()


def test_drawings_without_dots_of_their_own_are_drawn_fine_enough(tmp_path: Path) -> None:
    from reportlab.pdfgen.canvas import Canvas

    svg = tmp_path / "ours.svg"
    svg.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="20" height="10">'
        '<rect x="2" y="2" width="6" height="6"/></svg>',
        encoding="utf-8",
    )
    canvas = Canvas(str(tmp_path / "ours.pdf"), pagesize=(20, 10))
    canvas.rect(2, 2, 6, 6, fill=1)
    canvas.save()
    for name in ("ours.svg", "ours.pdf"):
        found = artwork_of(tmp_path / name)
        assert found is not None, name
        assert max(found.wide, found.high) == pytest.approx(960, abs=1)
        image = QImage.fromData(found.png)
        dots = found.wide / 20
        assert image.pixelColor(int(5 * dots), int(5 * dots)) == Qt.GlobalColor.black
        assert image.pixelColor(int(15 * dots), int(5 * dots)) == Qt.GlobalColor.white
    broken = tmp_path / "broken.pdf"
    broken.write_text("no PDF", encoding="utf-8")
    assert artwork_of(broken) is None


def test_the_artwork_can_be_taken_away(
    dialog: MarksDialog, store: Store, messages: RecordedMessages, tmp_path: Path
) -> None:
    messages.answers = [drawn(tmp_path / "ours.png", 400, 300)]
    dialog.choose_artwork()
    dialog.remove.click()
    assert dialog.legend.value() == ""
    assert not dialog.remove.isVisible()
    dialog.try_it()
    assert kept(store).artwork is None


def test_products_get_their_numbers_and_a_wrong_one_is_said(
    dialog: MarksDialog, store: Store
) -> None:
    dialog.species.set_value("pork")
    dialog.species.changed.emit()
    dialog.product.set_value("bacon")
    dialog.product.changed.emit()
    dialog.gtin.set_value("90614141000012")
    dialog.try_it()
    assert "should be 5" in dialog.gtin.complaint.text()
    dialog.gtin.set_value("90614141000015")
    dialog.gtin.committed.emit()
    assert "90614141000015" in dialog.product.text()
    dialog.try_it()
    assert kept(store).gtins == {("pork", "bacon"): "90614141000015"}


def test_it_opens_from_the_shops_page(qtbot: QtBot, bench: Bench) -> None:
    page = ShopPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.refresh()
    page.marks.click()
    assert page.dialog.isVisible()
    page.dialog.reject()


def test_what_is_no_image_is_no_artwork(tmp_path: Path) -> None:
    assert artwork_of(tmp_path / "nothing.png") is None
