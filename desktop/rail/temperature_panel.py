"""Temperatures of the cooler's rooms: read, judged by the shop's own limits, never overwritten."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, TextField
from desktop.fields.dates import near_moment_text
from desktop.look.patterns import Mark
from desktop.look.space import GROUP, ROW_DENSE, TOGETHER, row
from desktop.look.theme import theme_of
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.side import WIDTH, SidePanel
from desktop.tables import Column, RowsModel, Table
from shared.shop.cooler import (
    CoolerReading,
    DegreeUnit,
    RoomLimits,
    Temperature,
    judged,
    read_temperature,
)
from shared.shop.problems import Refused

if TYPE_CHECKING:
    from desktop.bench import Bench

MOST_PERCENT = 135  # the list beside it needs its room too
MARKS = {
    "within": Mark.SETTLED,
    "above": Mark.CONTESTED,
    "below": Mark.CONTESTED,
    "no_limits": Mark.PLAIN,
}


class TemperaturePanel(SidePanel):
    """Room and temperature, then Enter; the last readings beneath."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, WIDTH * min(theme_of().percent, MOST_PERCENT) // 100)
        self.bench = bench
        self.unit: DegreeUnit = "F"
        self.dialog: FormDialog | None = None
        self._limits: dict[str, RoomLimits] = {}
        self._column.setContentsMargins(GROUP, 0, 0, 0)  # in line with the list beside it
        self.heading = self.add_heading()
        self.caution = Words("small", "quiet", self).wrapped()
        self.add(self.caution)
        self.room: ChoiceField[str] = ChoiceField(self, free=True)
        self.degrees = TextField(self, most=10)
        asked = row(gap=TOGETHER)
        asked.addWidget(self.room, 3)
        asked.addWidget(self.degrees, 2)
        self.add(asked)
        self.keep = button(self, main=True)
        self.correct = button(self)
        self.limit = button(self)
        buttons = row(gap=TOGETHER)
        for one in (self.keep, self.correct, self.limit):
            one.setAutoDefault(False)
            buttons.addWidget(one)
        self.add(buttons)
        self.said = Words("body", "contested", self).wrapped()
        self.add(self.said)
        self.table: Table[CoolerReading] = Table(
            RowsModel(self._columns()), self, height=ROW_DENSE, sortable=False
        )
        self.add(self.table, stretch=1)
        self.keep.clicked.connect(self.read)
        self.degrees.line.returnPressed.connect(self.read)
        self.correct.clicked.connect(self.mend)
        self.limit.clicked.connect(self.set_limits)
        self.retranslate()
        self.refresh()

    def retranslate(self) -> None:
        """Set every word again."""
        self.heading.setText(self.tr("Temperatures"))
        self.caution.setText(
            self.tr(
                "Limits are your own, by your plan and your inspector. A reading outside them is "
                "told here; what to do is in your plan."
            )
        )
        self.room.set_label(self.tr("R&oom"))
        self.degrees.set_label(self.tr("Tempera&ture, °F"))
        self.keep.setText(self.tr("&Keep"))
        self.correct.setText(self.tr("&Correct…"))
        self.limit.setText(self.tr("L&imits…"))
        self.table.set_name(self.tr("Temperatures read"))

    def refresh(self) -> None:
        """Read the rooms, their limits and the last readings again."""
        with self.bench.store.read() as work:
            rooms = work.cooler.rooms()
            self._limits = dict(work.cooler.limits())
            found = list(work.cooler.readings())
        typed = self.room.text()
        self.room.set_choices([(one, one) for one in rooms])
        if typed:
            self.room.set_text(typed)
        elif rooms:
            self.room.set_value(rooms[0])
        self.table.show_rows(found)

    def read(self) -> None:
        """Keep what was typed, read now."""
        found = read_temperature(self.degrees.text(), self.unit)
        if found is None:
            self.degrees.complain(self.tr("A temperature, like 38 or 3.5 C."))
            self.degrees.focus()
            return
        bench = self.bench
        with bench.store.work(bench.person, bench.station) as work:
            kept = work.cooler.read(self.room.text(), found, bench.now())
            if isinstance(kept, Refused):
                self.room.complain(self.tr("Which room?"))
                return
            work.commit()
        self.degrees.set_value(None)
        self.refresh()
        self._tell(kept)
        self.degrees.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def mend(self) -> None:
        """The chosen reading was wrong."""
        one = self.table.chosen()
        if one is not None and one.current:
            self._open(_Correction(self.bench, one, self.unit, self))

    def set_limits(self) -> None:
        """The shop's own limits of the room."""
        self._open(_Limits(self.bench, self.room.text(), self._limits, self.unit, self))

    def _open(self, dialog: FormDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.accepted.connect(self.refresh)
        self.dialog = dialog
        dialog.open()

    def _tell(self, one: CoolerReading) -> None:
        verdict = judged(one.temperature, self._limits.get(one.room))
        texts = {
            "above": self.tr("{room}: {degrees} is above your limit. Follow your plan."),
            "below": self.tr("{room}: {degrees} is below your limit. Follow your plan."),
        }
        told = texts.get(verdict, "")
        self.said.setText(told.format(room=one.room, degrees=one.temperature.text()))

    def _columns(self) -> list[Column[CoolerReading]]:
        return [
            Column(
                "at",
                lambda: self.tr("When"),
                lambda one: near_moment_text(one.read_at, self.bench.words.language),
                width=128,
            ),
            Column("room", lambda: self.tr("Room"), lambda one: one.room, width=62, stretch=True),
            Column(
                "degrees",
                lambda: self.tr("Read"),
                self._read,
                "state",
                mark=self._mark,
                width=150,
                tip=self._tip,
            ),
        ]

    def _read(self, one: CoolerReading) -> str:
        """What was read and what it is by the limits; in brackets once it was corrected."""
        degrees = one.temperature.text() if one.current else f"({one.temperature.text()})"
        return f"{degrees} {self._verdict(one)}".rstrip()

    def _mark(self, one: CoolerReading) -> Mark:
        if not one.current:
            return Mark.PLAIN
        return MARKS[judged(one.temperature, self._limits.get(one.room))]

    def _tip(self, one: CoolerReading) -> str:
        """All of it: in large type there is little room."""
        said = (one.room, self._read(one), one.reason or one.note, one.person)
        return ", ".join(part for part in said if part)

    def _verdict(self, one: CoolerReading) -> str:
        if not one.current:
            return self.tr("corrected")
        return {
            "within": self.tr("within"),
            "above": self.tr("above"),
            "below": self.tr("below"),
            "no_limits": "",
        }[judged(one.temperature, self._limits.get(one.room))]


class _Correction(FormDialog):
    """What it really was, and why the first reading was wrong."""

    def __init__(
        self, bench: "Bench", one: CoolerReading, unit: DegreeUnit, parent: QWidget
    ) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._one = one
        self._unit: DegreeUnit = unit
        self.degrees = TextField(self, required=True, most=10)
        self.reason = TextField(self, required=True)
        self.grid.add(self.degrees)
        self.grid.add(self.reason)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Correct {degrees}").format(degrees=self._one.temperature.text()),
            self.tr("The first reading stays in the record."),
            self.tr("&Correct it"),
            self.tr("&Leave it"),
        )
        self.degrees.set_label(self.tr("&Temperature, °F"))
        self.reason.set_label(self.tr("&Why"))

    def attempt(self) -> str:
        found = read_temperature(self.degrees.text(), self._unit)
        if found is None:
            self.degrees.complain(self.tr("A temperature, like 38 or 3.5 C."))
            return self.tr("Type what it was.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.cooler.correct(self._one.id, found, self.reason.value() or "")
            if isinstance(made, Refused):
                return self.tr("It has been corrected already. Look again.")
            work.commit()
        return ""


class _Limits(FormDialog):
    """The lowest and the highest of a room; left empty there is no limit on that side."""

    def __init__(
        self,
        bench: "Bench",
        room: str,
        known: dict[str, RoomLimits],
        unit: DegreeUnit,
        parent: QWidget,
    ) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._unit: DegreeUnit = unit
        self.room = TextField(self, required=True, most=40)
        self.low = TextField(self, most=10)
        self.high = TextField(self, most=10)
        self.grid.add(self.room, span=2)
        self.grid.add(self.low)
        self.grid.add(self.high)
        self.room.set_value(room)
        limits = known.get(room)
        if limits is not None:
            self.low.set_value(limits.low.text() if limits.low else "")
            self.high.set_value(limits.high.text() if limits.high else "")
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Limits of a room"),
            self.tr("Your own, as your plan and your inspector have them."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.room.set_label(self.tr("R&oom"))
        self.low.set_label(self.tr("&Not below"))
        self.high.set_label(self.tr("Not &above"))

    def attempt(self) -> str:
        found: list[Temperature | None] = []
        for field in (self.low, self.high):
            text = field.text().replace("\u00a0", " ").strip()
            read = read_temperature(text, self._unit) if text else None
            if text and read is None:
                field.complain(self.tr("A temperature, like 38 or 3.5 C."))
                return self.tr("Type it as you read it.")
            found.append(read)
        limits = RoomLimits(self.room.value() or "", found[0], found[1])
        if limits.low and limits.high and limits.low.tenths_f > limits.high.tenths_f:
            self.low.complain(self.tr("The lowest is above the highest."))
            return self.tr("Change one of them.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.cooler.set_limits(limits, self._unit)
            work.commit()
        return ""
