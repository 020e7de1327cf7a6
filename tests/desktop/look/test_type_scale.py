"""Type: the bundled face, figures of one width, sizes that follow the shop's factor."""

import pytest
from PySide6.QtGui import QFontInfo, QFontMetricsF
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.look import theme
from desktop.look.palette import DARK, LIGHT
from desktop.look.style_sheet import style_sheet
from desktop.look.theme import Theme
from desktop.look.type_scale import POINTS
from desktop.panels.heading import Words


def test_the_bundled_face_is_the_one_that_draws(dressed: Theme) -> None:
    assert dressed.family.startswith("Inter")
    assert QFontInfo(dressed.font("body")).family() == dressed.family


@pytest.mark.parametrize("size", list(POINTS))
def test_all_figures_are_of_one_width_also_in_labels(
    qtbot: QtBot, dressed: Theme, size: str
) -> None:
    label = Words(size)  # pyright: ignore[reportArgumentType]
    qtbot.addWidget(label)
    label.ensurePolished()
    metrics = QFontMetricsF(label.font())
    widths = {round(metrics.horizontalAdvance(figure * 10), 3) for figure in "0123456789"}
    assert len(widths) == 1
    assert label.font().pointSizeF() == pytest.approx(POINTS[size])  # pyright: ignore[reportArgumentType]


def test_the_face_has_every_letter_of_our_names(dressed: Theme) -> None:
    metrics = QFontMetricsF(dressed.font("body"))
    assert all(
        metrics.inFontUcs4(ord(letter)) for letter in "Jørgen & Łucja <O'Neil> ñáü ¾¼½⅛≤≥−×·“”"
    )


def test_labels_follow_the_shops_factor(qtbot: QtBot, qapp: QApplication, dressed: Theme) -> None:
    label = Words("title")
    qtbot.addWidget(label)
    label.ensurePolished()
    theme.apply(qapp, Theme(LIGHT, 150, dressed.family))
    assert label.font().pointSizeF() == pytest.approx(POINTS["title"] * 1.5)


def test_the_sizes_are_those_of_the_look() -> None:
    # 13, 15, 18, 24, 36 and 48 pixels at 96 dots to the inch.
    assert [points * 96 / 72 for points in POINTS.values()] == [13, 15, 18, 24, 36, 48]


@pytest.mark.parametrize("roles", [LIGHT, DARK], ids=lambda roles: roles.name)
def test_the_sheet_names_no_colour_that_is_no_role(roles: theme.Roles) -> None:
    import re

    known = {getattr(roles, name) for name in roles.__slots__}
    assert set(re.findall(r"#[0-9A-Fa-f]{6}", style_sheet(roles, 100))) <= known
