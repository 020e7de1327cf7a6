"""Letters of the block's screen stand as high as they are said to, on the screen at hand."""

from PySide6.QtGui import QFontMetricsF
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.block.letters import pixels_of
from tests.desktop.block.hog import hanging
from tests.desktop.block.test_place import begin, shown


def test_nine_millimetres_by_hand() -> None:
    """9 mm at 96 dots to the inch: 9 / 25.4 x 96 = 34.02 pixels of capital."""
    assert pixels_of(9, 96) == 47
    assert pixels_of(9, 5) == pixels_of(9, 72)  # a screen that doesn't know itself
    assert pixels_of(18, 96) == 94


def test_capitals_on_the_screen_are_nine_millimetres(qtbot: QtBot, bench: Bench) -> None:
    """Settled for the block's screen: capitals at least 9 mm by the screen's physical size."""
    hanging(bench)
    place = shown(qtbot, bench)
    begin(place)
    large = place.view.view.rows[0].large
    dots = max(place.screen().physicalDotsPerInchY(), 72.0)
    assert QFontMetricsF(large.font()).capHeight() / dots * 25.4 >= 8.9
    before = large.font().pixelSize()
    place.view.letters(2)
    assert place.view.view.rows[0].large.font().pixelSize() > before
