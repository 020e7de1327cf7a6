"""The plan's lines as rows of the block sheet, in words: what is cut, how, and whose it is."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from printing.block_row import Row
from printing.words import Words
from printing.words.place_words import capital
from shared.carcass.catalogue import Catalogue
from shared.cutting.breaking import BlockLine, PoolLine
from shared.cutting.order import Package
from shared.units import LENGTH_UNITS_PER_INCH, length_text, pounds_text, weight_text

NO_BREAK = "\u00a0"


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


def block_row(line: BlockLine, catalogue: Catalogue, words: Words, owner: str) -> Row:
    """One row of a side; `owner` is "" where the whole side is one owner's."""
    open_trim = catalogue.cuts[line.cut].kind == "to_trim"
    size, unit = _size(line, words)
    count = str(line.count) if line.count else "<1"
    return Row(
        count="" if open_trim else count,
        size=size,
        unit=unit,
        name=_name(line, catalogue, words),
        details=", ".join(_details(line, catalogue, words)),
        owner=owner,
        note=line.note,
        group=capital(words.name(catalogue.species, f"primal.{line.primal}")),
        differs=line.differs and not (open_trim and not line.note),
    )


def pool_row(line: PoolLine, catalogue: Catalogue, words: Words, owner: str) -> Row:
    """One row of the table at the end: pounds, lean, product, packages and owner."""
    species = catalogue.species
    name = [words.name(species, f"cut.{line.cut}", 2)]
    name += [words.name(species, f"finish.{one}") for one in line.finishes]
    from_fat = words.say("papers.lean_and_fat", lean=_lb(line.lean_ng), fat=_lb(line.fat_ng))
    details = [from_fat] if line.lean_ng or line.fat_ng else []
    if line.added is not None:
        stock = words.say(f"stock.{line.added}")
        added = words.say("stock.pounds_added", pounds=pounds_text(line.added_ng), stock=stock)
        details.append(added)
    if line.seasoning:
        name = line.seasoning.replace("_", " ")
        details.append(words.say("asked.seasoning", seasoning=name))
    details += _package(line.package, words)
    if line.from_rest:
        details.insert(0, words.say("papers.rest"))
    return Row(
        count=pounds_text(line.weight_ng).removesuffix(f"{NO_BREAK}lb"),
        size="" if line.lean is None else str(line.lean),
        unit=words.say("papers.lean"),
        name=capital(", ".join(name)),
        details=", ".join(details),
        owner=owner,
        note=line.note,
        group=words.say("papers.pounds"),
        differs=line.differs,
    )


def owner_names(question_owners: Mapping[int, str], own: Mapping[int, str]) -> dict[int, str]:
    """Each share's owner as the sheet names him."""
    return {number: own.get(number) or name for number, name in question_owners.items()}


def _name(line: BlockLine, catalogue: Catalogue, words: Words) -> str:
    species = catalogue.species
    parts = [words.name(species, f"cut.{line.cut}", line.count or 1)]
    if line.way:
        parts.append(words.name(species, f"way.{line.way}"))
    parts += [words.name(species, f"finish.{one}") for one in line.finishes]
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
        yield words.say("papers.long", line.count, length=_eighths(line.size))
    yield words.say("papers.about", weight=_lb(line.weight_ng))
    yield from _package(line.package, words)


def _cut_to_length(line: BlockLine, catalogue: Catalogue) -> bool:
    """Whether the plan sets where the saw goes: roasts, not slices or what comes whole."""
    cut = catalogue.cuts[line.cut]
    runs = [way.run for way in cut.ways if way.run is not None]
    roast = cut.kind == "roast" and line.thickness is None
    return roast and any(run.size == "piece" for run in runs)


def _eighths(length: int) -> str:
    """A length to the nearest eighth of an inch, as near as a block is marked: 5 55/64 is 5⅞."""
    eighth = LENGTH_UNITS_PER_INCH // 8
    return length_text((length + eighth // 2) // eighth * eighth)


def _package(package: Package, words: Words) -> list[str]:
    if package.weight is not None:
        return [words.say("package.weight", weight=weight_text(package.weight))]
    if package.pieces is not None:
        return [words.say("package.pieces", package.pieces)]
    return []


def _lb(nanograms: int) -> str:
    return pounds_text(nanograms)
