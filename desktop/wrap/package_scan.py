"""A package scanned at the wrapping table: it is chosen, in its own order where that is another."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from desktop.panels.scan_field import Order, ScanField
from shared.marking.package_code import read_package

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.wrap.wrapping import Wrapping
    from shared.shop.packages import PackageMade
    from shared.shop.scanned import Scanned

NO_ORDER: Order = (0, (), (), {})


class PackageScan(QObject):
    """Reads codes at the wrap, as serials or GS1 labels, of packages and boxes.

    Signals:
        found: the package's id, of the order that lies on the table.
        elsewhere: order id and package id, of another order.
    """

    found = Signal(int)
    elsewhere = Signal(int, int)

    def __init__(self, bench: "Bench", parent: QWidget) -> None:
        super().__init__(parent)
        self.bench = bench
        self.wrapping: Wrapping | None = None
        self.field = ScanField(self._order, self._found, parent, self._elsewhere)

    def _order(self) -> Order:
        if self.wrapping is None:
            return NO_ORDER
        order, made = self.wrapping.order, self.wrapping.packages
        with self.bench.store.read() as work:
            places = work.hand_overs.places(order.id)
            here = work.hand_overs.left(order.id)
        return order.number, made, here, places

    def _found(self, found: "Scanned") -> None:
        self.found.emit(min(found.packages))

    def _elsewhere(self, text: str) -> bool:
        """Whether the code is of a package of another order; it is gone to then."""
        codes = read_package(text)
        if not isinstance(codes, tuple):
            return False
        with self.bench.store.read() as work:
            for code in codes:
                made: PackageMade | None = work.packages.by_label(code.package)
                order = work.orders.get(made.order_id) if made is not None else None
                if made is None or order is None or order.number != code.order or made.void:
                    continue
                if order.state in ("released", "cut", "ready"):
                    self.elsewhere.emit(order.id, made.id)
                    return True
        return False
