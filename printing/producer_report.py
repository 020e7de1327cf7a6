"""The producer's report: what came, what it weighed, what was condemned, and what became of it.

Some states ask for it on request (Missouri 196.500: the carcass weight at delivery and its
disposition).
"""

from collections.abc import Collection, Iterable, Sequence
from datetime import datetime
from fractions import Fraction

from printing.letterhead import Letterhead, day_text, notes, number_text, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.place_words import capital
from printing.words.trace_words import about, animal_name, event_text
from shared.shop.animals import Animal, Weighing, WeighingKind
from shared.shop.details import ShopDetails
from shared.shop.orders import Order
from shared.shop.trace import Trace, events
from shared.units import pounds_text

NOTHING = "—"
NEVER_WEIGHED = ("condemned", "refused", "not_come")


def producer_report(trace: Trace, *, shop: ShopDetails, made: datetime, words: Words) -> bytes:
    """The report of a lot as PDF: its animals, its losses, and the packages of each share."""
    sheet = open_paper(shop.paper, _head(trace, shop, words), "", made, words)
    _animals(sheet, trace, words)
    sheet.skip(14)
    _losses(sheet, trace, words)
    sheet.skip(14)
    _shares(sheet, trace, words)
    notes(sheet, tuple(_notes(trace, words)))
    return sheet.pdf()


def weight_ng(weighings: Iterable[Weighing], animal_id: int, kind: WeighingKind) -> int | None:
    """An animal's current weight of that kind, its sides and quarters together; None if none."""
    found = [
        one.weight.nanograms
        for one in weighings
        if one.animal_id == animal_id and one.kind == kind and one.current
    ]
    return sum(found) if found else None


def dressing_text(hot: int | None, live: int | None) -> str:
    """Hot in per cent of live: 819 of 1,300 lb is "63.0 %" (MSU Extension worksheet, 2024)."""
    if hot is None or not live:
        return NOTHING
    return number_text(Fraction(hot * 100, live), 1, 1) + " %"


def _head(trace: Trace, shop: ShopDetails, words: Words) -> Letterhead:
    lot = trace.lot
    return Letterhead(
        sender=sender(shop),
        title=words.say("trace.report_title"),
        corner=(lot.producer, words.say("trace.report_of", lot=lot.number)),
        party=(lot.producer,),
        facts=(
            (words.say("trace.kill_day"), day_text(lot.day, words)),
            (
                words.say("trace.head"),
                f"{lot.head} {words.name(lot.species, f'species.{lot.species}', lot.head)}",
            ),
        ),
    )


def _animals(sheet: Paper, trace: Trace, words: Words) -> None:
    columns = (
        Column(words.say("trace.column_tag"), sheet.room - 80 * 4 - 110),
        Column(words.say("trace.column_state"), 110),
        Column(words.say("trace.column_live"), 80, "right"),
        Column(words.say("trace.column_hot"), 80, "right"),
        Column(words.say("trace.column_dressing"), 80, "right"),
        Column(words.say("trace.column_chilled"), 80, "right"),
    )
    rows = [_animal(one, trace, words) for one in trace.lot.animals]
    if len(rows) > 1:
        rows.append(_all_head(trace, words))
    table(sheet, columns, rows)


def _animal(animal: Animal, trace: Trace, words: Words) -> tuple[str, ...]:
    live, hot, chilled = (
        weight_ng(trace.weighings, animal.id, kind) for kind in ("live", "hot", "chilled")
    )
    return (
        animal_name(animal, words),
        capital(_state(animal, words)),
        _shown(live),
        _shown(hot),
        dressing_text(hot, live),
        _shown(chilled),
    )


def _all_head(trace: Trace, words: Words) -> tuple[str, ...]:
    """Sums of what is weighed; no dressing where an animal lacks one of the two weights."""
    live, hot, chilled = (
        [weight_ng(trace.weighings, one.id, kind) for one in trace.lot.animals]
        for kind in ("live", "hot", "chilled")
    )
    whole = None not in live and None not in hot
    return (
        words.say("trace.total", len(trace.lot.animals)),
        "",
        _shown(_sum(live)),
        _shown(_sum(hot)),
        dressing_text(_sum(hot), _sum(live)) if whole else NOTHING,
        _shown(_sum(chilled)),
    )


def _sum(weights: Sequence[int | None]) -> int | None:
    known = [one for one in weights if one is not None]
    return sum(known) if known else None


def _shown(nanograms: int | None) -> str:
    return NOTHING if nanograms is None else pounds_text(nanograms)


def _state(animal: Animal, words: Words) -> str:
    if animal.state == "passed" and animal.regime == "custom":
        return words.say("trace.animal_accepted")
    if animal.state == "refused":
        return words.say("trace.animal_refused")
    return words.name("", f"state.{animal.state}")


def _losses(sheet: Paper, trace: Trace, words: Words) -> None:
    sheet.need(60)
    sheet.text(0, sheet.y + 12, words.say("trace.losses"), 12, "semibold")
    sheet.skip(18)
    lost = [one for one in events(trace) if one.what in ("loss_some", "loss_all")]
    ended = [one for one in events(trace) if one.what in ("condemned", "refused")]
    rows = [
        (about(one, trace, words), event_text(one, trace, words), one.reason, one.person)
        for one in (*ended, *lost)
    ]
    if not rows:
        sheet.text(0, sheet.y + 10, words.say("trace.no_losses"), 10)
        sheet.skip(16)
        return
    columns = (
        Column(words.say("trace.about"), 110),
        Column(words.say("trace.what"), sheet.room - 110 - 150 - 90),
        Column(words.say("trace.why"), 150),
        Column(words.say("trace.who"), 90),
    )
    table(sheet, columns, rows)


def _shares(sheet: Paper, trace: Trace, words: Words) -> None:
    columns = (
        Column(words.say("trace.column_share"), 60),
        Column(words.say("trace.column_owner"), sheet.room - 60 - 110 - 90 - 100),
        Column(words.say("trace.column_state"), 110),
        Column(words.say("trace.column_packages"), 90, "right"),
        Column(words.say("trace.column_pounds"), 100, "right"),
    )
    rows = [_share(one, trace, words) for one in trace.orders]
    if len(rows) > 1:
        ids = {one.id for one in trace.orders}
        rows.append(("", words.say("trace.all_owners"), "", *_packed(trace, ids, words)))
    table(sheet, columns, rows)


def _share(order: Order, trace: Trace, words: Words) -> tuple[str, ...]:
    return (
        str(order.share),
        order.owner or words.say("trace.nobody"),
        capital(words.name("", f"state.{order.state}")),
        *_packed(trace, {order.id}, words),
    )


def _packed(trace: Trace, orders: Collection[int], words: Words) -> tuple[str, str]:
    """Packages of those orders and their pounds; of what was counted that it wasn't weighed."""
    kept = [one for one in trace.packages if one.order_id in orders and not one.void]
    counts = [one for one in trace.counted if one.order_id in orders and not one.void]
    by_count = sum(one.packages for one in counts)
    pounds = _shown(_sum([one.net.nanograms for one in kept])) if kept or not by_count else ""
    if by_count:
        also = words.say("bills.more_by_count", number=by_count)
        pounds = f"{pounds}\n{also}" if kept else words.say("bills.by_count")
    return str(len(kept) + by_count), pounds


def _notes(trace: Trace, words: Words) -> Iterable[str]:
    hot = [weight_ng(trace.weighings, one.id, "hot") for one in trace.lot.animals]
    made = sum(one.net.nanograms for one in trace.packages if not one.void)
    hung = _sum(hot)
    counted = any(not one.void for one in trace.counted)
    if made and hung and None not in hot and not counted:
        percent = number_text(Fraction(made * 100, hung), 1, 1)
        yield words.say("trace.cut_out", percent=f"{percent} %")
    unweighed = [
        animal_name(one, words)
        for one, weight in zip(trace.lot.animals, hot, strict=True)
        if weight is None and one.state not in NEVER_WEIGHED
    ]
    if unweighed:
        yield words.say("trace.not_yet", tags=", ".join(unweighed))
    for one in trace.lot.animals:
        if one.state == "not_come":
            missing = words.say("trace.missing", animal=animal_name(one, words))
            why = one.held_for
            yield words.say("trace.with_reason", what=missing, why=why) if why else missing
    yield words.say("trace.report_note")
