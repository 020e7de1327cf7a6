"""Between a weight as weighed and its three columns."""

from typing import cast

from db.problems import StoreBug
from shared.units import Weight, WeightUnit


def weight_values(name: str, weight: Weight | None) -> dict[str, object]:
    """The three columns of a weight; all null when there is none.

    A weight that isn't whole nanograms can't be kept; reading never gives one.
    """
    if weight is None:
        return {f"{name}_count": None, f"{name}_unit": None, f"{name}_exponent": None}
    try:
        _ = weight.nanograms
    except ValueError as error:
        raise StoreBug(str(error)) from error
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
