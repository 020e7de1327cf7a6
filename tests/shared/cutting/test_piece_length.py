"""Pieces by ribs, by weight and by thickness, and pounds turned into pieces."""

from fractions import Fraction

from shared.cutting.piece_weight import count_of_pounds
from shared.cutting.plan import plan
from shared.units import NG_PER_LB, Weight
from tests.shared.cutting.tiny_lot import catalogue, choice, inches, lot, pounds


def _size(ribs: int | None = None, piece_weight: Weight | None = None) -> int | None:
    roast = choice(1, "rib_roast", "pieces", 1, ribs=ribs, piece_weight=piece_weight)
    return plan(lot(roast), catalogue()).lines[0].size


def test_ribs_are_stations_of_equal_length() -> None:
    assert _size(ribs=3) == inches("11") * 3 // 7
    assert _size(ribs=7) == inches("11")
    assert plan(lot(choice(1, "rib_roast", "pieces", 1, ribs=8)), catalogue()).verdict == "cant"


def test_weight_sets_the_length_to_a_sixty_fourth() -> None:
    # Meat 11 lb and bone 3 lb on 11 in: 5 lb are 3.929 in, 251.4 sixty-fourths.
    assert _size(piece_weight=pounds(5)) == inches("251/64")
    assert _size(piece_weight=pounds(50)) == inches("11")


def test_without_either_the_window_is_the_piece() -> None:
    assert _size() == inches("11")


def test_pounds_are_rounded_half_up_and_never_to_nothing() -> None:
    one = Fraction(2 * NG_PER_LB)
    assert count_of_pounds(5 * NG_PER_LB, one) == 3
    assert count_of_pounds(5 * NG_PER_LB - 1, one) == 2
    assert count_of_pounds(1, one) == 1
    assert count_of_pounds(NG_PER_LB, Fraction(0)) == 1
