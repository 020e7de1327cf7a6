"""Where the code of a box or package is scanned; what it isn't is said below the field."""

from collections.abc import Callable, Collection, Iterable, Mapping

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from desktop.fields import TextField
from shared.marking.gs1 import FNC1
from shared.shop.hand_overs import Boxed
from shared.shop.packages import PackageMade
from shared.shop.scanned import Scanned, ScanRefused, scanned

MOST = 120
"""Letters of the longest element string a package's label carries, with brackets."""

Order = tuple[int, Iterable[PackageMade], Collection[int], Mapping[int, Boxed]]


class ScanField(TextField):
    """Enter, which scanners send, reads the code; empty, Enter is left to the dialog.

    `order` gives the order's number, its packages, the ids of those here, and their boxes;
    `found` takes what a code stands for; `elsewhere` is asked of a code of another order, and
    says whether it went there.
    """

    def __init__(
        self,
        order: Callable[[], Order],
        found: Callable[[Scanned], None],
        parent: QWidget | None = None,
        elsewhere: Callable[[str], bool] | None = None,
    ) -> None:
        super().__init__(parent, most=MOST)
        self._order = order
        self._found = found
        self._elsewhere = elsewhere
        self.line.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            watched is self.line
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
        ):
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not self.is_empty():
                self.read()
                return True
            if separates(event):
                self.line.insert(FNC1)
                return True
        return super().eventFilter(watched, event)

    def read(self) -> None:
        """Take the code that stands in the field; a wrong one is marked, to be scanned over."""
        result = scanned(self.text(), *self._order())
        if isinstance(result, Scanned):
            self.set_value(None)
            self._found(result)
            return
        if result.code == "other_order" and self._elsewhere and self._elsewhere(self.text()):
            self.set_value(None)
            return
        self.complain(self._why(result))
        self.line.selectAll()

    def _why(self, refused: ScanRefused) -> str:
        said = {
            "not_ours": self.tr("“{text}” is no code of a box or package."),
            "check_character": self.tr("“{text}” was misread; scan it again."),
            "other_order": self.tr("That is of order {order}, not of this one."),
            "no_box": self.tr("No package of this order lies in box {box}."),
            "box_fetched": self.tr("Box {box} was fetched already."),
            "no_package": self.tr("This order has no package {package}."),
            "package_void": self.tr("Package {package} is void."),
            "package_fetched": self.tr("Package {package} was fetched already."),
            "other_weight": self.tr(
                "The label says {label}, package {package} weighs {kept}: is it this shop's label?"
            ),
        }
        return said[refused.code].format(**refused.data)


def separates(event: QKeyEvent) -> bool:
    """Whether a scanner typed the FNC1 of a GS1 code: the character 29, or Ctrl and ]."""
    control = event.modifiers() == Qt.KeyboardModifier.ControlModifier
    return event.text() == FNC1 or (control and event.key() == Qt.Key.Key_BracketRight)
