"""Labels handed to a printer: noted before it has them, and what it answered kept."""

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from desktop.wrap.on_their_way import OnTheirWay
from shared.shop.packages import without_label

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from desktop.bench import Bench
    from shared.shop.packages import PackageMade


class LabelsSent(QObject):
    """Sends packages' labels, from Wrap itself or from the preview, and keeps which came out.

    Signals:
        labelled: an order's id and its packages, after a printer took labels or refused them.
    """

    labelled = Signal(int, object)

    def __init__(self, bench: "Bench", parent: QObject) -> None:
        super().__init__(parent)
        self._bench = bench
        self._under_way: set[int] = set()  # packages whose label is on its way to the printer
        self.way = OnTheirWay(bench.journal)

    def missing(self, packages: "Sequence[PackageMade]") -> "tuple[PackageMade, ...]":
        """Packages whose label no printer took, nor is it on its way to one."""
        found = without_label(packages)
        return tuple(one for one in found if one.id not in self._under_way)

    def send(
        self,
        packages: "tuple[PackageMade, ...]",
        hand_over: "Callable[[], object]",
        told: "Callable[[Any], object]",
    ) -> None:
        """Call `hand_over` on a worker, once it is on the disk whose labels are on their way.

        What it answers, None where the printer took them, is kept and given to `told`. A label
        that came out before is on record already: printed again, it is in no doubt.
        """
        way = self.way
        self._under_way.update(one.id for one in packages)
        way.begin(without_label(packages))

        def noted() -> object:
            way.written()
            return hand_over()

        def answered(problem: object) -> None:
            self.answered(packages, taken=problem is None)
            told(problem)

        self._bench.work.run(noted, then=answered)

    def answered(self, packages: "tuple[PackageMade, ...]", *, taken: bool) -> None:
        """A printer took these labels, or did not: it is kept, and the order's packages told."""
        ids, order_id = [one.id for one in packages], packages[0].order_id
        self._under_way.difference_update(ids)
        self.way.end(ids)
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            if taken:
                work.packages.labelled(ids)
            after = work.packages.of_order(order_id)
            work.commit()
        self.labelled.emit(order_id, after)
