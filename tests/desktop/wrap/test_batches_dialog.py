"""A batch by keyboard: begun, filled, checked, moved on, weighed and divided."""

from dataclasses import replace
from fractions import Fraction

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.language import Language
from desktop.paths import resources
from desktop.wrap.batch_dialogs import PutMeatIn
from desktop.wrap.batches_dialog import BatchesDialog
from shared.curing.batch import Added, PutIn
from shared.curing.recipe import Ingredient, Recipe
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.db.examples import line, lot_of_halves, lot_of_one, order_of, settled
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into

BACON = Recipe(
    name="House bacon",
    finish="cured_smoked",
    ingredients=(Ingredient("salt"),),
    allergens_known=True,
    product="dry_cured",
    strength=Fraction(1, 16),
    ready="cook_before_eating",
)


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> BatchesDialog:
    """Two halves of one hog and a hog of somebody else's, all released to the block."""
    with store.work(signed.person, signed.station) as work:
        lots = (lot_of_halves(work), lot_of_one(work, "Cora Dahl"))
        for lot in lots:
            ids: list[int] = []
            for share in lot.shares:
                order = order_of(work, lot, share.number)
                line(work, order)
                ids.append(settled(work, order.id).id)
            work.orders.release(lot.id, ids, snapshot="{}", pdf=b"%PDF sheet")
        work.recipes.save(BACON)
        work.commit()
    made = BatchesDialog(bench)
    qtbot.addWidget(made)
    made.open()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def press(widget: QWidget, key: Qt.Key, held: Qt.KeyboardModifier | None = None) -> None:
    """A key once the window that is meant has the keyboard."""
    for _turn in range(100):
        if widget.isActiveWindow():
            break
        widget.activateWindow()
        QTest.qWait(5)
    QTest.keyClick(widget, key, held or Qt.KeyboardModifier.NoModifier)


def begun(dialog: BatchesDialog) -> None:
    press(dialog, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    form = dialog.dialog
    assert form is not None
    form.recipe.set_value(form.recipe._values[0])  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)


def put(dialog: BatchesDialog, owner: str, weight: str) -> str:
    """Put meat of that owner's first line in; what was refused, if it was."""
    press(dialog, Qt.Key.Key_F8)
    form = dialog.dialog
    assert form is not None
    wanted = next(one.id for one in form._orders if one.owner == owner)  # pyright: ignore
    form.order.set_value(wanted)  # pyright: ignore
    form._ordered()  # pyright: ignore
    form.line.set_value(form.line._values[0])  # pyright: ignore
    type_into(form.weight.line, weight)  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    if "doesn't say fresh or cured" in form.refusal.text():  # the ham of the examples
        press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    said = form.refusal.text()
    if said:
        form.reject()
    return said


def test_two_halves_of_one_hog_are_cured_together(dialog: BatchesDialog, store: Store) -> None:
    begun(dialog)
    assert put(dialog, "Anna Berg", "30") == ""
    assert put(dialog, "Bert Iversen", "20") == ""
    assert "can't be checked" in dialog.nitrite.text()
    press(dialog, Qt.Key.Key_F9)
    form = dialog.dialog
    assert form is not None
    type_into(form.cure.line, "0.5")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    # 0.5 lb × 0.0625 × 1,000,000 ÷ 50 lb = 625 ppm, the most of dry-cured meat (9 CFR 424.21(c)).
    assert "625 ppm" in dialog.nitrite.text()
    for _stage in ("curing", "smoking"):
        press(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    press(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    form = dialog.dialog
    assert form is not None
    type_into(form.weight.line, "44.01")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    with store.read() as work:
        (batch,) = work.batches.list()
        shares = work.batches.shares(batch)
    assert batch.state == "done"
    assert list(shares.values()) == [Weight(2641, "lb", -2), Weight(1760, "lb", -2)]
    assert "88 %" in dialog.facts.text()


def test_more_out_than_in_is_asked_about_and_takes_a_note(
    dialog: BatchesDialog, store: Store
) -> None:
    begun(dialog)
    assert put(dialog, "Anna Berg", "30") == ""
    for _stage in ("curing", "smoking", "done"):
        press(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    form = dialog.dialog
    assert form is not None
    type_into(form.weight.line, "300")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert "300 lb is more than the 30.00" in form.refusal.text().replace("\u00a0", " ")
    type_into(form.weight.line, "31.5")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert "more than" in form.refusal.text()
    type_into(form.note.line, "pumped")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    with store.read() as work:
        (batch,) = work.batches.list()
    assert (batch.state, batch.out) == ("done", Weight(315, "lb", -1))


def test_meat_of_another_family_is_refused_where_one_looks(dialog: BatchesDialog) -> None:
    begun(dialog)
    put(dialog, "Anna Berg", "30")
    said = put(dialog, "Cora Dahl", "10")
    assert "21 USC 623(a)" in said
    assert len(dialog.meat.rows.rows()) == 1


def test_what_was_put_in_by_mistake_is_taken_out_with_its_reason(
    dialog: BatchesDialog, messages: RecordedMessages, store: Store
) -> None:
    begun(dialog)
    put(dialog, "Anna Berg", "30")
    messages.answers = ["wrong rack"]
    dialog.meat.choose(0)
    dialog.take_out()
    assert not dialog.meat.rows.rows()
    with store.read() as work:
        (batch,) = work.batches.list()
    assert [one.void for one in batch.put_in] == ["wrong rack"]


def test_an_empty_batch_goes_nowhere(dialog: BatchesDialog) -> None:
    begun(dialog)
    press(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert "Nothing is in the batch" in dialog.said.text()


def test_all_that_takes_the_keyboard_has_a_name(dialog: BatchesDialog) -> None:
    assert unnamed(dialog) == []


def test_the_sheet_says_whose_it_is_and_its_allergens(dialog: BatchesDialog, qtbot: QtBot) -> None:
    begun(dialog)
    put(dialog, "Anna Berg", "30")
    dialog.print_sheet()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    assert dialog.preview.pdf.startswith(b"%PDF")
    dialog.preview.close()


def test_bacon_in_a_dry_cured_batch_is_cautioned_and_never_ticked(
    dialog: BatchesDialog, store: Store, signed: SignedOn
) -> None:
    begun(dialog)
    chosen = dialog.batches.chosen()
    assert chosen is not None
    with store.work(signed.person, signed.station) as work:
        (anna, *_others) = work.orders.list(states=("released",), closed=False, sort="number")
        work.batches.put_in(chosen.id, anna.id, 1, "belly_slab", Weight.from_pounds("100"))
        work.commit()
    dialog.refresh()
    # Dry-cured bacon may have 200 ppm (9 CFR 424.22(b)), other dry-cured meat 625.
    for cure, told, role in (
        ("0.4", "250 ppm: above the 200 allowed", "contested"),
        ("0.24", "150 ppm: it can't be checked", "tight"),
    ):
        press(dialog, Qt.Key.Key_F9)
        form = dialog.dialog
        assert form is not None
        type_into(form.cure.line, cure)  # pyright: ignore
        press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
        said = dialog.nitrite.text()
        assert told in said
        assert "dry-cured, 120–625 ppm" in said
        assert "bacon, dry-cured, 120–200 ppm (9 CFR 424.22(b))" in said
        assert dialog.nitrite.property("role") == role


def test_a_ham_of_which_nothing_is_said_is_asked_about_before_it_is_cured(
    dialog: BatchesDialog,
) -> None:
    begun(dialog)
    press(dialog, Qt.Key.Key_F8)
    form = dialog.dialog
    assert form is not None
    form.order.set_value(form._orders[0].id)  # pyright: ignore
    form._ordered()  # pyright: ignore
    form.line.set_value(form.line._values[0])  # pyright: ignore
    type_into(form.weight.line, "18")  # pyright: ignore
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert "doesn't say fresh or cured" in form.refusal.text()
    assert not dialog.meat.rows.rows()
    press(form, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert [one.cut for one in dialog.meat.rows.rows() if isinstance(one, PutIn)] == ["whole_ham"]


def test_meat_and_what_is_added_to_it_go_in_together(dialog: BatchesDialog, store: Store) -> None:
    """With both typed the owner's 16 lb went in as pounds of stock, and his meat not at all."""
    begun(dialog)
    press(dialog, Qt.Key.Key_F8)
    form = dialog.dialog
    assert isinstance(form, PutMeatIn)
    form.order.set_value(next(one.id for one in form._orders if one.owner == "Anna Berg"))  # pyright: ignore
    form._ordered()  # pyright: ignore
    form.line.set_value(form.line.values[0])
    form.weight.set_text("16")
    form.other.set_text("pork trim")
    form.try_it()
    assert form.other_weight.complaint.text() == "Fill this in."
    type_into(form.other_weight.line, "4")
    form.try_it()
    assert "box or lot" in form.source.complaint.text()
    type_into(form.source.line, "Hollin, box 12")
    form.try_it()
    if form.isVisible():  # the ham doesn't say fresh or cured
        form.try_it()
    with store.read() as work:
        (batch,) = work.batches.list()
    assert [(one.owner, one.weight) for one in batch.standing] == [("Anna Berg", Weight(16, "lb"))]
    assert [(one.what, one.weight) for one in batch.added] == [("pork trim", Weight(4, "lb"))]


def test_what_is_added_goes_in_alone_and_nothing_at_all_is_asked_for(
    dialog: BatchesDialog, store: Store
) -> None:
    begun(dialog)
    press(dialog, Qt.Key.Key_F8)
    form = dialog.dialog
    assert isinstance(form, PutMeatIn)
    form.try_it()
    assert form.weight.complaint.text() == "Fill this in."
    type_into(form.other_weight.line, "4")
    form.try_it()
    assert form.other.complaint.text() == "Fill this in."
    type_into(form.other.line, "pork fat")
    type_into(form.source.line, "Hollin, box 12")
    form.try_it()
    assert not form.isVisible()
    with store.read() as work:
        (batch,) = work.batches.list()
    assert (batch.standing, len(batch.added)) == ((), 1)


def test_a_batch_of_added_stock_alone_is_emptied_with_a_reason(
    dialog: BatchesDialog, store: Store, messages: RecordedMessages
) -> None:
    """It could go nowhere, and what was in it couldn't be taken out either."""
    begun(dialog)
    press(dialog, Qt.Key.Key_F8)
    form = dialog.dialog
    assert isinstance(form, PutMeatIn)
    form.other.set_text("pork fat")
    type_into(form.other_weight.line, "4")
    type_into(form.source.line, "Hollin, box 12")
    form.try_it()
    (row,) = dialog.meat.rows.rows()
    assert isinstance(row, Added)
    shown = [dialog.meat.rows.index(0, at).data() for at in range(4)]
    assert shown[:3] == ["Added, from Hollin, box 12", "", "Pork fat"]
    assert dialog.facts.text().endswith("of it pork fat (Hollin, box 12)")
    press(dialog, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert dialog.said.text().startswith("Only what was added is in it")
    assert dialog.out.isEnabled()
    messages.answers = ["wrong batch"]
    dialog.meat.choose(0)
    press(dialog, Qt.Key.Key_Delete)
    assert not dialog.meat.rows.rows()
    assert not dialog.out.isEnabled()
    with store.read() as work:
        (batch,) = work.batches.list()
    assert (batch.added, batch.whole_ng) == ((), 0)


def test_the_next_stage_is_said_in_spanish(
    dialog: BatchesDialog, qapp: QApplication, store: Store
) -> None:
    """It stayed English: its words were collected under a name nobody asks for."""
    language, before = Language(qapp, resources() / "translations"), QLocale()
    begun(dialog)
    put(dialog, "Anna Berg", "30")
    said = [dialog.next.text()]
    try:
        language.use("es")
        dialog.retranslate()
        said.append(dialog.next.text())
        with store.read() as work:
            (batch,) = work.batches.list()
        for state in ("curing", "smoking", "done"):
            dialog._chosen(replace(batch, state=state))
            said.append(dialog.next.text())
    finally:
        language.use("en")
        QLocale.setDefault(before)
    assert said[0] == "Into c&ure"
    assert said[1:] == ["A c&ura", "A hu&mo", "Listo, &pesarlo…", "Empa&cado"]
