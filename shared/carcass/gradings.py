"""The measures taken of a carcass, by species, and the working figures they give."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from shared.carcass.grades import (
    Graded,
    Muscling,
    beef_cuts,
    beef_yield_grade,
    fat_free_lean,
    fat_free_lean_unribbed,
    grade_factor,
    lamb_cuts,
    lamb_yield_grade,
    lean_percent,
    pork_grade,
)

Measures = Mapping[str, str]
# What can be measured, in the order it is asked; inches, square inches, per cent.
ASKED: dict[str, tuple[str, ...]] = {
    "beef": ("fat", "ribeye", "kph"),
    "lamb": ("fat", "ribeye", "body_wall"),
    "pork": ("last_rib_fat", "tenth_rib_fat", "ribeye"),
}
MOST = {"kph": Decimal(10), "ribeye": Decimal(30)}
MOST_INCHES = Decimal(5)
MUSCLING: tuple[Muscling, ...] = ("thin", "average", "thick")


@dataclass(frozen=True, slots=True)
class WorkingFigures:
    """What the measures give; None where something isn't measured.

    Calculated, not a USDA grade; never on a label. `lean` is fat-free lean in per cent.
    """

    grade: Graded | None = None
    cuts: Graded | None = None
    lean: Decimal | None = None


def read_measure(name: str, text: str) -> Decimal | None:
    """A measure as typed, like ".40" or "12"; None where it can't be one.

    Fat is told in inches below 5, a ribeye in square inches up to 30, kidney fat in per cent.
    """
    plain = text.strip().rstrip("%").strip().replace(",", ".")
    if not plain or not plain.replace(".", "", 1).isdigit():
        return None
    found = Decimal(plain)
    return found if 0 < found <= MOST.get(name, MOST_INCHES) or found == 0 else None


def working_figures(species: str, measures: Measures, hot: Decimal | None) -> WorkingFigures:
    """The figures of what is measured; `hot` is the hot carcass in pounds.

    A beef of 735 lb with 0.40 in, 12.0 sq in and 2.5 %: yield grade 2.953, a 2.
    """
    known = {name: Decimal(text) for name, text in measures.items() if name != "muscling"}
    if species == "beef":
        return _beef(known, hot)
    if species == "lamb":
        return _lamb(known, hot)
    if species == "pork":
        return _pork(known, measures.get("muscling", ""), hot)
    return WorkingFigures()


def _beef(known: Mapping[str, Decimal], hot: Decimal | None) -> WorkingFigures:
    if hot is None or not {"fat", "ribeye", "kph"} <= known.keys() or not known["ribeye"]:
        return WorkingFigures()
    figures = known["fat"], known["kph"], hot, known["ribeye"]
    return WorkingFigures(beef_yield_grade(*figures), beef_cuts(*figures))


def _lamb(known: Mapping[str, Decimal], hot: Decimal | None) -> WorkingFigures:
    if "fat" not in known:
        return WorkingFigures()
    grade = lamb_yield_grade(known["fat"])
    if hot is None or not known.get("ribeye") or "body_wall" not in known:
        return WorkingFigures(grade)
    return WorkingFigures(grade, lamb_cuts(hot, known["fat"], known["body_wall"], known["ribeye"]))


def _pork(known: Mapping[str, Decimal], muscling: str, hot: Decimal | None) -> WorkingFigures:
    last = known.get("last_rib_fat")
    said: Muscling | None = None
    if muscling in MUSCLING:
        said = MUSCLING[MUSCLING.index(muscling)]
    grade = pork_grade(last, said) if last is not None and said is not None else None
    pounds = None
    if hot is not None and known.get("ribeye") and "tenth_rib_fat" in known:
        pounds = fat_free_lean(hot, known["ribeye"], known["tenth_rib_fat"])
    elif hot is not None and last is not None:
        pounds = fat_free_lean_unribbed(hot, last)
    lean = lean_percent(pounds, hot) if pounds is not None and hot is not None else None
    return WorkingFigures(grade, None, lean)


def meat_factor(species: str, graded: Sequence[tuple[Measures, Decimal | None]]) -> Fraction:
    """What the calculated grades of a lot's carcasses multiply the meat of its forecast by.

    Only a beef's yield grade moves it (see `grades.grade_factor`), and only when each carcass of
    the lot was measured: the mean. The beef of `working_figures` gives 1.0345; without measures 1.
    """
    if species != "beef" or not graded:
        return Fraction(1)
    factors: list[Fraction] = []
    for measures, hot in graded:
        found = working_figures(species, measures, hot).grade
        if found is None:
            return Fraction(1)
        factors.append(grade_factor(found))
    return sum(factors, Fraction(0)) / len(factors)
