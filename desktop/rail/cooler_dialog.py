"""The cooler: what hangs where, since when and until when; the temperatures read of its rooms."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QWidget

from desktop.bench import Target
from desktop.fields import ChoiceField, CountField, FormDialog, TextField
from desktop.fields.dates import day_text
from desktop.look.patterns import Mark
from desktop.look.space import EDGE, GROUP, ROW_DENSE, TOGETHER, column, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.over import open_over
from desktop.rail.temperature_panel import TemperaturePanel
from desktop.tables import Column, RowsModel, Table, count_column, pounds_column
from shared.carcass.anatomy import catalogue
from shared.shop.animals import Animal
from shared.shop.cooler import (
    Hanging,
    days_hanging,
    due_on,
    due_state,
    expected_chilled,
)

if TYPE_CHECKING:
    from datetime import date

    from desktop.bench import Bench

MARKS = {"hangs": Mark.PLAIN, "due": Mark.SETTLED, "overdue": Mark.CONTESTED}
# Where large type leaves no room: state and day stay in sight.
SPARED = ("chilled", "wish", "days", "species")


class CoolerDialog(QDialog):
    """Enter goes to the animal, F8 moves it to another hook, F9 keeps a wish for its days.

    Signals:
        go: an animal was picked.
        changed: something was kept.
    """

    go = Signal(Target)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.dialog: FormDialog | None = None
        open_over(self, 1340, 690 if theme_of(self).percent > 100 else 660)
        self.heading = Words("group", parent=self)
        self.lead = Words("body", "quiet", self).wrapped()
        self.table: Table[Hanging] = Table(RowsModel(self._columns()), self, height=ROW_DENSE)
        self.table.spare(SPARED)
        self.hook, self.wish, self.leave = (button(self) for _ in range(3))
        self.temperatures = TemperaturePanel(bench, self)
        feet = row(gap=TOGETHER)
        feet.addWidget(self.hook)
        feet.addWidget(self.wish)
        feet.addStretch(1)
        feet.addWidget(self.leave)
        left = column(gap=TOGETHER)
        left.addWidget(self.heading)
        left.addWidget(self.lead)
        left.addWidget(self.table, 1)
        left.addLayout(feet)
        across = row(self, gap=GROUP, edge=EDGE)
        across.addLayout(left, 1)
        across.addWidget(self.temperatures)
        self._connect()
        self.retranslate()
        self.refresh()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _connect(self) -> None:
        self.table.picked.connect(self._picked)
        self.table.moved.connect(self._chosen)
        self.leave.clicked.connect(self.reject)
        for one, keys, slot in ((self.hook, "F8", self.rehang), (self.wish, "F9", self.say_wish)):
            one.clicked.connect(slot)
            QShortcut(QKeySequence(keys), self).activated.connect(slot)
        for one in (self.hook, self.wish, self.leave):
            one.setAutoDefault(False)

    def retranslate(self) -> None:
        """Set every word again."""
        self.setWindowTitle(self.tr("Cooler"))
        self.heading.setText(self.tr("Cooler"))
        self.table.set_name(self.tr("What hangs in the cooler"))
        self.hook.setText(self.tr("&Hangs elsewhere… (F8)"))
        self.wish.setText(self.tr("&Days wished… (F9)"))
        self.leave.setText(self.tr("&Close"))
        self.temperatures.retranslate()
        self._tell()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()

    def refresh(self) -> None:
        """Read what hangs again."""
        chosen = self.table.chosen()
        with self.bench.store.read() as work:
            found = list(work.cooler.hanging())
        keep = next((one for one in found if chosen and one.animal_id == chosen.animal_id), None)
        self.table.show_rows(found, keep)
        self._chosen(self.table.chosen())
        self._tell()

    def rehang(self) -> None:
        """The chosen carcass hangs on another hook."""
        one = self.table.chosen()
        if one is not None:
            self._open(_HookDialog(self.bench, one, self))

    def say_wish(self) -> None:
        """How long its owners want it to hang."""
        one = self.table.chosen()
        if one is not None:
            self._open(_WishDialog(self.bench, one, self))

    def _open(self, dialog: FormDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.accepted.connect(self._kept)
        self.dialog = dialog
        dialog.open()

    def _kept(self) -> None:
        self.changed.emit()
        self.refresh()

    def _picked(self, one: Hanging) -> None:
        self.accept()
        self.go.emit(Target("rail", "animal", one.animal_id, one.lot_id))

    def _chosen(self, one: Hanging | None) -> None:
        self.hook.setEnabled(one is not None)
        self.wish.setEnabled(one is not None)

    def _tell(self) -> None:
        rows = self.table.rows.rows()
        today = self.bench.today()
        waiting = [due_state(one, _house(one), today) for one in rows if one.state != "on_block"]
        late, due = waiting.count("overdue"), waiting.count("due")
        if not rows:
            self.lead.setText(
                self.tr("Nothing hangs. A carcass comes here when the rail hangs it.")
            )
            return
        self.lead.setText(
            self.tr("{count} hang; {due} due to cut, {late} overdue.").format(
                count=len(rows), due=due, late=late
            )
        )

    def _columns(self) -> list[Column[Hanging]]:
        words = self.bench.words
        return [
            Column("tag", lambda: self.tr("Tag"), lambda one: one.tag, width=64),
            Column(
                "species",
                lambda: self.tr("Animal"),
                lambda one: words.name(one.species, f"species.{one.species}"),
                width=72,
            ),
            Column("place", lambda: self.tr("Hangs at"), lambda one: one.place or "—", width=96),
            Column(
                "owners", lambda: self.tr("Owners"), lambda one: one.owners, width=84, stretch=True
            ),
            *self._when(),
        ]

    def _when(self) -> list[Column[Hanging]]:
        words = self.bench.words
        return [
            count_column(
                "days", lambda: self.tr("Days"), lambda one: days_hanging(one, self._today()), 56
            ),
            Column(
                "wish",
                lambda: self.tr("To hang"),
                self._to_hang,
                sort=lambda one: one.wish if one.wish is not None else _house(one)[0],
                width=104,
            ),
            Column(
                "due",
                lambda: self.tr("Cut on"),
                lambda one: day_text(due_on(one, _house(one)), words.language),
                "date",
                sort=lambda one: due_on(one, _house(one)),
                width=110,
            ),
            Column(
                "state",
                lambda: self.tr("State"),
                self._state,
                "state",
                mark=self._mark,
                width=130,
            ),
            pounds_column(
                "chilled",
                lambda: self.tr("Expected"),
                lambda one: None if one.hot_ng is None else _chilled(one, one.hot_ng),
                width=96,
            ),
        ]

    def _today(self) -> "date":
        return self.bench.today()

    def _to_hang(self, one: Hanging) -> str:
        if one.wish is not None:
            return self.tr("{days}, wished").format(days=one.wish)
        low, high = _house(one)
        return self.tr("{low} to {high}").format(low=low, high=high)

    def _mark(self, one: Hanging) -> Mark:
        if one.state == "on_block":
            return Mark.PLAIN
        return MARKS[due_state(one, _house(one), self._today())]

    def _state(self, one: Hanging) -> str:
        if one.state == "on_block":
            return self.tr("on the block")
        return {
            "hangs": self.tr("hangs"),
            "due": self.tr("due to cut"),
            "overdue": self.tr("overdue"),
        }[due_state(one, _house(one), self._today())]


class _HookDialog(FormDialog):
    """Where the carcass hangs now; a scanner types it as well as a hand."""

    def __init__(self, bench: "Bench", one: Hanging, parent: QWidget) -> None:
        super().__init__(parent, columns=1)
        self.bench = bench
        self._one = one
        self.place = TextField(self, required=True, most=40)
        self.place.set_value(one.place)
        self.grid.add(self.place)
        self.retranslate()

    def retranslate(self) -> None:
        heading = self.tr("Tag {tag} hangs at").format(tag=self._one.tag)
        self.set_words(heading, "", self.tr("&Keep"), self.tr("&Leave it"))
        self.place.set_label(self.tr("&Rail and hook"))

    def attempt(self) -> str:
        from dataclasses import replace

        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            animal = work.animals.get(self._one.animal_id)
            assert animal is not None
            made = work.animals.change(replace(animal, place=self.place.value() or ""))
            if isinstance(made, Animal):
                work.commit()
                return ""
        return self.tr("Another station has changed this animal. Look again.")


class _WishDialog(FormDialog):
    """How many days an owner wants it to hang; left empty, as the house usually does."""

    def __init__(self, bench: "Bench", one: Hanging, parent: QWidget) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._one = one
        with bench.store.read() as work:
            orders = work.orders.of_lot(one.lot_id)
        self.order: ChoiceField[int] = ChoiceField(self, required=True)
        self.order.set_choices([(each.id, each.owner or str(each.number)) for each in orders])
        self.days = CountField(self, least=0, most=90)
        self.note = TextField(self)
        self.grid.add(self.order)
        self.grid.add(self.days)
        self.grid.add(self.note, span=2)
        if orders:
            self.order.set_value(orders[0].id)
        self.order.changed.connect(self._known)
        self.retranslate()
        self._known()

    def retranslate(self) -> None:
        low, high = _house(self._one)
        self.set_words(
            self.tr("How long tag {tag} hangs").format(tag=self._one.tag),
            self.tr("The house hangs it {low} to {high} days. The longest wish holds.").format(
                low=low, high=high
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.order.set_label(self.tr("&Owner"))
        self.days.set_label(self.tr("&Days; empty: as usual"))
        self.note.set_label(self.tr("&Note"))

    def attempt(self) -> str:
        order = self.order.value()
        assert order is not None
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.cooler.wish(order, self.days.value(), self.note.value() or "")
            work.commit()
        return ""

    def _known(self) -> None:
        order = self.order.value()
        if order is not None:
            with self.bench.store.read() as work:
                self.days.set_value(work.cooler.wish_of(order))


def _house(one: Hanging) -> tuple[int, int]:
    return catalogue(one.species).ranges.hang_days


def _chilled(one: Hanging, hot_ng: int) -> int:
    return expected_chilled(hot_ng, catalogue(one.species).ranges.shrink)
