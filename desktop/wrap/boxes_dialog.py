"""Boxes at the wrap: what lies loose is packed into a box, its label printed, and printed again."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import FormDialog, TextField
from desktop.look.patterns import Mark
from desktop.look.space import ROW_DENSE, TOGETHER, row
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from desktop.panels.scan_field import Order as ScanOrder
from desktop.panels.scan_field import ScanField
from desktop.tables import Column, RowsModel, Table, count_column, pounds_column
from shared.marking.box_label import BoxLabel, InBox
from shared.marking.serial import box_serial
from shared.marking.stock import STOCKS

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from desktop.bench import Bench
    from desktop.preview import Preview
    from desktop.wrap.wrapping import Wrapping
    from printing.words import Words as PaperWords
    from shared.shop.hand_overs import Boxed
    from shared.shop.packages import PackageMade
    from shared.shop.scanned import Scanned


@dataclass(frozen=True, slots=True)
class Heap:
    """Packages that lie together: of one product and loose, or all of one box.

    `stays` says of loose ones that they don't go into the box that is packed now.
    """

    name: str
    place: str
    packages: "tuple[PackageMade, ...]"
    stays: bool = False

    @property
    def nanograms(self) -> int:
        """Their net weight."""
        return sum(one.net.nanograms for one in self.packages)


class BoxesDialog(FormDialog):
    """Enter packs a box with all that lies loose; Space leaves a product out of it.

    Packages scanned go in alone: from the first one on nothing else does.
    """

    def __init__(self, bench: "Bench", wrapping: "Wrapping", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self.setMinimumWidth(760)
        self.bench = bench
        self.wrapping = wrapping
        self.preview: Preview | None = None
        self.box = TextField(self, required=True, most=8)
        self.place = TextField(self, most=40)
        self.scan = ScanField(self._scan_order, self.scanned, self)
        self._scanned: frozenset[int] = frozenset()  # goes in alone, from the first one on
        self.grid.add(self.box)
        self.grid.add(self.place)
        self.grid.add(self.scan)
        self.loose: Table[Heap] = Table(
            RowsModel(self._columns(loose=True)), self, height=ROW_DENSE, sortable=False
        )
        self.boxes: Table[Heap] = Table(
            RowsModel(self._columns(loose=False)), self, height=ROW_DENSE, sortable=False
        )
        self.stay, self.label = button(self), button(self)
        self.loose_heading = Words("small", "quiet", self)
        self.boxes_heading = Words("small", "quiet", self)
        self.told = Words("body", "quiet", self).wrapped()
        self.told.hide()
        self._arrange()
        self._read()
        self.retranslate()

    def _arrange(self) -> None:
        for part in (self.loose_heading, self.loose, self.boxes_heading, self.boxes):
            self.add_below(part)
        beside = row(gap=TOGETHER)
        for one, keys, slot, of in (
            (self.stay, "Space", self.toggle, self.loose),
            (self.label, "F9", self.show_label, self),
        ):
            one.setAutoDefault(False)
            one.clicked.connect(slot)
            shortcut = QShortcut(QKeySequence(keys), of)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)
            beside.addWidget(one)
        beside.addStretch(1)
        buttons = QWidget(self)
        buttons.setLayout(beside)
        self.add_below(buttons)
        self.add_below(self.told)
        for table in (self.loose, self.boxes):
            table.setMinimumSize(700, 130)

    def _read(self) -> None:
        with self.bench.store.read() as work:
            here = work.hand_overs.left(self.wrapping.order.id)
            every = work.packages.of_order(self.wrapping.order.id)
            places = work.hand_overs.places(self.wrapping.order.id)
        self._at_hand: ScanOrder = (self.wrapping.order.number, every, here, places)
        there = [one for one in every if one.id in here]
        self._loose = _by_product([one for one in there if not _box(one, places)])
        self._boxes = _by_box(there, places)
        self.loose.show_rows(self._loose)
        self.boxes.show_rows(self._boxes)
        numbers = [int(one.name) for one in self._boxes if one.name.isdecimal()]
        self.box.set_value(str(max(numbers, default=0) + 1))
        if self._boxes and self.place.is_empty():
            self.place.set_value(self._boxes[-1].place)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Boxes of order {number}").format(number=self.wrapping.order.number),
            self.tr("What lies loose goes into the box; its label is printed."),
            self.tr("&Pack the box"),
            self.tr("C&lose"),
        )
        self.box.set_label(self.tr("&Box"))
        self.place.set_label(self.tr("&Freezer or locker"))
        self.scan.set_label(self.tr("S&can what goes in"))
        self.loose_heading.setText(self.tr("Loose"))
        self.boxes_heading.setText(self.tr("In boxes"))
        self.loose.set_name(self.tr("Packages in no box"))
        self.boxes.set_name(self.tr("Boxes"))
        self.stay.setText(self.tr("&Stays out (Space)"))
        self.label.setText(self.tr("L&abel of the box (F9)"))

    def toggle(self) -> None:
        """The chosen product stays out of the box, or goes in after all."""
        chosen = self.loose.chosen()
        if chosen is None:
            return
        at = self._loose.index(chosen)
        self._loose[at] = replace(chosen, stays=not chosen.stays)
        self.loose.show_rows(self._loose, self._loose[at])
        self._mind_begun()

    def _scan_order(self) -> ScanOrder:
        return self._at_hand

    def scanned(self, found: "Scanned") -> None:
        """A package goes into the box; one that lies in another box is taken out of that."""
        self._scanned |= found.packages
        loose = {each.id for one in self._loose for each in one.packages}
        self.loose.show_rows(self._loose, self.loose.chosen())
        self._say(self._told(len(self._scanned), len(self._scanned - loose)))
        self._mind_begun()

    def _mind_begun(self) -> None:
        """What was scanned, or told to stay out, is lost by Esc while no box is packed of it."""
        self.scan.touched = not self.scan.is_empty()
        self.begun = bool(self._scanned) or any(one.stays for one in self._loose)

    def _told(self, count: int, moved: int) -> str:
        said = self.tr("Scanned: {count}. Only what is scanned goes into the box.")
        if moved:
            said = self.tr(
                "Scanned: {count}, {moved} of them out of another box. "
                "Only what is scanned goes into the box."
            )
        return said.format(count=count, moved=moved)

    def _going(self) -> list[int]:
        """The ids of the packages that go into the box."""
        if self._scanned:
            return sorted(self._scanned)
        return [each.id for one in self._loose if not one.stays for each in one.packages]

    def _goes(self, heap: Heap) -> str:
        """Whether a product goes in, and where some of it was scanned how many."""
        if not self._scanned:
            return self.tr("stays out") if heap.stays else self.tr("goes in")
        count = sum(one.id in self._scanned for one in heap.packages)
        if 0 < count < len(heap.packages):
            return self.tr("{count} of {all} in").format(count=count, all=len(heap.packages))
        return self.tr("goes in") if count else self.tr("stays out")

    def _open(self, heap: Heap) -> bool:
        """Whether all of a product stays out."""
        if not self._scanned:
            return heap.stays
        return not any(one.id in self._scanned for one in heap.packages)

    def try_it(self) -> None:
        """Pack the box, print its label, and stay for the next one."""
        self.refuse("")
        if not self.grid.show_problems():
            return
        said = self.attempt()
        if said:
            self.refuse(said)

    def attempt(self) -> str:
        name, place = (self.box.value() or "").strip().upper(), self.place.value() or ""
        packages = self._going()
        if not packages:
            return self.tr("Nothing goes in: no package lies loose.")
        if any(one.name == name and one.place != place.strip() for one in self._boxes):
            return self.tr("Box {box} stands elsewhere: give this one another name.").format(
                box=name
            )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            work.hand_overs.put(packages, name, place)
            work.commit()
        self._scanned = frozenset()
        self._read()
        self.mark_kept()
        packed = next(one for one in self._boxes if one.name == name)
        self._print(packed)
        return ""

    def show_label(self) -> None:
        """The label of the chosen box on the screen, to be printed again."""
        chosen = self.boxes.chosen()
        if chosen is None:
            self.refuse(self.tr("Choose a box first."))
            return
        label, words = self._label(chosen), self.bench.words
        title = self.tr("Box {box}").format(box=chosen.name)
        self.bench.work.run(_pdf, label, words, owner=self, then=lambda pdf: self._show(pdf, title))

    def _show(self, pdf: bytes, title: str) -> None:
        from desktop.preview import show_paper  # reads PDF pages: only when a label is wanted

        self.preview = show_paper(self.bench, pdf, title, "label", self)

    def _print(self, box: Heap) -> None:
        printers, words, label = self.bench.printers, self.bench.words, self._label(box)
        printer = printers.usual("label")
        if printer not in printers.names():
            said = self.tr("Box {box} is packed. No label printer is set; F9 shows its label.")
            self._say(said.format(box=box.name))
            return

        def send() -> object:
            return printers.send(_pdf(label, words), printer, 1)

        def sent(problem: object) -> None:
            said = self.tr("Box {box} is packed, its label printed.")
            if problem is not None:
                said = self.tr("Box {box} is packed, but no label was printed; F9 shows it.")
            self._say(said.format(box=box.name))

        self.bench.work.run(send, then=sent)

    def _say(self, sentence: str) -> None:
        self.told.setText(sentence)
        self.told.show()

    def _label(self, box: Heap) -> BoxLabel:
        order, shop = self.wrapping.order, self.wrapping.shop
        rows = [
            InBox(one.name, len(one.packages), one.nanograms) for one in _by_product(box.packages)
        ]
        try:
            serial = box_serial(order.number, box.name)
        except ValueError:  # a box that was given a name no code holds
            serial = ""
        owner = next((one.owner for one in box.packages), order.owner)
        custom = self.wrapping.lot.regime == "custom"
        stock = STOCKS.get(shop.stock, STOCKS["4x3"])
        return BoxLabel(
            order.number, owner, box.name, box.place, tuple(rows), custom, serial, stock, shop.dpi
        )

    def _columns(self, *, loose: bool) -> list[Column[Heap]]:
        first: list[Column[Heap]] = [
            Column(
                "name",
                (lambda: self.tr("Product")) if loose else (lambda: self.tr("Box")),
                lambda one: one.name,
                stretch=loose,
            )
        ]
        if loose:
            first.append(
                Column(
                    "goes",
                    lambda: self.tr("Now"),
                    self._goes,
                    "state",
                    mark=lambda one: Mark.OPEN if self._open(one) else Mark.SETTLED,
                    width=120,
                )
            )
        else:
            first.append(
                Column("place", lambda: self.tr("Place"), lambda one: one.place, stretch=True)
            )
        return [
            *first,
            count_column(
                "packages", lambda: self.tr("Packages"), lambda one: len(one.packages), width=90
            ),
            pounds_column(
                "pounds", lambda: self.tr("Pounds"), lambda one: one.nanograms, 100, places=2
            ),
        ]


def _pdf(label: BoxLabel, words: "PaperWords") -> bytes:
    from printing.box_label import box_label  # loads the print room: on the worker

    return box_label(label, words=words)


def _box(one: "PackageMade", places: "Mapping[int, Boxed]") -> str:
    return places[one.id].box if one.id in places else ""


def _by_product(packages: "Sequence[PackageMade]") -> list[Heap]:
    found: dict[str, list[PackageMade]] = {}
    for one in packages:
        found.setdefault(one.product, []).append(one)
    return [Heap(name, "", tuple(them)) for name, them in found.items()]


def _by_box(packages: "Sequence[PackageMade]", places: "Mapping[int, Boxed]") -> list[Heap]:
    found: dict[str, list[PackageMade]] = {}
    for one in packages:
        if _box(one, places):
            found.setdefault(_box(one, places), []).append(one)
    return [Heap(name, places[them[0].id].place, tuple(them)) for name, them in found.items()]
