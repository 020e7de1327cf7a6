"""The plan's lines as rows of the block sheet, in words: what is cut, how, and whose it is."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from printing.block_row import Row
from printing.words import Words
from printing.words.choice_words import finishes_text
from printing.words.lengths import nearest_eighth
from printing.words.place_words import capital
from shared.carcass.catalogue import Catalogue
from shared.cutting.breaking import BlockLine, PoolLine
from shared.cutting.order import Package
from shared.units import length_text, pounds_text, weight_text

NO_BREAK = "\u00a0"
LONGEST_HEADING = 32


def merged(lines: Iterable[BlockLine], catalogue: Catalogue) -> list[BlockLine]:
    """Lines of one choice on one side as one row: 2 strip steaks here and 2 there are 4.

    Ways stay apart, except of what goes to the grinder: that is one row whatever it comes from.
    """
    rows: dict[tuple[int, int, int, str], BlockLine] = {}
    for line in lines:
        open_trim = catalogue.cuts[line.cut].kind == "to_trim"
        key = (line.carcass, line.side, line.line, "" if open_trim else line.way)
        known = rows.get(key)
        if known is None:
            rows[key] = replace(line, count=0, way="") if open_trim else line
            continue
        count = 0 if open_trim else known.count + line.count
        rows[key] = replace(known, count=count, weight_ng=known.weight_ng + line.weight_ng)
    return list(rows.values())


def together(lines: Iterable[BlockLine], catalogue: Catalogue) -> list[tuple[BlockLine, ...]]:
    """What is cut alike of one cut on one side, for all its owners: one row of the sheet.

    Owners come in the order of their place from the head end, where the plan gives each one.
    Worked number: 4 T-bones of one owner and 4 of another, all 1 in, are one row of 8.
    """
    rows: dict[tuple[object, ...], list[BlockLine]] = {}
    for line in lines:
        open_trim = catalogue.cuts[line.cut].kind == "to_trim"
        alike = () if open_trim else (line.way, line.thickness, line.piece_weight, line.ribs)
        asked = () if open_trim else (line.package, line.finishes, line.from_rest, line.differs)
        key = (line.carcass, line.side, line.primal, line.cut, line.note, *alike, *asked)
        rows.setdefault(key, []).append(line)
    return [tuple(sorted(row, key=_from_head)) for row in rows.values()]


def block_row(
    lines: Sequence[BlockLine],
    catalogue: Catalogue,
    words: Words,
    owners: Mapping[int, str],
    also: Words | None = None,
) -> Row:
    """One row of a side; `owners` is empty where the whole side is one owner's."""
    line = _sum(lines)
    open_trim = catalogue.cuts[line.cut].kind == "to_trim"
    sizes = [_size(line, one) for one in (words, also) if one]
    size, unit = sizes[0][0], "\n".join(dict.fromkeys(one for _, one in sizes))
    count = str(line.count) if line.count else "<1"
    if not line.count and size:  # one piece, smaller than was asked: "1 <3 lb", not "<1 3 lb"
        count, size = "1", f"<{size}"
    several = len(lines) > 1 and bool(owners)
    told = [", ".join(_details(line, catalogue, one)) for one in (words, also) if one]
    names = [_name(line, catalogue, one) for one in (words, also) if one]
    primals = [
        capital(one.name(catalogue.species, f"primal.{line.primal}"))
        for one in (words, also)
        if one
    ]
    return Row(
        count="" if open_trim else count,
        size=size,
        unit=unit,
        name=names[0],
        details=told[0],
        owner=_whose(lines, owners, [words, *([also] if also else [])], open_trim=open_trim),
        note=line.note,
        group=_heading(primals),
        differs=line.differs and not (open_trim and not line.note),
        second=names[-1] if also else "",
        second_details=told[-1] if also else "",
        several=several,
    )


def pool_row(
    line: PoolLine,
    catalogue: Catalogue,
    words: Words,
    owner: str,
    also: Words | None = None,
) -> Row:
    """One row of the table at the end: pounds, lean, product, packages and owner."""
    names = [_pool_name(line, catalogue, one) for one in (words, also) if one]
    told = [", ".join(_pool_details(line, one)) for one in (words, also) if one]
    leans = [one.say("papers.lean") for one in (words, also) if one]
    return Row(
        count=pounds_text(line.weight_ng).removesuffix(f"{NO_BREAK}lb"),
        size="" if line.lean is None else str(line.lean),
        unit="\n".join(dict.fromkeys(leans)),
        name=names[0],
        details=told[0],
        owner=owner,
        note=line.note,
        group="",
        differs=line.differs,
        second=names[-1] if also else "",
        second_details=told[-1] if also else "",
        count_unit="lb",
    )


def _short(name: str) -> str:
    """A name kept on one line where it is no longer than a few words."""
    return name.replace(" ", NO_BREAK) if len(name) <= LONGEST_HEADING else name


def owner_names(question_owners: Mapping[int, str], own: Mapping[int, str]) -> dict[int, str]:
    """Each share's owner as the sheet names him."""
    return {number: own.get(number) or name for number, name in question_owners.items()}


def _pool_name(line: PoolLine, catalogue: Catalogue, words: Words) -> str:
    species = catalogue.species
    name = [words.name(species, f"cut.{line.cut}", 2)]
    name += [words.name(species, f"finish.{one}") for one in line.finishes]
    return capital(", ".join(name))


def _pool_details(line: PoolLine, words: Words) -> Iterable[str]:
    if line.from_rest:
        yield words.say("papers.rest")
    if line.lean_ng and line.fat_ng:  # lard or stew is all of one kind
        yield words.say("papers.lean_and_fat", lean=_lb(line.lean_ng), fat=_lb(line.fat_ng))
    yield from pool_stock(line, words)
    yield from _package(line.package, words)


def pool_stock(line: PoolLine, words: Words) -> Iterable[str]:
    """What is ground in of a line of the table, "4.0 lb of it pork trim", and its seasoning."""
    if line.added is not None:
        stock = words.say(f"stock.{line.added}")
        yield words.say("stock.pounds_added", pounds=pounds_text(line.added_ng), stock=stock)
    if line.seasoning:
        name = line.seasoning.replace("_", " ")
        yield words.say("asked.seasoning", seasoning=name)


def _heading(primals: Sequence[str]) -> str:
    """A primal in each language, one under the other where they are long."""
    each = list(dict.fromkeys(primals))
    both = " · ".join(each)
    return both if len(both) <= LONGEST_HEADING else "\n".join(each)


def _from_head(line: BlockLine) -> tuple[bool, int, int]:
    return (line.start is None, line.start or 0, line.share)


def _sum(lines: Sequence[BlockLine]) -> BlockLine:
    """The lines of a row as one; a length only where all have it."""
    first = lines[0]
    sizes = {one.size for one in lines}
    return replace(
        first,
        count=sum(one.count for one in lines),
        weight_ng=sum(one.weight_ng for one in lines),
        size=first.size if len(sizes) == 1 else None,
    )


def _whose(
    lines: Sequence[BlockLine],
    owners: Mapping[int, str],
    languages: Sequence[Words],
    *,
    open_trim: bool,
) -> str:
    """The owners of a row, each with his count, in the order they lie where the plan says so."""
    if not owners:
        return ""
    if len(lines) == 1 or open_trim:
        return ", ".join(dict.fromkeys(owners[one.share] for one in lines))
    each = [f"{one.count or '<1'}{NO_BREAK}{_short(owners[one.share])}" for one in lines]
    if any(one.start is None for one in lines):
        return ", ".join(each)
    told = " / ".join(dict.fromkeys(one.say("block.from_head") for one in languages))
    return f"{told}: {', '.join(each)}"


def _name(line: BlockLine, catalogue: Catalogue, words: Words) -> str:
    species = catalogue.species
    parts = [words.name(species, f"cut.{line.cut}", line.count or 1)]
    if line.way:
        parts.append(words.name(species, f"way.{line.way}"))
    parts += finishes_text(line.cut, line.finishes, catalogue, words)
    return capital(", ".join(parts))


def _size(line: BlockLine, words: Words) -> tuple[str, str]:
    """The figure beside the count: thickness, roast weight or ribs."""
    if line.thickness is not None:
        number, _, unit = length_text(line.thickness).rpartition(NO_BREAK)
        return number, unit
    if line.piece_weight is not None:
        number, _, unit = weight_text(line.piece_weight).rpartition(NO_BREAK)
        return number, unit
    if line.ribs is not None:
        return str(line.ribs), words.say("papers.ribs", line.ribs)
    return "", ""


def _details(line: BlockLine, catalogue: Catalogue, words: Words) -> Iterable[str]:
    if line.from_rest:
        yield words.say("papers.rest")
    if _cut_to_length(line, catalogue) and line.size is not None:
        yield words.say("papers.long", line.count, length=nearest_eighth(line.size))
    yield words.say("papers.about", weight=_lb(line.weight_ng))
    yield from _package(line.package, words)


def _cut_to_length(line: BlockLine, catalogue: Catalogue) -> bool:
    """Whether the plan sets where the saw goes: roasts, not slices or what comes whole."""
    cut = catalogue.cuts[line.cut]
    runs = [way.run for way in cut.ways if way.run is not None]
    roast = cut.kind == "roast" and line.thickness is None
    return roast and any(run.size == "piece" for run in runs)


def _package(package: Package, words: Words) -> list[str]:
    if package.weight is not None:
        return [words.say("package.weight", weight=weight_text(package.weight))]
    if package.pieces is not None:
        return [words.say("package.pieces", package.pieces)]
    return []


def _lb(nanograms: int) -> str:
    return pounds_text(nanograms)
