"""What is done at the wrapping table: read an order, keep a package, print its label."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject, Signal

from desktop.preview import Preview, show_paper
from desktop.wrap.label_of import label_complaint, label_of
from desktop.wrap.labels_sent import LabelsSent
from desktop.wrap.on_their_way import print_again
from desktop.wrap.papers import counts_pdf, order_labels
from desktop.wrap.wrapping import (
    WrapLine,
    Wrapping,
    read_wrapping,
    with_counted,
    with_packages,
    with_weights,
)
from printing.words.choice_words import product_words
from shared.marking.label import PackageLabel
from shared.shop.counted import CountedPackages, NewCount
from shared.shop.orders import Order
from shared.shop.packages import WRAPPED_WHILE, NewPackage, PackageMade
from shared.shop.problems import MoveRefused, Refused, StaleEdit
from shared.units import weight_text

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from desktop.bench import Bench
    from shared.marking.problems import MarkingProblem
    from shared.shop.lists import OrderRow
    from shared.shop.states import OrderState
    from shared.units import Weight

WRAPPED_IN: "tuple[OrderState, ...]" = ("released", "cut", "ready")


@dataclass(frozen=True, slots=True)
class Wrapped:
    """An order as read, and what is to be said beside it: why a label was not printed."""

    wrapping: Wrapping
    complaint: str = ""


class WrapTable(QObject):
    """The store and the printers as the place Wrap needs them.

    Signals:
        read: an order was read or has changed; carries Wrapped.
        said: a sentence for the status line.
        no_label: why a label was not printed, to be said in place.
        labelled: an order's id and its packages, after a printer took labels or refused them.
    """

    read = Signal(object)
    no_label = Signal(str)
    labelled = Signal(int, object)
    said = Signal(str)

    def __init__(self, bench: "Bench", place: "QWidget") -> None:
        super().__init__(place)
        self.bench = bench
        self._place = place
        self.preview: Preview | None = None
        self.sending = LabelsSent(bench, self)
        self.way = self.sending.way
        self.sending.labelled.connect(self.labelled)

    def orders(self) -> "tuple[OrderRow, ...]":
        """Orders to wrap, those that are not closed."""
        with self.bench.store.read() as work:
            return work.orders.list(states=WRAPPED_IN, closed=False, sort="number")

    def words_of(self, row: "OrderRow") -> str:
        """An order in three words: number, owner, tags."""
        animal = self.bench.words.name(row.species, f"species.{row.species}")
        owner = row.owner or self.tr("to be named")  # within the f-string lupdate doesn't see it
        return f"{row.number} · {owner} · {animal} {row.tags}"

    def state_words(self, state: str) -> str:
        """How far the order is."""
        return {
            "released": self.tr("At the block"),
            "cut": self.tr("Cut, being wrapped"),
            "ready": self.tr("Ready to hand over"),
        }.get(state, "")

    def read_order(self, order_id: int) -> None:
        """Read an order on a worker; `read` carries it."""
        self.bench.work.run(
            read_wrapping,
            self.bench.store,
            order_id,
            self.bench.words,
            then=self._was_read,
            key="wrap.read",
        )

    def _was_read(self, found: Wrapping | None) -> None:
        if found is not None:
            self.read.emit(Wrapped(found))

    def product(self, wrapping: Wrapping, cut: str) -> str:
        """A cut's name on a label."""
        return product_words(self.bench.words, wrapping.lot.species, cut, ())

    def add(
        self,
        wrapping: Wrapping,
        line: WrapLine,
        weight: "Weight",
        tare: "Weight | None",
        pieces: int,
        reason: str = "",
        equal: int = 1,
    ) -> str:
        """Keep so many equal packages and print their labels; "" or why they were not kept."""
        new = NewPackage(
            wrapping.order.id,
            line.line,
            line.cut,
            line.product,
            weight,
            tare,
            pieces,
            reason,
            line.finishes,
        )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.packages.add_equal(new, equal)
            if isinstance(made, Refused):
                return self._refusal(made)
            packages = work.packages.of_order(wrapping.order.id)
            work.commit()
        after = with_packages(wrapping, packages, self.bench.words)
        label = label_of(made[0], after)
        if isinstance(label, PackageLabel):
            self._print(made, after)
            self.read.emit(Wrapped(after))
        else:
            said = self.tr("{packages} without label.").format(packages=self._named(made))
            self.read.emit(Wrapped(after, f"{said} {label_complaint(label)}"))
        return ""

    def count(self, wrapping: Wrapping, line: WrapLine, packages: int) -> str:
        """Keep packages of a line as counted; "" or why they were not kept."""
        new = NewCount(
            wrapping.order.id, line.line, line.cut, line.product, packages, line.finishes
        )
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.counted.add(new)
            if isinstance(made, Refused):
                return self._refusal(made)
            counted = work.counted.of_order(wrapping.order.id)
            work.commit()
        self.read.emit(Wrapped(with_counted(wrapping, counted, self.bench.words)))
        said = self.tr("Kept by count: {count}, {product}.")
        self.said.emit(said.format(count=packages, product=line.product))
        return ""

    def choose_way(self, wrapping: Wrapping, line: WrapLine, weighed: bool) -> str:
        """The line is weighed from now on, or counted again; "" or why it can't be kept."""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.counted_lines.choose(wrapping.order.id, line.line, weighed=weighed)
            if isinstance(found, Refused):
                return self._refusal(found)
            after = work.counted_lines.weighed(wrapping.order.id)
            work.commit()
        words = self.bench.words
        self.read.emit(Wrapped(with_weights(wrapping, wrapping.weights, after, words)))
        return ""

    def weigh_together(
        self, wrapping: Wrapping, line: WrapLine, net: "Weight", tare: "Weight | None"
    ) -> str:
        """Keep what the counted packages of a line weigh in all; "" or why it can't be kept."""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.counted_lines.weigh(wrapping.order.id, line.line, net, tare)
            if isinstance(found, Refused):
                return self._refusal(found)
            after = work.counted_lines.weights(wrapping.order.id)
            work.commit()
        words = self.bench.words
        self.read.emit(Wrapped(with_weights(wrapping, after, wrapping.weighed, words)))
        said = self.tr("{count} counted packages of {product} weigh {net} together.")
        self.said.emit(
            said.format(count=found.packages, product=line.product, net=weight_text(found.net))
        )
        return ""

    def void_count(self, wrapping: Wrapping, counted: CountedPackages, reason: str) -> str:
        """Make a count void; "" or why not."""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.counted.void(counted.id, reason)
            if isinstance(found, Refused):
                return self._refusal(found)
            after = work.counted.of_order(wrapping.order.id)
            work.commit()
        self.read.emit(Wrapped(with_counted(wrapping, after, self.bench.words)))
        self.said.emit(self.tr("Count of {count} void.").format(count=counted.packages))
        return ""

    def _named(self, packages: tuple[PackageMade, ...]) -> str:
        """Packages by their numbers: "Package 12", "Packages 12–91"."""
        first, last = packages[0].label_number, packages[-1].label_number
        if len(packages) == 1:
            return self.tr("Package {number}").format(number=first)
        return self.tr("Packages {first}–{last}").format(first=first, last=last)

    def void(self, wrapping: Wrapping, packages: tuple[PackageMade, ...], reason: str) -> str:
        """Make packages void together; "" or why not."""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.packages.void_equal([one.id for one in packages], reason)
            if isinstance(found, Refused):
                return self._refusal(found)
            after = work.packages.of_order(wrapping.order.id)
            work.commit()
        self.read.emit(Wrapped(with_packages(wrapping, after, self.bench.words)))
        self.said.emit(self.tr("{packages} void.").format(packages=self._named(packages)))
        return ""

    def move(self, order: Order, to: str, reason: str) -> str:
        """Move the order; "" or why it can't be moved."""
        if to == "ready" and order.state == "released":
            return self.tr("The block has not cut this order yet; it is marked cut there first.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            found = work.orders.move(
                order.id, cast("OrderState", to), reason=reason, version=order.version
            )
            if isinstance(found, StaleEdit):
                return self.tr("{who} has changed this order; it is read again.").format(
                    who=found.by
                )
            if isinstance(found, MoveRefused):
                return self.tr("That step needs a reason, or the order is not as far as that.")
            work.commit()
        if to == "ready":
            said = self.tr("Order {number} is ready to hand over.")
        else:
            said = self.tr("Order {number} is back at wrapping.")
        self.said.emit(said.format(number=order.number))
        return ""

    def show_labels(self, packages: tuple[PackageMade, ...], wrapping: Wrapping) -> str:
        """Show packages' labels on the screen; "" or why there are none."""
        label = label_of(packages[0], wrapping)
        if not isinstance(label, PackageLabel):
            return label_complaint(label)
        title = self.tr("Label {number}").format(number=packages[0].label_number)
        if len(packages) > 1:
            title = self.tr("Labels {first}–{last}").format(
                first=packages[0].label_number, last=packages[-1].label_number
            )
        self.bench.work.run(
            order_labels,
            packages,
            wrapping,
            self.bench.words,
            then=lambda pdf: self._show_label(pdf, title, packages),
        )
        return ""

    def _show_label(
        self,
        pdf: "bytes | tuple[MarkingProblem, ...]",
        title: str,
        packages: tuple[PackageMade, ...],
    ) -> None:
        if isinstance(pdf, bytes):
            printers = self.bench.printers
            self.preview = show_paper(
                self.bench,
                pdf,
                title,
                "label",
                self._place,
                lambda to, copies, then: self.sending.send(
                    packages, lambda: printers.send(pdf, to, copies), then
                ),
            )
        else:
            self.no_label.emit(label_complaint(pdf))

    def show_counts(self, wrapping: Wrapping) -> None:
        """Show the counts of the order as a paper."""
        title = self.tr("Package counts, order {number}").format(number=wrapping.order.number)
        self.bench.work.run(
            counts_pdf,
            wrapping,
            self.bench.now(),
            self.bench.words,
            then=lambda pdf: self._show_counts(pdf, title),
        )

    def _show_counts(self, pdf: bytes, title: str) -> None:
        self.preview = show_paper(self.bench, pdf, title, "paper", self._place)

    def missing(self, wrapping: Wrapping) -> tuple[PackageMade, ...]:
        """Packages whose label no printer took, nor is it on its way to one."""
        return self.sending.missing(wrapping.packages)

    def print_missing(self, wrapping: Wrapping) -> str:
        """Print labels that never were, or show them without a printer; "" or why some aren't."""
        missing = self.missing(wrapping)
        if not missing:
            return self.tr("No label is left to be printed.")
        doubted = self.way.doubtful(missing)
        if doubted and not print_again(self.bench.messages, doubted):
            self.sending.answered(doubted, taken=True)
            missing = tuple(one for one in missing if one not in doubted)
        self.way.end([one.id for one in doubted])
        made = {one: label_of(one, wrapping) for one in missing}
        ready = tuple(one for one, label in made.items() if isinstance(label, PackageLabel))
        wrong = [one for label in made.values() if isinstance(label, tuple) for one in label]
        printer = self.bench.printers.usual("label")
        if ready and printer:
            good = self.tr("{count} labels printed.").format(count=len(ready))
            bad = self.tr("{printer} printed no label; {count} packages are still without.")
            self._send(
                ready, wrapping, printer, good, bad.format(printer=printer, count=len(ready))
            )
        elif ready:
            self.show_labels(ready, wrapping)
        return label_complaint(wrong)

    def _print(self, packages: tuple[PackageMade, ...], wrapping: Wrapping) -> None:
        """Send labels to the usual label printer; without one, say how to see them."""
        printer, named = self.bench.printers.usual("label"), self._named(packages)
        if printer is None or printer not in self.bench.printers.names():
            said = self.tr("{packages} kept. No label printer is set; F9 shows the label.")
            self.said.emit(said.format(packages=named))
            return
        good = self.tr("{packages} kept, label printed.").format(packages=named)
        bad = self.tr("{packages} kept, but {printer} printed no label; Ctrl+F9 prints it.")
        self._send(packages, wrapping, printer, good, bad.format(packages=named, printer=printer))

    def _send(
        self,
        packages: tuple[PackageMade, ...],
        wrapping: Wrapping,
        printer: str,
        good: str,
        bad: str,
    ) -> None:
        """Send labels to a printer on a worker, and say what came of it."""
        words, printers = self.bench.words, self.bench.printers

        def send() -> object:
            pdf = order_labels(packages, wrapping, words)
            return printers.send(pdf, printer, 1) if isinstance(pdf, bytes) else pdf

        def told(problem: object) -> None:
            if isinstance(problem, tuple):
                self.no_label.emit(label_complaint(cast("tuple[MarkingProblem, ...]", problem)))
                return
            self.said.emit(good if problem is None else bad)

        self.sending.send(packages, send, told)

    def shut(self, wrapping: Wrapping | None, line: WrapLine | None) -> str:
        """Why nothing of a line is packed as its order stands; "" where it can be."""
        if wrapping is None or line is None or wrapping.order.state in WRAPPED_WHILE:
            return ""
        if wrapping.order.state == "ready" and line.line in wrapping.came_out:
            return ""
        return self._not_open(wrapping.order.state)

    def _refusal(self, refused: Refused) -> str:
        return {
            "not_positive": self.tr("A package weighs more than nothing."),
            "reason_missing": self.tr("Say why."),
            "too_many": self.tr("At most {most} packages in one stroke.").format(
                most=refused.data.get("most", "")
            ),
            "not_open": self._not_open(refused.data.get("state", "")),
            "not_on_order": self.tr("That line is no longer on the order; read it again."),
            "not_by_count": self.tr("This order is weighed: the shop or its regime asks for it."),
            "handed_over": self.tr("It was handed over already."),
            "none_counted": self.tr("Nothing of that line was wrapped by count."),
            "already_void": self.tr("That package is void already."),
        }.get(refused.code, self.tr("It can't be kept."))

    def _not_open(self, state: str) -> str:
        return {
            "ready": self.tr(
                "This order is ready: only what came out of a batch is packed on it. Take it back "
                "to wrapping for anything else."
            ),
            "handed_over": self.tr("This order was handed over; nothing more is put on it."),
        }.get(state, self.tr("The block does not have this order; nothing is wrapped for it."))
