"""Random lots: carcasses, owners and orders that crowd one line of the animal.

Each lot takes one run (or what lies on none) as its theme, so that its choices meet; in a part
of the lots the last line's count is set to what is about the most that fits, one more or less.
"""

import random
from collections.abc import Iterator
from dataclasses import dataclass

from tests.oracle.bundles import single_ways, unit_bundles
from tests.oracle.demands import demand, refusal
from tests.oracle.lot import Lot
from tests.oracle.model import fits
from tests.oracle.species_file import Json, Species, length_of

THICK = ("3/4 in", "1 in", "1 1/4 in", "1 1/2 in", "1 3/4 in", "2 in", "2 1/2 in", "3 in", "32 mm")
MOST_PIECES = 24
UNITS_PER_INCH = 203_200
AMOUNTS = (
    *(("slices",) * 40 + ("pieces",) * 30 + ("all",) * 12 + ("fraction",) * 10),
    *(("pounds",) * 8 + ("rest",) * 5 + ("up_to",) * 4 + ("at_least",) * 4),
)


@dataclass(frozen=True)
class Case:
    """A lot; `edge` is the line of which the solver found that one more or less decides."""

    seed: str
    order: Json
    edge: int | None


def cases(
    species: Species, name: str, seed: str, count: int, to_the_unit: float = 0.15
) -> Iterator[Case]:
    """So many random lots of a species, the same for the same seed."""
    for number in range(count):
        yield case(species, name, f"{name} {seed} {number}", to_the_unit)


def case(species: Species, name: str, seed: str, to_the_unit: float = 0.15) -> Case:
    """One random lot; of those at the edge so many are measured to the last unit of length."""
    draw = random.Random(seed)
    theme = draw.choice([*species.runs, *species.runs, "off"])
    order: Json = {
        "steelyard_order": 1,
        "species": name,
        "catalogue_version": species.toml["version"],
        "settings": _settings(draw, species, theme),
        "carcasses": [_carcass(draw, species, theme) for _ in range(draw.choice([1, 1, 1, 1, 2]))],
        "choices": [],
    }
    order["shares"] = _shares(draw, species, len(order["carcasses"]))
    cuts = _cuts_of(species, theme)
    peaceful = draw.random() < 0.75
    lot = Lot(order, species)
    for line in range(1, draw.choice([1, 2, 2, 3, 3, 4, 5, 6]) + 1):
        choice = _choice(draw, species, order, line, draw.choice(cuts))
        order["choices"].append(choice)
        if peaceful and not fits(lot.refresh()):
            order["choices"].pop()
    for line in range(20, 20 + draw.choice([0, 0, 0, 0, 1, 2])):
        order["choices"].append(_pool(draw, species, order, line))
    edge = _to_the_edge(draw, lot, cuts, to_the_unit) if draw.random() < 0.6 else None
    return Case(seed, order, edge)


def _cuts_of(species: Species, theme: str) -> list[Json]:
    """The cuts that take something of a run; "off": something that lies on none."""
    found: list[Json] = []
    for cut in species.cuts.values():
        for way in cut.get("way", []):
            runs = {species.parts[code].get("run", "") for code in species.parts_of(way)}
            if theme in runs or (theme == "off" and "" in runs):
                found.append(cut)
                break
    return found


def _settings(draw: random.Random, species: Species, theme: str) -> Json:
    settings: Json = {}
    if draw.random() < 0.25:
        settings["kerf_saw"] = draw.choice(["1/8 in", "3/32 in", "0 in", "2 mm"])
    if draw.random() < 0.1:
        settings["at_block"] = True
    if draw.random() < 0.6:
        settings["cut_alike"] = False
    if theme != "off" and draw.random() < 0.15:
        stretch = draw.choice(species.runs[theme])
        settings["own_lengths"] = {stretch.code: f"{draw.randint(4, 60)}/4 in"}
    return settings


def _weight(draw: random.Random, pounds: float) -> str:
    tenths = draw.randint(int(pounds * 7), int(pounds * 14))
    return f"{tenths // 10}.{tenths % 10} lb"


def _carcass(draw: random.Random, species: Species, theme: str) -> Json:
    carcass: Json = {"tag": str(draw.randint(1, 999))}
    side = float(species.reference / 453_592_370_000)
    kind = draw.choice(["chilled", "hot", "hot", "hot_whole", "booked", "live", ""])
    if kind in ("chilled", "hot"):
        carcass[kind] = [{"whole": _weight(draw, side)}, {"whole": _weight(draw, side)}]
        if draw.random() < 0.3:
            carcass[kind][0] = {"fore": _weight(draw, side / 2), "hind": _weight(draw, side / 2)}
    elif kind:
        carcass[kind] = _weight(draw, side * (3 if kind == "live" else 2))
    carcass["age"] = draw.choice(["under_30", "under_30", "30_and_over", "unknown"])
    carcass["regime"] = draw.choice(["custom", "inspected"])
    carcass["skin"] = draw.choice(["scalded", "scalded", "skinned"])
    carcass["split"] = draw.choice([True, False, None])
    # an order's own source, so that a new field leaves all other orders as they were
    apart = random.Random(f"dressing {carcass['tag']}")
    if apart.random() < 0.3:
        carcass["dressing"] = {
            "head": apart.choice(["on", "off"]),
            "kidneys": apart.choice(["in", "out"]),
            **({"feet": "off", "leaf": "in"} if apart.random() < 0.5 else {}),
        }
    if draw.random() < 0.03:
        carcass["condemned"] = True
    if draw.random() < 0.4:
        carcass["gone"] = [_gone(draw, species, theme) for _ in range(draw.choice([1, 1, 2]))]
    if theme != "off" and draw.random() < 0.3:
        stretch = draw.choice(species.runs[theme])
        length = int(stretch.length / 3175 * draw.uniform(0.8, 1.2))
        carcass["measured"] = [
            {
                "stretch": stretch.code,
                "side": draw.choice([1, 2]),
                "length": f"{max(1, length)}/64 in",
            }
        ]
    return carcass


def _gone(draw: random.Random, species: Species, theme: str) -> Json:
    codes = [
        code
        for code, part in species.parts.items()
        if part.get("run", "") == ("" if theme == "off" else theme)
    ]
    code = draw.choice(codes)
    animal = species.parts[code].get("per", "side") == "animal"
    gone: Json = {"part": code, "side": 0 if animal else draw.choice([1, 2]), "reason": "bruise"}
    if draw.random() < 0.3:
        gone["weight"] = f"{draw.randint(1, 40) / 4} lb"
        gone["before_scale"] = draw.random() < 0.5
        gone["before_chilled"] = not gone["before_scale"]
    return gone


def _shares(draw: random.Random, species: Species, carcasses: int) -> list[Json]:
    """Owners: wholes, halves, quarters and split sides."""
    quarters = any(stretch.quarter for run in species.runs.values() for stretch in run)
    pieces: list[list[Json]] = []
    for carcass in range(1, carcasses + 1):
        kinds = ["whole", "halves", "halves", "one_half", "split"]
        kind = draw.choice([*kinds, "quarters", "quarters", "quarters"] if quarters else kinds)
        sides = [{"carcass": carcass, "side": side} for side in (1, 2)]
        if kind == "whole":
            pieces.append(sides)
        elif kind == "halves":
            pieces += [[one] for one in sides]
        elif kind == "one_half":
            pieces.append([draw.choice(sides)])
        elif kind == "split":
            one, other = draw.sample(sides, 2)
            pieces += [[{**one, "fraction": "1/2"}], [{**one, "fraction": "1/2"}]]
            pieces += [[other]] if draw.random() < 0.5 else []
        else:
            pieces += [[{**one, "quarter": q}] for one in sides for q in ("fore", "hind")]
    owners = draw.randint(1, min(4, len(pieces)))
    shares: list[Json] = []
    for number in range(1, owners + 1):
        shares.append({"number": number, "owner": f"Owner {number}", "holdings": []})
    for place, piece in enumerate(pieces):
        mine = shares[place] if place < owners else draw.choice(shares)
        mine["holdings"] += piece
    if owners > 1 and draw.random() < 0.05:
        shares[-1]["leader"] = 1
    return shares


def _choice(draw: random.Random, species: Species, order: Json, line: int, cut: Json) -> Json:
    share = draw.choice(order["shares"])["number"]
    choice: Json = {"line": line, "share": share, "cut": cut["code"], "amount": "all"}
    ways = cut.get("way", [])
    if len(ways) > 1 and draw.random() < 0.3:
        choice["way"] = draw.choice(ways)["code"]
    sizes = {way["run"]["size"] for way in species.ways(choice) if way.get("run")}
    if "slice" in sizes and draw.random() < 0.8:
        least = length_of(cut.get("least_thickness", "0 in"))
        thick = [one for one in THICK if length_of(one) >= least or draw.random() < 0.02]
        if thick:
            choice["thickness"] = draw.choice(thick)
        demanding = [
            code
            for code, one in species.finishes.items()
            if "opened" in one or "least_thickness" in one
        ]
        if demanding and draw.random() < 0.15:
            choice["finishes"] = [draw.choice(demanding)]
    if "piece" in sizes:
        if draw.random() < 0.3:
            choice["ribs"] = draw.randint(1, 5)
        elif draw.random() < 0.7:
            choice["piece_weight"] = f"{draw.randint(2, 24) / 4} lb"
    choice["amount"] = _amount(draw, species, cut)
    if "pieces" in choice["amount"] and draw.random() < 0.06:
        held = draw.choice(order["shares"][share - 1]["holdings"])
        pin = {"carcass": held["carcass"], "side": held["side"], "count": 1}
        choice["pinned"] = [pin]
    return choice


def _amount(draw: random.Random, species: Species, cut: Json) -> Json | str:
    understood = species.amounts(cut)
    kinds = [kind for kind in AMOUNTS if kind in understood or draw.random() < 0.001]
    kind = draw.choice(kinds)
    if kind in ("all", "rest"):
        return kind
    if kind == "pounds":
        return {"pounds": f"{draw.randint(2, 60) / 2} lb"}
    if kind == "fraction":
        amount: Json = {"fraction": draw.choice(["1/2", "1/3", "1/4", "2/3"])}
        if draw.random() < 0.3:
            amount["of"] = "animal"
        return amount
    most = 8 if kind == "slices" else 3
    return {kind: draw.randint(1, most)}


def _pool(draw: random.Random, species: Species, order: Json, line: int) -> Json:
    """A line that draws on what is left for the grinder, the pot or the kettle."""
    cut = draw.choice([one for one in species.cuts.values() if one["kind"] == "pool"])
    share = draw.choice(order["shares"])["number"]
    choice: Json = {"line": line, "share": share, "cut": cut["code"], "amount": "rest"}
    if draw.random() < 0.7:
        side = int(species.reference / 453_592_370_000)
        most = max(2, side * 8 // draw.choice([1600, 800, 400, 80]))
        choice["amount"] = {"pounds": f"{draw.randint(1, most)}/8 lb"}
    if "lean" in cut["pools"] and draw.random() < 0.4:
        choice["lean"] = f"{draw.choice([50, 70, 75, 80, 85, 90, 97])} %"
    if "batch" in cut and draw.random() < 0.3:
        choice["seasoning"] = draw.choice(["sage", "pepper"])
    if "lean" in cut["pools"] and draw.random() < 0.2:
        choice["added"] = {"of": draw.choice(["pork_fat", "pork_trim", "beef_fat"])}
        if draw.random() < 0.5:
            choice["added"]["share"] = f"{draw.choice([10, 20, 50])} %"
    return choice


def _counted(lot: Lot) -> list[Json]:
    """Lines whose count could be set."""
    return [
        choice
        for choice in lot.order["choices"]
        if isinstance(choice["amount"], dict)
        and {"slices", "pieces"} & set(choice["amount"])
        and not choice.get("pinned")
        and single_ways(lot, choice)
        and not refusal(lot, choice)
    ]


def _to_the_edge(draw: random.Random, lot: Lot, cuts: list[Json], to_the_unit: float) -> int | None:
    """Set the count of one line to the most that fits beside the others, or to one more."""
    choices: list[Json] = lot.order["choices"]
    for line in range(7, 12):
        if _counted(lot.refresh()):
            break
        choices.append(_choice(draw, lot.species, lot.order, line, draw.choice(cuts)))
        if not _counted(lot.refresh()):
            choices.pop()
    counted = _counted(lot.refresh())
    if not counted:
        return None
    choice = draw.choice(counted)
    (kind,) = choice["amount"]
    count = max(1, about_the_most(lot, choice))
    for _ in range(4):
        if count > MOST_PIECES:
            break
        choice["amount"] = {kind: count}
        stands = fits(lot)
        choice["amount"] = {kind: count + 1 if stands else max(1, count - 1)}
        if fits(lot) != stands:
            most = count if stands else count - 1
            choice["amount"] = {kind: most + draw.choice([0, 1])}
            if most and draw.random() < to_the_unit:
                choice["amount"] = {kind: most}
                _to_the_unit(draw, lot, choice)
            return choice["line"]
        count = choice["amount"][kind]
    choice["amount"] = {kind: min(count, MOST_PIECES)}
    return None


def _to_the_unit(draw: random.Random, lot: Lot, choice: Json) -> None:
    """Measure one stretch so that the lot fits to the last 1/203,200 in, or lacks just that."""
    side = draw.choice(lot.sides_of(choice["share"]))
    takes = [way["run"] for way in single_ways(lot, choice) if way.get("run")]
    windows = [(take["run"], lot.window(choice["share"], side, take, "expected")) for take in takes]
    places = [(run, place) for run, one in windows if one for place in one.stretches]
    if not places:
        return
    run, place = draw.choice(places)
    stretch = lot.species.runs[run][place]
    measured: list[Json] = lot.order["carcasses"][side[0] - 1].setdefault("measured", [])
    measured.append({"stretch": stretch.code, "side": side[1], "length": ""})

    def stands(units: int) -> bool:
        text = f"{units // UNITS_PER_INCH} {units % UNITS_PER_INCH}/{UNITS_PER_INCH} in"
        measured[-1]["length"] = text
        return fits(Lot(lot.order, lot.species))

    low, high = UNITS_PER_INCH // 4, lot.sides[side].lengths["most"][stretch.code]
    if not stands(high) or stands(low):
        measured.pop()
        return
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if stands(middle) else (middle, high)
    stands(draw.choice([low, high, high]))


def about_the_most(lot: Lot, choice: Json) -> int:
    """Units that fit beside what the other lines take of the same lanes, by length alone."""
    taken: dict[object, int] = {}
    parts: dict[object, float] = {}
    for other in lot.choices:
        if other["line"] != choice["line"]:
            for need in demand(lot, other, "most").needs:
                if need.bundles:
                    bundle = need.bundles[0]
                    for stick in bundle.sticks:
                        for lane in stick.lanes:
                            size = need.total * (stick.size + stick.kerf)
                            taken[lane] = taken.get(lane, 0) + size
                    for cell, share in bundle.cells:
                        parts[cell] = parts.get(cell, 0) + float(share) * need.total
    total = 0
    for bundle in unit_bundles(lot, choice, "most"):
        counts = [
            max(0, stick.hi - stick.lo - taken.get(lane, 0)) // max(1, stick.size + stick.kerf)
            for stick in bundle.sticks
            for lane in stick.lanes
        ]
        counts += [int(max(0.0, 1 - parts.get(c, 0)) / float(s)) for c, s in bundle.cells]
        total += max(0, min([bundle.at_most(), *counts]))
    return total
