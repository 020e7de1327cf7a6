"""Handing over: all at once, or some now and the rest at a second pick-up."""

from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.counter.hand_over_dialog import HandOverDialog
from shared.curing.batch import Batch
from shared.curing.recipe import Ingredient, Recipe
from shared.marking.serial import box_serial, package_serial
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from shared.units import Weight
from tests.db.examples import at_the_block
from tests.db.repositories.test_counted import by_count
from tests.desktop.audit import unnamed
from tests.desktop.counter.to_hand_over import ready
from tests.desktop.typing_in import type_into
from tests.printing.pages import text


@pytest.fixture
def order(store: Store, signed: SignedOn) -> Order:
    return ready(store, signed)


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench, order: Order) -> HandOverDialog:
    made = HandOverDialog(bench, order)
    qtbot.addWidget(made)
    made.open()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def state_of(store: Store, order: Order) -> str:
    with store.read() as work:
        found = work.orders.get(order.id)
    assert found is not None
    return found.state


def test_some_leaves_now_and_the_rest_at_a_second_pick_up(
    qtbot: QtBot, bench: Bench, store: Store, order: Order, dialog: HandOverDialog
) -> None:
    assert [one.product for one in dialog.leaving] == ["Whole ham", "Ground pork"]
    dialog.table.setFocus()
    dialog.table.choose(0)
    QTest.keyClick(dialog.table, Qt.Key.Key_Space)
    assert [one.product for one in dialog.leaving] == ["Ground pork"]
    assert "Packages: 1" in dialog.lead.text()
    dialog.try_it()
    assert dialog.isVisible(), "it left unpaid without a reason"
    dialog.reason.set_text("bill follows by mail")
    dialog.fetched.set_text("her brother")
    dialog.try_it()
    assert dialog.partly
    assert state_of(store, order) == "ready"
    with store.read() as work:
        again = work.orders.get(order.id)
    assert again is not None
    second = HandOverDialog(bench, again)
    qtbot.addWidget(second)
    assert [one.product for one in second.leaving] == ["Whole ham"]
    assert "fetched before" in second.waits.text()
    assert "by her brother" in second.waits.text()
    second.reason.set_text("bill follows by mail")
    second.try_it()
    assert state_of(store, order) == "handed_over"
    with store.read() as work:
        assert [one.fetched_by for one in work.hand_overs.of_order(order.id)] == ["her brother", ""]
        assert work.hand_overs.left(order.id) == frozenset()


def test_what_is_in_smoke_comes_later(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    with store.work(signed.person, signed.station) as work:
        recipe = work.recipes.save(
            Recipe(
                name="House bacon",
                finish="cured_smoked",
                ingredients=(Ingredient("salt"),),
                product="dry_cured",
                strength=Fraction(1, 16),
                ready="cook_before_eating",
            )
        )
        assert isinstance(recipe, Recipe)
        batch = work.batches.begin(recipe.id)
        put = work.batches.put_in(batch.id, order.id, 1, "belly", Weight.from_pounds("12"))
        assert isinstance(put, Batch)
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    assert "Comes later: batch 1, House bacon, being put together." in dialog.waits.text()
    dialog.reason.set_text("bill follows by mail")
    dialog.try_it()
    assert dialog.partly
    assert state_of(store, order) == "ready"


def test_the_box_and_its_place_stand_beside_the_packages(dialog: HandOverDialog) -> None:
    dialog.table.choose(0)
    dialog.put_in_box()
    type_into(dialog.boxing.box_name.line, "1")
    type_into(dialog.boxing.place.line, "freezer 2")
    dialog.boxing.try_it()
    assert dialog.table.rows.row(0).where == "1, freezer 2"


def test_what_is_not_frozen_is_held_until_it_was_in_the_freezer_long_enough(
    qtbot: QtBot, bench: Bench, store: Store, order: Order, dialog: HandOverDialog
) -> None:
    assert [one.product for one in dialog.soft] == ["Whole ham", "Ground pork"]
    assert "Not frozen: Whole ham, Ground pork" in dialog.frost.text()
    assert dialog.reason.label.text() == "&Why it leaves unpaid and not frozen"
    dialog.table.choose(0)
    dialog.put_in_box()
    type_into(dialog.boxing.box_name.line, "1")
    assert dialog.boxing.hours.line.isReadOnly()
    dialog.boxing.in_it.set_value("freezer")
    dialog.boxing.in_it.changed.emit()
    type_into(dialog.boxing.hours.line, "24")
    dialog.boxing.try_it()
    assert [one.product for one in dialog.soft] == ["Ground pork"]
    dialog.table.choose(1)
    dialog.toggle()
    assert not dialog.soft
    assert dialog.reason.label.text() == "&Why it leaves unpaid"
    dialog.toggle()
    now = bench.now() + timedelta(hours=24)
    bench.now = lambda: now
    later = HandOverDialog(bench, order)
    qtbot.addWidget(later)
    assert not later.soft


def test_of_many_that_are_not_frozen_the_first_are_named(dialog: HandOverDialog) -> None:
    ham, ground = dialog.leaving
    more = [replace(ground, product=f"Ground pork {at}") for at in range(3)]
    dialog._rows = [ham, ground, *more]  # an order of more products
    dialog.retranslate()
    assert "Not frozen: Whole ham, Ground pork, Ground pork 0 and 2 more." in dialog.frost.text()


def test_it_says_since_when_it_waits_to_be_fetched(
    qtbot: QtBot, bench: Bench, order: Order, dialog: HandOverDialog
) -> None:
    assert "Ready since" not in dialog.money.text()
    for days, said in ((1, "one day;"), (3, "3 days;")):
        later = bench.now() + timedelta(days=1 if days == 1 else 2)
        bench.now = lambda at=later: at
        again = HandOverDialog(bench, order)
        qtbot.addWidget(again)
        assert "Ready since" in again.money.text()
        assert said in again.money.text()


def test_it_leaves_not_frozen_with_a_reason_and_that_is_kept(
    store: Store, order: Order, dialog: HandOverDialog
) -> None:
    dialog.try_it()
    assert dialog.isVisible()
    dialog.reason.set_text("wants it fresh, pays on Friday")
    dialog.try_it()
    with store.read() as work:
        (given,) = work.hand_overs.of_order(order.id)
        rows = work.changes.of("order", order.id)
    assert given.reason == "wants it fresh, pays on Friday"
    left = next(one for one in rows if one.what == "packages_left")
    assert '"unfrozen": 3' in left.data


def test_fetched_fresh_as_agreed_is_said_and_not_held(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    with store.work(signed.person, signed.station) as work:
        work.freezing.agree(order.id, fresh=True)
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    assert dialog.frost.text().startswith("Fetched fresh, as agreed on the order: Whole ham")
    assert dialog.reason.label.text() == "&Why it leaves unpaid"
    dialog.print_slip()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    said = text(dialog.preview.pdf)
    assert "Fresh, as agreed: Whole ham, Ground pork" in said
    assert "40 °F" in said
    dialog.preview.close()


def test_the_slip_has_a_line_to_sign(qtbot: QtBot, dialog: HandOverDialog) -> None:
    dialog.print_slip()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    said = text(dialog.preview.pdf)
    for told in ("Whole ham", "31.75", "Counted and received", "NOT FOR SALE"):
        assert told in said
    dialog.preview.close()


def test_all_that_takes_the_keyboard_has_a_name(dialog: HandOverDialog) -> None:
    assert unnamed(dialog) == []


def scan(dialog: HandOverDialog, code: str) -> None:
    type_into(dialog.scan.line, code)
    QTest.keyClick(dialog.scan.line, Qt.Key.Key_Return)


def test_a_scanned_box_ticks_what_is_in_it_and_the_rest_stays(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    with store.read() as work:
        first, second, ground = (one.id for one in work.packages.of_order(order.id))
    with store.work(signed.person, signed.station) as work:
        work.hand_overs.put([first, ground], "A", "freezer 2")
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    dialog.open()
    qtbot.waitUntil(dialog.isActiveWindow)
    assert dialog.scan.line.hasFocus()
    scan(dialog, box_serial(order.number, "A").lower())
    assert [[each.id for each in one.now] for one in dialog.leaving] == [[first], [ground]]
    assert "2 of 3 labeled packages" in dialog.ticks.text()
    assert "Packages: 2" in dialog.lead.text()
    assert dialog.scan.is_empty()
    dialog.reason.set_text("bill follows by mail")
    dialog.try_it()
    assert dialog.partly
    with store.read() as work:
        assert work.hand_overs.left(order.id) == {second}
        label = work.packages.of_order(order.id)[1].label_number
    later = HandOverDialog(bench, order)
    qtbot.addWidget(later)
    scan(later, package_serial(order.number, label))
    assert "scanned: all 1." in later.ticks.text()
    assert all(one.whole for one in later.leaving)


def test_a_code_that_is_none_of_the_order_is_said_in_place(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    with store.work(signed.person, signed.station) as work:
        first, second, ground = work.packages.of_order(order.id)
        work.hand_overs.put([first.id], "1", "")
        work.hand_overs.give(order.id, [first.id])
        work.packages.void(second.id, "torn bag")
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    wrong = box_serial(order.number, "1")
    for code, said in (
        ("0123456789012", "no code of a box or package"),
        (f"{wrong[:-1]}{'A' if wrong[-1] != 'A' else 'B'}", "misread"),
        (box_serial(order.number + 1, "1"), f"of order {order.number + 1}"),
        (package_serial(order.number + 1, 1), f"of order {order.number + 1}"),
        (box_serial(order.number, "7"), "in box 7"),
        (wrong, "Box 1 was fetched already"),
        (package_serial(order.number, first.label_number), "was fetched already"),
        (package_serial(order.number, second.label_number), "is void"),
        (package_serial(order.number, 999), "no package 999"),
    ):
        scan(dialog, code)
        assert said in dialog.scan.complaint.text(), code
        assert [[each.id for each in one.now] for one in dialog.leaving] == [[ground.id]]
        assert not dialog.ticked
        assert dialog.scan.text() == code


def test_what_was_counted_leaves_with_the_rest_and_stays_by_space(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    choice = order.choices[0]
    with store.work(signed.person, signed.station) as work:
        by_count(work)
        for name, count in (("Whole ham", 2), ("Stamped chops", 12)):
            new = NewCount(order.id, choice.line, choice.cut, name, count)
            with at_the_block(work, new.order_id):
                assert isinstance(work.counted.add(new), CountedPackages)
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    dialog.open()
    assert "Packages: 17, 14 of them by count" in dialog.lead.text()
    dialog.print_slip()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    said = text(dialog.preview.pdf)
    assert "+ 2 by count" in said
    assert "Stamped chops" in said
    dialog.preview.close()
    dialog.table.choose(2)
    dialog.toggle()
    assert "Packages: 5" in dialog.lead.text()
    dialog.reason.set_text("bill follows by mail")
    dialog.try_it()
    with store.read() as work:
        (still,) = work.counted.left(order.id)
    assert (dialog.partly, still.product, still.packages) == (True, "Stamped chops", 12)
    later = HandOverDialog(bench, order)
    qtbot.addWidget(later)
    later.reason.set_text("bill follows by mail")
    later.try_it()
    assert later.closed or state_of(store, order) == "handed_over"


def counted_chops(store: Store, signed: SignedOn, order: Order) -> None:
    """Twelve packages stamped by hand, in a shop that holds until somebody says when they froze."""
    choice = order.choices[0]
    with store.work(signed.person, signed.station) as work:
        by_count(work)
        work.freezing.save_rules(replace(work.freezing.rules(), counted_from="place"))
        with at_the_block(work, order.id):
            work.counted.add(NewCount(order.id, choice.line, choice.cut, "Stamped chops", 12))
        work.commit()


def test_of_what_was_counted_somebody_says_that_it_is_frozen_and_no_reason_is_asked(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    counted_chops(store, signed, order)
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    for at in (0, 1):
        dialog.table.choose(at)
        dialog.toggle()
    (chops,) = dialog.soft
    assert chops.product == "Stamped chops"
    assert "Not frozen: Stamped chops" in dialog.frost.text()
    dialog.table.choose(2)
    QTest.keyClick(dialog.table, Qt.Key.Key_F8)
    qtbot.waitUntil(dialog.boxing.isActiveWindow)
    assert not dialog.boxing.box_name.isVisible()
    assert unnamed(dialog.boxing) == []
    assert QApplication.focusWidget() is dialog.boxing.in_it.editor
    QTest.keyClick(dialog.boxing, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert not dialog.boxing.isVisible(), dialog.boxing.grid.problems()
    assert dialog.soft == []
    assert not dialog.frost.isVisible()
    assert str(dialog.table.rows.index(2, 2).data()) == "frozen"
    with store.read() as work:
        (told,) = work.freezing.counts_of_order(order.id).values()
    assert (told.person, told.at) == (signed.person.name, bench.now())
    assert told.since == bench.now() - timedelta(hours=24)
    dialog.table.choose(2)
    dialog.put_in_box()
    assert f"{signed.person.name} said on" in dialog.boxing.lead.text()
    dialog.boxing.in_it.set_value("none")
    dialog.boxing.whose.set_value("all")
    dialog.boxing.try_it()
    assert [str(dialog.table.rows.index(at, 2).data()) for at in range(3)] == ["in no freezer"] * 3


def test_where_the_shop_does_not_ask_a_count_has_no_box(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, order: Order
) -> None:
    counted_chops(store, signed, order)
    with store.work(signed.person, signed.station) as work:
        work.freezing.save_rules(replace(work.freezing.rules(), hours=0))
        work.commit()
    dialog = HandOverDialog(bench, order)
    qtbot.addWidget(dialog)
    dialog.table.choose(2)
    dialog.put_in_box()
    assert "no label" in dialog.refusal.text()
