"""The sheet that goes with a batch: recipe, allergens, whose meat, nitrite, stages, division."""

from collections.abc import Mapping
from datetime import datetime

from printing.letterhead import Letterhead, day_text, notes, number_text, open_paper, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.batch_words import nitrite_text
from printing.words.place_words import capital
from shared.curing.batch import Batch
from shared.curing.recipe import Recipe, allergens, in_order_of_weight
from shared.curing.recipe_text import decimal_text
from shared.shop.details import ShopDetails
from shared.units import Weight, pounds_text, weight_text


def batch_sheet(
    batch: Batch,
    recipe: Recipe,
    shares: Mapping[int, Weight],
    *,
    shop: ShopDetails,
    made: datetime,
    words: Words,
) -> bytes:
    """The sheet as PDF; `shares` is the finished weight by order, empty until it is weighed."""
    sheet = open_paper(shop.paper, _head(batch, recipe, shop, words), "", made, words)
    _recipe(sheet, recipe, words)
    sheet.skip(12)
    _went_in(sheet, batch, shares, words)
    sheet.skip(14)
    _stages(sheet, batch, words)
    notes(sheet, (nitrite_text(batch.cure, words), words.say("batches.caution")))
    return sheet.pdf()


def _head(batch: Batch, recipe: Recipe, shop: ShopDetails, words: Words) -> Letterhead:
    owners = tuple(dict.fromkeys(one.owner for one in batch.standing))
    return Letterhead(
        sender=sender(shop),
        title=f"{words.say('batches.title', number=batch.number)}: {recipe.name}",
        corner=owners,
        facts=((capital(words.say(f"batches.state_{batch.state}")), batch.note),),
    )


def _recipe(sheet: Paper, recipe: Recipe, words: Words) -> None:
    known = allergens(recipe)
    if known is None or known:
        said = words.say("batches.allergens_unknown")
        if known:
            said = words.say("batches.allergens", names=", ".join(known).upper())
        sheet.box(0, sheet.y, sheet.room, 24, 1.6)
        sheet.text(8, sheet.y + 17, said, 13, "bold")
        sheet.skip(32)
    parts = [
        f"{decimal_text(one.per_hundred)} {one.name}" if one.per_hundred else one.name
        for one in in_order_of_weight(recipe.ingredients)
    ]
    sheet.paragraph(0, f"{words.say('batches.made_of')}: {', '.join(parts)}", 11, sheet.room)


def _went_in(sheet: Paper, batch: Batch, shares: Mapping[int, Weight], words: Words) -> None:
    columns = (
        Column(words.say("batches.owner"), sheet.room - 60 - 140 - 60 - 90 - 90),
        Column(words.say("batches.order"), 60),
        Column(words.say("batches.what"), 140),
        Column(words.say("batches.pieces"), 60, "right"),
        Column(words.say("batches.weight"), 90, "right"),
        Column(words.say("batches.share_out"), 90, "right"),
    )
    rows: list[tuple[str, ...]] = []
    told: set[int] = set()
    for one in batch.standing:
        share = shares.get(one.order_id) if one.order_id not in told else None
        told.add(one.order_id)
        rows.append(
            (
                one.owner,
                str(one.order_number),
                capital(words.name(one.species, f"cut.{one.cut}")),
                str(one.pieces or ""),
                weight_text(one.weight),
                "" if share is None else weight_text(share),
            )
        )
    for extra in batch.added:
        source = words.say("batches.added", what=extra.what, source=extra.source)
        rows.append((source, "", "", "", weight_text(extra.weight), ""))
    whole = batch.in_ng + sum(one.weight.nanograms for one in batch.added)
    out = "" if batch.out is None else weight_text(batch.out)
    rows.append((words.say("batches.total"), "", "", "", pounds_text(whole, 2), out))
    table(sheet, columns, rows, 11)


def _stages(sheet: Paper, batch: Batch, words: Words) -> None:
    sheet.text(0, sheet.y + 12, words.say("batches.stages"), 12, "semibold")
    sheet.skip(20)
    for one in batch.stages:
        said = words.say(
            "batches.stage",
            state=capital(words.say(f"batches.state_{one.state}")),
            day=day_text(one.at.astimezone().date(), words),
            person=one.person,
        )
        sheet.paragraph(0, f"{said}. {one.note}" if one.note else said, 11, sheet.room)
    sheet.skip(10)
    yielded = batch.yielded
    if batch.out is None or yielded is None:
        sheet.text(0, sheet.y + 14, words.say("batches.out_line"), 13, "semibold")
    else:
        percent = f"{number_text(yielded * 100, 1, 1)} %"
        said = words.say("batches.yield", out=weight_text(batch.out), percent=percent)
        sheet.text(0, sheet.y + 14, said, 13, "semibold")
    sheet.skip(22)
