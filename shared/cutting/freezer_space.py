"""How much freezer the packages of an order need, in cubic feet, least and most."""

from fractions import Fraction
from math import ceil

from shared.units import NG_PER_LB

# Farm pages that sell by the side: 35 to 40 lb to a cubic foot, others 25 to 30.
# Common practice, weakly sourced: so the whole span is shown, never one figure.
MOST_LB, LEAST_LB = 40, 25


def freezer_space(low_ng: int, high_ng: int) -> tuple[Fraction, Fraction]:
    """Cubic feet for the least and the most take-home, rounded up to half a foot.

    Worked number: 73 to 89 lb need 73/40 = 1.8, so 2, to 89/25 = 3.6, so 4 cubic feet.
    """
    return _halves(Fraction(low_ng, NG_PER_LB * MOST_LB)), _halves(
        Fraction(high_ng, NG_PER_LB * LEAST_LB)
    )


def _halves(feet: Fraction) -> Fraction:
    return Fraction(ceil(feet * 2), 2)
