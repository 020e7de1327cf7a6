"""What happened to a lot, in words: "Hot weight, side 1: 98.5 lb"."""

from printing.words import Words
from printing.words.place_words import capital
from shared.shop.animals import Animal
from shared.shop.states import ANIMAL_STATES, ORDER_STATES
from shared.shop.trace import Trace, TraceEvent

MONEY = ("deposit", "payment", "refund", "write_off")


def about(event: TraceEvent, trace: Trace, words: Words) -> str:
    """What it happened to: the tag, the order and its owner, or the lot."""
    if event.subject == "animal":
        animal = next(one for one in trace.lot.animals if one.id == event.subject_id)
        return animal_name(animal, words)
    if event.subject == "order":
        order = next(one for one in trace.orders if one.id == event.subject_id)
        owner = order.owner or words.say("trace.nobody")
        return words.say("trace.order", number=order.number, owner=owner)
    return words.say("trace.lot", lot=trace.lot.number)


def animal_name(animal: Animal, words: Words) -> str:
    """Its tag; before it has one, which of the lot it is."""
    if animal.tag:
        return words.say("trace.tag", tag=animal.tag)
    return words.say("trace.animal", number=animal.index + 1)


def event_text(event: TraceEvent, trace: Trace, words: Words) -> str:
    """What happened, in a short sentence."""
    if event.what.startswith("weight"):
        return words.say(
            f"trace.{event.what}", what=_weighed(event, words), weight=event.data["weight"]
        )
    if event.what in ("loss_some", "loss_all"):
        return _loss(event, trace.lot.species, words)
    if event.what in ("bill", "credit"):
        return words.say(f"trace.{event.what}", 1, **event.data)
    if event.what in MONEY:
        means = words.say(f"bills.means_{event.data['means']}")
        return words.say(f"trace.{event.what}", 1, **{**event.data, "means": means})
    return _moved(event, trace, words)


def told_with_reason(event: TraceEvent, trace: Trace, words: Words) -> str:
    """What happened and why, where somebody said why: "Held: abscess"."""
    text = event_text(event, trace, words)
    return words.say("trace.with_reason", what=text, why=event.reason) if event.reason else text


def _weighed(event: TraceEvent, words: Words) -> str:
    what = words.say(f"trace.kind_{event.data['kind']}")
    if event.data["side"] != "0":
        what = words.say("trace.kind_side", what=what, side=event.data["side"])
    if event.data["quarter"]:
        what = words.say(f"trace.quarter_{event.data['quarter']}", what=what)
    return what


def _loss(event: TraceEvent, species: str, words: Words) -> str:
    data = event.data
    part = words.name(species, f"part.{data['part']}")
    what = words.say(f"trace.{event.what}", part=part, weight=data.get("weight", ""))
    if data["side"] != "0":
        what = words.say("trace.loss_side", what=what, side=data["side"])
    if data["void"]:
        what = words.say("trace.loss_void", what=what, void=data["void"])
    return capital(what)


def _moved(event: TraceEvent, trace: Trace, words: Words) -> str:
    """A state, or one of the other things done to a lot, an animal or an order."""
    regimes = {one.id: one.regime for one in trace.lot.animals}
    if event.what == "passed" and regimes.get(event.subject_id) == "custom":
        return words.say("trace.animal_accepted")
    key = f"trace.{event.subject}_{event.what}"
    if words.has(key):
        data = dict(event.data)
        count = data.pop("count", "") or data.get("head", "1")
        return words.say(key, int(count), **data)
    if event.what in (*ANIMAL_STATES, *ORDER_STATES):
        return capital(words.name("", f"state.{event.what}"))
    return words.say("trace.changed")
