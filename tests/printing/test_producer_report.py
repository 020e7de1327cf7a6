"""What the producer's report says of an animal's weights."""

import pytest

from printing.producer_report import NOTHING, dressing_text
from shared.units import NG_PER_LB


# Trade figures: 1,300 lb live, 819 lb hanging is 63 % (MSU Extension worksheet, 1 Apr 2024);
# 1,163 and 730 lb are 62.8 % (UC Coop. Ext. 31-651 prints 62.7 as the mean of its steers).
@pytest.mark.parametrize(
    ("hot", "live", "told"), [(819, 1300, "63.0 %"), (730, 1163, "62.8 %"), (1, 3, "33.3 %")]
)
def test_dressing(hot: int, live: int, told: str) -> None:
    assert dressing_text(hot * NG_PER_LB, live * NG_PER_LB) == told


def test_no_dressing_without_both_weights() -> None:
    assert dressing_text(None, 100) == NOTHING
    assert dressing_text(100, None) == NOTHING
