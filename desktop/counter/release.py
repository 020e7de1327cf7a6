"""Releasing orders to the block: whether they may go, and the sheet that goes with them."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.for_block import age_falls, for_block
from desktop.paper_words import in_language
from shared.cutting.forecast import forecast
from shared.shop.ended_lines import ended_lines
from shared.shop.states import release_refusals

if TYPE_CHECKING:
    from collections.abc import Collection, Mapping, Sequence
    from datetime import datetime

    from desktop.bench import Bench
    from desktop.counter.order_desk import OrderDesk
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.curing.recipe import Recipe
    from shared.cutting.answer import Answer
    from shared.cutting.forecast import Forecast
    from shared.cutting.order import Question
    from shared.shop.details import ShopDetails
    from shared.shop.findings import SheetWords
    from shared.shop.orders import Order
    from shared.shop.sheets import Sheet
    from shared.shop.states import ReleaseRefusal

Pins = dict[int, tuple[tuple[int, int, int], ...]]


@dataclass(frozen=True, slots=True)
class SheetAsked:
    """Everything a block sheet is made from, so that a worker can make it."""

    question: "Question"
    answer: "Answer"
    catalogue: "Catalogue"
    forecast: "Forecast"
    orders: "tuple[Order, ...]"
    lot_id: int
    lot_number: int
    sheet_number: int
    shop: "ShopDetails"
    made: "datetime"
    words: "Words"
    also: "Words | None" = None
    allergens: "Mapping[str, tuple[str, ...]] | None" = None


def why_not(desk: "OrderDesk", words: "Words", *, settling: bool = False) -> str:
    """Why the shown order can't go to the block, in a sentence; "" when it can.

    `settling` is the step before: an owner has answered all that is his to answer, whatever
    other owners of the lot still have between them.
    """
    block = for_block(desk)
    said = age_falls(desk, block, words, settling=settling)
    if said:
        return said
    answer = desk.answer if settling else block.answer
    refusals = release_refusals(answer, desk.share, ended_lines(desk.question))
    codes = {refusal.code for refusal in refusals}
    mine = {one.line for one in desk.order.choices}
    if any(not mine.isdisjoint(one.lines) for one in answer.conflicts):
        return QCoreApplication.translate(
            "Release", "It can't all be had yet: take one of the ways out first."
        )
    asked = [one.shares for one in answer.questions]
    if any(desk.share in shares for shares in asked):
        return QCoreApplication.translate(
            "Release",
            "The owners have to agree first: change a line that the panel names, or have one owner "
            "cut as another says (Ctrl+G).",
        )
    if "open_part" in codes:
        return _still_open(desk, refusals, words)
    if not desk.says.choices:
        return QCoreApplication.translate("Release", "Nothing is asked for yet.")
    if not settling and desk.says.state == "open":  # it is cut as that order says
        said = QCoreApplication.translate("Release", "{owner} says how it is cut: settle that.")
        return said.format(owner=owner_names(desk, (desk.says.share,)))
    if settling or codes.isdisjoint(("cant", "asks")):
        return ""
    return _others_first(desk, answer, cant="cant" in codes)


def _others_first(desk: "OrderDesk", answer: "Answer", *, cant: bool) -> str:
    lines = {line for one in answer.conflicts for line in one.lines}
    shares = {one.share for one in desk.question.choices if one.line in lines}
    asked = {share for one in answer.questions for share in one.shares}
    owners = owner_names(desk, shares or asked)
    if cant:
        said = QCoreApplication.translate(
            "Release", "Not all of it can be had of what {owners} asked: that comes first."
        )
    else:
        said = QCoreApplication.translate("Release", "{owners} have to agree first.")
    return said.format(owners=owners)


def _still_open(desk: "OrderDesk", refusals: "Sequence[ReleaseRefusal]", words: "Words") -> str:
    parts = desk.catalogue.parts
    named = dict.fromkeys(
        words.name(desk.catalogue.species, f"primal.{parts[one.where.part].primal}")
        for one in refusals
        if one.where is not None
    )
    said = QCoreApplication.translate("Release", "Still open: {names}. F9 cuts it as usual.")
    return said.format(names=", ".join(named))


def owner_names(desk: "OrderDesk", shares: "Collection[int]") -> str:
    """The owners of these shares as they are named in a sentence."""
    named = QCoreApplication.translate("Owners", "share {number}, to be named")
    return ", ".join(
        one.owner or named.format(number=one.share) for one in desk.orders if one.share in shares
    )


def sheet_asked(desk: "OrderDesk", bench: "Bench") -> SheetAsked:
    """The next sheet of the lot: the shown order with those that are on the block's sheet already.

    Orders not released yet are left out of the sheet, not out of the plan.
    """
    block, ended = for_block(desk), ended_lines(desk.question)
    orders = tuple(
        one
        for one in desk.orders
        if one.id == desk.order.id or one.state in ("settled", "released")
        if not release_refusals(block.answer, one.share, ended)
    )
    shares = {order.share for order in orders}
    with bench.store.read() as work:
        number = 1 + len(work.orders.sheets(desk.lot.id))
        shop = work.shop.details()
        rules, recipes = work.block.rules(), work.recipes.all()
        own, graded = work.yields.used(desk.lot.species), work.cooler.meat_factor(desk.lot.id)
    words, also = sheet_words(rules.sheet_words, bench.words)
    answer = replace(
        block.answer,
        lines=tuple(one for one in block.answer.lines if one.share in shares),
        draws=tuple(one for one in block.answer.draws if one.share in shares),
    )
    return SheetAsked(
        block.question,
        answer,
        desk.catalogue,
        forecast(block.question, block.answer, desk.catalogue, own, graded),
        orders,
        desk.lot.id,
        desk.lot.number,
        number,
        shop,
        bench.now(),
        words,
        also,
        known_allergens(recipes, desk.catalogue, words.language),
    )


def sheet_words(spoken: "SheetWords", words: "Words") -> "tuple[Words, Words | None]":
    """The sheet's languages as the shop set them: the window's, one, or English and Spanish."""
    if spoken == "window":
        return words, None
    english, spanish = in_language(words, "en"), in_language(words, "es")
    if spoken == "both":
        return english, spanish
    return (english if spoken == "en" else spanish), None


def known_allergens(
    recipes: "Sequence[Recipe]", known: "Catalogue", language: str
) -> dict[str, tuple[str, ...]]:
    """By finish, the allergens of the shop's recipe for it, where somebody has looked."""
    from shared.curing.recipe import allergens, recipe_for

    found: dict[str, tuple[str, ...]] = {}
    for finish in known.finishes:
        recipe = recipe_for(recipes, finish, known.species, language)
        told = allergens(recipe) if recipe is not None else None
        if told:
            found[finish] = told
    return found


def make_sheet(asked: SheetAsked) -> bytes:
    """The sheet as a PDF; takes a while, so it is made by a worker."""
    from printing.block_sheet import block_sheet  # loads the printing of papers

    owners = {share.number: share.owner for share in asked.question.shares}
    notes = {order.share: order.note for order in asked.orders if order.note}
    return block_sheet(
        asked.question,
        asked.answer,
        asked.catalogue,
        asked.forecast,
        lot_number=asked.lot_number,
        sheet_number=asked.sheet_number,
        shop=asked.shop,
        made=asked.made,
        words=asked.words,
        owners=owners,
        note_by_share=notes,
        also=asked.also,
        allergens=asked.allergens,
    )


def store_sheet(asked: SheetAsked, pdf: bytes, bench: "Bench") -> "Sheet | None":
    """Release the orders with their sheet; None where the store refuses it."""
    from shared.orderfile_writing import write
    from shared.shop.problems import MoveRefused

    snapshot = write(asked.catalogue.species, asked.question, asked.catalogue.version)
    ids = [order.id for order in asked.orders]
    with bench.store.work(bench.person, bench.station) as work:
        found = work.orders.release(
            asked.lot_id, ids, snapshot=snapshot, pdf=pdf, pins=pins_of(asked)
        )
        if isinstance(found, MoveRefused):
            return None
        work.commit()
    return found


def pins_of(asked: SheetAsked) -> Pins:
    """The sides each counted line is planned on, so that a later change moves nothing."""
    counted = {"pieces", "slices", "pounds", "up_to", "at_least"}
    kinds = {one.line: one.amount.kind for one in asked.question.choices}
    found: dict[int, dict[tuple[int, int], int]] = {}
    for line in asked.answer.lines:
        if line.side and line.count and kinds.get(line.line) in counted:
            sides = found.setdefault(line.line, {})
            place = (line.carcass, line.side)
            sides[place] = sides.get(place, 0) + line.count
    return {
        line: tuple((carcass, side, count) for (carcass, side), count in sorted(sides.items()))
        for line, sides in found.items()
    }
