"""The side of the rail: one animal, its weights, what is gone from it, and where it may go."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QPushButton, QWidget

from desktop.fields import TextField
from desktop.look.space import GROUP, TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words, line
from desktop.panels.side import SidePanel
from desktop.panels.state_word import StateWord
from desktop.rail.check_in import sex_words
from desktop.rail.gone_words import gone_lines
from desktop.rail.known_words import held_words, known_words
from desktop.rail.move_buttons import lay_buttons
from desktop.rail.rare_buttons import RareButtons
from desktop.rail.seen import SeenAnimal
from desktop.rail.state_words import move_words, state_mark, state_words
from desktop.rail.weights import Weights
from shared.carcass import thirty_months
from shared.carcass.gradings import ASKED
from shared.shop.states import NOT_HERE, Move, animal_moves

if TYPE_CHECKING:
    from desktop.bench import Bench


class AnimalPanel(SidePanel):
    """Shows one animal.

    Signals:
        move_wanted: carries the Move whose button was pressed.
        check_in_wanted, correction_wanted, loss_wanted, tags_wanted, dressing_wanted, hold_wanted,
            scales_wanted, report_wanted, calendar_wanted, cooler_wanted, measures_wanted,
            day_weights_wanted, more_wanted, far_wanted: their buttons.
        hook_said: where it hangs was typed.
    """

    move_wanted = Signal(object)
    check_in_wanted = Signal()
    correction_wanted = Signal()
    loss_wanted = Signal()
    tags_wanted = Signal()
    dressing_wanted = Signal()
    hold_wanted = Signal()
    scales_wanted = Signal()
    report_wanted = Signal()
    calendar_wanted = Signal()
    cooler_wanted = Signal()
    day_weights_wanted = Signal()
    more_wanted = Signal()
    measures_wanted = Signal()
    far_wanted = Signal()
    hook_said = Signal(str)

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.seen: SeenAnimal | None = None
        self.moves: list[tuple[Move, QPushButton]] = []
        self._build()
        self._connect()

    def _build(self) -> None:
        self.tag = Words("title", parent=self)
        self.state = StateWord(self)
        self.about = Words("body", "quiet", self).wrapped()
        self.weights = Weights(self.bench, self)
        self.gone = Words("body", "contested", self).wrapped()
        self.hook = TextField(self, most=40)
        self.check_in = button(self, main=True)
        self.rare = RareButtons(13, self)
        rare = self.rare.buttons
        self.correct, self.lose, self.dress, self.hold, self.tags, self.report = rare[:6]
        self.measures, self.cooler, self.calendar, self.scales = rare[6:10]
        self.day_weights, self.more, self.far = rare[10:]
        self._head = row(gap=GROUP)
        self._head.addWidget(self.tag, 1)
        self._head.addWidget(self.state, alignment=Qt.AlignmentFlag.AlignVCenter)
        self.add(self._head)
        self.add(self.about)
        self.add(line(self))
        self.add(self.weights)
        self.add(self.gone)
        self.add(self.hook)
        self._rule = line(self)  # below the weights; without them it would double the one above
        self.add(self._rule)
        self._buttons = row(gap=TOGETHER)
        self._buttons.addStretch(1)
        self.add(self._buttons)
        self._backs = row(gap=TOGETHER)
        self._backs.addWidget(self.check_in)
        self._backs.addStretch(1)
        self.add(self._backs)
        self.add(self.rare)

    def _connect(self) -> None:
        self.check_in.clicked.connect(self.check_in_wanted)
        self.correct.clicked.connect(self.correction_wanted)
        self.tags.clicked.connect(self.tags_wanted)
        self.lose.clicked.connect(self.loss_wanted)
        self.dress.clicked.connect(self.dressing_wanted)
        self.hold.clicked.connect(self.hold_wanted)
        self.scales.clicked.connect(self.scales_wanted)
        self.report.clicked.connect(self.report_wanted)
        self.calendar.clicked.connect(self.calendar_wanted)
        self.cooler.clicked.connect(self.cooler_wanted)
        self.day_weights.clicked.connect(self.day_weights_wanted)
        self.more.clicked.connect(self.more_wanted)
        self.measures.clicked.connect(self.measures_wanted)
        self.far.clicked.connect(self.far_wanted)
        self.hook.committed.connect(self._said_hook)

    def retranslate(self) -> None:
        """Every word again."""
        self.weights.retranslate()
        self.hook.set_label(self.tr("Hangs at (rail and hoo&k)"))
        self.correct.setText(self.tr("Correct a weight (F8)"))
        self.lose.setText(self.tr("A part is gone (F9)"))
        self.tags.setText(self.tr("Print its tags (Ctrl+P)"))
        self.report.setText(self.tr("Producer's report"))
        self.scales.setText(self.tr("Scales (Ctrl+E)"))
        self.calendar.setText(self.tr("Calendar (Ctrl+K)"))
        self.cooler.setText(self.tr("Cooler (Ctrl+L)"))
        self.day_weights.setText(self.tr("Weights (Ctrl+W)"))
        self.day_weights.setToolTip(self.tr("Weights of the day"))
        self.more.setText(self.tr("One more (Ctrl+N)"))
        self.more.setToolTip(self.tr("One more came than was booked"))
        self.far.setText(self.tr("Large letters (F11)"))
        self.measures.setText(self.tr("Measures (Ctrl+G)"))
        self.dress.setText(self.tr("Dressing (Ctrl+D)"))
        self._say()

    def show_animal(self, seen: SeenAnimal | None) -> None:
        """Show one animal, or that none is chosen."""
        self.seen = seen
        self.weights.show_animal(seen)
        shown = seen is not None and seen.animal.state not in NOT_HERE
        for part in (
            self.weights,
            self._rule,
            self.correct,
            self.lose,
            self.tags,
            self.dress,
            self.hold,
            self.report,
            self.measures,
        ):
            part.setVisible(shown)
        if shown and seen is not None:
            self.measures.setVisible(seen.animal.species in ASKED)
        self.rare.lay()
        self.check_in.setVisible(seen is not None and seen.animal.state != "not_come")
        self.correct.setEnabled(seen is not None and any(one.current for one in seen.weighings))
        self.hook.setVisible(seen is not None and seen.animal.state in ("passed", "hanging"))
        if seen is not None and not self.hook.line.hasFocus():
            self.hook.set_text(seen.animal.place)
        self._show_moves()
        self._say()
        self._lay_buttons()

    def set_far(self, pixels: int) -> None:
        """Letters of that height, and only what weighing and passing need; 0: as usual."""
        for part in (self.about, self.rare):
            part.setVisible(not pixels)
        self.state.set_pixels(pixels * 2 // 3)
        self._lay_head()
        self._lay_buttons()
        self.weights.set_far(on=bool(pixels))
        self.rare.lay()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_head()
        self._lay_buttons()

    def _lay_buttons(self) -> None:
        """The verbs whole, however large their letters are."""
        room = self.width() - 2 * GROUP
        aside = [made for move, made in self.moves if _is_aside(move)]
        forward = [made for move, made in self.moves if not _is_aside(move)]
        lay_buttons(self._buttons, forward, room)
        shown = [] if self.check_in.isHidden() else [self.check_in]
        lay_buttons(self._backs, [*shown, *aside], room)

    def _lay_head(self) -> None:
        """The state beside the tag, or below it where both wouldn't stand whole."""
        wide = self.tag.sizeHint().width() + GROUP + self.state.sizeHint().width()
        beside = self.state.isHidden() or wide + 2 * GROUP <= self.width()
        across, down = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        self._head.setDirection(across if beside else down)
        self._head.setSpacing(GROUP if beside else 0)

    def focus_move(self) -> None:
        """Go to the next step, else to its hook; never to a step back, which Space would take."""
        if self.focus_forward():
            return
        if not self.hook.isHidden():
            self.hook.focus()
            return
        onward = [made for move, made in self.moves if not move.back and move.end != "not_come"]
        (onward or [self.check_in])[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def focus_forward(self) -> bool:
        """Go to the next step forward that needs no reason; False when there is none."""
        for move, made in self.moves:
            if not move.back and not move.needs_reason and move.end != "not_come":
                made.setFocus(Qt.FocusReason.OtherFocusReason)
                return True
        return False

    def _show_moves(self) -> None:
        for _, made in self.moves:
            made.hide()
            made.deleteLater()
        self.moves = []
        if self.seen is None:
            return
        animal = self.seen.animal
        moves = [
            move
            for move in animal_moves(animal.state, animal.regime)
            if move.place == "rail" and (move.start, move.end) not in NOT_BY_BUTTON
        ]
        for at, move in enumerate(moves):
            main = at == 0 and not move.back and not move.needs_reason and move.end != "not_come"
            made = button(self, main=main, quiet=move.back or move.end == "not_come")
            made.setText(move_words(move, animal.regime))
            made.clicked.connect(lambda _=False, move=move: self.move_wanted.emit(move))
            aside = _is_aside(move)
            (self._backs if aside else self._buttons).insertWidget(1 if aside else at, made)
            made.show()
            self.moves.append((move, made))

    def _say(self) -> None:
        seen = self.seen
        if seen is None:
            self.tag.setText("")
            self.about.setText(self.tr("Choose an animal in the list."))
            self.check_in.setText(self.tr("&Check in"))
            self.hold.setText(self.tr("Hold it (Ctrl+H)"))
            self.state.hide()
            self.gone.hide()
            return
        animal, words = seen.animal, self.bench.words
        name = words.name(animal.species, f"species.{animal.species}")
        self.tag.setText(
            self.tr("Tag {tag}").format(tag=animal.tag) if animal.tag else name.capitalize()
        )
        held = held_words(seen)
        self.state.set_state(
            state_mark(animal.state, on_hold=bool(held)),
            state_words(animal.state, animal.regime, words, on_hold=bool(held)),
        )
        self.state.show()
        self._lay_head()
        self.about.setText(self._about(seen))
        booked = animal.state == "booked"
        self.check_in.setText(self.tr("&Check in") if booked else self.tr("Tag, sex, age"))
        self._restyle(self.check_in, main=booked)
        gone = gone_lines(seen, self.bench.words)
        if animal.held_for:
            gone.insert(0, animal.held_for)
        if animal.state == "held":
            gone.insert(0, self.tr("Retained: locked until the inspector releases it."))
        gone = [*held, *gone]
        self.hold.setText(self.tr("Let it go (Ctrl+H)") if held else self.tr("Hold it (Ctrl+H)"))
        self.gone.setText("\n".join(gone))
        self.gone.setVisible(bool(gone))

    def _about(self, seen: SeenAnimal) -> str:
        animal, words = seen.animal, self.bench.words
        parts = [
            words.name(animal.species, f"species.{animal.species}"),
            sex_words(animal.sex),
            words.name("", f"skin.{animal.skin}") if animal.species == "pork" else "",
            words.name("", f"age.{animal.age}") if thirty_months.holds_for(animal.species) else "",
            self.tr("lot {number}").format(number=seen.lot_number),
            self.tr("inspected")
            if animal.regime == "inspected"
            else self.tr("custom, not for sale"),
        ]
        known = known_words(seen, self.bench.now(), words.language)
        lines = (", ".join(part for part in parts if part), ", ".join(seen.owners), known)
        return "\n".join(one for one in lines if one)

    def _restyle(self, what: QPushButton, *, main: bool) -> None:
        what.setProperty("main", "true" if main else "false")
        what.setProperty("quiet", "false" if main else "true")
        what.style().unpolish(what)
        what.style().polish(what)

    def _said_hook(self) -> None:
        if self.seen is not None and self.hook.text().strip() != self.seen.animal.place:
            self.hook_said.emit(self.hook.text().strip())


def _is_aside(move: Move) -> bool:
    return move.back or move.end == "not_come"


# An animal is weighed by its first hot weight, and booked again only by mistake of the counter.
NOT_BY_BUTTON = frozenset({("arrived", "weighed"), ("booked", "arrived")})
