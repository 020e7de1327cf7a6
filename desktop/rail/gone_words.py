"""What is gone from a carcass, a line each: a primal lost whole on a side is one line."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.rail.seen import SeenAnimal
from shared.units import weight_text

if TYPE_CHECKING:
    from printing.words import Words
    from shared.shop.animals import Loss


def gone_lines(seen: SeenAnimal, words: "Words") -> list[str]:
    """Condemned, trimmed or discarded: what, side, pounds and why."""
    species = seen.animal.species
    left = list(seen.losses)
    lines: list[str] = []
    while left:
        first = left[0]
        primal = _whole_primal(seen, first, left)
        if primal:
            name = QCoreApplication.translate("Gone", "all of the {primal}").format(
                primal=words.name(species, f"primal.{seen.catalogue.parts[first.gone.part].primal}")
            )
        else:
            name = words.name(species, f"part.{first.gone.part}")
        lines.append(_line(seen, first, name, whole=bool(primal)))
        left = [one for one in left if one not in (primal or (first,))]
    return lines


def _whole_primal(seen: SeenAnimal, first: "Loss", left: "list[Loss]") -> "tuple[Loss, ...]":
    """The losses that together are the first one's primal on its side; () where they aren't."""
    parts = seen.catalogue.parts
    primal = parts[first.gone.part].primal
    how = seen.findings.get(first.id)
    there = {one.code for one in parts.values() if one.primal == primal and one.per == "side"}
    alike = tuple(
        one
        for one in left
        if one.gone.part in there
        and one.gone.side == first.gone.side
        and one.gone.weight is None
        and one.gone.reason == first.gone.reason
        and seen.findings.get(one.id) == how
    )
    return alike if len(there) > 1 and {one.gone.part for one in alike} == there else ()


def _line(seen: SeenAnimal, loss: "Loss", name: str, *, whole: bool) -> str:
    gone = loss.gone
    side = QCoreApplication.translate("Gone", "side {side}").format(side=gone.side)
    much = (
        weight_text(gone.weight)
        if gone.weight is not None
        else QCoreApplication.translate("Gone", "all of it")
    )
    what = [name, side if gone.side else "", "" if whole else much]
    text = {
        "condemned": QCoreApplication.translate("Gone", "Condemned: {what}. {reason}"),
        "trimmed": QCoreApplication.translate("Gone", "Trimmed off: {what}. {reason}"),
        "discarded": QCoreApplication.translate("Gone", "Discarded: {what}. {reason}"),
    }.get(
        seen.findings.get(loss.id, ""), QCoreApplication.translate("Gone", "Gone: {what}. {reason}")
    )
    return text.format(what=", ".join(one for one in what if one), reason=gone.reason)
