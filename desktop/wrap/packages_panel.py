"""The packages of the order at the side: their labels again, void ones, counts, ready."""

from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop.look.patterns import Mark
from desktop.look.space import TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.scan_field import ScanField
from desktop.panels.side import SidePanel
from desktop.tables import Column, Figure, RowsModel, Table, figure
from shared.shop.counted import CountedPackages
from shared.shop.packages import PackageMade
from shared.units import weight_text

ROW_TWO_LINES = 40  # a product's name in two lines of the body's letters


class PackagesPanel(SidePanel):
    """Newest package first, or the one scanned. The place connects the buttons."""

    def __init__(self, scan: ScanField, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.heading = self.add_heading()
        self.scan = scan
        self.add(self.scan)
        self.total = Words("body", "quiet", self).wrapped()
        self.add(self.total)
        self.table: Table[PackageMade | CountedPackages] = Table(
            RowsModel(self._columns()), self, height=ROW_TWO_LINES, sortable=False
        )
        self.add(self.table, stretch=20)
        self.missing = button(self)
        self.missing.hide()
        self.add(self.missing)
        self._missing: frozenset[int] = frozenset()
        self.label = button(self)
        self.stroke = button(self)
        self.void = button(self)
        self.add(_side_by_side(self.label, self.void))
        self.boxes = button(self)
        self.add(_side_by_side(self.stroke, self.boxes))
        self.said = Words("body", "tight", self).wrapped()
        self.said.hide()
        self.add(self.said)
        self.odd = button(self)
        self.counts = button(self)
        self.add(_side_by_side(self.odd, self.counts), gap=TOGETHER)
        self.ready = button(self)
        self.back = button(self, quiet=True)
        self.add(_side_by_side(self.ready, self.back))
        self.batches = button(self)
        self.add(self.batches)

    def retranslate(self) -> None:
        """Every word of the panel."""
        self.heading.setText(self.tr("Packages"))
        self.scan.set_label(self.tr("Scan a package (Ctrl+E)"))
        self.table.set_name(self.tr("Packages"))
        self.label.setText(self.tr("Show &label (F9)"))
        self._say_missing()
        self.stroke.setText(self.tr("W&hole stroke (Shift+F9)"))
        self.boxes.setText(self.tr("Bo&xes… (F11)"))
        self.void.setText(self.tr("Make &void…"))
        self.odd.setText(self.tr("&Odd package… (F8)"))
        self.counts.setText(self.tr("&Counts (Ctrl+P)"))
        self.ready.setText(self.tr("&Ready (Ctrl+Enter)"))
        self.back.setText(self.tr("&Back to wrapping…"))
        self.batches.setText(self.tr("Cure, smoke and sausage… (Ctrl+B)"))

    def show_packages(
        self,
        packages: tuple[PackageMade, ...],
        counted: tuple[CountedPackages, ...] = (),
        missing: tuple[PackageMade, ...] = (),
    ) -> None:
        """Show them, newest first, weighed ones and counts; `missing` have no label yet."""
        both: list[PackageMade | CountedPackages] = [*counted, *packages]
        both.sort(key=lambda one: one.made_at)
        self._missing = frozenset(one.id for one in missing)
        self._say_missing()
        self.table.show_rows(both[::-1])

    def show_missing(self, missing: tuple[PackageMade, ...]) -> None:
        """Mark those that have no label now, and offer to print them; the chosen row stays."""
        found = frozenset(one.id for one in missing)
        if found != self._missing:
            self._missing = found
            self._say_missing()
            self.table.show_rows(list(self.table.rows.rows()), self.table.chosen())

    def _say_missing(self) -> None:
        said = self.tr("Pr&int labels not yet printed: {count} (Ctrl+F9)")
        self.missing.setText(said.format(count=len(self._missing)))
        self.missing.setVisible(bool(self._missing))

    def _bare(self, one: PackageMade | CountedPackages) -> bool:
        return isinstance(one, PackageMade) and one.id in self._missing

    def choose(self, package_id: int) -> None:
        """The row of a weighed package, to show its label or make it void."""
        for at, one in enumerate(self.table.rows.rows()):
            if isinstance(one, PackageMade) and one.id == package_id:
                self.table.choose(at)
                return

    def say(self, sentence: str) -> None:
        """Say in place why there is no label, or why the order isn't ready."""
        self.said.setText(sentence)
        self.said.setVisible(bool(sentence))

    def _product(self, one: PackageMade | CountedPackages) -> str:
        """What it holds, in two lines where it is long; first that it is void or has no label."""
        if one.void:
            return self.tr("void: {product}").format(product=one.product)
        bare = self.tr("no label yet: {product}")
        return bare.format(product=one.product) if self._bare(one) else one.product

    def _mark(self, one: PackageMade | CountedPackages) -> Mark:
        if one.void:
            return Mark.CONTESTED
        return Mark.TIGHT if self._bare(one) else Mark.SETTLED

    def _net(self, one: PackageMade | CountedPackages) -> str | Figure:
        """What it weighs; of a count how many there are."""
        if isinstance(one, PackageMade):
            return figure(weight_text(one.net))
        return f"\N{MULTIPLICATION SIGN} {one.packages}"

    def _columns(self) -> list[Column[PackageMade | CountedPackages]]:
        return [
            Column(
                "number",
                lambda: self.tr("No."),
                _number,
                kind="figure",
                width=56,
            ),
            Column(
                "product",
                lambda: self.tr("Product"),
                self._product,
                "state",
                mark=self._mark,
                stretch=True,
                tip=_reason,
            ),
            Column(
                "net",
                lambda: self.tr("Net"),
                self._net,
                kind="figure",
                width=88,
            ),
        ]


def _number(one: PackageMade | CountedPackages) -> Figure:
    return Figure(str(one.label_number) if isinstance(one, PackageMade) else "–")


def _reason(one: PackageMade | CountedPackages) -> str:
    """The whole of its name, why an odd one is there, and why a void one is void."""
    reason = one.reason if isinstance(one, PackageMade) else ""
    return "\n".join(part for part in (one.product, reason, one.void) if part)


def _side_by_side(first: QWidget, second: QWidget) -> QHBoxLayout:
    across = row(gap=TOGETHER)
    across.addWidget(first)
    across.addWidget(second)
    across.addStretch(1)
    return across
