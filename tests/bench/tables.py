"""Every published table beside the forecast's figures: `python -m tests.bench tables`.

Each line is printed with its error and the range shown for it. A table's settings (three at most:
fatness, closeness of trim, where the loin breaks) are fixed by its own page; the functions that
cut its carcass on paper say how it was read.
"""

import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shared.carcass.spread import band
from tests.shared.carcass import test_beef_tables as beef
from tests.shared.carcass import test_deer_tables as deer
from tests.shared.carcass import test_goat_tables as goat
from tests.shared.carcass import test_lamb_tables as lamb
from tests.shared.carcass import test_pork_tables as pork
from tests.shared.carcass.cut_out import CutOut, Line, line

KINDS = (
    ("waste", ("fat", "suet", "other", "skin", "bone,", "shrink")),
    ("pool", ("ground", "stew", "trim")),
    (
        "ribs",
        ("short ribs", "back ribs", "spareribs", "style ribs", "ribs & flank", "breast", "flank,"),
    ),
    ("bones", ("feet", "shank", "neck", "kidney &")),
    ("whole", ("bacon", "ham,", "flank steak", "skirt", "brisket", "pastrami", "whole")),
    ("steaks", ("steak", "chop", "rack", "loin, ", "loin", "rib", "flat")),
)


@dataclass(frozen=True)
class Published:
    """A table, what was set for it, what of it was taken, and its lines in one unit.

    `own` is the species' own source. `carcass` is the whole in that unit, for the absolute bound.
    `reasons` are the lines known to lie outside, each with why.
    """

    code: str
    taken: str
    settings: str
    lines: tuple[Line, ...]
    carcass: Fraction
    own: bool = False
    primals: bool = False
    reasons: tuple[tuple[str, str], ...] = ()

    def outside(self) -> list[Line]:
        """Lines that lie outside the bounds for this kind of table."""
        return [one for one in self.lines if not self.holds(one)]

    def holds(self, one: Line) -> bool:
        """Whether one line is within its bounds."""
        off = abs(one.ours - one.published)
        if self.primals:
            wide = any(it in one.name for it in ("loin", "belly", "side", "rack"))
            points = 5 if wide and self.code.startswith(("P", "L")) else Fraction("2.5")
            return off / self.carcass * 100 <= points
        if self.own:
            return off <= max(one.published / 50, Fraction(1, 5))
        return off <= max(one.published / 4, self.carcass / 500)

    def missed_by_range(self, *, left_out: bool = False) -> list[Line]:
        """Lines whose printed figure the range shown doesn't hold.

        `left_out`: with a range made without this table's own pairs.
        """
        without = self.code if left_out else ""
        return [
            one
            for one in self.lines
            if abs(one.ours - one.published) > one.ours * band(kind_of(one.name), without)
        ]

    def halved(self) -> list[Line]:
        """Lines forecast at less than half of what is printed."""
        return [one for one in self.lines if one.ours < one.published / 2]


def kind_of(name: str) -> str:
    """The kind of cut a printed line is, by its words; a roast where none speaks otherwise."""
    for kind, words in KINDS:
        if any(word in name for word in words):
            return kind
    return "roast"


def tables() -> tuple[Published, ...]:
    """All tables checked, own tables first in each species."""
    return (*_beef(), *_pork(), *_lamb(), *_goat(), *_deer())


def _beef() -> Iterator[Published]:
    yield Published(
        "B-A",
        "all 32 lines",
        "none: the file's own",
        tuple(beef.table_b_a()),
        Fraction(715),
        own=True,
    )
    yield Published(
        "B-B",
        "chuck and rib, the lines that could be read",
        "none",
        tuple(beef.table_b_b()),
        Fraction(806),
        reasons=(("rib fat/bone", "9.3 lb leave B-A's bone-in roast no room for its bones"),),
    )
    primals = _beef_primals()
    for code, taken in (("B-C", "all primals"), ("B-D", "primal shares only")):
        found = tuple(one for one in primals if one.name.startswith(code))
        yield Published(code, taken, "none", found, Fraction(100), primals=True)


def _beef_primals() -> list[Line]:
    out = CutOut(beef.BEEF, Fraction(100))
    named = (
        ("B-C chuck", "27", ("chuck",)),
        ("B-C round", "22", ("round",)),
        ("B-C short loin", "10", ("short_loin",)),
        ("B-C sirloin", "7", ("sirloin",)),
        ("B-C flank", "5", ("flank",)),
        ("B-C brisket", "4", ("brisket",)),
        ("B-C shank", "3", ("shank",)),
        ("B-C short plate", "10", ("plate",)),
        ("B-C rib", "9", ("rib",)),
        ("B-D chuck", "29", ("chuck", "shank")),
        ("B-D rib", "9", ("rib",)),
        ("B-D loin", "16", beef.LOIN),
        ("B-D round", "22", ("round",)),
        ("B-D brisket, plate, flank", "19", beef.THIN),
        ("B-D misc", "5", ("variety",)),
    )
    found = [line(name, figure, 100 * out.primal(*which)) for name, figure, which in named]
    suet = 100 * beef.BEEF.parts["kidney_fat"].share
    return [*found, line("B-C kidney fat", "3", suet)]


def _pork() -> Iterator[Published]:
    own = tuple(Line(one.name, one.printed, one.ours) for one in pork.table_b())
    yield Published("P-B", "all 27 lines", "none: the file's own", own, pork.HOT_B, own=True)
    yield Published(
        "P-A",
        "all 22 lines but the 22.0 lb of loose fat, which sets fatness",
        "fatness by its loose fat; the loin break by its loin",
        tuple(Line(one.name, one.printed, one.ours) for one in pork.table_a()),
        pork.HOT_A,
        reasons=tuple(pork.OUTSIDE_A.items()),
    )
    setting = pork.Setting.fixed_by(Fraction(15, 100), Fraction(19, 100))
    ours = pork.moved_shares(setting)
    ribs = pork.pounds("spareribs") / pork.HOT_B * setting.lean_scale
    feet = pork.pounds(*pork.FEET[1:]) / pork.HOT_B
    lines = (
        line("leg", "22", 100 * ours["ham"]),
        line("belly", "16", 100 * (ours["side"] - ribs)),
        line("spareribs", "3", 100 * ribs),
        line("picnic", "10", 100 * ours["picnic"]),
        line("Boston butt", "9", 100 * ours["butt"]),
        line("jowl", "2", 100 * pork.pounds("jowl") / pork.HOT_B),
        line("feet, tail, neck bones", "4", 100 * feet),
    )
    yield Published(
        "P-C",
        "primals; loin and collar set the two settings",
        "fatness by its collar, fatback and clear plate; the loin break by its loin",
        lines,
        Fraction(100),
        primals=True,
    )


def _lamb() -> Iterator[Published]:
    yield Published(
        "L-A", "five retail lines; its primals come back exactly", "none: the file's own",
        tuple(lamb.table_l_a()), Fraction(75), own=True,
    )  # fmt: skip
    yield Published(
        "L-D",
        "all lines but shrink",
        "none; half of each item it pairs",
        tuple(lamb.cutout_of_the_market()),
        Fraction(100),
        reasons=(
            ("fat & bone, fore", "its racks weigh 9 % in all; the trim lies with its breast"),
            ("fat & bone, hind", "L-A's loin and leg are trimmed closer than the report's"),
            ("ground, hind", "hind shanks of boneless legs are ground here, of no line there"),
        ),
    )


def _goat() -> Iterator[Published]:
    out = CutOut(goat.GOAT, Fraction("39.5"))
    pairs = zip(goat.PRIMALS, goat.SPANISH, goat.BOER_ANGORA, strict=True)
    mean = tuple(
        Line(it, (Fraction(one) + Fraction(two)) / 200 * out.pounds, out.primal(it) * out.pounds)
        for it, one, two in pairs
    )
    yield Published(
        "G-B", "mean of rows 2 and 3; row 1 adds up to 102.9", "none: the file's own",
        mean, out.pounds, own=True,
    )  # fmt: skip
    yield Published(
        "G-A", "all eight lines", "none", tuple(goat.cornell()), Fraction("39.5"),
        reasons=(("leg roasts", "23.8 % of its carcass, where the table's legs hold 31 %"),),
    )  # fmt: skip


def _deer() -> Iterator[Published]:
    bare = [line(f"{lb} lb, boneless", meat, deer.boneless(lb)) for lb, _, meat in deer.MICHIGAN]
    bone = [line(f"{lb} lb, bone-in", meat, deer.bone_in(lb)) for lb, meat, _ in deer.MICHIGAN]
    yield Published(
        "V-A", "field-dressed 50 to 200 lb, both columns", "none", (*bare, *bone), Fraction(50)
    )


def report(found: Sequence[Published]) -> Iterator[str]:
    """Each table with its lines, then one line for each table."""
    for table in found:
        yield f"{table.code}: {table.taken}. Settings: {table.settings}."
        yield f"  {'line':<34}{'printed':>9}{'ours':>9}{'error':>8}   {'range shown':>15}"
        reasons = dict(table.reasons)
        for one in table.lines:
            spread = band(kind_of(one.name))
            low, high = one.ours * (1 - spread), one.ours * (1 + spread)
            held = " " if low <= one.published <= high else "!"
            why = "" if table.holds(one) else f"  outside: {reasons.get(one.name, '')}"
            figures = f"{float(one.published):9.2f}{float(one.ours):9.2f}"
            shown = f"{float(low):7.2f}-{float(high):7.2f}{held}"
            yield f"  {one.name:<34}{figures}{float(one.off_of_itself):+8.1%}   {shown}{why}"
    yield f"{'table':<6}{'lines':>7}{'outside':>9}{'in range':>10}{'left out':>10}"
    for table in found:
        total = len(table.lines)
        held, apart = (
            total - len(table.missed_by_range(left_out=without)) for without in (False, True)
        )
        row = f"{table.code:<6}{total:>7}{len(table.outside()):>9}"
        yield row + f"{held / total:>10.0%}{apart / total:>10.0%}"


def main(argv: Sequence[str] | None = None) -> int:
    """Print every table; 1 where a line lies outside without its reason."""
    found = tables()
    sys.stdout.write("\n".join(report(found)) + "\n")
    told = all({one.name for one in it.outside()} <= set(dict(it.reasons)) for it in found)
    return int(not told)
