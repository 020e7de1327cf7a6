"""A question written as an order file: canonical JSON, the same text for the same values.

Fields that hold what they would hold if absent are left out. Lengths are written exactly: in
64ths of an inch where they come out, else in whole 203,200ths.
"""

import json
from collections.abc import Mapping, Sequence
from fractions import Fraction
from typing import TypeAlias

from shared.carcass.carcass import Carcass, Gone, Holding, Share, SideWeights
from shared.cutting.order import Amount, Choice, Package, Question, Settings
from shared.orderfile_fields import VERSION
from shared.units import LENGTH_UNITS_PER_INCH, Weight

Json: TypeAlias = "str | int | bool | Sequence[Json] | Mapping[str, Json] | None"
Members: TypeAlias = dict[str, Json]
Held: TypeAlias = "Json | Weight"


def write(species: str, question: Question, catalogue_version: int = 1) -> str:
    """The question as the text of an order file; `read` gives the same question back."""
    root: Members = {
        "steelyard_order": VERSION,
        "species": species,
        "catalogue_version": catalogue_version,
    }
    settings = _settings(question.settings)
    if settings:
        root["settings"] = settings
    root["carcasses"] = [_carcass(one) for one in question.carcasses]
    root["shares"] = [_share(one) for one in question.shares]
    root["choices"] = [_choice(one) for one in question.choices]
    return json.dumps(root, indent=1, ensure_ascii=False) + "\n"


def length_words(length: int) -> str:
    """A length exactly: 152,400 is "3/4 in"."""
    inches, rest = divmod(length, LENGTH_UNITS_PER_INCH)
    part = Fraction(rest, LENGTH_UNITS_PER_INCH)
    if not rest:
        return f"{inches} in"
    return f"{inches} {part} in" if inches else f"{part} in"


def share_words(share: Fraction) -> str:
    """A fraction: "1/2", and "1" for the whole."""
    return str(share)


def percent_words(share: Fraction) -> str:
    """A fraction as per cent where it comes out in nine decimals, else as a fraction."""
    billionths = share * 100 * 10**9
    if billionths.denominator != 1:
        return str(share)
    whole, rest = divmod(billionths.numerator, 10**9)
    return f"{whole}.{rest:09d}".rstrip("0").rstrip(".") + " %"


def _kept(members: Mapping[str, Held]) -> Members:
    """The members that say something: no None, False, "" or empty list."""
    out: Members = {}
    for key, value in members.items():
        if isinstance(value, Weight):
            out[key] = value.text()
        elif value is not None and value is not False and value != "" and value != ():
            out[key] = value
    return out


def _length(length: int | None) -> str | None:
    return None if length is None else length_words(length)


def _settings(settings: Settings) -> Members:
    out = _kept(
        {
            "kerf_saw": _length(settings.kerf_saw),
            "kerf_slicer": _length(settings.kerf_slicer),
            "at_block": settings.at_block,
        }
    )
    if settings.own_lengths:
        out["own_lengths"] = {code: length_words(length) for code, length in settings.own_lengths}
    if not settings.cut_alike:
        out["cut_alike"] = False
    return out


def _carcass(carcass: Carcass) -> Members:
    out = _kept(
        {
            "tag": carcass.tag,
            "sex": carcass.sex,
            "age": carcass.age if carcass.age != "unknown" else "",
            "skin": carcass.skin if carcass.skin != "unknown" else "",
            "regime": carcass.regime if carcass.regime != "custom" else "",
            "live": carcass.live,
            "hot": _sides(carcass.hot),
            "hot_whole": carcass.hot_whole,
            "chilled": _sides(carcass.chilled),
            "booked": carcass.booked,
            "condemned": carcass.condemned,
            "gone": tuple(_gone(one) for one in carcass.gone),
            "measured": tuple(
                {"stretch": one.stretch, "side": one.side, "length": length_words(one.length)}
                for one in carcass.measured
            ),
            "dressing": dict(carcass.dressing.said()),
        }
    )
    if carcass.split is not None:
        out["split"] = carcass.split
    return out


def _sides(sides: tuple[SideWeights, SideWeights]) -> Json:
    if sides == (SideWeights(), SideWeights()):
        return None
    return tuple(_kept({"whole": one.whole, "fore": one.fore, "hind": one.hind}) for one in sides)


def _gone(gone: Gone) -> Members:
    out: Members = {"part": gone.part, "side": gone.side}
    more: Mapping[str, Held] = {
        "weight": gone.weight,
        "reason": gone.reason,
        "before_scale": gone.before_scale,
        "before_chilled": gone.before_chilled,
    }
    return out | _kept(more)


def _share(share: Share) -> Members:
    out: Members = {
        "number": share.number,
        "owner": share.owner,
        "holdings": [_holding(one) for one in share.holdings],
    }
    return out | _kept({"leader": share.leader})


def _holding(holding: Holding) -> Members:
    out: Members = {"carcass": holding.carcass + 1, "side": holding.side}
    fraction = share_words(holding.fraction) if holding.fraction != 1 else ""
    return out | _kept({"quarter": holding.quarter, "fraction": fraction})


def _choice(choice: Choice) -> Members:
    out: Members = {
        "line": choice.line,
        "share": choice.share,
        "cut": choice.cut,
        "amount": _amount(choice.amount),
    }
    more: dict[str, Held] = {
        "way": choice.way,
        "thickness": _length(choice.thickness),
        "piece_weight": choice.piece_weight,
        "ribs": choice.ribs,
        "lean": None if choice.lean is None else percent_words(choice.lean),
        "finishes": choice.finishes,
        "note": choice.note,
        "pinned": tuple(
            {"carcass": carcass + 1, "side": side, "count": count}
            for carcass, side, count in choice.pinned
        ),
        "made": choice.made,
        "seasoning": choice.seasoning,
    }
    if choice.added is not None:
        share = choice.added.share
        part = None if share is None else percent_words(share)
        more["added"] = _kept({"of": choice.added.of, "share": part})
    package = _package(choice.package)
    if package:
        more["package"] = package
    return out | _kept(more)


def _package(package: Package) -> Members:
    return _kept({"pieces": package.pieces, "weight": package.weight})


def _amount(amount: Amount) -> Json:
    if amount.kind == "pounds" and amount.weight is not None:
        return {"pounds": amount.weight.text()}
    if amount.kind == "fraction" and amount.fraction is not None:
        of: Members = {} if amount.of == "side" else {"of": amount.of}
        return {"fraction": share_words(amount.fraction), **of}
    if amount.kind in ("all", "rest"):
        return amount.kind
    return {amount.kind: amount.count}
