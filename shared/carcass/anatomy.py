"""Reads a species file into its Catalogue: runs, parts, cuts, finishes and the house's usual.

Each species is one TOML file beside this one, in `species/`. Fractions, lengths and weights are
texts ("4.73 %", "14 in", "92 lb"); TOML numbers with a point are refused everywhere.
"""

import tomllib
from collections.abc import Iterable, Mapping
from fractions import Fraction
from functools import cache, lru_cache
from importlib import resources
from typing import Literal, NoReturn, Protocol, TypeVar

from shared.carcass.catalogue import (
    Batch,
    Catalogue,
    Cut,
    CutKind,
    Finish,
    Part,
    PartTake,
    Per,
    PieceSize,
    Pool,
    Quarter,
    Ranges,
    Run,
    RunTake,
    SidesNeeded,
    Stretch,
    Tool,
    Trimming,
    UsualLine,
    Way,
)
from shared.carcass.figures import BadCatalogue, Table

__all__ = ["BadCatalogue", "catalogue", "read_catalogue", "species"]

_QUARTERS: tuple[Quarter, ...] = ("fore", "hind", "")
_PER: tuple[Per, ...] = ("side", "animal")
_TOOLS: tuple[Tool, ...] = ("saw", "knife", "slicer")
_POOLS: tuple[Pool, ...] = ("lean", "fat", "bones", "skin", "offal")
_SIZES: tuple[PieceSize, ...] = ("slice", "piece", "whole")
_KINDS: tuple[CutKind, ...] = (
    *("steaks", "roast", "whole", "ribs", "bones", "offal", "fat", "to_trim", "pool"),
)
_SIDES: tuple[SidesNeeded, ...] = ("one", "both", "joined")
_ANCHORS: tuple[Literal["head", "tail", ""], ...] = ("head", "tail", "")
_COUNTED = ("pieces", "pounds", "fraction", "all", "rest", "up_to", "at_least")
_WHOLE = ("pieces", "fraction", "all", "rest", "up_to", "at_least")
_AMOUNTS: Mapping[CutKind, tuple[str, ...]] = {
    "steaks": ("slices", *_COUNTED),
    "roast": _COUNTED,
    "whole": _WHOLE,
    "ribs": _COUNTED,
    "bones": _COUNTED,
    "offal": _COUNTED,
    "fat": _COUNTED,
    "to_trim": ("rest", "all", "fraction"),
    "pool": ("rest", "pounds"),
}
_ZERO = Fraction(0)
_ONE = Fraction(1)


class _Coded(Protocol):
    @property
    def code(self) -> str: ...


_Item = TypeVar("_Item", bound=_Coded)


@lru_cache(maxsize=1)
def species() -> tuple[str, ...]:
    """The species this package knows, by name, in the order of the alphabet."""
    folder = resources.files("shared.carcass").joinpath("species")
    names = (one.name for one in folder.iterdir())
    return tuple(sorted(name.removesuffix(".toml") for name in names if name.endswith(".toml")))


@cache
def catalogue(name: str) -> Catalogue:
    """The catalogue of one species, read once. KeyError for a species there is no file of."""
    if name not in species():
        raise KeyError(name)
    file = resources.files("shared.carcass").joinpath("species", f"{name}.toml")
    return read_catalogue(file.read_text(encoding="utf-8"), f"{name}.toml")


def read_catalogue(text: str, place: str) -> Catalogue:
    """The catalogue of a species file's text; BadCatalogue names table and key of a fault."""
    try:
        entries = tomllib.loads(text, parse_float=_refuse_point)
    except tomllib.TOMLDecodeError as error:
        raise BadCatalogue(place, "the file", "TOML", str(error)) from error
    top = Table(place, entries)
    read = Catalogue(
        species=top.text("species"),
        version=top.whole("version"),
        reference_side_ng=top.weight("reference_side").nanograms,
        reference_dressing=top.text("reference_dressing"),
        reference_live_ng=top.weight("reference_live").nanograms,
        primals=top.texts("primals"),
        runs=_by_code(place, "run", (_run(one) for one in top.tables("run"))),
        parts=_by_code(place, "part", (_part(one) for one in top.tables("part"))),
        cuts=_by_code(
            place, "cut", (_cut(one, order) for order, one in enumerate(top.tables("cut"), start=1))
        ),
        finishes=_by_code(place, "finish", (_finish(one) for one in top.tables("finish"))),
        usual=tuple(_usual(one) for one in top.tables("usual", called="cut")),
        ranges=_ranges(top.table("ranges")),
        kerf=_kerf(top.table("kerf")),
        leanest=top.fraction("leanest"),
        sources=top.table("sources").each_text(),
        usually_split=top.flag("usually_split", True),
    )
    top.close()
    return read


def _refuse_point(text: str) -> NoReturn:
    raise BadCatalogue("the file", "a number", 'a text, such as "0.5"', text)


def _by_code(place: str, kind: str, items: Iterable[_Item]) -> dict[str, _Item]:
    """Items by their code; the same code twice is a fault."""
    found: dict[str, _Item] = {}
    for item in items:
        if item.code in found:
            raise BadCatalogue(f"{place} [[{kind}]]", "code", "each code once", item.code)
        found[item.code] = item
    return found


def _run(table: Table) -> Run:
    """A run; its `source` and `band` hold for stretches that state none of their own."""
    source = table.text("source", "")
    band = table.fraction("band", _ZERO)
    stretches = tuple(_stretch(one, source, band) for one in table.tables("stretch"))
    run = Run(code=table.text("code"), lanes=table.texts("lanes"), stretches=stretches)
    table.close()
    return run


def _stretch(table: Table, source: str, band: Fraction) -> Stretch:
    read = Stretch(
        code=table.text("code"),
        length=table.length("length"),
        ribs=table.whole("ribs", 0),
        quarter=table.name("quarter", _QUARTERS, ""),
        band=table.fraction("band", band),
        source=table.text("source", source),
    )
    table.close()
    return read


def _part(table: Table) -> Part:
    """A part; `source` covers all its figures, `sources` single ones (share, lean, fat, ...)."""
    every = {"": table.text("source")} if table.has("source") else {}
    part = Part(
        code=table.text("code"),
        primal=table.text("primal"),
        per=table.name("per", _PER, "side"),
        share=table.fraction("share"),
        lean=table.fraction("lean", _ZERO),
        fat=table.fraction("fat", _ZERO),
        bone=table.fraction("bone", _ZERO),
        skin=table.fraction("skin", _ZERO),
        quarter=table.name("quarter", _QUARTERS, ""),
        run=table.text("run", ""),
        stretch=table.text("stretch", ""),
        lane=table.text("lane", ""),
        counted=table.flag("counted", True),
        divisible=table.flag("divisible", True),
        srm_from_30_months=table.flag("srm_from_30_months", False),
        needs_skin=table.flag("needs_skin", False),
        by_nature_trim=table.flag("by_nature_trim", False),
        bone_pool=table.text("bone_pool", "other"),
        fat_pool=table.text("fat_pool", "other"),
        loss=table.text("loss", ""),
        sources=every | table.table("sources").each_text(),
    )
    table.close()
    return part


def _cut(table: Table, order: int) -> Cut:
    """A cut; amounts are its kind's and its order is its place in the file unless stated."""
    kind = table.name("kind", _KINDS)
    amounts = table.texts("amounts", _AMOUNTS[kind])
    cut = Cut(
        code=table.text("code"),
        primal=table.text("primal"),
        kind=kind,
        ways=tuple(_way(one) for one in table.tables("way")),
        amounts=amounts,
        default_amount=table.name("default_amount", amounts, "rest" if "rest" in amounts else None),
        order=table.whole("order", order),
        tool=table.name("tool", _TOOLS, "saw"),
        thickness=table.optional_length("thickness"),
        least_thickness=table.optional_length("least_thickness"),
        piece_weight=table.optional_weight("piece_weight"),
        pieces_default=table.whole("pieces_default", 1),
        package_pieces=table.optional_whole("package_pieces"),
        package_weight=table.optional_weight("package_weight"),
        pools=table.names("pools", _POOLS),
        lean_percent=table.optional_fraction("lean_percent"),
        finishes=table.texts("finishes", ()),
        usual_finishes=table.texts("usual_finishes", ()),
        neighbours=table.texts("neighbours", ()),
        trimming=_trimming(table.table("trimming")),
        keeps_bone=table.flag("keeps_bone", True),
        imps=table.text("imps", ""),
        source=table.text("source", ""),
        batch=_batch(table.table("batch")) if table.has("batch") else None,
    )
    table.close()
    return cut


def _batch(table: Table) -> Batch:
    read = Batch(table.weight("smallest"), table.weight("bag"), table.text("source"))
    table.close()
    return read


def _trimming(table: Table) -> Trimming:
    read = Trimming(
        lean=table.fraction("lean", _ZERO),
        fat=table.fraction("fat", _ZERO),
        bone=table.fraction("bone", _ZERO),
        skin=table.fraction("skin", _ZERO),
        loss=table.fraction("loss", _ZERO),
        source=table.text("source", ""),
    )
    table.close()
    return read


def _way(table: Table) -> Way:
    way = Way(
        code=table.text("code"),
        run=_run_take(table.table("run")) if table.has("run") else None,
        parts=tuple(_part_take(one) for one in table.tables("parts", called="part")),
        sides=table.name("sides", _SIDES, "one"),
    )
    table.close()
    return way


def _run_take(table: Table) -> RunTake:
    first = table.text("first")
    take = RunTake(
        run=table.text("run"),
        lanes=table.texts("lanes"),
        first=first,
        last=table.text("last", first),
        size=table.name("size", _SIZES),
        first_share=table.fraction("first_share", _ONE),
        last_share=table.fraction("last_share", _ONE),
        piece_share=table.optional_fraction("piece_share"),
        anchor=table.name("anchor", _ANCHORS, ""),
    )
    table.close()
    return take


def _part_take(table: Table) -> PartTake:
    take = PartTake(part=table.text("part"), share=table.fraction("share", _ONE))
    table.close()
    return take


def _finish(table: Table) -> Finish:
    finish = Finish(
        code=table.text("code"),
        yield_=table.fraction("yield", _ONE),
        slices=table.flag("slices", False),
        charged=table.flag("charged", False),
        cured=table.flag("cured", False),
        source=table.text("source", ""),
        opened=table.whole("opened", 1),
        least_thickness=table.optional_length("least_thickness"),
        boneless=table.flag("boneless", False),
    )
    table.close()
    return finish


def _usual(table: Table) -> UsualLine:
    line = UsualLine(
        primal=table.text("primal"),
        cut=table.text("cut"),
        amount=table.text("amount"),
        count=table.whole("count", 0),
        thickness=table.optional_length("thickness"),
        piece_weight=table.optional_weight("piece_weight"),
        package_pieces=table.optional_whole("package_pieces"),
        package_weight=table.optional_weight("package_weight"),
        finishes=table.texts("finishes", ()),
    )
    table.close()
    return line


def _ranges(table: Table) -> Ranges:
    """Ranges; `source` covers all of them, `sources` single ones."""
    every = {"": table.text("source")} if table.has("source") else {}
    ranges = Ranges(
        dressing_usual=table.table("dressing_usual").each_range(),
        dressing_possible=table.range_of("dressing_possible"),
        shrink=table.fraction("shrink"),
        hang_days=table.days("hang_days"),
        fore_share=table.fraction("fore_share"),
        sources=every | table.table("sources").each_text(),
    )
    table.close()
    return ranges


def _kerf(table: Table) -> dict[Tool, int]:
    kerf: dict[Tool, int] = {tool: table.length(tool) for tool in _TOOLS}
    table.close()
    return kerf
