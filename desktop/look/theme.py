"""One theme at a time on the whole program: style, palette, type and the little style sheet."""

from dataclasses import dataclass
from typing import cast

from PySide6.QtGui import QColor, QFont, QPalette
from PySide6.QtWidgets import QApplication, QWidget

from desktop.look.palette import LIGHT, Roles
from desktop.look.style_sheet import style_sheet
from desktop.look.type_scale import Size, font_of

_PROPERTY = "steelyard_theme"


@dataclass(frozen=True, slots=True)
class Theme:
    """Colours, the shop's type factor in percent, and the family of the bundled face."""

    roles: Roles = LIGHT
    percent: int = 100
    family: str = ""

    def font(self, size: Size) -> QFont:
        """The face for painters: "scale" is 27 pt at 100 percent."""
        return font_of(size, self.percent, self.family)

    def color(self, role: str) -> QColor:
        """A role's colour for painters, by the role's name."""
        return QColor(cast("str", getattr(self.roles, role)))


def apply(app: QApplication, theme: Theme) -> None:
    """Put a theme on; widgets hear of it by PaletteChange and FontChange."""
    app.setProperty(_PROPERTY, theme)
    if app.style().name() != "fusion":
        app.setStyle("Fusion")
    app.setPalette(palette_of(theme.roles))
    app.setFont(theme.font("body"))
    app.setStyleSheet(style_sheet(theme.roles, theme.percent))


def theme_of(_widget: QWidget | None = None) -> Theme:
    """The theme the program wears now; painters ask each time they paint."""
    app = QApplication.instance()
    theme = app.property(_PROPERTY) if app is not None else None
    return theme if isinstance(theme, Theme) else Theme()


def palette_of(roles: Roles) -> QPalette:
    """Qt's roles filled from ours; the chosen row is tint with ink, never a fill of stamp."""
    palette = QPalette()
    role = QPalette.ColorRole
    pairs = {
        role.Window: roles.page,
        role.WindowText: roles.ink,
        role.Base: roles.card,
        role.AlternateBase: roles.page,
        role.Text: roles.ink,
        role.PlaceholderText: roles.steel,
        role.Button: roles.card,
        role.ButtonText: roles.ink,
        role.BrightText: roles.contested,
        role.Highlight: roles.tint,
        role.HighlightedText: roles.ink,
        role.Accent: roles.stamp,
        role.Link: roles.stamp,
        role.LinkVisited: roles.stamp,
        role.ToolTipBase: roles.card,
        role.ToolTipText: roles.ink,
        role.Light: roles.card,
        role.Midlight: roles.line,
        role.Mid: roles.line,
        role.Dark: roles.edge,
        role.Shadow: roles.edge,
    }
    for which, color in pairs.items():
        palette.setColor(which, QColor(color))
    off = QPalette.ColorGroup.Disabled
    for which in (role.Text, role.WindowText, role.ButtonText):
        palette.setColor(off, which, QColor(roles.edge))
    return palette
