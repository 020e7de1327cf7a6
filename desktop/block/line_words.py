"""A block line in words: count and thickness large, then everything the knife must know."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from printing.block_words import pool_stock
from printing.words.choice_words import finishes_text
from shared.cutting.breaking import BlockLine
from shared.units import length_text, pounds_text, weight_text

if TYPE_CHECKING:
    from desktop.block.cutting import Cutting, Line
    from printing.words import Words


def large_words(line: "Line", species: str, words: "Words") -> str:
    """Count, cut and thickness: "6 ham steaks, ¾ in"; for ground its pounds and lean."""
    if not isinstance(line, BlockLine):
        parts = [pounds_text(line.weight_ng), words.name(species, f"cut.{line.cut}")]
        lean = (
            QCoreApplication.translate("BlockLines", "{lean} % lean").format(lean=line.lean)
            if line.lean is not None
            else ""
        )
        return ", ".join(part for part in (" ".join(parts), lean) if part)
    name = words.name(species, f"cut.{line.cut}", line.count or 1)
    one_heap = line.count == 1 and name == words.name(species, f"cut.{line.cut}", 2)
    text = f"{line.count} {name}" if line.count and not one_heap else name  # never "1 neck bones"
    if line.from_rest and not line.count:
        text = QCoreApplication.translate("BlockLines", "{what}, all that is left").format(
            what=text
        )
    if line.thickness is not None:
        text = f"{text}, {length_text(line.thickness)}"
    return text


def small_words(line: "Line", cutting: "Cutting", words: "Words") -> str:
    """Whose it is, finish, weight of a piece, package, and the pounds expected."""
    parts = [_whose(line, cutting)]
    parts += [_half(line, cutting)] if isinstance(line, BlockLine) else []
    parts += finishes_text(line.cut, line.finishes, cutting.catalogue, words)
    if isinstance(line, BlockLine):
        if line.from_rest and line.count:
            parts.append(QCoreApplication.translate("BlockLines", "all that is left"))
        if line.piece_weight is not None:
            parts.append(
                QCoreApplication.translate("BlockLines", "{weight} each").format(
                    weight=weight_text(line.piece_weight)
                )
            )
        if line.ribs is not None:
            parts.append(
                QCoreApplication.translate("BlockLines", "{ribs} ribs").format(ribs=line.ribs)
            )
        if line.side == 0:
            parts.append(QCoreApplication.translate("BlockLines", "of both sides or the animal"))
    if not isinstance(line, BlockLine):
        parts += pool_stock(line, words)
    parts.append(_package(line))
    if isinstance(line, BlockLine):
        parts.append(
            QCoreApplication.translate("BlockLines", "about {pounds}").format(
                pounds=pounds_text(line.weight_ng)
            )
        )
    return " · ".join(part for part in parts if part)


def _whose(line: "Line", cutting: "Cutting") -> str:
    """The owner; with those whose share is cut as his says."""
    owner = cutting.owner(line.share)
    led = [one.owner for one in cutting.question.shares if one.leader == line.share]
    if not led:
        return owner
    return QCoreApplication.translate("BlockLines", "{owner} with {led}, packages dealt").format(
        owner=owner, led=", ".join(led)
    )


def _half(line: BlockLine, cutting: "Cutting") -> str:
    """Whose half of a shared run is which: by its place from the head end."""
    starts = sorted(
        one.start
        for step in cutting.steps
        for _, one in step.lines
        if isinstance(one, BlockLine)
        and one.start is not None
        and (one.side, one.cut) == (line.side, line.cut)
    )
    if line.start is None or len(starts) < 2:
        return ""
    at = starts.index(line.start)
    if at == 0:
        return QCoreApplication.translate("BlockLines", "toward the head")
    if at == len(starts) - 1:
        return QCoreApplication.translate("BlockLines", "toward the tail")
    return QCoreApplication.translate("BlockLines", "number {place} from the head").format(
        place=at + 1
    )


def _package(line: "Line") -> str:
    if line.package.pieces is not None:
        return QCoreApplication.translate("BlockLines", "{count} to a package").format(
            count=line.package.pieces
        )
    if line.package.weight is not None:
        return QCoreApplication.translate("BlockLines", "packages of {weight}").format(
            weight=weight_text(line.package.weight)
        )
    return ""
