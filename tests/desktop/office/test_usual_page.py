"""The shop's own usual: written in the office, cut by F9, and not boxed on the block's sheet."""

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.place import OfficePlace
from shared.carcass.anatomy import catalogue
from shared.cutting.breaking import differs_from_usual
from shared.cutting.order import Amount, Choice
from shared.shop.usual import shop_catalogue
from shared.units import LENGTH_UNITS_PER_INCH
from tests.desktop.audit import unnamed
from tests.desktop.office.test_place import opened

INCH = LENGTH_UNITS_PER_INCH
THICK = Choice(1, 1, "centre_chop", Amount("rest"), thickness=INCH * 5 // 4, finishes=("fresh",))


def page(qtbot: QtBot, bench: Bench) -> OfficePlace:
    place = opened(qtbot, bench)
    place.tabs.setCurrentWidget(place.usual)
    place.usual.species.set_value("pork")
    place.usual.refresh()
    return place


def test_a_second_way_is_not_boxed_and_f9_keeps_the_first(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    place = page(qtbot, bench)
    assert unnamed(place.usual) == []
    known = catalogue("pork")
    cut = known.cuts["centre_chop"]
    assert differs_from_usual(THICK, cut, known.usual)
    place.usual.begin()
    dialog = place.usual.dialog
    assert unnamed(dialog) == []
    dialog.primal.set_value("loin")
    dialog._name_cuts()
    dialog.way.set_value(2)
    dialog.cut.set_value("centre_chop")
    dialog.thickness.set_value(INCH * 5 // 4)
    dialog.finishes.set_text("fresh")
    dialog.try_it()
    assert dialog.result() == 1, dialog.refusal.text()
    with store.read() as work:
        ways = work.usual.ways("pork")
    own = shop_catalogue("pork", ways)
    assert {one.cut for one in own.usual} == {one.cut for one in known.usual}
    assert [one.cut for one in own.also_usual] == ["centre_chop"]
    assert not differs_from_usual(THICK, cut, (*own.usual, *own.also_usual))
    mine = [one for one in place.usual.lines.rows.rows() if one.own]
    assert {one.line.primal for one in mine} == {"loin"}


def test_the_first_way_is_changed_and_goes_back(qtbot: QtBot, bench: Bench, store: Store) -> None:
    place = page(qtbot, bench)
    rows = place.usual.lines.rows.rows()
    at = next(n for n, one in enumerate(rows) if one.line.cut == "centre_chop")
    place.usual.edit(rows[at])
    place.usual.dialog.thickness.set_value(INCH)
    place.usual.dialog.try_it()
    with store.read() as work:
        own = shop_catalogue("pork", work.usual.ways("pork"))
    chop = next(one for one in own.usual if one.cut == "centre_chop")
    assert chop.thickness == INCH
    assert [one.cut for one in own.usual] == [one.cut for one in catalogue("pork").usual]
    place.usual.lines.choose(at)
    place.usual.as_the_table()
    with store.read() as work:
        assert work.usual.ways("pork") == ()


def test_how_split_sides_are_cut_reaches_the_planner(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    place = page(qtbot, bench)
    with store.read() as work:
        assert work.shop.planner_settings("pork").cut_alike
    place.usual.alike.set_value(False)
    place.usual.speaks.set_value("both")
    place.usual._keep_rules()
    with store.read() as work:
        assert not work.shop.planner_settings("pork").cut_alike
        assert work.block.rules().sheet_words == "both"
