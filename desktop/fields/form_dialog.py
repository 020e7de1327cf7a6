"""A dialog of fields; refused, it stays as it is with everything typed in it."""

from typing import Any

from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QDialog, QScrollArea, QSizePolicy, QWidget

from desktop.fields.field import Field
from desktop.fields.grid import FieldGrid
from desktop.fields.on_screen import bring_into, keep_on_screen, room_of, scroll_between
from desktop.fields.opening import wait_for_keyboard
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words


class FormDialog(QDialog):
    """Heading, a sentence, fields, and two buttons. Subclasses fill `grid` and `attempt`.

    Enter in the last field or Ctrl+Enter anywhere does the main action; Esc leaves. Where
    something was typed, Esc and the window's cross say first that it is dropped, and leave the
    second time; the button that leaves does it at once. `asks` is False where nothing is kept.
    """

    asks = True

    def __init__(self, parent: QWidget | None = None, *, columns: int = 2) -> None:
        super().__init__(parent)
        self.begun = False  # there is work in it that stands in no field
        self._was_shown = False
        self._scrolled: QScrollArea | None = None
        self._dropping: list[str] | None = None
        self.setMinimumWidth(280 * columns)
        self.heading = Words("group", parent=self)
        self.heading.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.lead = Words("body", "quiet", self).wrapped()
        self.lead.setAlignment(Qt.AlignmentFlag.AlignTop)  # room that is over comes below it
        self.grid = FieldGrid(columns, self)
        self.refusal = Words("body", "complaint", self).wrapped()
        self.refusal.hide()
        self.main = button(self, main=True)
        self.leave = button(self)
        self.main.setDefault(True)
        self._layout = column(self, gap=GROUP, edge=EDGE)
        for part in (self.heading, self.lead, self.grid, self.refusal):
            self._layout.addWidget(part)
        feet = row(gap=TOGETHER)
        feet.addWidget(self.main)
        feet.addWidget(self.leave)
        feet.addStretch(1)
        self._layout.addLayout(feet)
        self.main.clicked.connect(self.try_it)
        self.leave.clicked.connect(self.drop)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            QShortcut(QKeySequence(keys), self).activated.connect(self.try_it)
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._mind_keyboard)

    def open(self) -> None:
        """Show it above its window; what is typed from now on comes to it."""
        super().open()
        wait_for_keyboard(self)

    def set_words(self, heading: str, lead: str, main: str, leave: str) -> None:
        """The dialog's words: what it does, why, and the verbs of its buttons."""
        self.setWindowTitle(heading)
        self.heading.setText(heading)
        self.lead.setText(lead)
        self.lead.setVisible(bool(lead))
        self.main.setText(main)
        self.leave.setText(leave)

    def widen(self, pixels: int) -> None:
        """At least so wide; more in large type, as far as the window below it reaches."""
        over = self.parentWidget()
        room = pixels if over is None else over.window().width() - 2 * EDGE
        wanted = pixels * theme_of(self).percent // 100
        self.setMinimumWidth(max(pixels, min(wanted, room)))

    def add_below(self, widget: QWidget) -> None:
        """Something between the fields and the buttons."""
        assert self._scrolled is None, "it has been shown, and scrolls"
        self._layout.insertWidget(self._layout.indexOf(self.refusal), widget)

    def attempt(self) -> str:
        """Do what the dialog is for; "" when done, else why not, in a sentence."""
        return ""

    def try_it(self) -> None:
        """Complain at the fields, else attempt it; close only when it is done."""
        self.take_lists()
        self.refuse("")
        if not self.grid.show_problems():
            return
        said = self.attempt()
        if said:
            self.refuse(said)
        elif self.grid.problems():
            self.grid.problems()[0][0].focus()
        else:
            self.accept()

    def take_lists(self) -> None:
        """Take what is marked in a list that is open; left open it lies over what is said."""
        for field in self.grid.fields:
            field.take_list()

    def reject(self) -> None:
        """Leave; where that drops what was typed, say so first and leave the second time."""
        fields: list[Field[Any]] = self.findChildren(Field)
        typed = [one.text() for one in fields if one.touched]
        if self.isVisible() and self.asks and (typed or self.begun) and typed != self._dropping:
            self._dropping = typed
            self.refuse(self.tr("What was typed here is not kept. Esc again drops it."))
            return
        super().reject()

    def mark_kept(self) -> None:
        """What was typed so far is kept, and the dialog stays: leaving it now drops nothing."""
        for field in self.findChildren(Field):
            field.touched = False
        self.begun, self._dropping = False, None

    def drop(self) -> None:
        """Leave at once, as the button says."""
        self.asks = False
        self.reject()

    def refuse(self, sentence: str) -> None:
        """Show why it was not done; "" takes the sentence away."""
        self.refusal.setText(sentence)
        self.refusal.setVisible(bool(sentence))

    def retranslate(self) -> None:
        """Set every word again; called when the language changes."""

    def event(self, event: QEvent) -> bool:
        """Grow with words that come while it is shown, by the lines they take at this width."""
        asked = event.type() is QEvent.Type.LayoutRequest  # the dialog may be gone afterwards
        done = super().event(event)
        if asked and self.isVisible():
            needed = self._layout.totalHeightForWidth(self.width())
            if needed > self.height() or self.height() > room_of(self):
                self._fit_screen(max(needed, self.height()))
        return done

    def _fit_screen(self, height: int) -> None:
        """As high as that, or as the screen; what has no room then is scrolled."""
        room = room_of(self)
        if self._scrolled is None and self._layout.totalMinimumHeightForWidth(self.width()) > room:
            self._scrolled = scroll_between(self._layout, self.heading, self.refusal)
            self._layout.activate()
        if self.height() != min(height, room):
            self.resize(self.width(), min(height, room))
        keep_on_screen(self)

    def _mind_keyboard(self, _before: QWidget | None, now: QWidget | None) -> None:
        """A field hidden by what the one before it says gets the keyboard all the same from Qt."""
        if now is None or not self.isAncestorOf(now):
            return
        if not now.isVisible():
            QTimer.singleShot(0, self, self._pass_hidden)
        elif self._scrolled is not None and self._scrolled.isAncestorOf(now):
            fields = (one for one in self.grid.fields if one.isAncestorOf(now))
            bring_into(self._scrolled, next(fields, now))

    def _pass_hidden(self) -> None:
        now = QApplication.focusWidget()
        if now is not None and not now.isVisible() and self.isVisible() and self.isAncestorOf(now):
            self.focusNextChild()

    def make_room(self) -> None:
        """As wide as large type needs; closer together where it is higher than the window below."""
        over = self.parentWidget()
        needed = self.minimumSizeHint()
        if needed.width() > self.minimumWidth():
            room = needed.width() if over is None else over.window().width()
            self.setMinimumWidth(min(needed.width(), room))
        least = self._layout.totalMinimumHeightForWidth(self.width())
        if over is not None and max(needed.height(), least) > over.window().height():
            self._layout.setContentsMargins(GROUP, TOGETHER, GROUP, TOGETHER)
            self._layout.setSpacing(TOGETHER)
            self.grid.set_tight()
            self._layout.activate()
            self.adjustSize()
        self._layout.activate()
        height = self._layout.totalHeightForWidth(self.width())
        if 0 < height < self.height() and not self.testAttribute(Qt.WidgetAttribute.WA_Resized):
            self.resize(self.width(), height)  # words that wrap less than was thought
        if self.height() > room_of(self):
            self._fit_screen(self.height())

    def showEvent(self, event: QEvent) -> None:  # pyright: ignore[reportIncompatibleMethodOverride]
        super().showEvent(event)  # pyright: ignore[reportArgumentType]
        self.make_room()
        if not self._was_shown:
            self._was_shown = True
            for field in self.findChildren(Field):
                field.touched = False  # what it was opened with isn't typed yet
        if self.grid.fields and self.focusWidget() in (None, self.leave, self.main):
            self.grid.fields[0].editor.setFocus(Qt.FocusReason.TabFocusReason)

    def changeEvent(self, event: QEvent) -> None:
        """Stay in use when what it was opened from is locked: nobody could close it any more."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()
        its_own = self.testAttribute(Qt.WidgetAttribute.WA_ForceDisabled)
        if event.type() is QEvent.Type.EnabledChange and not self.isEnabled() and not its_own:
            self.setEnabled(True)
