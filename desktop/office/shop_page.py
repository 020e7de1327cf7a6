"""The shop's own details as papers and labels take them, and its own fore share."""

from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FieldGrid, NoteField, TextField
from desktop.look.space import EDGE, GROUP, TOGETHER, column, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from shared.marking.stock import DPIS, STOCKS
from shared.reading import Unread, read_number
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.billing.storage import StorageDays
    from shared.shop.counted import Wrapped
    from shared.shop.details import PaperSize, ShopDetails


class ShopPage(QWidget):
    """The form of the shop.

    Signals:
        said: a sentence for the status line.
        changed: the details were kept.
    """

    said = Signal(str)
    changed = Signal()

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.bench = bench
        self._kept: ShopDetails | None = None
        self._build()
        self.save.clicked.connect(self.keep)
        self.marks.clicked.connect(self.show_marks)
        self.ringing.clicked.connect(self.show_ringing)
        shortcut = QShortcut(QKeySequence("Ctrl+S"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self.keep)
        self.retranslate()

    def _build(self) -> None:
        self.grid = FieldGrid(2, self)
        self.grid.setMaximumWidth(760)
        self.name = TextField(self, required=True)
        self.phone = TextField(self)
        self.address = NoteField(self, lines=3, required=True)
        self.email = TextField(self)
        self.paper: ChoiceField[PaperSize] = ChoiceField(self, required=True)
        self.stock: ChoiceField[str] = ChoiceField(self, required=True)
        self.dpi: ChoiceField[int] = ChoiceField(self, required=True)
        self.fore = TextField(self)
        self.wrapped: ChoiceField[Wrapped] = ChoiceField(self, required=True)
        self.storage: ChoiceField[StorageDays] = ChoiceField(self, required=True)
        for field in (self.name, self.phone):
            self.grid.add(field)
        self.grid.add(self.address, span=2)
        for field in (self.email, self.paper, self.stock, self.dpi, self.fore, self.wrapped):
            self.grid.add(field)
        self.grid.add(self.storage, span=2)
        self.by_count = Words("body", "tight", self).wrapped()
        self.by_count.setMaximumWidth(760)
        self.by_count.hide()
        self.wrapped.changed.connect(self._say_by_count)
        self.complaint = Words("body", "complaint", self).wrapped()
        self.complaint.hide()
        self.save = button(self, main=True)
        self.marks = button(self)
        self.ringing = button(self)
        feet = row(gap=TOGETHER)
        feet.addWidget(self.save)
        feet.addWidget(self.marks)
        feet.addWidget(self.ringing)
        feet.addStretch(1)
        down = column(self, gap=GROUP, edge=EDGE)
        down.addWidget(self.grid)
        down.addWidget(self.by_count)
        down.addWidget(self.complaint)
        down.addLayout(feet)
        down.addStretch(1)

    def retranslate(self) -> None:
        """Every word of the form."""
        self.name.set_label(self.tr("&Name of the shop"))
        self.phone.set_label(self.tr("&Phone"))
        self.address.set_label(self.tr("&Address"))
        self.email.set_label(self.tr("&Email"))
        self.paper.set_label(self.tr("Pape&r"))
        self.paper.set_choices([("letter", self.tr("letter")), ("a4", self.tr("A4"))])
        self.stock.set_label(self.tr("&Label stock, inches"))
        self.stock.set_choices([(code, self._stock_words(code)) for code in STOCKS])
        self.dpi.set_label(self.tr("Label printer, &dots to the inch"))
        self.dpi.set_choices([(one, str(one)) for one in DPIS])
        self.fore.set_label(self.tr("&Forequarter's part of a side, %"))
        self.fore.hint(self.tr("as the species' table has it"))
        self.wrapped.set_label(self.tr("Pa&ckages are"))
        self.wrapped.set_choices(
            [("weighed", self.tr("weighed and labeled")), ("counted", self.tr("by count only"))]
        )
        self.storage.set_label(self.tr("Days of &storage counted"))
        self.storage.set_choices(
            [
                ("every_day", self.tr("every day")),
                ("weekdays", self.tr("Monday to Friday, less the calendar's closed days")),
                ("six_days", self.tr("Monday to Saturday, less the calendar's closed days")),
            ]
        )
        self.by_count.setText(
            self.tr(
                "Custom-exempt packages are counted, without weight and label. Their paper must "
                "carry NOT FOR SALE itself, stamped or printed, in letters of at least 3/8 inch "
                "(9 CFR 316.16, 317.16). Inspected goods are weighed and labeled as before."
            )
        )
        self.save.setText(self.tr("&Keep (Ctrl+S)"))
        self.marks.setText(self.tr("&Marks of inspected goods…"))
        self.ringing.setText(self.tr("Ringin&g and freezing…"))

    def _say_by_count(self) -> None:
        self.by_count.setVisible(self.wrapped.value() == "counted")

    def _stock_words(self, code: str) -> str:
        if code == "sheet4x2":
            return self.tr("4 × 2 on a letter sheet, ten")
        return code.replace("x", " × ")

    def refresh(self) -> None:
        """Show what is kept."""
        with self.bench.store.read() as work:
            found = work.shop.details()
        self._kept = found
        self.name.set_value(found.name)
        self.phone.set_value(found.phone)
        self.address.set_value(found.address)
        self.email.set_value(found.email)
        self.paper.set_value(found.paper)
        self.stock.set_value(found.stock)
        self.dpi.set_value(found.dpi)
        self.wrapped.set_value(found.wrapped)
        self.storage.set_value(found.storage_days)
        self._say_by_count()
        fore = found.fore_share
        self.fore.set_value("" if fore is None else f"{float(fore * 100):g}")

    def keep(self) -> None:
        """Keep what is typed; complain at the field that can't be taken."""
        self._complain("")
        if self._kept is None or not self.grid.show_problems():
            return
        share = self._fore_share()
        if isinstance(share, Unread):
            self.fore.complain(self.tr("A part of a side lies between 0 and 100 %, as in 52."))
            self.fore.focus()
            return
        details = replace(
            self._kept,
            name=self.name.value() or "",
            phone=self.phone.value() or "",
            address=self.address.value() or "",
            email=self.email.value() or "",
            paper=self.paper.value() or self._kept.paper,
            stock=self.stock.value() or self._kept.stock,
            dpi=self.dpi.value() or self._kept.dpi,
            fore_share=share,
            wrapped=self.wrapped.value() or self._kept.wrapped,
            storage_days=self.storage.value() or self._kept.storage_days,
        )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.shop.save(details)
            if isinstance(found, StaleEdit):
                self._complain(
                    self.tr("{who} has changed this meanwhile; it is read again.").format(
                        who=found.by
                    )
                )
                return
            work.commit()
        self._kept = found
        self.said.emit(self.tr("The shop's details are kept."))
        self.changed.emit()

    def show_marks(self) -> None:
        """The plant's number, legend and product numbers."""
        from desktop.office.marks_dialog import MarksDialog

        self.dialog = MarksDialog(self.bench, self)
        self.dialog.accepted.connect(self._marks_kept)
        self.dialog.open()

    def _marks_kept(self) -> None:
        self.said.emit(self.tr("The marks are kept."))
        self.changed.emit()

    def show_ringing(self) -> None:
        """When cut sheets are due, and when a package is frozen."""
        from desktop.office.ringing_dialog import RingingDialog

        self.dialog = RingingDialog(self.bench, self)
        self.dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.dialog.accepted.connect(lambda: self.said.emit(self.tr("The rules are kept.")))
        self.dialog.accepted.connect(self.changed)
        self.dialog.open()

    def _fore_share(self) -> Fraction | Unread | None:
        typed = self.fore.text().strip().removesuffix("%").strip()
        if not typed:
            return None
        found = read_number(typed)
        if isinstance(found, Unread):
            return found
        share = found.value / 100
        return share if 0 < share < 1 else Unread("too_large", typed)

    def _complain(self, sentence: str) -> None:
        self.complaint.setText(sentence)
        self.complaint.setVisible(bool(sentence))
