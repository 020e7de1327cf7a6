"""Everything that is kept of a lot on one page, from any tag or number (Ctrl+T)."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QWidget

from desktop.bench import Target
from desktop.fields import ChoiceField, TextField
from desktop.fields.dates import date_text, moment_text
from desktop.look.space import EDGE, GROUP, ROW_DENSE, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.over import open_over
from desktop.tables import Column, RowsModel, Table
from printing.words.place_words import capital
from printing.words.trace_words import about, animal_name, told_with_reason
from shared.shop.trace import Trace, TraceEvent, TraceHit, events

if TYPE_CHECKING:
    from desktop.bench import Bench


class TraceDialog(QDialog):
    """Type or scan a tag, label, order, lot or bill; what happened is told first to last.

    Signals:
        go: an event's order, animal or lot was picked.
    """

    go = Signal(Target)

    def __init__(self, bench: "Bench", text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self.trace: Trace | None = None
        self.animal_id: int | None = None
        self._hits: tuple[TraceHit, ...] = ()
        open_over(self, 1080, 640)
        self._build()
        self._connect()
        self.retranslate()
        if text:
            self.sought.set_text(text)
            self.look()
        self.sought.focus()

    def _build(self) -> None:
        self.heading = Words("group", parent=self)
        self.sought = TextField(self)
        self.which: ChoiceField[int] = ChoiceField(self)
        self.facts = Words("body", parent=self).wrapped()
        self.table: Table[TraceEvent] = Table(
            RowsModel(self._columns()), self, height=ROW_DENSE, sortable=False
        )
        self.page = button(self)
        self.report = button(self)
        self.leave = button(self)
        asked = row(gap=GROUP)
        asked.addWidget(self.sought, 1)
        asked.addWidget(self.which, 2)
        feet = row(gap=TOGETHER)
        for one in (self.page, self.report):
            feet.addWidget(one)
        feet.addStretch(1)
        feet.addWidget(self.leave)
        whole = column(self, gap=GROUP, edge=EDGE)
        whole.addWidget(self.heading)
        whole.addLayout(asked)
        whole.addWidget(self.facts)
        whole.addWidget(self.table, 1)
        whole.addLayout(feet)
        for one in (self.page, self.report, self.leave):
            one.setAutoDefault(False)
        self._show_nothing()

    def _connect(self) -> None:
        self.sought.line.returnPressed.connect(self.look)
        self.which.changed.connect(self._chosen)
        self.table.picked.connect(self._picked)
        self.page.clicked.connect(self.print_page)
        self.report.clicked.connect(self.print_report)
        self.leave.clicked.connect(self.reject)
        QShortcut(QKeySequence("Ctrl+P"), self).activated.connect(self.print_page)

    def retranslate(self) -> None:
        """Set every word again."""
        self.setWindowTitle(self.tr("Trace"))
        self.heading.setText(self.tr("Trace"))
        self.sought.set_label(self.tr("&Tag, label, order, lot or bill"))
        self.which.set_label(self.tr("&Which one"))
        self.table.set_name(self.tr("What happened"))
        self.page.setText(self.tr("&Print this page"))
        self.report.setText(self.tr("Producer's &report"))
        self.leave.setText(self.tr("&Close"))
        self._tell()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.LanguageChange:
            self.retranslate()

    def look(self) -> None:
        """Find what was typed; the first hit is shown, the others can be chosen."""
        with self.bench.store.read() as work:
            self._hits = work.trace.find(self.sought.text())
        self.which.set_choices([(at, self._named(hit)) for at, hit in enumerate(self._hits)])
        self.which.setEnabled(len(self._hits) > 1)
        if self._hits:
            self.which.set_value(0)
            self._show(self._hits[0])
            self.table.setFocus(Qt.FocusReason.ShortcutFocusReason)
            return
        self._show_nothing()
        if self.sought.text().strip():
            self.sought.complain(self.tr("Nothing is kept of that. Type the whole number."))

    def print_page(self) -> None:
        """The page on paper."""
        if self.trace is None:
            return
        from printing.trace_page import trace_page

        trace, animal_id = self.trace, self.animal_id
        made, words = self.bench.now(), self.bench.words
        with self.bench.store.read() as work:
            shop = work.shop.details()
        title = words.say("trace.title", lot=trace.lot.number)

        def paper() -> bytes:
            return trace_page(trace, animal_id=animal_id, shop=shop, made=made, words=words)

        self.bench.work.run(paper, owner=self, then=lambda pdf: self._open(pdf, title))

    def print_report(self) -> None:
        """The producer's report of the lot."""
        if self.trace is None:
            return
        from printing.producer_report import producer_report

        trace, made, words = self.trace, self.bench.now(), self.bench.words
        with self.bench.store.read() as work:
            shop = work.shop.details()
        title = words.say("trace.report_title")

        def paper() -> bytes:
            return producer_report(trace, shop=shop, made=made, words=words)

        self.bench.work.run(paper, owner=self, then=lambda pdf: self._open(pdf, title))

    def _open(self, pdf: bytes, title: str) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a paper is wanted

        self.preview = show_paper(self.bench, pdf, title, "paper", self)

    def _chosen(self) -> None:
        at = self.which.value()
        if at is not None and at < len(self._hits):
            self._show(self._hits[at])

    def _show(self, hit: TraceHit) -> None:
        with self.bench.store.read() as work:
            self.trace = work.trace.of_lot(hit.lot_id)
        self.animal_id = hit.animal_id
        assert self.trace is not None
        self.table.show_rows(list(events(self.trace, hit.animal_id)))
        self._tell()

    def _show_nothing(self) -> None:
        self.trace, self.animal_id = None, None
        self.which.set_choices([])
        self.which.setEnabled(False)
        self.table.show_rows([])
        self._tell()

    def _tell(self) -> None:
        for one in (self.page, self.report):
            one.setEnabled(self.trace is not None)
        if self.trace is None:
            self.facts.setText(
                self.tr("From any tag or number to the booking, weights, cutting, packages, bills.")
            )
            return
        lot, words = self.trace.lot, self.bench.words
        tags = [animal_name(one, words) for one in lot.animals if self.animal_id in (None, one.id)]
        owners = [share.owner or self.tr("to be named") for share in lot.shares]
        self.facts.setText(
            self.tr("Lot {lot}, {animal}, {day}: {tags}. From {producer} for {owners}.").format(
                lot=lot.number,
                animal=words.name(lot.species, f"species.{lot.species}", lot.head),
                day=date_text(lot.day, words.language),
                tags=", ".join(tags),
                producer=lot.producer,
                owners=", ".join(owners),
            )
        )

    def _named(self, hit: TraceHit) -> str:
        kinds = {
            "tag": self.tr("Tag {text}, {owner}"),
            "label": self.tr("Label {text}, of {owner}"),
            "order": self.tr("Order {text}, of {owner}"),
            "lot": self.tr("Lot {text}, {owner}"),
            "bill": self.tr("Bill {text}, of {owner}"),
        }
        return kinds[hit.kind].format(text=hit.text, owner=hit.owner)

    def _picked(self, event: TraceEvent) -> None:
        assert self.trace is not None
        place = "rail" if event.subject == "animal" else "counter"
        self.accept()
        self.go.emit(Target(place, event.subject, event.subject_id, self.trace.lot.id))

    def _columns(self) -> list[Column[TraceEvent]]:
        return [
            Column(
                "at",
                lambda: self.tr("When"),
                lambda one: moment_text(one.at, self.bench.words.language),
                width=200,
            ),
            Column("about", lambda: self.tr("Of"), self._about, width=250),
            Column("what", lambda: self.tr("What"), self._what, stretch=True, tip=self._what),
            Column(
                "who",
                lambda: self.tr("Who"),
                lambda one: f"{one.person}, {one.station}" if one.station else one.person,
                width=180,
            ),
        ]

    def _about(self, one: TraceEvent) -> str:
        return about(one, self.trace, self.bench.words) if self.trace else ""

    def _what(self, one: TraceEvent) -> str:
        if self.trace is None:
            return ""
        return capital(told_with_reason(one, self.trace, self.bench.words))
