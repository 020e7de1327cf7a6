"""The little style sheet: borders, focus and the type scale, from roles and factor only."""

from string import Template

from desktop.look.palette import Roles
from desktop.look.type_scale import POINTS, WEIGHTS

BUTTON = 20  # how high its words stand at least
_RULES = Template("""
QToolTip { background: $card; color: $ink; border: 1px solid $edge; padding: 4px 8px; }
QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QAbstractSpinBox {
  background: $card; color: $ink; border: 1px solid $edge; border-radius: 2px; padding: 4px 8px;
  selection-background-color: $stamp; selection-color: $on_stamp;
  placeholder-text-color: $steel; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QAbstractSpinBox:focus {
  border: 2px solid $stamp; padding: 3px 7px; }
QLineEdit:read-only { background: $page; border-color: $line; }
QLineEdit[complaint="true"], QComboBox[complaint="true"] { border: 2px solid $contested;
  padding: 3px 7px; }
QLineEdit:disabled, QComboBox:disabled { color: $edge; border-color: $line; background: $page; }
QComboBox::drop-down { border: none; width: 24px; }
QComboBox::down-arrow { image: none; width: 0px; }
QComboBox QAbstractItemView { background: $card; border: 1px solid $edge; outline: none;
  selection-background-color: $tint; selection-color: $ink; padding: 4px; }
QPushButton { background: $card; color: $ink; border: 1px solid $edge; border-radius: 2px;
  padding: 5px 15px; min-height: ${button}px; }
QPushButton:hover { background: $hover; }
QPushButton:pressed { background: $tint; }
QPushButton:checked { background: $tint; border-bottom: 3px solid $stamp; padding-bottom: 3px; }
QPushButton:focus { border: 2px solid $stamp; padding: 4px 14px; }
QPushButton:disabled { color: $edge; border-color: $line; background: $page; }
QPushButton[main="true"] { background: $stamp; color: $on_stamp; border: 1px solid $stamp; }
QPushButton[main="true"]:focus { border: 2px solid $ink; }
QPushButton[main="true"]:disabled { background: $page; color: $edge; border-color: $line; }
QPushButton[quiet="true"] { background: transparent; border: 1px solid transparent;
  padding: 5px 7px; }
QPushButton[quiet="true"]:hover { background: $hover; }
QPushButton[quiet="true"]:focus { border: 2px solid $stamp; padding: 4px 6px; }
QPushButton::menu-indicator { image: none; width: 0px; }
QCheckBox, QRadioButton { spacing: 8px; padding: 3px; border: 2px solid transparent; }
QCheckBox:focus, QRadioButton:focus { border: 2px solid $stamp; border-radius: 2px; }
QLabel[role="quiet"] { color: $steel; }
QLabel[role="complaint"] { color: $contested; }
QLabel[role="settled"] { color: $settled; }
QLabel[role="tight"] { color: $tight; }
QLabel[role="contested"] { color: $contested; }
QLabel[sheet="true"] { border: 1px solid $line; background: $card; }
QFrame[line="true"] { background: $line; border: none; }
QTableView, QListView, QTreeView { background: $card; border: 1px solid $line; outline: none;
  gridline-color: $line; selection-background-color: $tint; selection-color: $ink; }
QTableView:focus, QListView:focus, QTreeView:focus { border: 1px solid $stamp; }
QHeaderView { background: $page; border: none; }
QHeaderView::section { background: $page; color: $steel; border: none;
  border-bottom: 1px solid $edge; padding: 4px 8px; }
QTableCornerButton::section { background: $page; border: none; }
QMenu { background: $card; border: 1px solid $edge; padding: 4px; }
QMenu::item { padding: 6px 24px 6px 16px; border-left: 3px solid transparent; }
QMenu::item:selected { background: $tint; color: $ink; border-left: 3px solid $stamp; }
QMenu::item:disabled { color: $edge; }
QMenu::separator { height: 1px; background: $line; margin: 4px 8px; }
QMenu::indicator { width: 16px; height: 16px; left: 4px; }
QScrollArea { border: none; background: transparent; }
QScrollBar:vertical { background: $page; width: 12px; margin: 0; }
QScrollBar:horizontal { background: $page; height: 12px; margin: 0; }
QScrollBar::handle { background: $edge; border-radius: 4px; margin: 2px; min-height: 24px;
  min-width: 24px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QTabBar::tab { background: transparent; color: $steel; padding: 8px 16px;
  border-bottom: 3px solid transparent; }
QTabBar::tab:selected { color: $ink; border-bottom: 3px solid $stamp; }
QTabBar:focus { outline: none; }
QTabBar::tab:focus { border: 2px solid $stamp; }
QTabWidget::pane { border: none; border-top: 1px solid $line; }
""")


def style_sheet(roles: Roles, percent: int) -> str:
    """The sheet for one theme; sizes in points follow the factor in percent."""
    words = {name: getattr(roles, name) for name in roles.__slots__ if name != "name"}
    sheet = _RULES.substitute(words, button=BUTTON * percent // 100)
    for size, points in POINTS.items():
        scaled = points * percent / 100
        sheet += f'*[type="{size}"] {{ font-size: {scaled:g}pt; '
        sheet += f"font-weight: {WEIGHTS[size].value}; }}\n"
    return sheet
