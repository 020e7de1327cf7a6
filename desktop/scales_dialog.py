"""The scales of this station: line, pattern, division, hook and gambrel, with the line live."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField, WeightField
from desktop.look.space import TOGETHER, column
from desktop.panels.heading import Words, line
from desktop.scale_reader import ports
from desktop.scale_use import ScaleUse
from shared.scales.reading import patterns
from shared.shop.problems import Refused
from shared.shop.scales import OWN, Parity, Scale, pattern_of_scale
from shared.units import WeightUnit

if TYPE_CHECKING:
    from collections.abc import Sequence

    from desktop.bench import Bench

BAUDS = (1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200)
UNITS: tuple[WeightUnit, ...] = ("lb", "kg", "oz", "g")
PARITIES: tuple[Parity, ...] = ("N", "E", "O")
LISTEN_AFTER_MS = 300


class ScalesDialog(FormDialog):
    """One scale at a time; what comes on its line is shown as it comes."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=4)
        self.setMinimumWidth(880)
        self.bench = bench
        self.scales: tuple[Scale, ...] = ()
        self.use = ScaleUse(self)
        self._wait = QTimer(self, singleShot=True, interval=LISTEN_AFTER_MS)
        self._wait.timeout.connect(self.listen)
        self._make()
        self._lay()
        self.use.said.connect(self.weight.setText)
        self.use.heard.connect(self.came.setText)
        self._left = False
        self.finished.connect(self._leave)
        self.which.changed.connect(self._show)
        for field in (self.port, self.baud, self.bits, self.parity, self.stops, self.pattern):
            field.changed.connect(self._wait.start)
        for field in (self.own, self.unit):
            field.changed.connect(self._wait.start)
        self.retranslate()
        self._read()
        bench.work.run(ports, then=self._offer_ports, key="ports")

    def _make(self) -> None:
        self.which: ChoiceField[int] = ChoiceField(self, required=True)
        self.name = TextField(self, required=True, most=40)
        self.port: ChoiceField[str] = ChoiceField(self, free=True)
        self.used: ChoiceField[bool] = ChoiceField(self, required=True)
        self.baud: ChoiceField[int] = ChoiceField(self, required=True)
        self.bits = CountField(self, required=True, least=7, most=8)
        self.parity: ChoiceField[Parity] = ChoiceField(self, required=True)
        self.stops = CountField(self, required=True, least=1, most=2)
        self.pattern: ChoiceField[str] = ChoiceField(self, required=True)
        self.own = TextField(self, most=200)
        self.unit: ChoiceField[WeightUnit] = ChoiceField(self, required=True)
        self.division = WeightField(self)
        self.hook = WeightField(self)
        self.gambrel = WeightField(self)
        self.heading_live = Words("small", "quiet", self)
        self.came = Words("body", "", self).wrapped()
        self.weight = Words("scale", "", self).wrapped()

    def _lay(self) -> None:
        for field in (self.which, self.name, self.port, self.used):
            self.grid.add(field)
        for field in (self.baud, self.bits, self.parity, self.stops):
            self.grid.add(field)
        self.grid.add(self.pattern, span=2)
        self.grid.add(self.own, span=2)
        for field in (self.unit, self.division, self.hook, self.gambrel):
            self.grid.add(field)
        live = QWidget(self)
        down = column(live, gap=TOGETHER)
        for part in (line(live), self.heading_live, self.came, self.weight):
            down.addWidget(part)
        self.add_below(live)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Scales of this station"),
            self.tr(
                "The settings stand in the scale's manual. Watch the line below: lay a load on."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.which.set_label(self.tr("Which &scale"))
        self.name.set_label(self.tr("&Name"))
        self.port.set_label(self.tr("&Port"))
        self.used.set_label(self.tr("In &use"))
        self.used.set_choices([(True, self.tr("yes")), (False, self.tr("no longer"))])
        self.baud.set_label(self.tr("Sp&eed (baud)"))
        self.baud.set_choices([(one, str(one)) for one in BAUDS])
        self.bits.set_label(self.tr("&Data bits"))
        self.parity.set_label(self.tr("Pa&rity"))
        parity = {"N": self.tr("none"), "E": self.tr("even"), "O": self.tr("odd")}
        self.parity.set_choices([(one, parity[one]) for one in PARITIES])
        self.stops.set_label(self.tr("St&op bits"))
        self.pattern.set_label(self.tr("How it &writes a line"))
        self.pattern.set_choices([*self._patterns(), (OWN, self.tr("the shop's own pattern"))])
        self.own.set_label(self.tr("Own pa&ttern"))
        self.own.hint(self.tr("a regular expression with (?P<number>…)"))
        self.unit.set_label(self.tr("Un&it if unsaid"))
        self.unit.set_choices([(one, one) for one in UNITS])
        self.division.set_label(self.tr("Di&vision"))
        self.hook.set_label(self.tr("A &hook weighs"))
        self.gambrel.set_label(self.tr("A &gambrel weighs"))
        self.heading_live.setText(self.tr("On the line now"))
        self._offer()

    def scale(self) -> Scale:
        """The scale as it stands in the fields."""
        which = self.which.value()
        old = next((one for one in self.scales if one.id == which), Scale())
        return replace(
            old,
            name=self.name.value() or "",
            port=self.port.value() or self.port.text().strip(),
            baud=self.baud.value() or 9600,
            bits=self.bits.value() or 8,
            parity=self.parity.value() or "N",
            stop_bits=self.stops.value() or 1,
            pattern=self.pattern.value() or "plain",
            own_pattern=self.own.value() or "",
            unit=self.unit.value() or "lb",
            division=self.division.value(),
            hook=self.hook.value(),
            gambrel=self.gambrel.value(),
            used=self.used.value() is not False,
        )

    def listen(self) -> None:
        """Listen on the line as it is set now."""
        scale = self.scale()
        self.came.setText("")
        if not scale.port:
            self.use.use(None)
            self.weight.setText(self.tr("Choose the port."))
        elif pattern_of_scale(scale) is None:
            self.use.use(None)
            self.own.complain(self.tr("The pattern can't be read, or names no number."))
        else:
            self.use.use(scale)

    def attempt(self) -> str:
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.scales.save(self.scale())
            if isinstance(made, Scale):
                work.commit()
                return ""
        if isinstance(made, Refused) and made.code == "pattern":
            self.own.complain(self.tr("The pattern can't be read, or names no number."))
            return ""
        if isinstance(made, Refused):
            self.name.complain(self.tr("Fill this in."))
            return ""
        return self.tr("Another station has changed this scale. Leave this and open it again.")

    def _read(self) -> None:
        with self.bench.store.read() as work:
            self.scales = work.scales.of_station(self.bench.station.id)
        self._offer()
        self.which.set_value(self.scales[0].id if self.scales else 0)
        self._show()

    def _leave(self) -> None:
        """Closed: the ports may still be looked for."""
        self._left = True
        self._wait.stop()
        self.use.close()

    def _offer(self) -> None:
        new = (0, self.tr("a new scale"))
        self.which.set_choices([*((one.id, one.name) for one in self.scales), new])

    def _offer_ports(self, found: "Sequence[tuple[str, str]]") -> None:
        if self._left:
            return
        typed = self.port.text()
        self.port.set_choices([(port, port) for port, _name in found])
        self.port.set_text(typed)

    def _show(self) -> None:
        which = self.which.value()
        scale = next((one for one in self.scales if one.id == which), Scale())
        self.name.set_text(scale.name)
        self.port.set_text(scale.port)
        self.used.set_value(scale.used)
        self.baud.set_value(scale.baud)
        self.bits.set_value(scale.bits)
        self.parity.set_value(scale.parity)
        self.stops.set_value(scale.stop_bits)
        self.pattern.set_value(scale.pattern)
        self.own.set_text(scale.own_pattern)
        self.unit.set_value(scale.unit)
        self.division.set_value(scale.division)
        self.hook.set_value(scale.hook)
        self.gambrel.set_value(scale.gambrel)
        self.listen()

    def _patterns(self) -> list[tuple[str, str]]:
        """Each of ours by what its line looks like."""
        looks = {
            "plain": self.tr("the number alone: 98.5 lb"),
            "comma_header": self.tr("letters and commas first: ST,GS,+00098.5lb"),
            "letter_after": self.tr("letters after it: 98.5 lb G S"),
            "asked_word": self.tr("asked, it answers: S S 98.5 lb"),
        }
        return [(one.code, looks.get(one.code, one.code)) for one in patterns()]
