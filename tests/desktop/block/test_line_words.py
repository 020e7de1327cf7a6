"""Whose half of a shared loin is which, in the small words of a line."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.line_words import large_words, small_words
from shared.carcass.carcass import Holding
from shared.cutting.breaking import BlockLine, PoolLine
from shared.cutting.order import Amount, Choice, Package
from shared.shop.lots import LotShare, NewLot
from shared.units import NG_PER_LB
from tests.db import examples
from tests.desktop.block.hog import hanging, release
from tests.desktop.block.test_place import shown

HALF = Fraction(1, 2)


def test_two_owners_of_a_side_read_whose_end_is_whose(qtbot: QtBot, bench: Bench) -> None:
    with bench.store.work(bench.person, bench.station) as work:
        anna, bert = examples.customer(work), examples.customer(work, "Bert Iversen")
        shares = tuple(
            LotShare(n, one.id, holdings=(Holding(0, 1, fraction=HALF),))
            for n, one in ((1, anna), (2, bert))
        )
        rest = LotShare(3, anna.id, holdings=(Holding(0, 2),))
        lot = examples.booked(work, NewLot("beef", 1, date(2026, 3, 2), anna.id, (*shares, rest)))
        for share in (1, 2):
            order = examples.order_of(work, lot, share)
            examples.line(work, order, Choice(0, 0, "t_bone_steak", Amount("all")))
        animal = examples.arrived(work, lot)
        work.animals.change(replace(animal, age="under_30"))
        examples.weighed(work, animal, "702")
        examples.moved(work, animal.id, "passed", "hanging")
        release(work, lot, 1, 2)
        work.commit()
    place = shown(qtbot, bench)
    place.show_carcass(1)
    cutting = place.view.cutting
    assert cutting is not None
    told = {
        line.share: (line.start, small_words(line, cutting, bench.words))
        for step in cutting.steps
        for _, line in step.lines
        if isinstance(line, BlockLine) and line.cut == "t_bone_steak"
    }
    assert set(told) == {1, 2}
    (_, first), (_, last) = sorted(told.values(), key=lambda one: one[0] or 0)
    assert "toward the head" in first
    assert "toward the tail" in last


def test_the_large_line_is_what_is_taken_in_hand(qtbot: QtBot, bench: Bench) -> None:
    """Bones are no "1 neck bones"; that it is all that is left stands small beside a count."""
    hanging(bench)
    place = shown(qtbot, bench)
    place.show_carcass(1)
    cutting = place.view.cutting
    assert cutting is not None
    line = next(
        one for step in cutting.steps for _, one in step.lines if isinstance(one, BlockLine)
    )
    roasts = replace(line, cut="butt_roast", count=2, from_rest=True, thickness=None)
    assert large_words(roasts, "pork", bench.words).startswith("2 butt roasts")
    assert "all that is left" not in large_words(roasts, "pork", bench.words)
    assert "all that is left" in small_words(roasts, cutting, bench.words)
    bones = replace(roasts, cut="neck_bones", count=1)
    assert large_words(bones, "pork", bench.words) == "neck bones"
    whole = replace(roasts, cut="ham_steak", count=1)
    assert large_words(whole, "pork", bench.words) == "1 ham steak"


def test_what_is_ground_in_stands_at_the_line_as_on_the_sheet(qtbot: QtBot, bench: Bench) -> None:
    """20 lb of sausage a fifth of which is pork was "20.0 lb" to whoever stood at the grinder."""
    hanging(bench)
    place = shown(qtbot, bench)
    place.show_carcass(1)
    cutting = place.view.cutting
    assert cutting is not None
    sausage = PoolLine(
        1, 9, "bulk_sausage", 20 * NG_PER_LB, 0, 0, None, Package(), ("seasoned",), "",
        differs=False, from_rest=False,
        added_ng=4 * NG_PER_LB, added="pork_trim", seasoning="house_mild",
    )  # fmt: skip
    said = small_words(sausage, cutting, bench.words).replace("\u00a0", " ")
    assert "4.0 lb of it pork trim, inspected" in said
    assert "seasoning: house mild" in said
    plain = replace(sausage, added=None, added_ng=0, seasoning="")
    assert "pork trim" not in small_words(plain, cutting, bench.words)
