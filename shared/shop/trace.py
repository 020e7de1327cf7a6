"""Everything the shop kept of one lot, in the order it happened; and how long records are kept."""

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Literal

from shared.money import money_text
from shared.shop.animals import Loss, Weighing
from shared.shop.counted import CountedPackages
from shared.shop.lists import Change
from shared.shop.lots import Lot
from shared.shop.money import IssuedBill, Payment
from shared.shop.orders import Order
from shared.shop.packages import PackageMade
from shared.shop.sheets import Sheet
from shared.units import pounds_text, weight_text

TraceKind = Literal["tag", "label", "order", "lot", "bill"]
TraceSubject = Literal["lot", "animal", "order"]
# Told from the weighings, losses, sheets, packages and bills themselves, with their figures.
TOLD_ELSEWHERE = frozenset(
    {"weight_corrected", "weight_withdrawn", "loss", "loss_void", "released"}
)


@dataclass(frozen=True, slots=True)
class TraceHit:
    """What a number or a tag leads to: a lot, and the animal in it where it names one."""

    kind: TraceKind
    text: str
    lot_id: int
    animal_id: int | None
    owner: str


@dataclass(frozen=True, slots=True)
class TraceEvent:
    """One thing that happened: to what, in a code with its data, by whom and at which station."""

    at: datetime
    subject: TraceSubject
    subject_id: int
    what: str
    person: str
    station: str = ""
    reason: str = ""
    data: Mapping[str, str] = field(default_factory=dict[str, str])


@dataclass(frozen=True, slots=True)
class Trace:
    """All that is kept of a lot."""

    lot: Lot
    orders: tuple[Order, ...]
    weighings: tuple[Weighing, ...]
    losses: tuple[Loss, ...]
    sheets: tuple[Sheet, ...]
    packages: tuple[PackageMade, ...]
    counted: tuple[CountedPackages, ...]
    bills: tuple[IssuedBill, ...]
    payments: tuple[Payment, ...]
    changes: tuple[Change, ...]


def events(trace: Trace, animal_id: int | None = None) -> tuple[TraceEvent, ...]:
    """What happened, first to last; with an animal, what concerns it and the lot as a whole."""
    found = [
        *_changes(trace),
        *_weighings(trace.weighings),
        *_losses(trace.losses),
        *_sheets(trace),
        *_packages(trace.packages),
        *_counted(trace.counted),
        *_bills(trace),
        *_payments(trace),
    ]
    told = [
        one
        for one in found
        if animal_id is None or one.subject != "animal" or one.subject_id == animal_id
    ]
    return tuple(sorted(told, key=lambda one: one.at))


def _changes(trace: Trace) -> Iterator[TraceEvent]:
    for one in trace.changes:
        data = _texts(one.data)
        told = one.what in TOLD_ELSEWHERE or (one.what == "weighed" and "kind" in data)
        if told or one.subject not in ("lot", "animal", "order"):
            continue
        yield TraceEvent(
            one.at,
            one.subject,
            one.subject_id,
            one.what,
            one.person,
            one.station,
            one.reason,
            data,
        )


def _texts(data: str) -> dict[str, str]:
    read: dict[str, str | int | bool | None] = json.loads(data)
    return {key: str(value) for key, value in read.items() if value is not None}


def _weighings(weighings: Sequence[Weighing]) -> Iterator[TraceEvent]:
    for one in weighings:
        what = "weight" if one.corrects is None else "weight_corrected"
        yield TraceEvent(
            one.at,
            "animal",
            one.animal_id,
            "weight_withdrawn" if one.withdrawn else what,
            one.person,
            one.station,
            one.reason,
            {
                "kind": one.kind,
                "side": str(one.side),
                "quarter": one.quarter,
                "weight": weight_text(one.weight),
                "scale": one.scale,
            },
        )


def _losses(losses: Sequence[Loss]) -> Iterator[TraceEvent]:
    for one in losses:
        gone = one.gone
        data = {"part": gone.part, "side": str(gone.side), "void": one.void}
        if gone.weight is not None:
            data["weight"] = weight_text(gone.weight)
        what = "loss_some" if gone.weight is not None else "loss_all"
        yield TraceEvent(
            one.at, "animal", one.animal_id, what, one.person, one.station, gone.reason, data
        )


def _sheets(trace: Trace) -> Iterator[TraceEvent]:
    for one in trace.sheets:
        number = {"sheet": str(one.number)}
        yield TraceEvent(one.released_at, "lot", trace.lot.id, "sheet", one.person, "", "", number)


def _packages(packages: Sequence[PackageMade]) -> Iterator[TraceEvent]:
    """Packages of one order, day and station are one event: they are told by the label."""
    groups: dict[tuple[int, date, str, str], list[PackageMade]] = {}
    for one in packages:
        key = (one.order_id, one.made_at.date(), one.person, one.station)
        groups.setdefault(key, []).append(one)
    for (order_id, _day, person, station), group in groups.items():
        kept = [one for one in group if not one.void]
        labels = sorted(one.label_number for one in group)
        data = {
            "count": str(len(kept)),
            "pounds": pounds_text(sum(one.net.nanograms for one in kept), 2),
            "first": str(labels[0]),
            "last": str(labels[-1]),
        }
        last = max(one.made_at for one in group)
        yield TraceEvent(last, "order", order_id, "packed", person, station, "", data)
    for one in packages:
        if one.void and one.voided_at is not None:
            data = {"label": str(one.label_number), "product": one.product}
            yield TraceEvent(
                one.voided_at,
                "order",
                one.order_id,
                "label_void",
                one.voided_by,
                "",
                one.void,
                data,
            )


def _counted(counted: Sequence[CountedPackages]) -> Iterator[TraceEvent]:
    """Each count when it was made, and when it was made void."""
    for one in counted:
        data = {"count": str(one.packages), "product": one.product}
        about = ("order", one.order_id)
        yield TraceEvent(one.made_at, *about, "counted", one.person, one.station, "", data)
        if one.void and one.voided_at is not None:
            yield TraceEvent(one.voided_at, *about, "count_void", one.voided_by, "", one.void, data)


def _bills(trace: Trace) -> Iterator[TraceEvent]:
    for one in trace.bills:
        data = {"number": str(one.number), "total": money_text(one.total_cents)}
        what = "bill" if one.credits is None else "credit"
        yield TraceEvent(
            one.issued_at, *_of(one.order_id, trace), what, one.person, "", one.reason, data
        )


def _payments(trace: Trace) -> Iterator[TraceEvent]:
    for one in trace.payments:
        data = {"number": str(one.number), "sum": money_text(one.cents), "means": one.means}
        yield TraceEvent(
            one.at, *_of(one.order_id, trace), one.kind, one.person, one.station, one.note, data
        )


def _of(order_id: int | None, trace: Trace) -> tuple[TraceSubject, int]:
    return ("order", order_id) if order_id is not None else ("lot", trace.lot.id)


def kept_until(day: date) -> date:
    """The last day a record of that day must be kept: 9 CFR 320.3(a).

    Two years after December 31 of the year of the transaction: a record of March 9, 2026 is kept
    until December 31, 2028. States may ask for longer; Texas asks two years and the current one
    (25 TAC 221.14), which is the same day.
    """
    return date(day.year + 2, 12, 31)


def may_go_before(today: date) -> date:
    """The first day whose records must still be kept; older ones may go by 9 CFR 320.3.

    On November 25, 2026 records from January 1, 2024 on must be kept.
    """
    return date(today.year - 2, 1, 1)
