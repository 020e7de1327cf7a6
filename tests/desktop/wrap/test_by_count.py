"""A plant that stamps its paper: packages counted, not weighed, and no label printed."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.shop_page import ShopPage
from desktop.wrap.place import WrapPlace
from shared.shop.counted import CountedPackages
from shared.shop.details import ShopDetails
from shared.shop.orders import Order
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.recorded_messages import RecordedMessages
from tests.desktop.typing_in import type_into
from tests.desktop.wrap.orders import order_on_the_table
from tests.desktop.wrap.test_one_stroke import Printed
from tests.desktop.wrap.test_place import opened, press, weigh


def by_count(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        saved = work.shop.save(replace(work.shop.details(), wrapped="counted"))
        assert isinstance(saved, ShopDetails)
        work.commit()


@pytest.fixture
def order(store: Store, signed: SignedOn) -> Order:
    """A ham, bacon and ground pork in a shop that counts."""
    found = order_on_the_table(store, signed)
    by_count(store, signed)
    return found


@pytest.fixture
def place(qtbot: QtBot, bench: Bench, order: Order) -> WrapPlace:
    assert order.id
    return opened(qtbot, bench)


def count(place: WrapPlace, text: str) -> None:
    type_into(place.entry.count.packages.line, text)
    press(place.entry.count.packages.line, Qt.Key.Key_Return)


def counts(store: Store, order: Order) -> list[tuple[int, int, str]]:
    with store.read() as work:
        return [(one.line, one.packages, one.void) for one in work.counted.of_order(order.id)]


def test_twelve_and_enter_are_twelve_packages_without_weight_or_label(
    place: WrapPlace,
    bench: Bench,
    store: Store,
    order: Order,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    printer = Printed(monkeypatch, bench)
    assert unnamed(place) == []
    place.lines.choose(2)
    line = place.lines.chosen()
    assert line is not None
    press(place.lines, Qt.Key.Key_Return)
    assert place.entry.count.packages.line.hasFocus()
    assert place.strip.isHidden()
    count(place, "12")
    assert counts(store, order) == [(line.line, 12, "")]
    shown = place.lines.chosen()
    assert shown is not None
    assert (shown.packages, shown.counted, shown.made_ng) == (12, 12, 0)
    model = place.lines.rows
    told = [str(model.index(2, at).data()) for at in range(model.columnCount())]
    assert "by count" in told
    assert "12 of them by count" in place.side.total.text()
    assert place.entry.count.packages.is_empty()
    assert printer.sent == []
    with store.read() as work:
        assert work.packages.of_order(order.id) == ()


def test_more_than_planned_is_asked_about_at_once(place: WrapPlace) -> None:
    place.lines.choose(0)
    line = place.lines.chosen()
    assert line is not None
    assert line.planned is not None
    count(place, str(line.planned.high))
    assert place.entry.count.complaint.isHidden()
    count(place, "30")
    assert "planned at the most" in place.entry.count.complaint.text()
    place.lines.choose(1)
    assert place.entry.count.complaint.isHidden()


@pytest.mark.parametrize("typed", ["0", "", "12 lb", "501", "1.5"])
def test_what_is_no_count_is_said_in_place(
    place: WrapPlace, store: Store, order: Order, typed: str
) -> None:
    place.lines.choose(2)
    count(place, typed)
    assert place.entry.count.packages.complaint.text()
    assert counts(store, order) == []


def test_a_wrong_count_is_made_void_with_its_reason_and_shows_no_label(
    place: WrapPlace, store: Store, order: Order, messages: RecordedMessages
) -> None:
    place.lines.choose(2)
    count(place, "12")
    place.side.table.choose(0)
    assert isinstance(place.side.table.chosen(), CountedPackages)
    place.show_label()
    assert "no label" in place.side.said.text()
    messages.answers = ["ten of them"]
    place.void_package()
    assert [(packages, void) for _, packages, void in counts(store, order)] == [(12, "ten of them")]
    line = place.lines.chosen()
    assert line is not None
    assert line.packages == 0
    place.side.table.choose(0)
    place.void_package()
    assert "void already" in place.side.said.text()


def test_one_line_is_weighed_and_labelled_all_the_same(
    place: WrapPlace, store: Store, order: Order
) -> None:
    place.lines.choose(2)
    count(place, "3")
    press(place.lines, Qt.Key.Key_F12)
    assert place.entry.count.isHidden()
    weigh(place, "1.02")
    shown = place.lines.chosen()
    assert shown is not None
    assert (shown.packages, shown.counted) == (4, 3)
    place.lines.choose(0)
    assert place.strip.isHidden(), "the other lines are counted still"
    place.lines.choose(2)
    assert place.entry.count.isHidden()
    with store.read() as work:
        assert len(work.packages.of_order(order.id)) == 1


def test_a_shop_that_weighs_has_no_count(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    place = opened(qtbot, bench)
    place.lines.choose(2)
    press(place.lines, Qt.Key.Key_F12)
    assert place.entry.count.isHidden()
    assert place.entry.way.isHidden()


def test_the_office_says_what_the_paper_must_carry(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    order_on_the_table(store, signed)
    page = ShopPage(bench)
    qtbot.addWidget(page)
    page.refresh()
    assert page.by_count.isHidden()
    page.wrapped.set_value("counted")
    page.wrapped.changed.emit()
    assert not page.by_count.isHidden()
    assert "NOT FOR SALE" in page.by_count.text()
    page.keep()
    with store.read() as work:
        assert work.shop.details().wrapped == "counted"


def test_a_line_chosen_to_be_weighed_stays_so_after_a_restart(
    qtbot: QtBot, bench: Bench, place: WrapPlace
) -> None:
    assert place.entry.by_count
    place.entry.change_way()
    assert not place.entry.by_count
    again = opened(qtbot, bench)
    assert not again.entry.by_count
    again.lines.choose(2)
    assert again.entry.by_count
    again.lines.choose(0)
    again.entry.change_way()
    assert opened(qtbot, bench).entry.by_count


def test_what_was_counted_is_weighed_together_for_the_bill(
    place: WrapPlace, store: Store, order: Order
) -> None:
    place.lines.choose(2)
    assert place.entry.all.isHidden()
    count(place, "12")
    assert place.entry.all.isVisibleTo(place)
    press(place.entry.count.packages.line, Qt.Key.Key_Escape)
    place.weigh_together()
    dialog = place.together
    assert unnamed(dialog) == []
    assert "12 counted packages" in dialog.lead.text()
    type_into(dialog.weight.line, "13.4")
    type_into(dialog.tare.line, "0.9")
    dialog.try_it()
    with store.read() as work:
        (made,) = work.counted_lines.weights(order.id)
    assert (made.packages, made.net.text()) == (12, "12.5 lb")
    line = place.lines.chosen()
    assert line is not None
    rows = place.lines.rows
    assert " ".join(str(rows.data(rows.index(2, 4))).split()) == "12.50 lb"
    count(place, "2")  # the weight is of the twelve
    assert rows.data(rows.index(2, 4)) == "by count"
