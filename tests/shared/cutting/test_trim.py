"""The pools: what a share has to grind, and what its choices draw."""

from fractions import Fraction

from shared.cutting.order import Amount, Choice
from shared.cutting.plan import plan
from shared.units import NG_PER_LB
from tests.shared.cutting.tiny_lot import catalogue, choice, lot, pounds


def _pounds_of(line: int, cut: str, count: int) -> Choice:
    return choice(line, cut, amount=Amount("pounds", weight=pounds(count)))


def test_trim_by_nature_and_what_is_given_to_it() -> None:
    (trim,) = plan(lot(choice(1, "grind_ham")), catalogue()).trim
    # 10 lb loose at 80/20 and 24 lb of ham at 70/20/10.
    assert trim.lean_ng == 8 * NG_PER_LB + 24 * NG_PER_LB * 7 // 10
    assert trim.fat_ng == 2 * NG_PER_LB + 24 * NG_PER_LB * 2 // 10
    assert abs(trim.bones_ng - 24 * NG_PER_LB // 10) <= 3


def test_cuts_give_back_their_trimmings() -> None:
    (trim,) = plan(lot(choice(1, "brisket_half", "pieces", 2)), catalogue()).trim
    assert trim.lean_ng == 8 * NG_PER_LB + 6 * NG_PER_LB // 10
    assert trim.loss_ng == 6 * NG_PER_LB // 20


def test_open_parts_are_never_trim() -> None:
    found = plan(lot(), catalogue())
    assert found.trim[0].lean_ng == 8 * NG_PER_LB
    assert "loose" not in {one.part for one in found.open_parts}
    assert "tongue" not in {one.part for one in found.open_parts}  # a named loss
    assert {"brisket", "ham_butt", "heart"} <= {one.part for one in found.open_parts}


def test_leaner_is_fewer_pounds() -> None:
    def drawn(lean: Fraction) -> int:
        return plan(lot(choice(1, "ground", "rest", lean=lean)), catalogue()).draws[0].weight_ng

    # Pearson's square: 8 lb lean and 2 lb fat give 10 lb at 80 %, 8/0.9 = 8.89 lb at 90 %.
    assert drawn(Fraction(8, 10)) == 10 * NG_PER_LB
    assert drawn(Fraction(9, 10)) == 80 * NG_PER_LB // 9
    leaner = plan(lot(choice(1, "ground", "rest", lean=Fraction(97, 100))), catalogue())
    assert [one.kind for one in leaner.conflicts] == ["leaner"]


def test_pounds_come_before_the_rest_in_line_order() -> None:
    found = plan(
        lot(choice(1, "ground", "rest"), _pounds_of(2, "stew", 3), choice(3, "lard", "rest")),
        catalogue(),
    )
    draws = {one.line: one for one in found.draws}
    assert draws[2].lean_ng == 3 * NG_PER_LB
    assert draws[1].weight_ng == 5 * NG_PER_LB * 10 // 8
    assert draws[1].lean_ng + draws[1].fat_ng == draws[1].weight_ng
    assert draws[3].fat_ng == 2 * NG_PER_LB - draws[1].fat_ng


def test_the_band_of_the_pools() -> None:
    for count, verdict in ((9, "sure"), (10, "likely"), (11, "cant")):
        assert plan(lot(_pounds_of(1, "ground", count)), catalogue()).verdict == verdict
    twice = lot(_pounds_of(1, "ground", 21), sides=2)
    assert plan(twice, catalogue()).verdict == "tight"


def test_an_order_is_planned_over_all_its_shares_sides() -> None:
    # One side has 10 lb, too few for 18; both have 20.
    assert plan(lot(_pounds_of(1, "ground", 18)), catalogue()).verdict == "cant"
    assert plan(lot(_pounds_of(1, "ground", 18), sides=2), catalogue()).verdict == "sure"
