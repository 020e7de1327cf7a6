"""A package, a whole stroke of them or a count made void: what is meant, and why."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from shared.shop.counted import CountedPackages
from shared.shop.packages import of_one_stroke

if TYPE_CHECKING:
    from desktop.bench import Bench
    from desktop.wrap.table_work import WrapTable
    from desktop.wrap.wrapping import Wrapping
    from shared.shop.packages import PackageMade


class Voiding(QObject):
    """Asks before something is made void; a QObject so that its words are translated."""

    def __init__(self, bench: "Bench", work: "WrapTable", parent: QObject) -> None:
        super().__init__(parent)
        self.bench = bench
        self.work = work

    def void(
        self, wrapping: "Wrapping | None", package: "PackageMade | CountedPackages | None"
    ) -> str | None:
        """Make it void: "" where it is, None where nobody said why, else why it can't be."""
        if package is None or wrapping is None:
            return self.tr("Choose a package first.")
        if package.void:
            return self.tr("That package is void already.")
        if isinstance(package, CountedPackages):
            asked = self.tr("A count of {count} packages is made void. Why?")
            reason = self._reason(asked.format(count=package.packages))
            return None if reason is None else self.work.void_count(wrapping, package, reason)
        together = of_one_stroke(package, wrapping.packages)
        if len(together) > 1 and not self._all_of(package, len(together)):
            together = (package,)
        asked = self.tr("Package {number} is made void. Why?").format(number=package.label_number)
        if len(together) > 1:
            asked = self.tr("{count} packages are made void. Why?").format(count=len(together))
        reason = self._reason(asked)
        return None if reason is None else self.work.void(wrapping, together, reason)

    def _reason(self, asked: str) -> str | None:
        return self.bench.messages.ask_reason(self.tr("Make void"), asked)

    def _all_of(self, package: "PackageMade", count: int) -> bool:
        """Whether a whole stroke is meant, or the one package of it."""
        asked = self.tr("Package {number} was wrapped in one stroke of {count}. Void all of them?")
        return self.bench.messages.ask(
            self.tr("Make void"),
            asked.format(number=package.label_number, count=count),
            self.tr("All {count}").format(count=count),
            self.tr("Only this one"),
        )
