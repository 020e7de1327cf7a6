"""Dialogs with as much in them as they may come to, in the least window, also in large type."""

from collections.abc import Callable, Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QApplication, QDialog, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.counter.book_dialog import BookDialog
from desktop.counter.booking_dialog import BookingDialog
from desktop.counter.hand_over_dialog import HandOverDialog
from desktop.counter.weights_dialog import WeightsDialog
from desktop.fields import FormDialog, on_screen
from desktop.look import theme
from desktop.look.theme import Theme
from desktop.look.type_scale import load_fonts
from desktop.office.charge_dialog import ChargeDialog
from desktop.office.recipe_dialog import RecipeDialog
from desktop.paths import bundled_fonts
from desktop.rail.check_in import CheckInDialog
from desktop.wrap.batches_dialog import BatchesDialog
from shared.shop.people import SignedOn
from tests.db.examples import arrived, lot_of_halves, order_of
from tests.desktop.counter.to_hand_over import ready

WIDE, HIGH = 1366, 696
LONG = "Smoked jowl bacon, cured and sliced thick, {number}"


@pytest.fixture(params=[100, 150])
def large(qapp: QApplication, request: pytest.FixtureRequest) -> Iterator[None]:
    theme.apply(qapp, Theme(percent=request.param, family=load_fonts(bundled_fonts())))
    yield
    theme.apply(qapp, Theme())


@pytest.fixture
def window(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> QWidget:
    """The window on a screen of 1366 by 768 pixels with a bar of 40."""
    monkeypatch.setattr(on_screen, "screen_of", lambda _dialog: QRect(0, 0, WIDE, HIGH + 32))
    made = QWidget()
    qtbot.addWidget(made)
    made.resize(WIDE, HIGH)
    made.show()
    return made


def eighteen(bench: Bench, store: Store, signed: SignedOn, window: QWidget) -> HandOverDialog:
    """Eighteen products with long names, none frozen, no bill, and some scanned."""
    dialog = HandOverDialog(bench, ready(store, signed), window)
    ham, ground = dialog.leaving
    dialog._rows = [ham] + [replace(ground, product=LONG.format(number=at)) for at in range(17)]
    dialog.table.setMinimumHeight(dialog._table_height())
    dialog.table.show_rows(dialog._rows)
    dialog.ticked = True
    dialog.retranslate()
    return dialog


def booking(bench: Bench, window: QWidget) -> BookDialog:
    """Twelve hogs, each its own owner's, on a day that is too full."""
    dialog = BookDialog(bench, window)
    dialog.head.set_value(12)
    dialog.shares.set_value("each")
    dialog.shares.changed.emit()
    assert sum(one.isEnabled() for one in dialog.owners) == 12
    dialog.overrule.setVisible(True)
    dialog.overrule.setEnabled(True)
    return dialog


def dialogs(
    bench: Bench, store: Store, signed: SignedOn, window: QWidget
) -> dict[str, Callable[[], QDialog]]:
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_halves(work)
        animal = arrived(work, lot)
        assert order_of(work, lot)
        work.commit()
    return {
        "hand over": lambda: eighteen(bench, store, signed, window),
        "book": lambda: booking(bench, window),
        "booking": lambda: BookingDialog(bench, lot.id, window),
        "weights": lambda: WeightsDialog(bench, window),
        "check in": lambda: CheckInDialog(bench, animal, window),
        "batches": lambda: BatchesDialog(bench, window),
        "charge": lambda: ChargeDialog(bench, None, (), lambda _charge: None, window),
        "recipe": lambda: RecipeDialog(bench, None, window),
    }


@pytest.mark.usefixtures("large")
def test_every_dialog_fits_the_screen_and_shows_its_buttons_whole(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, window: QWidget
) -> None:
    for name, make in dialogs(bench, store, signed, window).items():
        dialog = make()
        dialog.open()
        qtbot.waitExposed(dialog)
        qtbot.waitUntil(lambda: not bench.work.busy())
        QApplication.processEvents()
        assert (dialog.width() <= WIDE, dialog.height() <= HIGH) == (True, True), name
        feet = dialog.findChildren(QPushButton)
        if isinstance(dialog, FormDialog):
            feet = [dialog.main, dialog.leave]
        for one in feet:
            if one.isVisible():
                assert one.visibleRegion().boundingRect() == one.rect(), (name, one.text())
                assert one.height() >= one.sizeHint().height(), (name, one.text())
        dialog.close()
        dialog.deleteLater()
