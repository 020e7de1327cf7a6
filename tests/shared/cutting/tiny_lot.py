"""An invented animal small enough to reckon by head: a back of 30 in, a ham of 13 in, few parts.

A side weighs 100 lb, so every length is as written here.
"""

from dataclasses import replace
from fractions import Fraction
from functools import cache

from shared.carcass.carcass import Carcass, Holding, Share, SideWeights
from shared.carcass.catalogue import (
    Catalogue,
    Cut,
    Part,
    PartTake,
    Ranges,
    Run,
    RunTake,
    Stretch,
    Trimming,
    Way,
)
from shared.cutting.order import Amount, Choice, Question
from shared.units import NG_PER_LB, Weight

INCH = 203_200
SAW = INCH // 16
COUNTED = ("pieces", "slices", "pounds", "fraction", "all", "rest", "up_to", "at_least")


def inches(text: str) -> int:
    return int(Fraction(text) * INCH)


def pounds(count: int) -> Weight:
    return Weight(count, "lb", 0)


def _stretch(
    code: str, length: str, ribs: int = 0, quarter: str = "", band: str = "1/20"
) -> Stretch:
    assert quarter in ("", "fore", "hind")
    return Stretch(code, inches(length), ribs, quarter, Fraction(band), "invented")


def _part(
    code: str, pounds_: str, run: str = "", stretch: str = "", lane: str = "", **more: object
) -> Part:
    plain = Part(
        code=code,
        primal="back" if run == "back" else "other",
        per="side",
        share=Fraction(pounds_) / 100,
        lean=Fraction(7, 10),
        fat=Fraction(2, 10),
        bone=Fraction(1, 10),
        skin=Fraction(0),
        quarter="",
        run=run,
        stretch=stretch,
        lane=lane,
    )
    return replace(plain, **more)  # type: ignore[arg-type]


def _run_way(
    code: str, run: str, lanes: str, first: str, last: str, size: str, **more: object
) -> Way:
    sides = more.pop("sides", "one")
    take = RunTake(run, tuple(lanes.split()), first, last, size, **more)  # type: ignore[arg-type]
    return Way(code, take, (), sides)  # type: ignore[arg-type]


def _cut(code: str, *ways: Way, kind: str = "steaks", **more: object) -> Cut:
    plain = Cut(code, "back", "steaks", ways, COUNTED, "rest", 1, thickness=inches("3/4"))
    return replace(plain, kind=kind, **more)  # type: ignore[arg-type]


def _parts() -> list[Part]:
    lane = [
        _part(f"{name}_{place}", weight, "back", place, name)
        for name, weights in (
            ("meat", {"blade": "7", "rib": "11", "loin": "7", "sirloin": "5"}),
            ("bone", {"blade": "2", "rib": "3", "loin": "2", "sirloin": "1"}),
            ("tender", {"loin": "1", "sirloin": "1"}),
        )
        for place, weight in weights.items()
    ]
    ham = [
        _part("ham_butt", "8", "ham", "butt", "meat"),
        _part("ham_centre", "10", "ham", "centre", "meat"),
        _part("ham_shank", "6", "ham", "shank", "meat"),
    ]
    return [
        *lane,
        *ham,
        _part("brisket", "6"),
        _part("heart", "1", per="animal"),
        _part("tongue", "1", per="animal", divisible=False, loss="not_kept"),
        _part(
            "loose",
            "10",
            by_nature_trim=True,
            lean=Fraction(8, 10),
            fat=Fraction(2, 10),
            bone=Fraction(0),
        ),
    ]


def _cuts() -> list[Cut]:
    return [*_back_cuts(), *_ham_cuts(), *_other_cuts()]


def _back_cuts() -> list[Cut]:
    whole_back = ("blade", "sirloin", "slice")
    return [
        _cut(
            "chops",
            _run_way("back", "back", "meat bone", *whole_back),
            least_thickness=inches("3/8"),
            neighbours=("boneless_chops",),
        ),
        _cut("boneless_chops", _run_way("back", "back", "meat", *whole_back), tool="knife"),
        _cut("t_bones", _run_way("loin", "back", "meat bone tender", "loin", "sirloin", "slice")),
        _cut(
            "tenderloin",
            _run_way("plain", "back", "tender", "loin", "sirloin", "whole"),
            kind="whole",
        ),
        _cut("back_ribs", _run_way("plain", "back", "bone", "rib", "rib", "whole"), kind="ribs"),
        _cut(
            "rib_roast",
            _run_way("small_end", "back", "meat bone", "rib", "rib", "piece", anchor="tail"),
            kind="roast",
        ),
        _cut(
            "loin_roast",
            _run_way("loin", "back", "meat bone", "loin", "sirloin", "piece"),
            kind="roast",
        ),
        _cut(
            "crown",
            _run_way("racks", "back", "meat bone", "rib", "rib", "whole", sides="both"),
            kind="roast",
        ),
        _cut(
            "saddle",
            _run_way("loin", "back", "meat bone tender", "loin", "loin", "slice", sides="joined"),
        ),
    ]


def _ham_cuts() -> list[Cut]:
    return [
        _cut(
            "whole_ham",
            _run_way("plain", "ham", "meat", "butt", "shank", "whole"),
            kind="whole",
            neighbours=("ham_ends", "half_ham"),
        ),
        _cut("ham_steaks", _run_way("centre", "ham", "meat", "centre", "centre", "slice")),
        _cut(
            "half_ham",
            _run_way(
                "butt_half", "ham", "meat", "butt", "centre", "whole", last_share=Fraction(1, 2)
            ),
            _run_way(
                "shank_half", "ham", "meat", "centre", "shank", "whole", first_share=Fraction(1, 2)
            ),
            kind="whole",
        ),
        _cut(
            "ham_ends",
            _run_way("butt", "ham", "meat", "butt", "butt", "whole"),
            _run_way("shank", "ham", "meat", "shank", "shank", "whole"),
            kind="roast",
        ),
        _cut("grind_ham", _run_way("ham", "ham", "meat", "butt", "shank", "piece"), kind="to_trim"),
    ]


def _other_cuts() -> list[Cut]:
    return [
        _cut("brisket", Way("plain", None, (PartTake("brisket", Fraction(1)),)), kind="whole"),
        _cut(
            "brisket_half",
            Way("plain", None, (PartTake("brisket", Fraction(1, 2)),)),
            kind="roast",
            trimming=Trimming(lean=Fraction(1, 10), loss=Fraction(1, 20)),
        ),
        _cut("tongue", Way("plain", None, (PartTake("tongue", Fraction(1)),)), kind="offal"),
        _cut("ground", kind="pool", pools=("lean", "fat"), lean_percent=Fraction(8, 10)),
        _cut("stew", kind="pool", pools=("lean",)),
        _cut("lard", kind="pool", pools=("fat",)),
    ]


@cache
def catalogue() -> Catalogue:
    """The invented species."""
    back = (
        _stretch("blade", "7"),
        _stretch("rib", "11", ribs=7),
        _stretch("loin", "7"),
        _stretch("sirloin", "5"),
    )
    ham = (_stretch("butt", "4"), _stretch("centre", "19/4"), _stretch("shank", "17/4"))
    runs = (Run("back", ("meat", "bone", "tender"), back), Run("ham", ("meat",), ham))
    return Catalogue(
        species="tiny",
        version=1,
        reference_side_ng=100 * NG_PER_LB,
        reference_dressing="",
        reference_live_ng=250 * NG_PER_LB,
        primals=("back", "other"),
        runs={run.code: run for run in runs},
        parts={part.code: part for part in _parts()},
        cuts={cut.code: cut for cut in _cuts()},
        finishes={},
        usual=(),
        ranges=Ranges(
            {"": (Fraction(1), Fraction(1))},
            (Fraction(1), Fraction(1)),
            Fraction(0),
            (1, 2),
            Fraction(1, 2),
        ),
        kerf={"saw": SAW, "knife": 0, "slicer": 0},
        leanest=Fraction(95, 100),
        sources={},
    )


def carcass(**more: object) -> Carcass:
    side = SideWeights(pounds(100))
    plain = Carcass("tiny", age="under_30", skin="scalded", chilled=(side, side))
    return replace(plain, **more)  # type: ignore[arg-type]


def choice(
    line: int, cut: str, kind: str = "all", count: int = 0, share: int = 1, **more: object
) -> Choice:
    amount = more.pop("amount", None) or Amount(kind, count=count)  # type: ignore[arg-type]
    return Choice(line, share, cut, amount, **more)  # type: ignore[arg-type]


def lot(*choices: Choice, sides: int = 1, **more: object) -> Question:
    """One owner of one side, or of both sides, of one animal."""
    held = tuple(Holding(0, side) for side in range(1, sides + 1))
    return Question((carcass(**more),), (Share(1, "Owner", held),), choices)


def shared(*choices: Choice, holdings: tuple[tuple[Holding, ...], ...], **more: object) -> Question:
    """Several owners of one animal, numbered from 1."""
    shares = tuple(Share(n, f"Owner {n}", held) for n, held in enumerate(holdings, start=1))
    return Question((carcass(**more),), shares, choices)
