"""Holds the lamb file against published cut-outs and the counts of plants' and farms' sheets."""

from fractions import Fraction

import pytest

from shared.carcass.anatomy import catalogue
from shared.units import read_length, scaled_length
from tests.shared.carcass.cut_out import CutOut, Line, line, near, show

LAMB = catalogue("lamb")


def test_k_state_primals_of_a_75_lb_lamb_come_back() -> None:
    # K-State lamb guide, 75-lb hot carcass; the flank's 5 % holds kidney and kidney fat
    out = CutOut(LAMB, Fraction(100))
    lines = [
        line("leg", "33", 100 * out.primal("leg")),
        line("shoulder", "23", 100 * out.primal("shoulder")),
        line("rack", "15", 100 * out.primal("rack")),
        line("loin", "12", 100 * out.primal("loin")),
        line("breast", "8", 100 * out.primal("breast")),
        line("flank", "5", 100 * out.primal("flank")),
        line("foreshank", "4", 100 * out.primal("shank")),
    ]
    show("L-A primals, % of the carcass", lines)
    assert sum(one.published for one in lines) == 100
    assert [one.name for one in lines if one.off] == []


def table_l_a() -> list[Line]:
    """The guide's retail is read as a mix of styles, since it lies between bone-in and boneless.

    A quarter of the shoulders as chops, the rest boneless; four legs in eleven whole, the others
    boneless with the shank left out; rack and loin all chops, breast all riblets.
    """
    out = CutOut(LAMB, Fraction(75))
    shoulder = (
        out.take("blade_chop", "1/4")
        + out.take("arm_chop", "1/4")
        + out.take("boneless_shoulder", "3/4")
    )
    leg = out.take("whole_leg", "4/11") + out.take("boneless_leg", "7/11")
    return [
        line("leg", "16.8", leg),
        line("loin", "6.5", out.take("loin_chop")),
        line("rib", "9.5", out.take("rib_chop")),
        line("shoulder", "10.5", shoulder),
        # printed as 5.8 % of the carcass and as 4.4 lb, which 5.8 % of 75 lb rounds to
        line("breast", "4.4", out.take("riblets")),
    ]


def test_k_state_retail_lines_of_a_75_lb_lamb_come_back() -> None:
    lines = table_l_a()
    show("L-A retail, lb of a 75-lb carcass", lines)
    assert [one.name for one in lines if not near(one, "0.02", "0.2")] == []


def cutout_of_the_market() -> list[Line]:
    """USDA AMS LM_XL502, 27 March 2026, per cent of the carcass; half of each item it pairs.

    Half of the racks whole and half frenched, half of the loins lightly and half closely
    trimmed, half of the legs bone-in and half boneless; whole breasts, square-cut shoulders.
    What is left is ground at 80 % lean. Its shrink (0.35 % fore, 0.35 % hind) has no line of its
    own here.
    """
    out = CutOut(LAMB, Fraction(100))
    lines = [
        line("204 rack", "5.65", out.take("whole_rack", "1/2", way="ribs_8")),
        line("204C rack, frenched", "3.07", out.take("frenched_rack", "1/2", way="ribs_8")),
        line("209 breast", "8.45", out.take("whole_breast")),
        line("207 shoulder", "23.10", out.take("square_shoulder", way="ribs_1_to_4")),
        line("210 foreshank", "3.25", out.take("shank", way="fore")),
        line("neck", "2.17", out.take("whole_neck")),
        line("232 loin, 4 x 4", "5.56", out.take("loin_roast", "1/2")),
        line("232 loin, 1 x 1", "3.81", out.take("loin_chop", "1/2")),
        line("233A leg", "15.81", out.take("whole_leg", "1/2")),
        line("234 leg, boneless", "10.24", out.take("boneless_leg", "1/2")),
    ]
    flank = out.weight(LAMB.parts["flank"])
    out.taken["flank"] = Fraction(1)
    meat, waste = out.ground("0.80", "shoulder", "shank", "breast", "rack")
    lines += [line("ground, fore", "1.95", meat), line("fat & bone, fore", "3.50", waste)]
    meat, waste = out.ground("0.80", "loin", "leg", "flank")
    lines += [line("ground, hind", "1.96", meat), line("fat & bone, hind", "7.56", waste)]
    return [*lines, line("232E flank", "3.22", flank)]


OUTSIDE = {
    # L-A's 15 % rack is trimmed here to chops and racks; the report's racks weigh 9 % in all, and
    # the trim of the other 6 lies with its breast and shoulder
    "fat & bone, fore",
    # L-A's loin and leg are trimmed closer than the report's; the hind shanks of the boneless legs,
    # which the report has no line for, are ground here
    "fat & bone, hind",
    "ground, hind",
}


def test_the_market_cutout_comes_near() -> None:
    lines = cutout_of_the_market()
    show("L-D, % of the carcass", lines)
    outside = {one.name for one in lines if not near(one, "0.25", "0.2")}
    assert outside == OUTSIDE
    assert len(outside) * 5 <= len(lines)


def chops(cut: str, thickness: str, side_lb: str) -> int:
    """Chops of one side by n x (thickness + kerf) <= length + kerf."""
    chosen = LAMB.cuts[cut]
    take = chosen.ways[0].run
    assert take is not None
    run = LAMB.runs[take.run]
    nanograms = int(Fraction(side_lb) * 453_592_370_000)
    length = sum(
        scaled_length(one.length, nanograms, LAMB.reference_side_ng)
        for one in run.stretches[run.place(take.first) : run.place(take.last) + 1]
    )
    thick, kerf = read_length(thickness), LAMB.kerf[chosen.tool]
    assert isinstance(thick, int)
    return (length + kerf) // (thick + kerf)


@pytest.mark.parametrize(
    ("cuts", "thickness", "side", "published"),
    [
        # a plant's standard cut (saltspringabattoir.ca): 8 to 10 loin chops to a lamb
        (("loin_chop",), "1 1/2 in", "37.5", 8),
        (("loin_chop",), "1 1/4 in", "37.5", 10),
        # farm sheet, 60-lb lamb (cedarvalleysustainable.com): 12 packs of 2 chops, read as 1 in
        (("rib_chop", "loin_chop"), "1 in", "30", 24),
    ],
)
def test_chops_of_a_lamb(cuts: tuple[str, ...], thickness: str, side: str, published: int) -> None:
    found = 2 * sum(chops(cut, thickness, side) for cut in cuts)
    show(
        f"{'+'.join(cuts)}, {thickness}, both sides of {side} lb",
        [Line("chops", Fraction(published), Fraction(found))],
    )
    assert abs(found - published) <= (2 if published >= 12 else 1)


def test_pounds_of_a_60_lb_lamb() -> None:
    # cedarvalleysustainable.com: 2 shoulder roasts of 4 lb, 2 leg roasts of 6 lb, 4 shanks of 1 lb,
    # ribs 2 to 3 lb; a quarter either way, since it says nothing of trim
    out = CutOut(LAMB, Fraction(60))
    lines = [
        line("one shoulder roast, boneless", "4", out.take("boneless_shoulder") / 2),
        line("one leg roast, shank off", "6", out.take("boneless_leg") / 2),
        line("one shank", "1", out.take("shank") / 4),
        line("ribs", "2.5", out.take("denver_ribs")),
    ]
    show("a 60-lb lamb, lb", lines)
    assert [one.name for one in lines if not near(one, "0.25", "0")] == []


def test_pieces_of_a_lamb() -> None:
    # plant standard sheet: 2 racks of 6 to 8 ribs, 4 shanks, 2 legs
    racks = [way.run for way in LAMB.cuts["whole_rack"].ways]
    ribs: list[int] = []
    for take in racks:
        assert take is not None
        assert take.size == "whole"
        run = LAMB.runs[take.run]
        span = run.stretches[run.place(take.first) : run.place(take.last) + 1]
        ribs.append(sum(one.ribs for one in span))
    assert ribs == [8, 7, 6]
    assert [way.code for way in LAMB.cuts["shank"].ways] == ["fore", "hind"]
    assert all(way.sides == "both" for way in LAMB.cuts["crown_roast"].ways)
    assert all(way.sides == "joined" for way in LAMB.cuts["saddle_chop"].ways)
