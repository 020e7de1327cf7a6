"""The papers of the wrapping table, made by the print room: labels and package counts."""

from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from desktop.wrap.label_of import label_of
from shared.billing.problems import BillingProblem
from shared.billing.quantities import hanging_weights
from shared.carcass.anatomy import catalogue
from shared.marking.label import PackageLabel
from shared.marking.stock import STOCKS

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import datetime

    from desktop.wrap.wrapping import Wrapping
    from printing.words import Words
    from shared.marking.plant_marks import PlantMarks
    from shared.marking.problems import MarkingProblem
    from shared.shop.packages import PackageMade


def labels_pdf(
    ready: "Sequence[PackageLabel]", words: "Words", marks: "PlantMarks"
) -> "bytes | tuple[MarkingProblem, ...]":
    """Labels as one PDF in the order given, or what doesn't fit on one of them. For a worker."""
    from printing.labels import LabelRefused, labels

    try:
        return labels(ready, words=words, dpi=ready[0].dpi, artwork=legend_of(marks))
    except LabelRefused as refused:
        label = next(one for one in ready if one.package_number == refused.package_number)
        fits = ",".join(_stocks_that_do(label, words, legend_of(marks)))
        return tuple(replace(one, data={**one.data, "stocks": fits}) for one in refused.problems)


def _stocks_that_do(label: PackageLabel, words: "Words", artwork: bytes) -> "Iterator[str]":
    """Rolls that hold all of a label that its own stock doesn't, the smallest first."""
    from printing.labels import LabelRefused, labels

    rolls = [one for one in STOCKS.values() if one.media == "roll" and not one.small]
    for stock in sorted(rolls, key=lambda one: one.width * one.height):
        if stock.code == label.stock.code:
            continue
        try:
            labels([replace(label, stock=stock)], words=words, dpi=label.dpi, artwork=artwork)
        except LabelRefused:
            continue
        yield stock.code


def order_labels(
    packages: "Sequence[PackageMade]", wrapping: "Wrapping", words: "Words"
) -> "bytes | tuple[MarkingProblem, ...]":
    """The labels of an order's packages as one PDF, or what keeps one from being made."""
    ready: list[PackageLabel] = []
    for package in packages:
        label = label_of(package, wrapping)
        if not isinstance(label, PackageLabel):
            return label
        ready.append(label)
    return labels_pdf(ready, words, wrapping.marks)


def legend_of(marks: "PlantMarks") -> bytes:
    """The artwork that is placed on labels; b"" where the legend stands on the stock."""
    return marks.artwork.png if marks.legend == "artwork" and marks.artwork is not None else b""


def counts_pdf(wrapping: "Wrapping", made: "datetime", words: "Words") -> bytes:
    """The order's package counts, planned beside made. For a worker."""
    from printing.counts import counts, share_counts

    lot, order = wrapping.lot, wrapping.order
    share = share_counts(
        wrapping.question,
        catalogue(lot.species),
        wrapping.forecast,
        order.share,
        wrapping.packages,
        order_number=order.number,
        hanging=_hanging(wrapping),
        counted=wrapping.counted,
        weights=wrapping.weights,
    )
    tags = [animal.tag for animal in lot.animals if animal.tag]
    return counts(
        (share,),
        species=lot.species,
        lot_number=lot.number,
        tags=tags,
        shop=wrapping.shop,
        made=made,
        words=words,
    )


def _hanging(wrapping: "Wrapping") -> Fraction | None:
    """The owner's hanging pounds, None while a weight is missing."""
    share = next(
        (one for one in wrapping.question.shares if one.number == wrapping.order.share), None
    )
    if share is None:
        return None
    fore = wrapping.shop.fore_share or catalogue(wrapping.lot.species).ranges.fore_share
    found = hanging_weights(wrapping.question.carcasses, share.holdings, "hot", fore)
    return None if isinstance(found, BillingProblem) else found.pounds
