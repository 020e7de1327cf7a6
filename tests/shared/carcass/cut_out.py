"""A carcass cut on paper in a stated mix of styles, to hold a species file against a table.

Takes what the file says each cut takes, gives back its trimming, and refuses to take any part
more than once. It knows nothing of the planner.
"""

import sys
from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction

from shared.carcass.catalogue import Catalogue, Cut, Part, Way


def parts_of(catalogue: Catalogue, way: Way) -> dict[str, Fraction]:
    """The parts one way takes when made over its whole window, with the fraction of each."""
    found = {take.part: take.share for take in way.parts}
    if way.run is None:
        return found
    run = catalogue.runs[way.run.run]
    first, last = run.place(way.run.first), run.place(way.run.last)
    for part in catalogue.parts.values():
        on_lanes = part.run == run.code and part.lane in way.run.lanes
        if on_lanes and first <= run.place(part.stretch) <= last:
            found[part.code] = Fraction(1)
    return found


@dataclass
class CutOut:
    """Pounds of a whole carcass of `pounds`, chilled, cut in a stated mix."""

    catalogue: Catalogue
    pounds: Fraction
    taken: dict[str, Fraction] = field(default_factory=dict[str, Fraction])
    lean: dict[str, Fraction] = field(default_factory=dict[str, Fraction])
    fat: dict[str, Fraction] = field(default_factory=dict[str, Fraction])
    bone: dict[str, Fraction] = field(default_factory=dict[str, Fraction])

    def weight(self, part: Part) -> Fraction:
        """Pounds of a part in the whole carcass: both of it, where it comes one to a side."""
        return part.share * self.pounds

    def take(self, code: str, of: Fraction | str = "1", *, way: str = "") -> Fraction:
        """Pounds of a cut, trimmed, when this fraction of all there is goes into it."""
        cut = self.catalogue.cuts[code]
        fraction = Fraction(of)
        net = Fraction(0)
        for one in cut.ways if not way else (cut.way(way),):
            for part in parts_of(self.catalogue, one):
                net += self._take_part(cut, self.catalogue.parts[part], fraction)
        return net

    def take_lanes(self, code: str, lanes: Iterable[str], of: Fraction | str = "1") -> Fraction:
        """As `take`, of the cut's lanes in these stretches only."""
        cut = self.catalogue.cuts[code]
        net = Fraction(0)
        for part in parts_of(self.catalogue, cut.ways[0]):
            if self.catalogue.parts[part].stretch in lanes:
                net += self._take_part(cut, self.catalogue.parts[part], Fraction(of))
        return net

    def _take_part(self, cut: Cut, part: Part, fraction: Fraction) -> Fraction:
        self.taken[part.code] = self.taken.get(part.code, Fraction(0)) + fraction
        if self.taken[part.code] > 1:
            raise ValueError(f"{cut.code}: {part.code} is taken {self.taken[part.code]} times")
        gross = self.weight(part) * fraction
        trim = cut.trimming
        self._give(part.primal, gross, trim.lean, trim.fat, trim.bone)
        return gross * (1 - trim.lean - trim.fat - trim.bone - trim.skin - trim.loss)

    def _give(
        self, primal: str, pounds: Fraction, lean: Fraction, fat: Fraction, bone: Fraction
    ) -> None:
        for pool, share in ((self.lean, lean), (self.fat, fat), (self.bone, bone)):
            pool[primal] = pool.get(primal, Fraction(0)) + pounds * share

    def left(self, *primals: str) -> tuple[Fraction, Fraction, Fraction]:
        """Lean, fat and bone that no cut kept, of these primals: trimmings and whole parts."""
        found = [Fraction(0), Fraction(0), Fraction(0)]
        for primal in primals:
            for place, pool in enumerate((self.lean, self.fat, self.bone)):
                found[place] += pool.get(primal, Fraction(0))
        for part in self.catalogue.parts.values():
            if part.primal in primals and part.counted:
                pounds = self.weight(part) * (1 - self.taken.get(part.code, Fraction(0)))
                for place, share in enumerate((part.lean, part.fat, part.bone)):
                    found[place] += pounds * share
        lean, fat, bone = found
        return lean, fat, bone

    def ground(self, lean: Fraction | str, *primals: str) -> tuple[Fraction, Fraction]:
        """Pounds ground at this lean of what is left, and pounds of fat and bone beside it.

        Worked number: 8 lb of lean, 4 lb of fat and 3 lb of bone at 80 % give 10 lb ground and
        5 lb of fat and bone.
        """
        left_lean, left_fat, left_bone = self.left(*primals)
        meat = left_lean / Fraction(lean)
        fat_in = meat - left_lean
        if fat_in > left_fat:
            raise ValueError(f"{primals}: {float(fat_in):.1f} lb of fat asked, less there")
        return meat, left_fat - fat_in + left_bone

    def primal(self, *primals: str) -> Fraction:
        """Fraction of the carcass that lies in these primals."""
        return sum(
            (
                part.share
                for part in self.catalogue.parts.values()
                if part.primal in primals and part.counted
            ),
            Fraction(0),
        )


@dataclass(frozen=True)
class Line:
    """One line of a published table: what it prints and what the file gives, in one unit."""

    name: str
    published: Fraction
    ours: Fraction

    @property
    def off(self) -> Fraction:
        """How far ours lies from the published figure."""
        return self.ours - self.published

    @property
    def off_of_itself(self) -> Fraction:
        """The same over the published figure."""
        return self.off / self.published


def line(name: str, published: str, ours: Fraction) -> Line:
    """A line with its published figure as printed."""
    return Line(name, Fraction(published), ours)


def show(title: str, lines: Iterable[Line]) -> None:
    """Print every line with its error, as the table's check asks."""
    rows = [title]
    for one in lines:
        figures = f"{float(one.published):9.2f}{float(one.ours):9.2f}{float(one.off):+8.2f}"
        rows.append(f"  {one.name:<34}{figures}{float(one.off_of_itself):+8.1%}")
    sys.stdout.write("\n" + "\n".join(rows) + "\n")


def near(one: Line, of_itself: str, absolute: str) -> bool:
    """Whether a line is within either tolerance: a fraction of itself, or an absolute figure."""
    return abs(one.off_of_itself) <= Fraction(of_itself) or abs(one.off) <= Fraction(absolute)
