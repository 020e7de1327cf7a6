"""Labels on their way to a printer: of those on it when the program ended nobody knows."""

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from desktop.journal import Journal
    from desktop.messages import Messages
    from shared.shop.packages import PackageMade

NAME = "labels on their way"  # in the station's journal: package ids and their label numbers
MOST_NAMED = 12


class OnTheirWay:
    """Which packages' labels were handed to a printer, kept until the printer has answered.

    `left` are those that were on their way when the program ended: the printer may have printed
    them and nobody was there to write it down.
    """

    def __init__(self, journal: "Journal") -> None:
        self._journal = journal
        found = journal.found(NAME) or {}
        self._numbers = {int(one): told for one, told in found.items() if one.isdecimal()}
        self.left = frozenset(self._numbers)

    def begin(self, packages: "Sequence[PackageMade]") -> None:
        """They go to a printer now; it is on the disk before the printer has them (`written`)."""
        self._numbers.update({one.id: str(one.label_number) for one in packages})
        self._note()

    def end(self, ids: Collection[int]) -> None:
        """The printer has answered, or somebody has looked: nothing is in doubt of these."""
        self.left -= frozenset(ids)
        if not self._numbers.keys().isdisjoint(ids):
            self._numbers = {one: told for one, told in self._numbers.items() if one not in ids}
            self._note()

    def written(self) -> None:
        """Wait until what began is on the disk; on a worker, a few milliseconds."""
        self._journal.wait_written()

    def doubtful(self, packages: "Sequence[PackageMade]") -> "tuple[PackageMade, ...]":
        """Those of these packages whose label may be printed though nothing says so."""
        return tuple(one for one in packages if one.id in self.left)

    def _note(self) -> None:
        if self._numbers:
            texts = {str(one): told for one, told in self._numbers.items()}
            self._journal.note(NAME, texts, at_once=True)
        else:
            self._journal.forget(NAME)


def doubt_words(packages: "Sequence[PackageMade]") -> str:
    """What is said where the order is opened; "" where nothing is in doubt."""
    if not packages:
        return ""
    said = QCoreApplication.translate(
        "OnTheirWay",
        "Steelyard ended while these labels went to the printer: {numbers}. They may be printed "
        "already. Look before you stick one or print it again (Ctrl+F9).",
    )
    return said.format(numbers=_numbers(packages))


def print_again(messages: "Messages", packages: "Sequence[PackageMade]") -> bool:
    """Ask who stands there: True to print them under the same numbers, False where they are."""
    translate = QCoreApplication.translate
    return messages.ask(
        translate("OnTheirWay", "Printed already?"),
        translate(
            "OnTheirWay",
            "Steelyard ended while labels {numbers} went to the printer, and can't know whether "
            "they came out. Look on the packages and at the printer: two labels of one number "
            "make one package count twice.",
        ).format(numbers=_numbers(packages)),
        translate("OnTheirWay", "Print them again"),
        translate("OnTheirWay", "They are there"),
    )


def _numbers(packages: "Sequence[PackageMade]") -> str:
    named = [str(one.label_number) for one in packages[:MOST_NAMED]]
    return ", ".join([*named, *(["…"] if len(packages) > MOST_NAMED else [])])
