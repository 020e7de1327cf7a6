"""What an order that is made ready still lacks, in words: packages, lines of them, labels."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from desktop.messages import Messages
    from desktop.wrap.wrapping import Wrapping

MOST_NAMED = 8


def why_ready(wrapping: "Wrapping", messages: "Messages") -> str | None:
    """Why it is ready with packages still to be made: "" where none are, None where it isn't."""
    asked = lacking(wrapping)
    if not asked or wrapping.order.state == "released":  # not cut: it is refused as it is
        return ""
    translate = QCoreApplication.translate
    asked += "\n" + translate("Wrap", "Is it ready all the same? Why?")
    return messages.ask_reason(translate("Wrap", "Not all is packed"), asked)


def lacking(wrapping: "Wrapping") -> str:
    """How many packages are made of how many planned, and lines with none; "" where all is made.

    Asked about are lines of which nothing was packed, and fewer than nine tenths of the least
    number planned: 10 of 110 to 118 are, 100 are not. Common practice, no source.
    """
    lines = [one for one in wrapping.lines if one.line not in wrapping.in_cure]
    low, high = wrapping.planned_packages
    if len(lines) < len(wrapping.lines):  # what is in cure is packed when it comes out
        planned = [one.planned for one in lines if one.planned is not None]
        low, high = sum([one.low for one in planned]), sum([one.high for one in planned])
    made = sum([one.packages for one in lines])
    bare = [one.product for one in lines if not one.packages]
    if not bare and made * 10 >= low * 9:
        return ""
    translate = QCoreApplication.translate
    said = translate("Wrap", "Order {number}: packages made {made}, planned {planned}.").format(
        number=wrapping.order.number,
        made=made,
        planned=str(low) if low == high else f"{low}\u2013{high}",
    )
    if bare:
        named = bare[:MOST_NAMED]
        if len(bare) > MOST_NAMED:
            more = translate("Wrap", "and {count} more")
            named.append(more.format(count=len(bare) - MOST_NAMED))
        words = translate("Wrap", "Nothing was packed of: {lines}.")
        said += "\n" + words.format(lines=";\n".join(named))
    return said


def without_labels(wrapping: "Wrapping", count: int) -> str:
    """How many of its packages have no label; "" where all have one."""
    if not count:
        return ""
    words = QCoreApplication.translate(
        "Wrap", "Packages of order {number} without a label yet: {count}."
    )
    return words.format(number=wrapping.order.number, count=count)
