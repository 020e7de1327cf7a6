"""What an order that is made ready still lacks, in words: lines without a package, labels."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from desktop.wrap.wrapping import Wrapping


def left_bare(wrapping: "Wrapping", without_label: int) -> str:
    """Lines nothing was packed of, and how many packages have no label; "" where all is there."""
    translate = QCoreApplication.translate
    said: list[str] = []
    bare = [one.product for one in wrapping.lines if not one.packages]
    if bare:
        words = translate("Wrap", "Order {number} is ready; nothing was packed of: {lines}.")
        said.append(words.format(number=wrapping.order.number, lines="; ".join(bare)))
    if without_label:
        words = translate("Wrap", "Packages of order {number} without a label yet: {count}.")
        said.append(words.format(number=wrapping.order.number, count=without_label))
    return " ".join(said)
