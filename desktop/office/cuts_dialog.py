"""The cuts a charge is limited to, taken in and left out by name."""

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField
from desktop.look.patterns import Mark
from desktop.look.space import TOGETHER, column
from desktop.office.charge_cuts import CutOffered
from desktop.office.usual_charges import kind_words
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from desktop.tables.written import cells_of, has_words
from shared.shop.found_names import name_forms
from shared.shop.other_names import NamesSearched, OtherName

if TYPE_CHECKING:
    from PySide6.QtCore import QEvent

    from desktop.bench import Bench


class CutsDialog(FormDialog):
    """Space or Enter takes the cut in or leaves it out; `keep` gets the codes in their order.

    A cut is found by what stands in its row, and as at the counter by its other names, of which
    the one it was found by stands behind its own; what is written nearly so comes where nothing is.

    `say` gives the sentence of what the charge holds for with such codes.
    """

    def __init__(
        self,
        bench: "Bench",
        offered: Sequence[CutOffered],
        start: Sequence[str],
        say: Callable[[tuple[str, ...]], str],
        keep: Callable[[tuple[str, ...]], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self.widen(1120)  # a cut's name, and behind it the one it was found by
        self.bench = bench
        self.chosen: list[str] = list(start)
        first = [one for one in offered if one.code in start]
        self._offered = [*first, *(one for one in offered if one.code not in start)]
        self._say, self._keep = say, keep
        self._by: dict[str, str] = {}
        self._names = NamesSearched([name_forms(one.names) for one in self._offered], self._others)
        bench.work.run(self._names.prepare, then=lambda _done: None, owner=self)
        self.wanted = TextField(self)
        self.grid.add(self.wanted, 3)
        below = QWidget(self)
        down = column(below, gap=TOGETHER)
        self.table: Table[CutOffered] = Table(RowsModel(self._columns()), below, sortable=False)
        self.table.setMinimumSize(720, 320)
        self.holds = Words("body", parent=below).wrapped()
        down.addWidget(self.table, 1)
        down.addWidget(self.holds)
        self.add_below(below)
        self.wanted.changed.connect(self._find)
        self.wanted.line.installEventFilter(self)
        self.table.picked.connect(self.turn)
        space = QShortcut(QKeySequence("Space"), self.table)
        space.setContext(Qt.ShortcutContext.WidgetShortcut)
        space.activated.connect(self.turn)
        self.main.setAutoDefault(False)
        self.retranslate()
        self._find()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Only these cuts"),
            self.tr(
                "Type a part of the name, up and down to the cut, Enter takes it in or leaves it "
                "out. With none taken in, the charge holds for every cut."
            ),
            self.tr("&Keep (Ctrl+Enter)"),
            self.tr("&Leave it"),
        )
        self.wanted.set_label(self.tr("Fi&nd a cut"))
        self.table.set_name(self.tr("Cuts"))
        self.holds.setText(self._say(tuple(self.chosen)))

    def eventFilter(self, watched: QObject, event: "QEvent") -> bool:
        """In the field, up and down go along the list and Enter takes in what is chosen there."""
        if watched is self.wanted.line and isinstance(event, QKeyEvent):
            plain = not event.modifiers() & Qt.KeyboardModifier.ControlModifier
            key = Qt.Key(event.key())
            steps = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
            enter = key in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if plain and (enter or key in steps):
                if event.type() is not QKeyEvent.Type.KeyPress:
                    return True
                if enter:
                    self.turn()
                    self.wanted.line.selectAll()
                else:
                    self.table.choose(max(self.table.currentIndex().row() + steps[key], 0))
                return True
        return super().eventFilter(watched, event)

    def turn(self, _row: object = None) -> None:
        """Take the current cut in, or leave it out."""
        cut = self.table.chosen()
        if cut is None:
            return
        if cut.code in self.chosen:
            self.chosen.remove(cut.code)
        else:
            self.chosen.append(cut.code)
        self.table.show_rows(list(self.table.rows.rows()), cut)
        self.holds.setText(self._say(tuple(self.chosen)))

    def attempt(self) -> str:
        self._keep(tuple(self.chosen))
        return ""

    def _find(self) -> None:
        self._by = {}
        shown = self._found(self.wanted.text())
        self.table.show_rows(shown)
        self.table.choose(0)
        none = self.tr("No cut of these animals is called “{text}”.")
        self.refuse("" if shown else none.format(text=self.wanted.text().strip()))

    def _found(self, typed: str) -> list[CutOffered]:
        """By their names, bacon before Canadian bacon; then by kind and animal; then nearly so."""
        asked, columns = typed.casefold().split(), self.table.rows.columns
        plain = [one for one in self._offered if has_words(asked, cells_of(columns, one))]
        if not asked:
            return plain
        found = self._names.found(typed) or (() if plain else self._names.near(typed))
        named = [self._offered[one.at] for one in found]
        self._by = {self._offered[one.at].code: one.other for one in found if one.other}
        return list(dict.fromkeys([*named, *plain]))

    def _others(self) -> list[list[tuple[OtherName, ...]]]:
        """Their other names by layers."""
        deep = max((len(one.others) for one in self._offered), default=0)
        return [
            [one.others[depth] if one.others else () for one in self._offered]
            for depth in range(deep)
        ]

    def _name(self, one: CutOffered) -> str:
        other = self._by.get(one.code)
        return f"{one.name} · {other}" if other else one.name

    def _columns(self) -> list[Column[CutOffered]]:
        return [
            Column("name", lambda: self.tr("Cut"), self._name, stretch=True),
            Column(
                "kind",
                lambda: self.tr("Kind"),
                lambda one: ", ".join(kind_words(each) for each in one.kinds),
                width=190,
            ),
            Column("animals", lambda: self.tr("Of"), self._animals, width=200, tip=self._animals),
            Column(
                "in",
                lambda: self.tr("Charged"),
                lambda one: self.tr("taken in") if one.code in self.chosen else "",
                kind="state",
                mark=lambda one: Mark.SETTLED if one.code in self.chosen else None,
                width=120,
            ),
        ]

    def _animals(self, one: CutOffered) -> str:
        words = self.bench.words
        said = ", ".join(words.name(each, f"species.{each}") for each in one.species)
        return said or self.tr("none of these animals")
