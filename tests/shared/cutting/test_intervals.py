"""Intervals joined, windows united lane by lane, masks taken apart, slices counted out."""

from shared.cutting.intervals import merged, united
from shared.cutting.lanes import bits_of
from shared.cutting.run_packing import Piece
from shared.cutting.taken import Segment, covered


def test_intervals_that_touch_are_joined() -> None:
    assert merged(((2, 5), (0, 3), (5, 6), (8, 9))) == ((0, 6), (8, 9))


def test_windows_that_overlap_in_a_lane_become_one_there() -> None:
    blocks = [(0, 3, (0, 10), ((0, 10),)), (0, 2, (5, 15), ((5, 15),))]
    assert united(blocks) == [(0, 1, (0, 10), ((0, 10),)), (0, 2, (0, 15), ((0, 15),))]
    beside = [(0, 1, (0, 10), ((0, 10),)), (0, 1, (10, 15), ((10, 15),))]
    assert united(beside) == beside


def test_single_lanes_of_a_mask() -> None:
    assert bits_of(0b10110) == (2, 4, 16)
    assert bits_of(0) == ()


def test_kerfs_are_no_part_of_what_slices_cover() -> None:
    slices = Segment((0, 1, 0), Piece(1, ((0, 99),), 3, 1), 10, 4)
    assert slices.end == 25
    assert [covered(slices, point) for point in (9, 10, 12, 13, 14, 16, 25, 90)] == [
        0, 0, 2, 3, 3, 5, 12, 12,
    ]  # fmt: skip
