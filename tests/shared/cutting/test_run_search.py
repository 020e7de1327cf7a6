"""The search over orders on a run, by itself."""

from shared.cutting.run_search import Free, search


def test_a_gap_is_filled_that_no_simple_order_fills() -> None:
    # The wide piece must come between the two that are bound to their ends.
    head = Free(1, ((0, 4),), 4, 0, 0, 1)
    tail = Free(1, ((7, 12),), 5, 0, 1, 1)
    wide = Free(1, ((0, 12),), 3, 0, 2, 1)
    assert search([head, tail, wide]) == [(0, 0), (2, 4), (1, 7)]
    assert search([head, tail, wide._replace(size=4)]) is None


def test_two_bins_of_odd_sizes() -> None:
    # 10 and 10 are left on either side of a missing stretch; 6 + 4 and 7 + 3 fill both.
    bins = ((0, 10), (20, 30))
    kinds = [Free(1, bins, size, 0, kind, 1) for kind, size in enumerate((6, 4, 7, 3))]
    assert search(kinds) is not None
    kinds[3] = kinds[3]._replace(size=4)
    assert search(kinds) is None


def test_hundreds_of_slices_need_no_deep_recursion() -> None:
    thin = Free(1, ((0, 2000),), 1, 1, 0, 600)
    other = Free(1, ((0, 2000),), 2, 1, 1, 260)
    found = search([thin, other])
    assert found is not None
    assert len(found) == 860
