"""What an owner has, in words."""

from desktop.counter.share_presets import holdings_of
from desktop.counter.share_words import share_words


def test_each_kind_of_share() -> None:
    assert share_words(holdings_of("whole", 1)[0]) == "whole"
    assert share_words(holdings_of("halves", 1)[1]) == "half, side 2"
    assert share_words(holdings_of("quarters", 1)[3]) == "hindquarter, side 2"
    assert share_words(holdings_of("split_quarters", 1)[0]) == "split quarter, of side 1"
    assert share_words(holdings_of("halves", 2)[0]) == "half, side 1, of 2 animals"
