"""A half and two quarters of a beef of 30 months and over; the hindquarter's owner thinks again."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.panels.heading import Words
from tests.stories.one_shop import ALT, OneShop

Key = Qt.Key
OWNERS = ["Halvor 555 010 0111", "Forde 555 010 0122", "Hinde 555 010 0133"]
BACKBONE = {"blade_roast", "rib_steak", "t_bone_steak", "club_steak", "sirloin_steak"}
WAYS_OUT = 8


@pytest.fixture
def shop(qtbot: QtBot, bench: Bench) -> OneShop:
    made = OneShop(qtbot, bench)
    made.book("beef", "Hale 555 010 0100", "one half, a forequarter and a hindquarter", OWNERS)
    for name in ("Halvor", "Forde", "Hinde"):
        made.turn_to(name)
        made.usual()
        assert made.settle() == ""
    made.check_in("7", age="30 months and over", age_by="teeth")
    made.weigh("1290 lb", "395 lb", "390 lb")
    made.keys.press(Key.Key_Space)
    made.keys.press(Key.Key_Space)
    return made


def without_backbone(shop: OneShop, owner: str) -> None:
    """Alt+1 until none of his lines is contested; 9 CFR 310.22: no vertebral column is kept."""
    shop.turn_to(owner)
    panel = shop.counter.order.panel
    for _ in range(WAYS_OUT):
        shop.qtbot.waitUntil(lambda: not shop.bench.work.busy())
        if not panel.remedies:
            break
        shop.keys.press(Key.Key_1, ALT)
    shop.usual()
    assert BACKBONE.isdisjoint(one.cut for one in shop.desk.order.choices)


def test_a_second_sheet_waits_for_the_block(shop: OneShop) -> None:
    shop.turn_to("Halvor")
    shop.keys.ctrl(Key.Key_Return)
    assert shop.counter.order.refusal.text().startswith("It can't all be had yet")
    for name in ("Halvor", "Forde", "Hinde"):
        without_backbone(shop, name)
    filets = [one.share for one in shop.desk.question.choices if one.cut == "filet"]
    assert filets == [1, 3], "the tenderloin is nobody's trim"
    shop.release("Halvor")
    assert {one.state for one in shop.orders()} == {"released"}
    block = shop.on_block()
    shop.turn_to("Hinde")
    shop.take("stew", kind="so many pounds", pounds="5 lb")
    assert shop.order("Hinde").changed_since_sheet
    shop.go(Key.Key_F4, type(block))
    told = [one.text().replace("\u00a0", " ") for one in block.view.findChildren(Words)]
    assert "Hinde adds: 5 lb stew meat (Test)" in told
    shop.turn_to("Hinde")
    shop.keys.ctrl(Key.Key_Return)
    shop.close_paper()
    with shop.bench.store.read() as work:
        sheets = work.orders.sheets(shop.desk.lot.id)
    assert [one.acknowledged_at is None for one in sheets] == [False, True]
