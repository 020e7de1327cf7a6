"""Between a weight as weighed and its three columns."""

from typing import cast

from db.problems import StoreBug
from db.tables.row import EXPONENTS
from shared.units import Weight, WeightUnit


def weight_values(name: str, weight: Weight | None) -> dict[str, object]:
    """The three columns of a weight; all null when there is none.

    What has more decimals than the store keeps is refused; reading never gives it.
    """
    if weight is None:
        return {f"{name}_count": None, f"{name}_unit": None, f"{name}_exponent": None}
    if weight.exponent not in EXPONENTS:
        raise StoreBug(f"{weight.text()} has too many decimals")
    return {
        f"{name}_count": weight.count,
        f"{name}_unit": weight.unit,
        f"{name}_exponent": weight.exponent,
    }


def weight_of(count: int | None, unit: str | None, exponent: int | None) -> Weight | None:
    """The weight again, every digit as weighed."""
    if count is None or unit is None or exponent is None:
        return None
    return Weight(count, cast("WeightUnit", unit), exponent)


def known_weight(count: int, unit: str, exponent: int) -> Weight:
    """A weight that is always there."""
    return Weight(count, cast("WeightUnit", unit), exponent)
