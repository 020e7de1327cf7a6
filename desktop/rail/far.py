"""The rail read across the room: the same list and weighing in letters of a height, F11 and Esc."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QWidget

from desktop.block.letters import LEAST_LETTERS, MOST_LETTERS, letter_pixels
from desktop.look.space import EDGE, GROUP
from desktop.rail.state_words import IN_HAND, state_words

if TYPE_CHECKING:
    from desktop.rail.place import RailPlace

SHOWN = ("tag", "state")  # columns; the rest is read close by
SPARED = ("lot", "hook", "live", "day", "species")  # said beside the list, where it is narrow
LABELS = 0.4  # height of labels and sentences, of the main letters
PART = 0.54  # of the width, for the animal and its weighing
LEAST_PART = 0.45  # where the list needs more than the rest


class FarMode(QObject):
    """Dresses a rail for two metres and back; every key and the scanner do what they always do.

    Capitals of tags, states, weights and verbs stand `rail_letters` millimetres high on the
    screen at hand; labels and sentences are smaller. What is rarely wanted isn't shown.
    """

    def __init__(self, place: "RailPlace") -> None:
        super().__init__(place)
        self.place = place
        self.on = False
        for keys, do in (
            ("F11", self.turn),
            ("Ctrl++", lambda: self.letters(1)),
            ("Ctrl+=", lambda: self.letters(1)),
            ("Ctrl+-", lambda: self.letters(-1)),
        ):
            made = QShortcut(QKeySequence(keys), place)
            made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            made.activated.connect(do)
        place.panel.far_wanted.connect(self.turn)
        place.near.clicked.connect(self.leave)
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._follow)

    def turn(self) -> None:
        """Into it, or out of it."""
        self.on = not self.on
        self.dress()

    def leave(self) -> bool:
        """Out of it; False where it isn't on."""
        if not self.on:
            return False
        self.turn()
        return True

    def letters(self, by: int) -> None:
        """Larger or smaller letters; the station keeps it."""
        if self.on:
            settings = self.place.bench.settings
            now = min(max(settings.now.rail_letters + by, LEAST_LETTERS), MOST_LETTERS)
            settings.change(rail_letters=now)
            self.dress()

    def dress(self) -> None:
        """As it should look now; again after the window or the letters have another size."""
        place = self.place
        large = letter_pixels(place, place.bench.settings.now.rail_letters)
        sheet = _sheet(large) if self.on else ""
        usual, large_ones = (place.heading, place.which), (place.near,)
        for part in usual if self.on else large_ones:
            part.hide()  # before anything is made wide, or the window would have to grow
        for part in (place.table, place.panel, place.in_a_row, place.near):
            part.setStyleSheet(sheet)  # not the place: its dialogs are read close by
        place.near.ensurePolished()
        self._widths(large)
        place.panel.set_far(large if self.on else 0)
        for part in large_ones if self.on else usual:
            part.show()
        for at, column in enumerate(place.table.rows.columns):
            if self.on:
                place.table.setColumnHidden(at, column.key not in SHOWN)
        place.table.set_letters(large if self.on else 0, SHOWN[-1])
        if not self.on:
            place.table.spare(SPARED)
        if self.on:
            place.in_a_row.tag.focus()

    def _widths(self, large: int) -> None:
        """The animal takes the greater part; tag and stage as much as their letters need."""
        place, row = self.place, self.place.in_a_row
        if not self.on:
            place.panel.hold_width(0)
            place.hold_around(place.panel.width())
            row.set_widths()
            return
        least = place.stack.minimumSizeHint().width() + EDGE + GROUP
        list_ = self._list_needs(large) + EDGE + GROUP
        width = min(int(place.width() * PART), place.width() - least)
        width = min(width, max(place.width() - list_, int(place.width() * LEAST_PART)))
        place.around.setFixedWidth(width)
        place.panel.hold_width(width - 12)
        room = place.width() - width - EDGE - GROUP
        fits = row.fit(room - GROUP - place.near.sizeHint().width())
        place.put_near(below=not fits)
        if not fits:
            row.fit(room)

    def _list_needs(self, large: int) -> int:
        """What the list takes, any state an animal comes to standing whole beside its tag."""
        table, words = self.place.table, self.place.bench.words
        tags = {row.tag for row in table.rows.rows()}
        states = {state_words(one, "custom", words) for one in IN_HAND}
        states |= {
            state_words("passed", "inspected", words),
            state_words("passed", "custom", words, on_hold=True),
        }
        return table.room_for(large, {"tag": tags, "state": states}, "state")

    def _follow(self, _old: QWidget | None, now: QWidget | None) -> None:
        """What has the keyboard is in sight, however large it is."""
        if self.on and now is not None and self.place.panel.isAncestorOf(now):
            self.place.around.ensureWidgetVisible(now, 0, GROUP)


def _sheet(large: int) -> str:
    small = int(large * LABELS)
    return f"""
    QLabel {{ font-size: {small}px; }}
    QLabel[type="title"] {{ font-size: {large}px; }}
    QLabel[far="true"] {{ font-size: {large}px; }}
    QTableView {{ font-size: {large}px; font-weight: 600; }}
    QHeaderView::section {{ font-size: {small}px; }}
    QLineEdit, QLineEdit[type="scale"] {{ font-size: {large}px; font-weight: 600; }}
    QComboBox, QComboBox QLineEdit, QComboBox QAbstractItemView {{ font-size: {small * 6 // 5}px; }}
    QPushButton {{ font-size: {large}px; padding: {large // 5}px {large // 3}px; }}
    QPushButton[quiet="true"] {{ font-size: {small}px; }}
    """
