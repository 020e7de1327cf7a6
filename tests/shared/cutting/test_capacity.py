"""What hangs there: lengths, what is gone, who holds what."""

from fractions import Fraction

from shared.carcass.carcass import Gone, Holding, Measured, SideWeights
from shared.cutting.capacity import EXPECTED, MOST, SURE, Held, animals, holdings
from shared.cutting.order import Question, Settings
from shared.cutting.plan import compiled
from shared.cutting.windows import window
from shared.units import NG_PER_LB
from tests.shared.cutting.tiny_lot import catalogue, inches, lot, pounds, shared

WAYS = compiled(catalogue())
BACK = WAYS.run_place["back"]


def held(question: Question, share: int = 1) -> tuple[Held, ...]:
    herd = animals(question, WAYS)
    return holdings(question.shares[share - 1], question, herd)


def reach(mine: Held, cut: str, scenario: int = EXPECTED, way: int = 0):  # noqa: ANN201
    on_run = WAYS.by_cut[cut][way].on_run
    assert on_run is not None
    return window(mine, on_run, scenario, WAYS)


def test_lengths_at_the_reference_weight_and_their_band() -> None:
    side = held(lot())[0].side
    assert side.bounds[EXPECTED][BACK] == (0, *map(inches, ("7", "18", "25", "30")))
    # 5 % of 7 in is 0.35 in: 6.65 and 7.35 in, rounded down to 1/64 in.
    assert side.bounds[SURE][BACK][1] == inches("425/64")
    assert side.bounds[MOST][BACK][1] == inches("470/64")


def test_lengths_grow_with_the_cube_root_of_the_weight() -> None:
    # 800 lb is eight times the reference, so everything is twice as long.
    heavy = (SideWeights(pounds(800)), SideWeights(pounds(100)))
    side = held(lot(chilled=heavy))[0].side
    assert side.bounds[EXPECTED][BACK][-1] == inches("60")


def test_measured_and_own_lengths() -> None:
    side = held(lot(measured=(Measured("rib", 1, inches("27/2")),)))[0].side
    assert {side.bounds[n][BACK][2] - side.bounds[n][BACK][1] for n in (SURE, EXPECTED, MOST)} == {
        inches("27/2")
    }
    question = lot()
    own = Question(
        question.carcasses, question.shares, (), Settings(own_lengths=(("rib", inches("12")),))
    )
    bounds = held(own)[0].side.bounds
    assert bounds[EXPECTED][BACK][2] - bounds[EXPECTED][BACK][1] == inches("12")


def test_a_part_gone_blocks_its_lane_and_pounds_gone_only_weigh_less() -> None:
    gone = (Gone("meat_loin", 1, None, "abscess"), Gone("meat_rib", 1, pounds(2), "bruise"))
    mine = held(lot(gone=gone))[0]
    found = reach(mine, "chops")
    assert found is not None
    assert found.allowed == ((0, inches("18")), (inches("25"), inches("30")))
    assert (found.lost, found.lost_part) == ("gone", "meat_loin")
    assert mine.side.part_ng(catalogue().parts["meat_rib"]) == 9 * NG_PER_LB
    all_of_it = held(lot(gone=(Gone("meat_rib", 1, pounds(11), "bruise"),)))[0]
    assert all_of_it.side.lost == {"meat_rib": "gone"}


def test_lanes_that_are_empty_keep_pieces_out() -> None:
    found = reach(held(lot())[0], "t_bones")
    assert found is not None
    assert found.allowed == ((inches("18"), inches("30")),)


def test_a_window_stops_inside_a_stretch() -> None:
    butt = reach(held(lot())[0], "half_ham")
    shank = reach(held(lot())[0], "half_ham", way=1)
    assert butt is not None
    assert shank is not None
    assert butt.hi == shank.lo == inches("4") + inches("19/8")


def test_holdings_add_up_by_side_and_quarter() -> None:
    half = Fraction(1, 2)
    question = shared(
        holdings=(
            (Holding(0, 1, "", half), Holding(0, 1, "", half), Holding(0, 2, "fore")),
            (Holding(0, 2, "hind", half),),
        )
    )
    first, second = held(question)
    assert (first.whole, first.split, first.of_animal) == (True, False, half)
    assert (second.whole, second.split, second.of_animal) == (False, False, Fraction(1, 4))
    assert [second.fraction(quarter) for quarter in ("", "fore", "hind")] == [0, 1, 0]
    (third,) = held(question, 2)
    assert (third.split, third.fraction("hind"), third.of_animal) == (True, half, Fraction(1, 8))


def test_a_share_that_is_led_counts_with_its_leader() -> None:
    question = shared(
        holdings=((Holding(0, 1, "", Fraction(1, 2)),), (Holding(0, 1, "", Fraction(1, 2)),))
    )
    led = question.shares[1].__class__(2, "Follower", question.shares[1].holdings, leader=1)
    together = Question(question.carcasses, (question.shares[0], led), ())
    assert held(together)[0].whole
