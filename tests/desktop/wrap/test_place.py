"""The wrapping table by keyboard: weigh in, count, make void, mark ready."""

from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.language import Language
from desktop.paths import resources
from desktop.wrap.place import WrapPlace
from printing.words import Words
from shared.curing.batch import Batch, BatchState
from shared.curing.recipe import Recipe
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from shared.units import NG_PER_LB, Weight
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_batches_dialog import BACON


def opened(qtbot: QtBot, bench: Bench) -> WrapPlace:
    place = WrapPlace(bench)
    qtbot.addWidget(place)
    place.resize(1366, 620)
    place.show()
    place.refresh()
    qtbot.waitUntil(lambda: not bench.work.busy())
    return place


def press(widget: QWidget, key: Qt.Key) -> None:
    QTest.keyClick(widget, key)


def weigh(place: WrapPlace, text: str) -> None:
    type_into(place.strip.weight.line, text)
    press(place.strip.weight.line, Qt.Key.Key_Return)


def test_three_packages_are_weighed_in_by_keyboard_and_counted(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    press(place.lines, Qt.Key.Key_Down)
    press(place.lines, Qt.Key.Key_Down)
    chosen = place.lines.chosen()
    assert chosen is not None
    assert chosen.cut == "ground_pork"
    press(place.lines, Qt.Key.Key_Return)
    weigh(place, "1.02")
    weigh(place, "0.98")
    type_into(place.strip.tare.line, "0.05")
    weigh(place, "1.10")
    with store.read() as work:
        (row,) = work.packages.counts(order.id)
        made = work.packages.of_order(order.id)
    assert (row.line, row.packages) == (chosen.line, 3)
    assert row.nanograms == NG_PER_LB * 305 // 100  # 1.02 + 0.98 + (1.10 - 0.05) lb
    assert [one.net.text() for one in made] == ["1.02 lb", "0.98 lb", "1.05 lb"]
    shown = place.lines.chosen()
    assert shown is not None
    assert (shown.packages, shown.made_ng) == (3, row.nanograms)
    assert place.side.total.text().startswith("3 made, 3.05")
    assert place.strip.weight.is_empty()


def test_planned_stands_beside_made(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    ham = place.lines.rows.row(0)
    assert ham.planned is not None
    assert (ham.planned.low, ham.planned.high) == (1, 1)  # one ham hangs on one side
    assert ham.planned_ng is not None
    assert 10 * NG_PER_LB < ham.planned_ng < 30 * NG_PER_LB


def test_a_weight_that_is_none_is_refused_in_place(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    weigh(place, "0")
    assert "more than nothing" in place.strip.weight.problem()
    place.strip.weight.set_value(None)
    type_into(place.strip.tare.line, "2")
    weigh(place, "1")
    assert "tare is more" in place.strip.tare.problem()
    with store.read() as work:
        assert work.packages.of_order(order.id) == ()


def test_bacon_has_no_label_until_its_cure_is_known(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(1)
    weigh(place, "1")
    assert "Keep a recipe for the cure" in place.side.said.text()
    assert "allergens" in place.side.said.text()


def test_a_package_is_made_void_with_its_reason(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, messages: RecordedMessages
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    weigh(place, "18.5")
    messages.answers = ["Bag torn"]
    place.side.table.choose(0)
    place.void_package()
    with store.read() as work:
        (package,) = work.packages.of_order(order.id)
        assert package.void == "Bag torn"
        assert work.packages.counts(order.id) == ()
    assert place.wrapping is not None
    assert place.wrapping.made_packages == 0


def test_an_odd_package_needs_its_reason(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.odd_package()
    dialog = place.dialog
    dialog.cut.set_value("pork_heart" if "pork_heart" in dialog.cut._values else "whole_ham")
    dialog.weight.set_text("2.5")
    dialog.try_it()
    assert dialog.reason.problem()
    dialog.reason.set_text("Found in the cooler")
    dialog.try_it()
    with store.read() as work:
        (package,) = work.packages.of_order(order.id)
    assert (package.line, package.reason) == (0, "Found in the cooler")


def test_an_order_the_block_has_not_cut_is_not_ready(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed, cut=False)
    place = opened(qtbot, bench)
    place.mark_ready()
    assert "The block has not cut" in place.side.said.text()
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    assert found.state == "released"


def test_ready_and_back_again_with_a_reason(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, messages: RecordedMessages
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    weigh(place, "18.5")
    said: list[str] = []
    place.said.connect(said.append)
    messages.answers = [None]
    place.mark_ready()
    (asked,) = messages.asked
    assert "Order 1: packages made 1, planned " in asked
    assert "Nothing was packed of: Bacon" in asked
    assert "ham" not in asked
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    assert found.state == "cut"  # nobody said why
    messages.answers = ["The owner took the rest unpacked"]
    place.mark_ready()
    qtbot.waitUntil(lambda: not bench.work.busy())
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    assert found.state == "ready"
    assert not place.strip.isEnabled()
    messages.answers = ["One package was left in the freezer"]
    place.take_back()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert place.strip.isEnabled()


def test_what_was_typed_for_an_order_does_not_stand_in_the_next(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.strip.weight.set_text("m")
    place.lines.choose(1)
    assert place.strip.weight.text() == "m"  # the same order: another line of it
    place.entry.show_line(None, None)
    assert place.strip.weight.text() == ""
    assert place.strip.weight.problem() == "Fill this in."


def test_another_order_begins_at_its_first_line(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """What was weighed next went to the line as far down as one was in the order before."""
    order_on_the_table(store, signed)
    other = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    place.orders.set_value(other.id)
    place._order_chosen()
    qtbot.waitUntil(lambda: place.wrapping is not None and place.wrapping.order.id == other.id)
    assert place.lines.currentIndex().row() == 0


def test_everything_has_a_name(qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    assert unnamed(place) == []


def test_what_is_touched_at_the_scale_is_large_enough(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    assert place.strip.add.height() >= 64
    assert place.strip.weight.line.height() >= 64
    assert place.minimumSizeHint().height() <= 620


def test_what_is_weighed_after_another_table_made_it_ready_is_not_kept(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    with store.work(signed.person, signed.station) as work:
        assert isinstance(work.orders.move(order.id, "ready", version=order.version), Order)
        work.commit()
    weigh(place, "18.5")
    assert place.strip.complaint.isVisible()
    assert place.strip.complaint.text() == (
        "This order is ready: only what came out of a batch is packed on it. Take it back to "
        "wrapping for anything else."
    )
    with store.read() as work:
        assert work.packages.of_order(order.id) == ()


def test_the_strip_speaks_the_language_the_window_changes_to(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, qapp: QApplication
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    english, before = bench.words, QLocale()
    language = Language(qapp, resources() / "translations")
    try:
        place.entry.show_line(place.wrapping, None)
        assert place.strip.product.text() == "Choose a line above"
        bench.words = Words("es")
        assert language.use("es")
        qapp.processEvents()
        qtbot.waitUntil(lambda: not bench.work.busy())
        assert place.strip.product.text() == "Carne molida de cerdo"
        place.entry.show_line(place.wrapping, None)
        assert place.strip.product.text() == "Elija una l\u00ednea arriba"
    finally:
        bench.words = english
        language.use("en")
        QLocale.setDefault(before)
        qtbot.waitUntil(lambda: not bench.work.busy())


def test_a_package_of_another_line_or_one_too_many_is_asked_about_and_kept(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order = order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(0)  # one ham of some 20 lb
    weigh(place, "18.5")
    assert place.strip.complaint.isHidden()
    weigh(place, "17.9")
    assert "2 made of Whole ham, shank on, 1 planned" in place.strip.complaint.text()
    place.lines.choose(2)  # ground pork of some 2 lb
    assert place.strip.complaint.isHidden()
    weigh(place, "18.5")
    assert "more than all that is expected of Ground pork" in place.strip.complaint.text()
    weigh(place, "1.01")
    assert place.strip.complaint.isHidden()
    with store.read() as work:
        assert len(work.packages.of_order(order.id)) == 4


def test_what_is_in_cure_is_said_to_be_and_not_to_be_wrapped(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Bacon in the brine read "to wrap" as the ham on the table did; out of it, it is to wrap."""
    order = order_on_the_table(store, signed)
    with store.work(signed.person, signed.station) as work:
        recipe = work.recipes.save(BACON)
        assert isinstance(recipe, Recipe)
        batch = work.batches.put_in(
            work.batches.begin(recipe.id).id, order.id, 2, "bacon", Weight(9, "lb")
        )
        assert isinstance(batch, Batch)
        work.commit()
    place = opened(qtbot, bench)
    said = [shown(place, "state")]
    stages: tuple[BatchState, ...] = ("curing", "smoking", "done")
    for stage in stages:
        with store.work(signed.person, signed.station) as work:
            batch = work.batches.move(batch, stage, out=Weight(8, "lb"))
            assert isinstance(batch, Batch)
            work.commit()
        place.refresh()
        qtbot.waitUntil(lambda: not bench.work.busy())
        said.append(shown(place, "state"))
    assert said == [
        ["to wrap", "being put together", "to wrap"],
        ["to wrap", "in cure", "to wrap"],
        ["to wrap", "in smoke", "to wrap"],
        ["to wrap", "to wrap", "to wrap"],
    ]


def shown(place: WrapPlace, column: str) -> list[str]:
    """What stands in a column of the table, from above."""
    rows = place.lines.rows
    at = [one.key for one in rows.columns].index(column)
    return [str(rows.index(row, at).data()) for row in range(rows.rowCount())]
