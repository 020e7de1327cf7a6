"""Wrap, the place: weigh each package, print its label, count made beside planned."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedLayout, QWidget

from desktop.fields import ChoiceField
from desktop.look.space import EDGE, GROUP, column, row
from desktop.panels.empty import EmptyState
from desktop.panels.heading import Words
from desktop.places import Place
from desktop.tables import RowsModel, Table
from desktop.wrap.left_bare import why_ready, without_labels
from desktop.wrap.line_columns import LineColumns
from desktop.wrap.odd_package import OddPackage
from desktop.wrap.on_their_way import doubt_words
from desktop.wrap.package_entry import PackageEntry
from desktop.wrap.package_scan import PackageScan
from desktop.wrap.packages_panel import ROW_TWO_LINES, PackagesPanel
from desktop.wrap.table_work import Wrapped, WrapTable
from desktop.wrap.voiding import Voiding
from desktop.wrap.wrapping import WrapLine, with_packages
from shared.shop.counted import CountedPackages
from shared.shop.orders import Order
from shared.shop.packages import PackageMade, of_one_stroke
from shared.units import Weight, pounds_text

if TYPE_CHECKING:
    from desktop.bench import Bench, Target
    from desktop.wrap.wrapping import Wrapping


class WrapPlace(Place):
    """Weigh each package, print its label, count what is made beside what was planned."""

    key = "wrap"

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(bench, parent)
        self.work = WrapTable(bench, self)
        self.voiding = Voiding(bench, self.work, self)
        self.wrapping: Wrapping | None = None
        self._wanted = 0  # a package scanned of an order that is still read
        self._build()
        self._connect()
        self.retranslate()

    def title(self) -> str:
        return self.tr("Wrap")

    def first_focus(self) -> QWidget:
        return self.orders.line if self.wrapping is None else self.lines

    def _build(self) -> None:
        self._empty = EmptyState(self)
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self._empty)
        whole = QWidget(self)
        across = row(whole, gap=0)
        main = QWidget(whole)
        down = column(main, gap=GROUP, edge=EDGE)
        self.orders: ChoiceField[int] = ChoiceField(main, required=True)
        self.total = Words("body", "quiet", main)
        top = row(gap=GROUP)
        top.addWidget(self.orders, 1)
        top.addWidget(self.total, 0, Qt.AlignmentFlag.AlignVCenter)
        down.addLayout(top)
        self._columns = LineColumns(self.bench, self)
        self.lines: Table[WrapLine] = Table(
            RowsModel(self._columns.columns()), main, height=ROW_TWO_LINES, sortable=False
        )
        down.addWidget(self.lines, 1)
        self.entry = PackageEntry(self.bench, main)
        self.strip = self.entry.strip
        down.addWidget(self.entry)
        self.scan = PackageScan(self.bench, whole)
        self.side = PackagesPanel(self.scan.field, whole)
        across.addWidget(main, 1)
        across.addWidget(self.side)
        self._stack.addWidget(whole)

    def _connect(self) -> None:
        self.orders.changed.connect(self._order_chosen)
        self.orders.line.returnPressed.connect(self.lines.setFocus)
        self.lines.moved.connect(self._line_moved)
        self.lines.picked.connect(lambda _row: self.entry.focus())
        self.strip.weighed.connect(self._weighed)
        self.entry.count.counted.connect(self._counted)
        self.entry.chosen.connect(self._way_chosen)
        self.entry.all.clicked.connect(self.weigh_together)
        self.entry.stepped.connect(self._step)
        self.entry.left.connect(self.lines.setFocus)
        self.work.read.connect(self._show)
        self.work.said.connect(self.said)
        self.work.no_label.connect(self.side.say)
        self.work.labelled.connect(self._labelled)
        self.scan.found.connect(self.side.choose)
        self.scan.elsewhere.connect(self._scanned_elsewhere)
        self._connect_buttons()

    def _connect_buttons(self) -> None:
        side = self.side
        for button, slot in (
            (side.label, self.show_label),
            (side.stroke, self.show_stroke),
            (side.missing, self.print_missing),
            (side.void, self.void_package),
            (side.odd, self.odd_package),
            (side.counts, self.show_counts),
            (side.ready, self.mark_ready),
            (side.back, self.take_back),
            (side.boxes, self.show_boxes),
            (side.batches, self.show_batches),
        ):
            button.clicked.connect(slot)
        for keys, slot in (
            ("F9", self.show_label),
            ("Shift+F9", self.show_stroke),
            ("Ctrl+F9", self.print_missing),
            ("F8", self.odd_package),
            ("F7", self.orders.focus),
            ("Ctrl+P", self.show_counts),
            ("Ctrl+Return", self.mark_ready),
            ("F11", self.show_boxes),
            ("Ctrl+E", lambda: self.scan.field.line.setFocus(Qt.FocusReason.ShortcutFocusReason)),
            ("F12", self.entry.change_way),
            ("Shift+F12", self.weigh_together),
            ("Ctrl+B", self.show_batches),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def _scanned_elsewhere(self, order_id: int, package_id: int) -> None:
        """Its order lies on the table now; the package is chosen once that is read."""
        self._wanted = package_id
        self.orders.set_value(order_id)
        self._order_chosen()

    def _step(self, by: int) -> None:
        """The keyboard stays in the weight or count, and another line is wrapped."""
        self.lines.choose(max(self.lines.currentIndex().row() + by, 0))
        self.entry.focus()

    def show_boxes(self) -> None:
        """Close a box with what lies loose; labels of boxes again."""
        if self.wrapping is None:
            return
        from desktop.wrap.boxes_dialog import BoxesDialog

        self.boxes = BoxesDialog(self.bench, self.wrapping, self)
        self.boxes.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.boxes.open()

    def show_batches(self) -> None:
        """Cure, smoke and sausage."""
        from desktop.wrap.batches_dialog import BatchesDialog

        self.batches = BatchesDialog(self.bench, self)
        self.batches.finished.connect(self.refresh)  # what came out can be packed
        self.batches.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.batches.open()

    def retranslate(self) -> None:
        self._empty.set_words(
            self.tr("Nothing to wrap"),
            self.tr(
                "An order comes here once its block sheet is released. Each package is weighed "
                "and labeled here, and counted beside what was planned."
            ),
        )
        self.orders.set_label(self.tr("Order (F&7)"))
        self.orders.hint(self.tr("Type a number or an owner"))
        self.lines.set_name(self.tr("Lines of the order"))
        self.entry.retranslate()
        self.side.retranslate()
        self._say_total()
        if self.wrapping is not None:  # products and animals are in the language they were read in
            self.refresh()

    def refresh(self) -> None:
        found = self.work.orders()
        before = self.orders.value()
        self.orders.set_choices([(one.id, self.work.words_of(one)) for one in found])
        self._stack.setCurrentIndex(1 if found else 0)
        ids = [one.id for one in found]
        if before not in ids:
            self.orders.set_value(ids[0] if ids else None)
        self._order_chosen()

    def open(self, what: "Target") -> None:
        if what.kind == "order":
            self.orders.set_value(what.id)
            self._order_chosen()

    def _order_chosen(self) -> None:
        order_id = self.orders.value()
        if order_id is not None:
            self.work.read_order(order_id)

    def _show(self, found: Wrapped) -> None:
        """An order was read, or a package of it changed."""
        same = self.wrapping is not None and self.wrapping.order.id == found.wrapping.order.id
        line = self.lines.chosen()
        self.wrapping = self.scan.wrapping = found.wrapping
        self.lines.show_rows(list(found.wrapping.lines))
        if same and line is not None:
            at = [(one.line, one.product) for one in self.lines.rows.rows()]
            if (line.line, line.product) in at:
                self.lines.choose(at.index((line.line, line.product)))
        elif not same:
            self.lines.choose(0)  # not as far down as one was in the order before
        missing = self.work.missing(found.wrapping)
        self.side.show_packages(found.wrapping.packages, found.wrapping.counted, missing)
        self.side.choose(self._wanted)
        self._wanted = 0
        self.side.say(found.complaint or doubt_words(self.work.way.doubtful(missing)))
        self._line_moved(self.lines.chosen())
        self._say_total()
        order = found.wrapping.order
        open_here = order.state in ("released", "cut")
        self.side.odd.setEnabled(open_here)
        self.side.ready.setEnabled(open_here)
        self.side.back.setEnabled(order.state == "ready")

    def _say_total(self) -> None:
        if self.wrapping is None:
            self.side.total.setText("")
            self.total.setText("")
            return
        low, high = self.wrapping.planned_packages
        planned = str(low) if low == high else f"{low}\u2013{high}"
        counted = self.wrapping.made_by_count
        said = self.tr("{made} made, {pounds}; {planned} planned")
        if counted:
            said = self.tr("{made} made, {counted} of them by count, {pounds}; {planned} planned")
        self.side.total.setText(
            said.format(
                made=self.wrapping.made_packages,
                counted=counted,
                pounds=pounds_text(self.wrapping.made_ng, 2),
                planned=planned,
            )
        )
        self.total.setText(self.work.state_words(self.wrapping.order.state))

    def _labelled(self, order_id: int, packages: tuple[PackageMade, ...]) -> None:
        """A printer took labels, or refused them: which are missing."""
        if self.wrapping is not None and self.wrapping.order.id == order_id:
            self.wrapping = with_packages(self.wrapping, packages, self.bench.words)
            self.scan.wrapping = self.wrapping
            self.side.show_missing(self.work.missing(self.wrapping))

    def print_missing(self) -> None:
        """Print the labels of packages that have none yet."""
        if self.wrapping is not None:
            self.side.say(self.work.print_missing(self.wrapping))
            self.side.show_missing(self.work.missing(self.wrapping))

    def _line_moved(self, line: WrapLine | None) -> None:
        self.entry.show_line(self.wrapping, line)
        self.entry.set_open(self.work.shut(self.wrapping, line))

    def _way_chosen(self, line: WrapLine, weighed: bool) -> None:
        if self.wrapping is not None:
            self.entry.complain(self.work.choose_way(self.wrapping, line, weighed))

    def weigh_together(self) -> None:
        """All counted packages of the line are on the scale: their weight, for the bill."""
        line = self.lines.chosen()
        if self.wrapping is None or line is None or not line.counted:
            return
        from desktop.wrap.together_dialog import TogetherDialog

        self.together = TogetherDialog(line, self._keep_together, self)
        self.together.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.together.open()

    def _keep_together(self, line: WrapLine, weight: Weight, tare: Weight | None) -> str:
        if self.wrapping is None:
            return self.tr("Choose an order first.")
        said = self.work.weigh_together(self.wrapping, line, weight, tare)
        if not said:
            self.changed.emit()
        return said

    def _counted(self, packages: int) -> None:
        line = self.lines.chosen()
        if line is None or self.wrapping is None:
            return
        said = self.work.count(self.wrapping, line, packages)
        if said:
            self.entry.count.complain(said)
            return
        self.entry.counted()
        self.changed.emit()

    def _weighed(self, weight: Weight, tare: Weight | None, pieces: int, equal: int) -> None:
        line = self.lines.chosen()
        if line is None or self.wrapping is None:
            self.strip.complain(self.tr("Choose a line of the order first."))
            return
        if line.line == 0:
            self.strip.complain(self.tr("An odd package needs its reason: F8."))
            return
        said = self.work.add(self.wrapping, line, weight, tare, pieces, equal=equal)
        if said:
            self.strip.complain(said)
            return
        self.strip.clear()
        self.strip.weight.focus()
        self.entry.weighed(weight)
        self.changed.emit()

    def odd_package(self) -> None:
        """Ask for a package that is on no line."""
        if self.wrapping is None or not self.side.odd.isEnabled():
            return
        species = self.wrapping.lot.species
        self.dialog = OddPackage(self.bench.words, species, self._keep_odd, self)
        self.dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.dialog.open()

    def _keep_odd(
        self, cut: str, weight: Weight, tare: Weight | None, pieces: int, reason: str
    ) -> str:
        if self.wrapping is None:
            return self.tr("Choose an order first.")
        product = self.work.product(self.wrapping, cut)
        line = WrapLine(0, cut, product, (), None, None)
        said = self.work.add(self.wrapping, line, weight, tare, pieces, reason)
        if not said:
            self.changed.emit()
        return said

    def show_label(self) -> None:
        """Show the label of the chosen package, to print it again."""
        self._show_labels(whole_stroke=False)

    def show_stroke(self) -> None:
        """Show the labels of all packages that were wrapped with the chosen one in one stroke."""
        self._show_labels(whole_stroke=True)

    def _show_labels(self, *, whole_stroke: bool) -> None:
        package = self.side.table.chosen()
        if package is None or self.wrapping is None:
            self.side.say(self.tr("Choose a package first."))
        elif isinstance(package, CountedPackages):
            self.side.say(self.tr("Wrapped by count: there is no label."))
        elif package.void:
            self.side.say(self.tr("A void package has no label."))
        else:
            all_of_it = of_one_stroke(package, self.wrapping.packages)
            shown = all_of_it if whole_stroke else (package,)
            self.side.say(self.work.show_labels(shown, self.wrapping))

    def void_package(self) -> None:
        """Make the chosen package void, with a reason."""
        said = self.voiding.void(self.wrapping, self.side.table.chosen())
        if said is not None:
            self.side.say(said)
            if not said:
                self.changed.emit()

    def show_counts(self) -> None:
        """Show the paper of counts."""
        if self.wrapping is not None:
            self.work.show_counts(self.wrapping)

    def mark_ready(self) -> None:
        """All is wrapped: the order is ready to hand over."""
        if self.wrapping is not None and self.side.ready.isEnabled():
            said = without_labels(self.wrapping, len(self.work.missing(self.wrapping)))
            why = why_ready(self.wrapping, self.bench.messages)
            if why is not None and self._moved(self.wrapping.order, "ready", why) and said:
                self.said.emit(said)

    def take_back(self) -> None:
        """A ready order comes back to be wrapped, with a reason."""
        if self.wrapping is None or self.wrapping.order.state != "ready":
            return
        reason = self.bench.messages.ask_reason(
            self.tr("Back to wrapping"), self.tr("The order is wrapped again. Why?")
        )
        if reason is not None:
            self._moved(self.wrapping.order, "cut", reason)

    def _moved(self, order: Order, to: str, reason: str) -> bool:
        said = self.work.move(order, to, reason)
        self.side.say(said)
        if not said:
            self.changed.emit()
            self.refresh()
        return not said
