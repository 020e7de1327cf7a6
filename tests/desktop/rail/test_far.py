"""The rail in letters to be read at two metres: how high, what is shown, tag after tag, Esc."""

from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import QEvent, QLocale, Qt
from PySide6.QtGui import QFont, QFontMetrics, QFontMetricsF
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench, Target
from desktop.language import Language
from desktop.look.space import TOGETHER
from desktop.paths import resources
from desktop.rail.place import RailPlace
from desktop.tables.large_letters import mark_room
from printing.words import Words
from shared.shop.holdings import whole
from shared.shop.lots import LotShare, NewLot
from shared.units import Weight
from tests.db import examples

Key = Qt.Key
DAY = date(2026, 3, 2)
STATE = 1  # its column


@pytest.fixture
def rail(qtbot: QtBot, bench: Bench) -> RailPlace:
    with bench.store.work(bench.person, bench.station) as work:
        for tag, name in (("301", "Anna Berg"), ("302", "Carla Olsen")):
            animal = examples.arrived(work, examples.lot_of_one(work, name), tag)
            work.weighings.record(animal.id, "live", Weight(2700, "lb", -1))
        work.commit()
    made = RailPlace(bench)
    qtbot.addWidget(made)
    made.resize(1366, 696)
    made.show()
    qtbot.waitExposed(made)
    made.table.setFocus()
    return made


def capital(rail: RailPlace, widget: object) -> float:
    """Millimetres of a capital on the screen at hand."""
    font = widget.font()  # pyright: ignore[reportAttributeAccessIssue, reportUnknownVariableType, reportUnknownMemberType]
    dots = max(rail.screen().physicalDotsPerInchY(), 72.0)
    return QFontMetricsF(font).capHeight() / dots * 25.4  # pyright: ignore[reportUnknownArgumentType]


def test_f11_makes_capitals_of_nine_millimetres_and_esc_takes_them_back(
    qtbot: QtBot, rail: RailPlace
) -> None:
    near = capital(rail, rail.table)
    qtbot.keyClick(rail, Key.Key_F11)
    weights = rail.panel.weights
    large = (rail.table, rail.panel.tag, weights.fields["hot", 1, ""].line, rail.panel.moves[0][1])
    assert [capital(rail, one) >= 8.9 for one in large] == [True] * 4
    assert near < 5
    assert rail.width() == 1366
    assert not rail.panel.rare.isVisible()
    assert rail.in_a_row.tag.line.hasFocus()
    qtbot.waitUntil(lambda: rail.table.horizontalScrollBar().maximum() == 0)
    QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)
    assert rail.panel.width() == rail.around.width() - 12 > rail.width() // 2  # no empty third
    high = rail.table.rowHeight(0)
    assert high > QFontMetricsF(rail.table.font()).height()
    QApplication.sendEvent(rail.table, QEvent(QEvent.Type.FontChange))  # as a theme does
    assert rail.table.rowHeight(0) == high
    qtbot.keyClick(rail, Key.Key_Escape)
    assert rail.table.rowHeight(0) < high
    assert capital(rail, rail.table) == near
    assert rail.panel.rare.isVisible()
    assert rail.width() == 1366


def test_a_row_of_tags_is_weighed_and_passed_in_it(qtbot: QtBot, rail: RailPlace) -> None:
    qtbot.keyClick(rail, Key.Key_F11)
    for tag in ("301", "302"):
        qtbot.keyClicks(rail.in_a_row.tag.line, tag)
        qtbot.keyClick(rail.in_a_row.tag.line, Key.Key_Return)
        for pounds in ("98.5", "97"):
            field = QApplication.focusWidget()
            assert field is not None
            qtbot.keyClicks(field, pounds)
            qtbot.keyClick(field, Key.Key_Return)
    assert [one.hot_ng for one in rail.table.rows.rows()].count(None) == 0
    assert rail.far.on
    seen = rail.panel.seen
    assert seen is not None
    assert seen.animal.tag == "302"


def test_letters_are_made_larger_and_the_station_keeps_it(qtbot: QtBot, rail: RailPlace) -> None:
    rail.far.letters(1)
    assert rail.bench.settings.now.rail_letters == 9  # close by they are as everywhere
    qtbot.keyClick(rail, Key.Key_F11)
    before = capital(rail, rail.table)
    rail.far.letters(2)
    assert rail.bench.settings.now.rail_letters == 11
    assert capital(rail, rail.table) > before
    for _ in range(20):
        rail.far.letters(-1)
    assert rail.bench.settings.now.rail_letters == 5


def test_a_list_too_narrow_lets_go_of_what_the_side_tells(rail: RailPlace) -> None:
    def hidden() -> list[str]:
        columns = rail.table.rows.columns
        return [one.key for at, one in enumerate(columns) if rail.table.isColumnHidden(at)]

    assert hidden() == []
    rail.table.resize(760, 400)
    assert hidden() == ["lot", "hook"]
    rail.table.resize(1500, 400)
    assert hidden() == []


@pytest.fixture
def speech(qapp: QApplication) -> Iterator[Language]:
    """The window's languages; English again after it, come what may."""
    before = QLocale()
    made = Language(qapp, resources() / "translations")
    yield made
    made.use("en")
    QLocale.setDefault(before)


@pytest.mark.parametrize("millimetres", [9, 16])
@pytest.mark.parametrize("language", ["en", "es"])
def test_state_and_verbs_stand_whole_in_the_largest_letters(
    speech: Language, qtbot: QtBot, rail: RailPlace, language: str, millimetres: int
) -> None:
    assert speech.use(language)
    rail.bench.words = Words(language, strict=True)
    rail.bench.settings.change(rail_letters=millimetres)
    _inspected(rail)
    rail.retranslate()
    qtbot.keyClick(rail, Key.Key_F11)
    QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)
    table, letters = rail.table, rail.table.delegate.letters
    assert table.rows.columns[STATE].key == "state"
    font = QFont(table.font())
    font.setPixelSize(letters[STATE])
    metrics = QFontMetrics(font)
    room = table.columnWidth(STATE) - 2 * TOGETHER - mark_room(metrics.height())
    words = [table.rows.index(n, STATE).data() for n in range(table.rows.rowCount())]
    assert [one for one in words if metrics.horizontalAdvance(one) > room] == []
    assert letters[STATE] >= table.font().pixelSize() * 0.6
    verbs = [made for _, made in rail.panel.moves if made.isVisible()]
    assert len(verbs) == 4
    assert [one.text() for one in verbs if one.sizeHint().width() > one.width()] == []
    assert max(one.geometry().right() for one in verbs) <= rail.panel.width()
    title, state = rail.panel.tag, rail.panel.state
    assert title.sizeHint().width() <= title.width()
    assert state.geometry().right() <= rail.panel.width()
    stage = rail.in_a_row.stage.line
    assert stage.fontMetrics().horizontalAdvance(stage.text()) < stage.width()
    assert rail.width() == 1366


def _inspected(rail: RailPlace) -> None:
    """An inspected beef, weighed, chosen, with the longest verbs; another one is at the block."""
    bench = rail.bench
    with bench.store.work(bench.person, bench.station) as work:
        owner = examples.customer(work, "Dora Quist")
        made = [
            examples.booked(
                work,
                NewLot(
                    "beef",
                    1,
                    DAY,
                    owner.id,
                    (LotShare(1, owner.id, holdings=whole(0)),),
                    regime=regime,
                ),
            )
            for regime in ("inspected", "custom")
        ]
        cut = examples.arrived(work, made[1], "303")
        examples.weighed(work, cut, "810")
        examples.moved(work, cut.id, "passed", "hanging", "on_block")
        weighed = examples.arrived(work, made[0], "4417")
        examples.weighed(work, weighed, "980")
        work.commit()
    rail.refresh()
    rail.open(Target("rail", "animal", weighed.id))
