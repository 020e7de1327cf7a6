"""Papers made from the shop's records for the shell: what is kept is printed as it was kept."""

from typing import TYPE_CHECKING

from desktop.shell.context import CANT, CommandError, now
from shared.billing.bill import Bill
from shared.billing.problems import BillingProblem

if TYPE_CHECKING:
    from fractions import Fraction

    from db.store import Store
    from db.unit_of_work import Work
    from desktop.office.billing import Billing
    from printing.words import Words
    from shared.billing.quantities import HangingWeights
    from shared.billing.statement import Price
    from shared.cutting.order import Question
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot


def order_id(work: "Work", number: int, words: "Words") -> int:
    """The order of that number, or a refusal."""
    for found in work.search.find(str(number)):
        if found.kind == "order" and found.title == str(number):
            return found.id
    raise CommandError(words.say("shell.no_order", number=number), CANT)


def lot_of(work: "Work", number: int, words: "Words") -> "Lot":
    """The lot of that number, or a refusal."""
    for found in work.search.find(str(number)):
        lot = work.lots.get(found.id) if found.kind == "lot" else None
        if lot is not None and lot.number == number:
            return lot
    raise CommandError(words.say("shell.no_lot", number=number), CANT)


def billing_of(store: "Store", number: int, words: "Words") -> "Billing":
    """An order's money, or a refusal."""
    from desktop.office.billing import read_billing

    with store.read() as work:
        found = order_id(work, number, words)
    billing = read_billing(store, found)
    if billing is None:
        raise CommandError(words.say("shell.no_order", number=number), CANT)
    return billing


def refused(problem: BillingProblem, words: "Words") -> CommandError:
    """Why there is no bill, in a sentence."""
    data = {"owner": "", "animal": "", "tag": "", "share": "", **problem.data}
    key = f"bills.problem_{problem.code}"
    said = words.say(key, 1, **data) if words.has(key) else problem.code
    return CommandError(said, CANT)


def shown_bill(billing: "Billing", words: "Words") -> Bill:
    """What is to be billed, else what was billed last."""
    if billing.shown is not None:
        return billing.shown
    assert isinstance(billing.next_bill, BillingProblem)
    raise refused(billing.next_bill, words)


def bill_paper(store: "Store", billing: "Billing", words: "Words") -> bytes:
    """The bill's paper: as it was kept where nothing is left to bill, else a draft."""
    from desktop.office.billing import address_lines
    from printing.bill import bill as printed

    bill = shown_bill(billing, words)
    if billing.bills and not billing.has_next:
        with store.read() as work:
            kept = work.papers.get(billing.bills[-1].paper_id)
        if kept is not None:
            return kept.pdf
    return printed(
        bill,
        number=0,
        shop=billing.shop,
        customer=address_lines(billing.customer, billing.order.owner),
        made=now(),
        words=words,
        order_number=billing.order.number,
        lot_number=billing.lot.number,
    )


def statement_paper(billing: "Billing", price: "Price", words: "Words") -> bytes:
    """The producer's statement to the owner of this order, at his price."""
    from desktop.office.billing import address_lines
    from printing.statement import statement as printed
    from shared.billing.statement import statement

    if isinstance(billing.billed, BillingProblem):
        raise refused(billing.billed, words)
    made = statement(billing.billed, billing.order.share, price)
    if isinstance(made, BillingProblem):
        raise refused(made, words)
    return printed(
        made,
        producer=address_lines(billing.producer, billing.lot.producer)[1:],
        buyer=address_lines(billing.customer, billing.order.owner)[1:],
        paper=billing.shop.paper,
        made=now(),
        words=words,
    )


def counts_paper(store: "Store", number: int, words: "Words") -> bytes:
    """Package counts of all orders of a lot."""
    from printing.counts import counts, share_counts
    from shared.carcass.anatomy import catalogue
    from shared.cutting.forecast import forecast
    from shared.cutting.plan import plan

    with store.read() as work:
        lot, shop = lot_of(work, number, words), work.shop.details()
        question, orders = work.lots.question(lot.id), work.orders.of_lot(lot.id)
        packages, counted = work.packages.of_lot(lot.id), work.counted.of_lot(lot.id)
        weights = work.counted_lines.weights_of_lot(lot.id)
    known = catalogue(lot.species)
    expected = forecast(question, plan(question, known), known)
    fore = known.ranges.fore_share if shop.fore_share is None else shop.fore_share
    shares = [
        share_counts(
            question,
            known,
            expected,
            order.share,
            packages,
            order_number=order.number,
            hanging=_hanging(question, order.share, fore),
            counted=counted,
            weights=weights,
        )
        for order in orders
    ]
    return counts(
        shares,
        species=lot.species,
        lot_number=lot.number,
        tags=[one.tag for one in lot.animals],
        shop=shop,
        made=now(),
        words=words,
    )


def quote_paper(store: "Store", number: int, words: "Words") -> bytes:
    """What an order will come to, as an estimate with its range."""
    from desktop.office.billing import address_lines
    from desktop.office.quoting import quote_of
    from printing.bill import bill as printed

    billing = billing_of(store, number, words)
    quote = quote_of(store, billing)
    if isinstance(quote, BillingProblem):
        raise refused(quote, words)
    return printed(
        quote.bill,
        number=0,
        shop=billing.shop,
        customer=address_lines(billing.customer, billing.order.owner),
        made=now(),
        words=words,
        order_number=billing.order.number,
        lot_number=billing.lot.number,
        quoted=(quote.low_cents, quote.high_cents),
    )


def ticket_paper(
    store: "Store", number: int, words: "Words", spoken: "Words | None" = None
) -> bytes:
    """The weight ticket of an order, in `spoken`; `words` says why there is none."""
    from desktop.office.billing import address_lines
    from printing.counts import share_counts
    from printing.weight_ticket import TicketShare, weight_ticket
    from shared.carcass.anatomy import catalogue
    from shared.cutting.forecast import Forecast

    billing = billing_of(store, number, words)
    order, lot, shop = billing.order, billing.lot, billing.shop
    with store.read() as work:
        question, packages = work.lots.question(lot.id), work.packages.of_lot(lot.id)
        counted, weights = work.counted.of_lot(lot.id), work.counted_lines.weights_of_lot(lot.id)
    known = catalogue(lot.species)
    hanging = _before_cutting(question, order.share, shop, known.ranges.fore_share, words)
    counts = share_counts(
        question,
        known,
        Forecast(()),
        order.share,
        packages,
        order_number=order.number,
        hanging=hanging.pounds,
        counted=counted,
        weights=weights,
    )
    choices = tuple(one for one in question.choices if one.share == order.share)
    tags = tuple(one.tag for one in question.carcasses)
    return weight_ticket(
        TicketShare(counts, hanging, choices, tags, lot.producer),
        catalogue=known,
        lot_number=lot.number,
        shop=shop,
        buyer=address_lines(billing.customer, order.owner),
        made=now(),
        words=spoken or words,
    )


def _before_cutting(
    question: "Question", share: int, shop: "ShopDetails", by_table: "Fraction", words: "Words"
) -> "HangingWeights":
    """What the share weighed before cutting, as the shop goes by; or a refusal."""
    from shared.billing.quantities import HangingWeights, hanging_weights

    held = next(one.holdings for one in question.shares if one.number == share)
    kind = "chilled" if shop.hanging_basis == "chilled" else "hot"
    fore = by_table if shop.fore_share is None else shop.fore_share
    found = hanging_weights(question.carcasses, held, kind, fore)
    if not isinstance(found, HangingWeights):
        raise refused(found, words)
    return found


def _hanging(question: "Question", share: int, fore: "Fraction") -> "Fraction | None":
    from shared.billing.quantities import hanging_weights

    held = next(one.holdings for one in question.shares if one.number == share)
    found = hanging_weights(question.carcasses, held, "hot", fore)
    return None if isinstance(found, BillingProblem) else found.pounds


def sheet_paper(store: "Store", number: int, words: "Words") -> bytes:
    """The block sheet of a lot: the released one where it still holds, else as planned now."""
    from desktop.counter.release import known_allergens, sheet_words
    from printing.block_sheet import block_sheet
    from shared.cutting.forecast import forecast
    from shared.cutting.plan import plan
    from shared.shop.usual import shop_catalogue

    with store.read() as work:
        lot, shop = lot_of(work, number, words), work.shop.details()
        question = work.lots.question(lot.id, at_block=True)
        orders = work.orders.of_lot(lot.id)
        sheets = work.orders.sheets(lot.id)
        kept = work.papers.get(sheets[-1].paper_id) if sheets else None
        if kept is not None and not any(one.changed_since_sheet for one in orders):
            return kept.pdf
        known = shop_catalogue(lot.species, work.usual.ways(lot.species))
        recipes = work.recipes.all()
        first, also = sheet_words(work.block.rules().sheet_words, words)
    answer = plan(question, known)
    return block_sheet(
        question,
        answer,
        known,
        forecast(question, answer, known),
        lot_number=lot.number,
        sheet_number=sheets[-1].number if sheets else 0,
        shop=shop,
        made=now(),
        words=first,
        owners={one.share: one.owner for one in orders},
        note_by_share={one.share: one.note for one in orders if one.note},
        also=also,
        allergens=known_allergens(recipes, known, first.language),
    )


def labels_paper(store: "Store", number: int, words: "Words") -> bytes:
    """The labels of an order's packages, void ones left out."""
    from desktop.wrap.label_of import label_complaint, label_of
    from desktop.wrap.papers import legend_of
    from desktop.wrap.wrapping import read_wrapping
    from printing.labels import LabelRefused, labels
    from shared.marking.label import PackageLabel

    with store.read() as work:
        found = order_id(work, number, words)
    wrapping = read_wrapping(store, found, words)
    made = [one for one in wrapping.packages if not one.void] if wrapping else []
    if wrapping is None or not made:
        raise CommandError(words.say("bills.nothing_made", number=number), CANT)
    ready: list[PackageLabel] = []
    for package in made:
        one = label_of(package, wrapping)
        if not isinstance(one, PackageLabel):
            raise CommandError(label_complaint(one), CANT)
        ready.append(one)
    try:
        artwork = legend_of(wrapping.marks)
        return labels(ready, words=words, dpi=wrapping.shop.dpi, artwork=artwork)
    except LabelRefused as refusal:
        raise CommandError(label_complaint(refusal.problems), CANT) from refusal


def tag_paper(store: "Store", number: int, animal: int, words: "Words") -> bytes:
    """The rail tags of one animal of a lot, animals counted from 1."""
    from printing.carcass_tag import carcass_tag

    with store.read() as work:
        lot, shop = lot_of(work, number, words), work.shop.details()
        question, orders = work.lots.question(lot.id), work.orders.of_lot(lot.id)
    if not 1 <= animal <= len(question.carcasses):
        said = words.say("bills.no_animal", number=number, animal=animal)
        raise CommandError(said, CANT)
    held = {
        share.number
        for share in question.shares
        if any(one.carcass == animal - 1 for one in share.holdings)
    }
    return carcass_tag(
        question.carcasses[animal - 1],
        lot_number=lot.number,
        owners=[one.owner for one in orders if one.share in held],
        killed_on=lot.animals[animal - 1].killed_on,
        shop=shop,
        words=words,
        dpi=shop.dpi,
    )


def traced_paper(store: "Store", number: int, document: str, words: "Words") -> bytes:
    """The trace of a lot, or the producer's report of it."""
    from printing.producer_report import producer_report
    from printing.trace_page import trace_page

    with store.read() as work:
        trace = work.trace.of_lot(lot_of(work, number, words).id)
        shop = work.shop.details()
    assert trace is not None
    paper = producer_report if document == "producer-report" else trace_page
    return paper(trace, shop=shop, made=now(), words=words)
