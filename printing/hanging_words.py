"""The evening of the kill in words: what an owner's share weighs, and the text of a mail."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction

from printing.words import Words
from printing.words.place_words import capital
from printing.written import NO_BREAK, day_text, number_text, sender
from shared.billing.quantities import HangingWeights, HeldWeight
from shared.money import money_text
from shared.shop.details import ShopDetails


@dataclass(frozen=True, slots=True)
class HangingNote:
    """What one owner is told of his share.

    `chilled_follows`: the shop goes by the chilled weight and it isn't there yet. `held` and
    `condemned` are tags of his animals. `due` None: his order is settled. `quote` is low and high
    cents, where the shop wants it told.
    """

    order_number: int
    lot_number: int
    species: str
    owner: str
    party: tuple[str, ...]
    tags: tuple[str, ...]
    killed_on: date | None
    hanging: HangingWeights
    due: date | None
    chilled_follows: bool = False
    held: tuple[str, ...] = ()
    condemned: tuple[str, ...] = ()
    quote: tuple[int, int] | None = None


def told_lines(note: HangingNote, words: Words) -> tuple[str, ...]:
    """What is told, sentence by sentence, the weight first."""
    return tuple(_told(note, words))


def mail_subject(note: HangingNote, shop: ShopDetails, words: Words) -> str:
    """The subject: the shop and the weight, or that it isn't weighed."""
    whole = note.hanging.pounds
    key = "forms.hangs_subject_waits" if whole is None else "forms.hangs_subject"
    weight = "" if whole is None else pounds_told(whole)
    return words.say(key, shop=shop.name, pounds=weight)


def mail_texts(note: HangingNote, shop: ShopDetails, words: Words) -> tuple[str, ...]:
    """The text of the mail, whole and shorter: without its list of parts; the weight alone."""
    animal = words.name(note.species, f"species.{note.species}")
    tags = ", ".join(tag for tag in note.tags if tag)
    about = words.say("forms.hangs_about", animal=animal, number=note.order_number)
    if tags:
        about = f"{about} ({words.say('bills.tag', len(note.tags), tags=tags)})"
    parts = [": ".join(part_told(one, note.tags, words)[::2]) for one in note.hanging.held]
    whole = [*parts, *how_found(note.hanging, words), "", *sender(shop)]
    told = [note.owner + ",", "", f"{about}:", *told_lines(note, words), ""]
    bare = [note.owner + ",", "", told_lines(note, words)[0], "", shop.name]
    return tuple("\n".join(one) for one in ([*told, *whole], [*told, *sender(shop)], bare))


def pounds_told(exact: Fraction) -> str:
    """Pounds as they are, so that shares add up to the side: half of 396.25 lb is 198.125 lb.

    What doesn't end is told to the hundredth: 1/3 of 100 lb is 33.33 lb.
    """
    return f"{_figure(exact)}{NO_BREAK}lb"


def _figure(exact: Fraction) -> str:
    ends = (exact * 10**4).denominator == 1
    return number_text(exact, 0, 4 if ends else 2)


def part_told(one: HeldWeight, tags: Sequence[str], words: Words) -> tuple[str, str, str]:
    """What it is, how its weight was found, and the weight."""
    parts = [words.say("place.side", side=one.side)]
    if one.quarter:
        parts.append(words.say(f"quarter.{one.quarter}"))
    if one.fraction != 1:
        parts.append(words.say("money.part_of", fraction=str(one.fraction)))
    what = capital(", ".join(parts))
    tag = tags[one.carcass] if one.carcass < len(tags) else ""
    if tag:
        what = words.say("bills.of_tag", what=what, tag=tag)
    waits = words.say("bills.not_weighed")
    weight = waits if one.pounds is None else _figure(one.pounds)
    return what, words.say(f"money.how_{one.source}"), weight


def _told(note: HangingNote, words: Words) -> Iterator[str]:
    whole, kind = note.hanging.pounds, words.say(f"forms.hangs_{note.hanging.kind}")
    some = [one.pounds for one in note.hanging.held if one.pounds is not None]
    if whole is not None:
        yield words.say("forms.hangs_whole", pounds=pounds_told(whole), kind=kind)
    elif some:
        yield words.say("forms.hangs_some", pounds=pounds_told(sum(some, Fraction(0))), kind=kind)
    else:
        yield words.say("forms.hangs_waits")
    if note.chilled_follows:
        yield words.say("forms.hangs_follows")
    for tag in note.held:
        yield words.say("forms.hangs_held", tag=tag)
    for tag in note.condemned:
        yield words.say("forms.hangs_condemned", tag=tag)
    if note.due is None:
        yield words.say("forms.hangs_settled")
    else:
        yield words.say("forms.hangs_due", day=day_text(note.due, words))
    if note.quote is not None:
        low, high = (money_text(one) for one in note.quote)
        yield words.say("forms.hangs_quote", low=low, high=high)


def how_found(hanging: HangingWeights, words: Words) -> Iterator[str]:
    """What is said beside the weights: that it is no bill, and what was halved or by table."""
    yield words.say("forms.hangs_no_bill")
    if any(one.source == "half_of_whole" for one in hanging.held):
        yield words.say("bills.note_half_of_whole")
    if hanging.by_table:
        yield words.say("bills.note_by_table")
