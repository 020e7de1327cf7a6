"""What came from the block: its reports with our mistakes to credit, and the shop's own figures."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.block.measuring import place_name
from desktop.fields import ChoiceField
from desktop.fields.dates import date_text
from desktop.look.patterns import Mark
from desktop.look.space import GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.tables import Column, RowsModel, Table
from printing.words.place_words import capital
from shared.carcass.anatomy import species as all_species
from shared.cutting.own_figures import OwnFigure
from shared.shop.findings import Finding
from shared.shop.problems import StaleEdit
from shared.units import length_text, weight_text

if TYPE_CHECKING:
    from fractions import Fraction

    from desktop.bench import Bench
    from shared.shop.findings import Answered


class FiguresPage(QWidget):
    """Reports above, own figures below.

    Signals:
        said: a sentence for the status line.
        changed: something was kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self._build()
        self.credit.clicked.connect(lambda: self.answer("credited"))
        self.none.clicked.connect(lambda: self.answer("no_credit"))
        self.reports.moved.connect(self._moved)
        self.species.committed.connect(self.refresh)
        self.used.committed.connect(self._switch)
        shortcut = QShortcut(QKeySequence("Ctrl+Return"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(lambda: self.answer("credited"))
        self.retranslate()
        self.species.set_value("beef")

    def _build(self) -> None:
        self.lead = Words("body", "quiet", self).wrapped()
        self.credit, self.none = button(self, main=True), button(self)
        self.reports: Table[Finding] = Table(RowsModel(self._report_columns()), self)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.used: ChoiceField[bool] = ChoiceField(self, required=True)
        self.about = Words("body", "quiet", self).wrapped()
        self.figures: Table[OwnFigure] = Table(RowsModel(self._figure_columns()), self)
        self.no_reports, self.no_figures = EmptyState(self), EmptyState(self)
        top = row(gap=TOGETHER)
        top.addWidget(self.lead, 1)
        top.addWidget(self.credit)
        top.addWidget(self.none)
        middle = row(gap=GROUP)
        middle.addWidget(self.species, 1)
        middle.addWidget(self.used, 1)
        middle.addWidget(self.about, 3)
        down = column(self, gap=TOGETHER, edge=GROUP)
        down.addLayout(top)
        down.addWidget(self.reports, 1)
        down.addWidget(self.no_reports, 1)
        down.addLayout(middle)
        down.addWidget(self.figures, 1)
        down.addWidget(self.no_figures, 1)

    def retranslate(self) -> None:
        """Every word of the page."""
        words = self.bench.words
        self.lead.setText(
            self.tr("What the block reported. A mistake of ours waits for its credit or a reason.")
        )
        self.credit.setText(self.tr("&Credited… (Ctrl+Enter)"))
        self.none.setText(self.tr("&No credit…"))
        self.reports.set_name(self.tr("Reports of the block"))
        self.species.set_label(self.tr("&Animal"))
        self.species.set_choices(
            [(one, words.name(one, f"species.{one}")) for one in all_species()]
        )
        self.used.set_label(self.tr("&Own figures"))
        self.used.set_choices(
            [
                (False, self.tr("shown only")),
                (True, self.tr("used for what is expected")),
            ]
        )
        self.about.setText(
            self.tr(
                "Made beside what the table foretells, of carcasses that are wrapped. Only a cut "
                "that differs by more than chance is used."
            )
        )
        self.figures.set_name(self.tr("Own figures"))
        self._teach()

    def _teach(self) -> None:
        """What stands where there is nothing yet."""
        self.no_reports.set_words(
            self.tr("The block has reported nothing"),
            self.tr(
                "Who cuts says at the carcass (Block, Ctrl+R) what ran longer or shorter, what was "
                "lost and what was cut otherwise. It stands here, and a mistake of ours waits here "
                "until it is credited."
            ),
        )
        self.no_figures.set_words(
            self.tr("No figures of your own yet"),
            self.tr(
                "Once orders of this animal are wrapped and ready, each cut's made weight stands "
                "here beside what the table foretells. What was wrapped by count gives none."
            ),
        )

    def refresh(self) -> None:
        """Read reports and figures again."""
        species = self.species.value() or "beef"
        with self.bench.store.read() as work:
            reports = sorted(work.block.list(), key=_open_last)
            self._rules = work.block.rules()
            figures = work.yields.figures(species)
        self.reports.show_rows(reports, self.reports.chosen())
        self.used.set_value(self._rules.own_figures)
        self.figures.show_rows(list(figures.values()))
        for table, empty, there in (
            (self.reports, self.no_reports, bool(reports)),
            (self.figures, self.no_figures, bool(figures)),
        ):
            table.setVisible(there)
            empty.setVisible(not there)
        self.credit.setVisible(bool(reports))
        self.none.setVisible(bool(reports))
        self._moved(self.reports.chosen())

    def answer(self, how: "Answered") -> None:
        """A mistake of ours is credited, or isn't, with the reason."""
        found = self.reports.chosen()
        if found is None or not _waits(found):
            return
        title = self.tr("Credited") if how == "credited" else self.tr("No credit")
        text = (
            self.tr("Which credit, of which bill? Write the credit at the bill of order {number}.")
            if how == "credited"
            else self.tr("Why is there no credit for order {number}?")
        )
        number = found.order_number or self.tr("unknown")
        reason = self.bench.messages.ask_reason(title, text.format(number=number))
        if reason is None:
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            if work.block.answer(found.id, how, reason) is None:
                work.commit()
        self.said.emit(self.tr("Kept."))
        self.changed.emit()
        self.refresh()

    def _switch(self) -> None:
        used = self.used.value()
        if used is None or used == self._rules.own_figures:
            return
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            kept = work.block.save_rules(replace(self._rules, own_figures=used))
            if not isinstance(kept, StaleEdit):
                work.commit()
        self.changed.emit()
        self.refresh()

    def _moved(self, found: Finding | None) -> None:
        waits = found is not None and _waits(found)
        self.credit.setEnabled(waits)
        self.none.setEnabled(waits)

    def _report_columns(self) -> list[Column[Finding]]:
        return [
            Column("tag", lambda: self.tr("Tag"), lambda one: one.tag, width=90),
            Column("day", lambda: self.tr("Day"), self._day, width=170),
            Column("what", lambda: self.tr("What"), self._what, width=330, tip=self._what),
            Column("why", lambda: self.tr("Why"), lambda one: one.reason, stretch=True),
            Column("owner", lambda: self.tr("Owner"), lambda one: one.owner, width=170),
            Column("who", lambda: self.tr("Reported by"), lambda one: one.person, width=130),
            Column(
                "credit",
                lambda: self.tr("Credit"),
                self._credit,
                kind="state",
                mark=lambda one: Mark.TIGHT if _waits(one) else Mark.PLAIN,
                width=170,
                tip=lambda one: one.withdrawn,
            ),
        ]

    def _figure_columns(self) -> list[Column[OwnFigure]]:
        return [
            Column("cut", lambda: self.tr("Cut"), self._cut, stretch=True),
            Column(
                "carcasses",
                lambda: self.tr("Lots"),
                lambda one: str(one.carcasses),
                kind="figure",
                width=80,
            ),
            Column(
                "shop",
                lambda: self.tr("Made, % of the table"),
                lambda one: _percent(one.shop),
                kind="figure",
                width=190,
            ),
            Column(
                "factor",
                lambda: self.tr("Taken as, %"),
                lambda one: _percent(one.factor),
                kind="figure",
                width=160,
            ),
            Column(
                "differs",
                lambda: self.tr("By more than chance"),
                self._differs,
                kind="state",
                mark=lambda one: Mark.TIGHT if one.matters else Mark.PLAIN,
                width=190,
            ),
        ]

    def _day(self, one: Finding) -> str:
        return date_text(one.at.astimezone().date()) if one.at else ""

    def _what(self, one: Finding) -> str:
        words = self.bench.words
        if one.kind == "measured":
            name = place_name(one.what, one.species, words)
        else:
            family = "part" if one.kind == "lost" else "cut"
            name = words.name(one.species, f"{family}.{one.what}", 2)
        told = [name, self.tr("side {side}").format(side=one.side) if one.side else ""]
        if one.length is not None:
            told.append(length_text(one.length))
        if one.weight is not None:
            told.append(self.tr("{pounds} lost").format(pounds=weight_text(one.weight)))
        return capital(", ".join(part for part in told if part))

    def _credit(self, one: Finding) -> str:
        if one.withdrawn:
            return self.tr("report taken back")
        if _waits(one):
            return self.tr("ours: to credit")
        if one.credit == "credited":
            return self.tr("credited")
        return self.tr("no credit") if one.credit else ""

    def _cut(self, one: OwnFigure) -> str:
        species = self.species.value() or "beef"
        return capital(self.bench.words.name(species, f"cut.{one.code}", 2))

    def _differs(self, one: OwnFigure) -> str:
        return self.tr("yes, differs") if one.matters else self.tr("no")


def _waits(one: Finding) -> bool:
    return one.ours and one.credit is None and not one.withdrawn


def _open_last(one: Finding) -> tuple[bool, int]:
    """Mistakes of ours that wait come first, then the newest."""
    return (not _waits(one), -one.id)


def _percent(value: "Fraction") -> str:
    return f"{round(value * 1000) / 10:.1f}"
