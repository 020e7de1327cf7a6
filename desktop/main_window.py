"""The window: the bar of places, the place one is in, the status line; nothing of the trade."""

from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QEvent, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QPainter, QPaintEvent, QShortcut
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QMainWindow,
    QPushButton,
    QStackedWidget,
    QWidget,
)
from shiboken6 import isValid

from desktop.bench import Bench, Target
from desktop.find_box import FindBox
from desktop.look.mark import mark_icon
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words, line
from desktop.place_list import ENTRIES, make_place
from desktop.places import Place
from desktop.places_bar import HEIGHT, PlacesBar, paint_beam
from desktop.shop_menu import ShopMenu

if TYPE_CHECKING:
    from collections.abc import Sequence

    from shared.shop.lists import Found

STATUS_HEIGHT = 28
SAID_FOR_MS = 8000
PLACE_OF_KIND = {"animal": "rail", "customer": "counter", "order": "counter", "lot": "counter"}


class _Bar(QWidget):
    """The strip at the top, with the beam painted under everything on it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setFixedHeight(HEIGHT)
        self.places = PlacesBar(self)

    def paintEvent(self, _event: QPaintEvent) -> None:
        paint_beam(QPainter(self), self.width(), self.places.weight_x(self))


class MainWindow(QMainWindow):
    """Holds the places and moves between them.

    Signals:
        person_wanted: the name at the right of the bar was pressed.
        copy_wanted, help_wanted, keys_wanted, about_wanted: an entry of the shop menu.
    """

    person_wanted = Signal()
    copy_wanted = Signal()
    help_wanted = Signal(str)
    keys_wanted = Signal()
    about_wanted = Signal()

    def __init__(self, bench: Bench, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.setObjectName("main")
        self.setMinimumSize(1024, 600)
        self.resize(1366, 720)
        self.places: dict[str, Place] = {}
        self._stale: set[str] = set()
        self.dialog: QDialog | None = None
        self._build()
        self._connect()
        self.retranslate()

    def _build(self) -> None:
        middle = QWidget(self)
        layout = column(middle, gap=0)
        self.bar = _Bar(middle)
        self.menu = ShopMenu(self.bench.settings, self)
        self.finder = FindBox(self._search, middle)
        self._fill_bar()
        self.stack = QStackedWidget(middle)
        layout.addWidget(self.bar)
        layout.addWidget(self.stack, 1)
        layout.addWidget(line(middle))
        layout.addWidget(self._foot(middle))
        self.setCentralWidget(middle)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.setInterval(SAID_FOR_MS)

    def _fill_bar(self) -> None:
        self.mark = button(self.bar, quiet=True)
        self._draw_mark()
        self.mark.setIconSize(QSize(24, 24))
        self.mark.setMenu(self.menu)
        self.finder.setFixedWidth(320)
        self.person: QPushButton = button(self.bar, quiet=True)
        strip = row(self.bar, gap=TOGETHER)
        strip.setContentsMargins(TOGETHER, 0, GROUP, 10)
        strip.addWidget(self.mark)
        strip.addWidget(self.bar.places, alignment=Qt.AlignmentFlag.AlignTop)
        strip.addStretch(1)
        strip.addWidget(self.finder)
        strip.addWidget(self.person)
        buttons = list(self.bar.places.buttons.values())
        chain: list[QWidget] = [self.mark, *buttons, self.finder, self.person]
        for before, after in pairwise(chain):
            self.setTabOrder(before, after)

    def _draw_mark(self) -> None:
        icon = mark_icon()
        self.setWindowIcon(icon)
        self.mark.setIcon(icon)

    def _foot(self, middle: QWidget) -> QWidget:
        foot = QWidget(middle)
        foot.setFixedHeight(STATUS_HEIGHT - 1)
        self.status = Words("small", "quiet", foot)
        self.station = Words("small", "quiet", foot)
        words = row(foot, gap=GROUP)
        words.setContentsMargins(GROUP, 0, GROUP, 0)
        words.addWidget(self.status, 1)
        words.addWidget(self.station)
        return foot

    def _connect(self) -> None:
        self.bar.places.wanted.connect(self.walk)
        self.finder.chosen.connect(self._found)
        self.finder.left.connect(self.focus_place)
        self.person.clicked.connect(self.person_wanted)
        self._quiet.timeout.connect(self.status.clear)
        self.menu.leave_wanted.connect(self.close)
        self.menu.copy_wanted.connect(self.copy_wanted)
        self.menu.keys_wanted.connect(self.keys_wanted)
        self.menu.about_wanted.connect(self.about_wanted)
        self.menu.help_wanted.connect(self._help)
        self.menu.trace_wanted.connect(self.open_trace)
        self.menu.records_wanted.connect(self.open_records)
        for action in (
            self.menu.help_action,
            self.menu.keys_action,
            self.menu.leave_action,
            self.menu.trace_action,
        ):
            self.addAction(action)
        find = QShortcut(QKeySequence("Ctrl+F"), self)
        find.activated.connect(self.focus_finder)
        menu = QShortcut(QKeySequence("F10"), self)
        menu.activated.connect(self.mark.showMenu)
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._mind_keyboard)

    def retranslate(self) -> None:
        """The frame's own words."""
        self.mark.setAccessibleName(self.tr("Shop menu"))
        self.mark.setToolTip(self.tr("Shop menu (F10)"))
        self.person.setText(self.bench.person.name)
        self.person.setAccessibleName(
            self.tr("Who is working: {name}").format(name=self.bench.person.name)
        )
        self.person.setToolTip(self.tr("Who is working here; press to change"))
        self.station.setText(self.bench.station.name)
        self._retitle()

    def place(self) -> Place:
        """The place one is in."""
        place = self.stack.currentWidget()
        assert isinstance(place, Place)
        return place

    def enter(self, key: str) -> bool:
        """Go to a place if the one we are in lets go; False when it does not."""
        here = self.stack.currentWidget()
        if isinstance(here, Place) and here.key != key and not here.may_leave():
            self.bar.places.mark(here.key)
            return False
        try:
            place = self._place(key)
        except Exception:  # its records can't be read: we are still where we were
            if isinstance(here, Place):
                self.bar.places.mark(here.key)
            raise
        self.stack.setCurrentWidget(place)
        self.bar.places.mark(key)
        if key in self._stale:
            place.refresh()
            self._stale.discard(key)  # not before: what could not be read is read the next time
        self._retitle()
        self.focus_place()
        return True

    def walk(self, key: str) -> None:
        """Go to a place by its key or word: it is told what one was at."""
        here = self.stack.currentWidget()
        at = here.at_hand() if isinstance(here, Place) and here.key != key else None
        if self.enter(key) and at is not None:
            self.place().take_up(at)

    def go(self, what: Target) -> None:
        """Go to a place and show one thing there."""
        if self.enter(what.place) and what.kind:
            self.place().open(what)

    def say(self, sentence: str) -> None:
        """Show a sentence on the status line for some seconds."""
        self.status.setText(sentence)
        self._quiet.start()

    def unsay(self, sentence: str) -> None:
        """Take a sentence away that no longer holds, where nothing newer stands."""
        if self.status.text() == sentence:
            self.say("")

    def focus_place(self) -> None:
        """Give the keyboard to the place."""
        self.place().first_focus().setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _mind_keyboard(self, before: QWidget | None, now: QWidget | None) -> None:
        """Qt gives the keyboard to what isn't shown too: the next space would press it unseen.

        It is what a worker read for a place one has left meanwhile that asks for it. Nobody has it
        once the field that had it is locked with what is around it: no key of the place works.
        """
        if now is None or (not now.isVisible() and self.stack.isAncestorOf(now)):
            QTimer.singleShot(0, self, lambda: self._give_keyboard_back(before))

    def _give_keyboard_back(self, before: QWidget | None) -> None:
        now = QApplication.focusWidget()
        seen = now is not None and (now.isVisible() or not self.stack.isAncestorOf(now))
        if seen or not self.isActiveWindow() or QApplication.activePopupWidget() is not None:
            return
        if before is not None and isValid(before) and before.isVisible() and before.isEnabled():
            before.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.focus_place()
        if QApplication.focusWidget() in (None, now):
            self.bar.places.buttons[self.place().key].setFocus()

    def focus_finder(self) -> None:
        """Give the keyboard to the search box."""
        self.finder.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.finder.selectAll()

    def open_trace(self) -> None:
        """Trace a tag or number to all that is kept of it."""
        from desktop.trace.trace_dialog import TraceDialog

        dialog = TraceDialog(self.bench, parent=self)
        dialog.go.connect(self.go)
        self._show(dialog)

    def open_records(self) -> None:
        """Write the kept records out."""
        from desktop.trace.records_dialog import RecordsDialog

        self._show(RecordsDialog(self.bench, self))

    def _show(self, dialog: QDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.dialog = dialog
        dialog.open()

    def refresh_all(self) -> None:
        """Read again what is shown; the other places when they are next entered."""
        self._stale = set(self.places)
        self._stale.discard(self.place().key)
        self.place().refresh()

    def restore(self, geometry: str) -> None:
        """Put the window where it was; an empty or foreign text leaves it where it is."""
        if geometry:
            self.restoreGeometry(QByteArray.fromHex(geometry.encode("ascii", "ignore")))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange and hasattr(self, "_quiet"):
            self.retranslate()
        elif event.type() is QEvent.Type.PaletteChange and hasattr(self, "_quiet"):
            self._draw_mark()

    def closeEvent(self, event: QCloseEvent) -> None:
        here = self.stack.currentWidget()
        if isinstance(here, Place) and not here.may_leave():
            event.ignore()
            return
        geometry = bytes(self.saveGeometry().toHex().data()).decode("ascii")
        self.bench.settings.change(window=geometry, place=self.place().key)
        event.accept()

    def _place(self, key: str) -> Place:
        if key not in self.places:
            entry = next(each for each in ENTRIES if each.key == key)
            place = make_place(entry, self.bench, self.stack)
            place.said.connect(self.say)
            place.unsaid.connect(self.unsay)
            place.go.connect(self.go)
            place.changed.connect(self._changed)
            self.stack.addWidget(place)
            self.places[key] = place
            self._stale.add(key)
        return self.places[key]

    def _changed(self) -> None:
        place = self.sender()
        self._stale |= set(self.places)
        if isinstance(place, Place):
            self._stale.discard(place.key)

    def _found(self, found: "Found") -> None:
        key = PLACE_OF_KIND.get(found.kind, "counter")
        self.go(Target(key, found.kind, found.id, found.lot_id))

    def _search(self, text: str) -> "Sequence[Found]":
        with self.bench.store.read() as work:
            return work.search.find(text, limit=12)

    def _help(self) -> None:
        self.help_wanted.emit(self.place().help_page())

    def _retitle(self) -> None:
        here = self.stack.currentWidget()
        name = self.tr("Steelyard")
        title = f"{here.title()} · {name}" if isinstance(here, Place) else name
        self.setWindowTitle(title)
        self.bar.update()
