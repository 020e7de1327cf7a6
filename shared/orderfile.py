"""The open order file, version 1: one lot with its carcasses, shares and choices, as JSON.

Quantities are text with a unit or whole numbers; a JSON number with a point is refused, so are
keys the format does not know. A wrong file gives faults with pointer, line and column.
Carcasses count from 1 in the file and from 0 in the values.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from importlib.resources import files

from shared import orderfile_codes
from shared.carcass import anatomy
from shared.carcass.carcass import Carcass, Gone, Holding, Measured, Share, SideWeights
from shared.carcass.dressing import USUAL, Dressing
from shared.cutting.order import (
    Added,
    Amount,
    AmountKind,
    Choice,
    Package,
    Question,
    Settings,
    Stock,
)
from shared.orderfile_fields import VERSION, Fields, FileFault, shown
from shared.orderfile_places import BadJsonError, Node, child, children, parse
from shared.orderfile_writing import write

__all__ = ["VERSION", "FileFault", "OrderFile", "read", "read_form", "schema", "write"]

MOST_CARCASSES = 100
MOST_COUNT = 9999
_CARCASS_KEYS = (
    *("tag", "sex", "age", "skin", "regime", "split", "live", "hot", "hot_whole", "chilled"),
    *("booked", "gone", "measured", "condemned", "dressing"),
)
_CHOICE_KEYS = (
    *("way", "thickness", "piece_weight", "ribs", "lean", "package", "finishes", "note"),
    *("pinned", "made", "seasoning", "added"),
)
_STOCK: tuple[Stock, ...] = ("pork_fat", "pork_trim", "beef_fat")
_COUNTED: tuple[AmountKind, ...] = ("pieces", "slices", "up_to", "at_least")


@dataclass(frozen=True, slots=True)
class OrderFile:
    """What an order file holds: the species, the version of its catalogue, and the question."""

    species: str
    catalogue_version: int
    question: Question


def read(text: str) -> OrderFile | tuple[FileFault, ...]:
    """The order file in a text, or everything that is wrong with it, in the order of the file.

    `{"steelyard_order": 1, "species": "pork", "carcasses": [{}], "shares": [...],
    "choices": [...]}` is the least it holds. Codes of cuts, parts and stretches are held
    against the species.
    """
    return _read(text, by_species=True)


def read_form(text: str) -> OrderFile | tuple[FileFault, ...]:
    """As `read`, for a species this package has no file of: codes are taken as they stand."""
    return _read(text, by_species=False)


def _read(text: str, by_species: bool) -> OrderFile | tuple[FileFault, ...]:
    try:
        root = parse(text)
    except BadJsonError as slip:
        place = slip.place
        fault = FileFault(place.pointer, place.line, place.column, slip.code, "", slip.found)
        return (fault,)
    fields = Fields()
    found = _file(fields, root)
    if by_species and not fields.faults:
        if found.species in anatomy.species():
            orderfile_codes.check(fields, root, anatomy.catalogue(found.species))
        else:
            place = (child(root, "species") or root).place
            fields.fault(place, "not_one_of", " | ".join(anatomy.species()), found.species)
    if fields.faults:
        return tuple(sorted(fields.faults, key=lambda one: (one.line, one.column)))
    return found


def schema() -> Mapping[str, object]:
    """The JSON Schema (2020-12) of the order file.

    It can't say what the reader says besides: that equal keys are refused, that shares name
    carcasses and choices name shares of this file, that numbers are not used twice, that
    fractions are at most 1 and that the shares of a side add up to no more than the side.
    """
    text = files("shared").joinpath("orderfile_schema.json").read_text(encoding="utf-8")
    return json.loads(text)


def _file(fields: Fields, root: Node) -> OrderFile:
    required = ("steelyard_order", "species", "carcasses", "shares", "choices")
    got = fields.members(root, required, ("catalogue_version", "settings"))
    version = got.get("steelyard_order")
    if version is not None and (version.value != VERSION or version.value is True):
        fields.fault(version.place, "unknown_version", str(VERSION), shown(version))
    species = fields.code(got.get("species"))
    carcasses = fields.items(
        got.get("carcasses"), lambda node: _carcass(fields, node, species), 1, MOST_CARCASSES
    )
    shares = fields.items(got.get("shares"), lambda node: _share(fields, node), 1)
    choices = fields.items(got.get("choices"), lambda node: _choice(fields, node), 0, 5000)
    settings = _settings(fields, got.get("settings"))
    if not fields.faults:
        _check_shares(fields, got["shares"], shares, len(carcasses))
        _check_choices(fields, got["choices"], choices, shares, len(carcasses))
    catalogue_version = fields.whole(got.get("catalogue_version"), 1, MOST_COUNT, 1)
    question = Question(carcasses, shares, choices, settings)
    return OrderFile(species, catalogue_version, question)


def _settings(fields: Fields, node: Node | None) -> Settings:
    if node is None:
        return Settings()
    keys = ("kerf_saw", "kerf_slicer", "at_block", "own_lengths", "cut_alike")
    got = fields.members(node, (), keys)
    alike = got.get("cut_alike")
    own: list[tuple[str, int]] = []
    lengths = got.get("own_lengths")
    if lengths is not None and not isinstance(lengths.value, dict):
        fields.fault(lengths.place, "wrong_kind", "object", shown(lengths))
    elif lengths is not None and isinstance(lengths.value, dict):
        for stretch, length in lengths.value.items():
            own.append((stretch, fields.length(length) or 0))
    return Settings(
        kerf_saw=fields.length(got.get("kerf_saw"), 0),
        kerf_slicer=fields.length(got.get("kerf_slicer"), 0),
        at_block=fields.flag(got.get("at_block")),
        own_lengths=tuple(own),
        cut_alike=True if alike is None else fields.flag(alike),
    )


def _carcass(fields: Fields, node: Node, species: str) -> Carcass:
    got = fields.members(node, (), _CARCASS_KEYS)
    split = got.get("split")
    return Carcass(
        species=species,
        tag=fields.text(got.get("tag")),
        sex=fields.text(got.get("sex")),
        age=fields.one_of(got.get("age"), ("under_30", "30_and_over", "unknown"), "unknown"),
        skin=fields.one_of(got.get("skin"), ("scalded", "skinned", "unknown"), "unknown"),
        regime=fields.one_of(got.get("regime"), ("inspected", "custom"), "custom"),
        split=None if split is None or split.value is None else fields.flag(split),
        live=fields.weight(got.get("live")),
        hot=_sides(fields, got.get("hot")),
        chilled=_sides(fields, got.get("chilled")),
        hot_whole=fields.weight(got.get("hot_whole")),
        booked=fields.weight(got.get("booked")),
        gone=fields.items(got.get("gone"), lambda one: _gone(fields, one)),
        measured=fields.items(got.get("measured"), lambda one: _measured(fields, one)),
        condemned=fields.flag(got.get("condemned")),
        dressing=_dressing(fields, got.get("dressing")),
    )


def _dressing(fields: Fields, node: Node | None) -> Dressing:
    if node is None:
        return USUAL
    got = fields.members(node, (), ("head", "feet", "leaf", "kidneys"))
    return Dressing(
        head=fields.one_of(got.get("head"), ("on", "off"), ""),
        feet=fields.one_of(got.get("feet"), ("on", "off"), ""),
        leaf=fields.one_of(got.get("leaf"), ("in", "out"), ""),
        kidneys=fields.one_of(got.get("kidneys"), ("in", "out"), ""),
    )


def _sides(fields: Fields, node: Node | None) -> tuple[SideWeights, SideWeights]:
    if node is None:
        return (SideWeights(), SideWeights())
    sides = fields.items(node, lambda one: _side(fields, one), 2, 2)
    return (sides[0], sides[1]) if len(sides) == 2 else (SideWeights(), SideWeights())


def _side(fields: Fields, node: Node) -> SideWeights:
    got = fields.members(node, (), ("whole", "fore", "hind"))
    return SideWeights(*(fields.weight(got.get(key)) for key in ("whole", "fore", "hind")))


def _gone(fields: Fields, node: Node) -> Gone:
    got = fields.members(
        node, ("part", "side"), ("weight", "reason", "before_scale", "before_chilled")
    )
    return Gone(
        part=fields.code(got.get("part")),
        side=fields.whole(got.get("side"), 0, 2),
        weight=fields.weight(got.get("weight")),
        reason=fields.text(got.get("reason")),
        before_scale=fields.flag(got.get("before_scale")),
        before_chilled=fields.flag(got.get("before_chilled")),
    )


def _measured(fields: Fields, node: Node) -> Measured:
    got = fields.members(node, ("stretch", "side", "length"))
    return Measured(
        stretch=fields.code(got.get("stretch")),
        side=fields.whole(got.get("side"), 1, 2),
        length=fields.length(got.get("length")) or 0,
    )


def _share(fields: Fields, node: Node) -> Share:
    got = fields.members(node, ("number", "owner", "holdings"), ("leader",))
    leader = got.get("leader")
    return Share(
        number=fields.whole(got.get("number"), 1, MOST_COUNT),
        owner=fields.text(got.get("owner")),
        holdings=fields.items(got.get("holdings"), lambda one: _holding(fields, one), 1),
        leader=None
        if leader is None or leader.value is None
        else fields.whole(leader, 1, MOST_COUNT),
    )


def _holding(fields: Fields, node: Node) -> Holding:
    got = fields.members(node, ("carcass", "side"), ("quarter", "fraction"))
    return Holding(
        carcass=fields.whole(got.get("carcass"), 1, MOST_CARCASSES) - 1,
        side=fields.whole(got.get("side"), 1, 2),
        quarter=fields.one_of(got.get("quarter"), ("fore", "hind", ""), ""),
        fraction=fields.share(got.get("fraction")) or Fraction(1),
    )


def _choice(fields: Fields, node: Node) -> Choice:
    got = fields.members(node, ("line", "share", "cut", "amount"), _CHOICE_KEYS)
    ribs = got.get("ribs")
    return Choice(
        line=fields.whole(got.get("line"), 1, 999_999),
        share=fields.whole(got.get("share"), 1, MOST_COUNT),
        cut=fields.code(got.get("cut")),
        amount=_amount(fields, got.get("amount")),
        way=fields.code(got.get("way")),
        thickness=fields.length(got.get("thickness")),
        piece_weight=fields.weight(got.get("piece_weight")),
        ribs=None if ribs is None else fields.whole(ribs, 1, 30),
        lean=fields.share(got.get("lean")),
        package=_package(fields, got.get("package")),
        finishes=fields.items(got.get("finishes"), fields.code, 0, 20),
        note=fields.text(got.get("note")),
        pinned=fields.items(got.get("pinned"), lambda one: _pin(fields, one)),
        made=fields.flag(got.get("made")),
        seasoning=fields.code(got.get("seasoning")),
        added=_added(fields, got.get("added")),
    )


def _added(fields: Fields, node: Node | None) -> Added | None:
    if node is None:
        return None
    got = fields.members(node, ("of",), ("share",))
    return Added(fields.one_of(got.get("of"), _STOCK, "pork_fat"), fields.share(got.get("share")))


def _amount(fields: Fields, node: Node | None) -> Amount:
    if node is None:
        return Amount("rest")
    if not isinstance(node.value, dict):
        words: tuple[AmountKind, ...] = ("all", "rest")
        return Amount(fields.one_of(node, words, "rest"))
    got = fields.members(node, (), (*_COUNTED, "pounds", "fraction", "of"))
    kinds = [key for key in got if key != "of"]
    if len(kinds) != 1 or ("of" in got and kinds != ["fraction"]):
        asked = " | ".join((*_COUNTED, "pounds", "fraction"))
        fields.fault(node.place, "one_amount", asked, " | ".join(got))
        return Amount("rest")
    for kind in _COUNTED:
        if kind in got:
            return Amount(kind, count=fields.whole(got[kind], 1, MOST_COUNT))
    if "pounds" in got:
        return Amount("pounds", weight=fields.weight(got["pounds"]))
    return Amount(
        "fraction",
        fraction=fields.share(got["fraction"]),
        of=fields.one_of(got.get("of"), ("side", "animal"), "side"),
    )


def _package(fields: Fields, node: Node | None) -> Package:
    if node is None:
        return Package()
    got = fields.members(node, (), ("pieces", "weight"))
    if len(got) > 1:
        fields.fault(node.place, "one_amount", "pieces | weight", " | ".join(got))
    pieces = got.get("pieces")
    return Package(
        pieces=None if pieces is None else fields.whole(pieces, 1, MOST_COUNT),
        weight=fields.weight(got.get("weight")),
    )


def _pin(fields: Fields, node: Node) -> tuple[int, int, int]:
    got = fields.members(node, ("carcass", "side", "count"))
    return (
        fields.whole(got.get("carcass"), 1, MOST_CARCASSES) - 1,
        fields.whole(got.get("side"), 0, 2),
        fields.whole(got.get("count"), 0, MOST_COUNT),
    )


def _field(node: Node, *keys: str) -> Node:
    """The first of the fields that is there; the node itself when none is."""
    if isinstance(node.value, dict):
        for key in keys:
            if key in node.value:
                return node.value[key]
    return node


def _check_shares(fields: Fields, node: Node, shares: Sequence[Share], carcasses: int) -> None:
    """Numbers are used once, leaders are there, and no quarter is owned more than wholly."""
    numbers = [share.number for share in shares]
    owned: dict[tuple[int, int, str], Fraction] = {}
    for index, (share, at) in enumerate(zip(shares, children(node), strict=True)):
        if share.number in numbers[:index]:
            fields.fault(_field(at, "number").place, "number_twice", "", str(share.number))
        if share.leader is not None and (
            share.leader not in numbers or share.leader == share.number
        ):
            fields.fault(_field(at, "leader").place, "no_such_share", "", str(share.leader))
        for holding, held_at in zip(share.holdings, children(_field(at, "holdings")), strict=True):
            if holding.carcass >= carcasses:
                found = str(holding.carcass + 1)
                where = _field(held_at, "carcass").place
                fields.fault(where, "no_such_carcass", f"1..{carcasses}", found)
                continue
            for quarter in (holding.quarter,) if holding.quarter else ("fore", "hind"):
                key = (holding.carcass, holding.side, quarter)
                owned[key] = owned.get(key, Fraction(0)) + holding.fraction
                if owned[key] > 1:
                    where = _field(held_at, "fraction").place
                    fields.fault(where, "owned_twice", quarter, str(owned[key]))
                    break


def _check_choices(
    fields: Fields, node: Node, choices: Sequence[Choice], shares: Sequence[Share], carcasses: int
) -> None:
    """Line numbers are used once; shares and pinned carcasses are there."""
    numbers = {share.number for share in shares}
    seen: set[int] = set()
    for choice, at in zip(choices, children(node), strict=True):
        if choice.line in seen:
            fields.fault(_field(at, "line").place, "number_twice", "", str(choice.line))
        seen.add(choice.line)
        if choice.share not in numbers:
            fields.fault(_field(at, "share").place, "no_such_share", "", str(choice.share))
        pins = children(child(at, "pinned"))
        for (carcass, _, _), pin in zip(choice.pinned, pins, strict=True):
            if carcass >= carcasses:
                where = _field(pin, "carcass").place
                fields.fault(where, "no_such_carcass", f"1..{carcasses}", str(carcass + 1))
