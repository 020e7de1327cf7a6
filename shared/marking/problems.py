"""What marking answers when a label or code can't be made as asked; values, never sentences."""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class MarkingProblem:
    """A code and what it is about.

    Of element strings: "empty", "unknown_ai", "length", "characters", "check_digit", "date",
    "twice", "cut_short", "needs_gtin", "needs_count", "not_variable", "too_heavy", "not_exact".
    Of serials: "not_ours", "check_character". Of stock: "unknown_stock", "not_yet",
    "stock_too_small", "unknown_dpi".
    Of labels: "product_missing", "owner_missing", "net_missing", "net_not_positive",
    "packed_on_missing", "plant_missing", "address_missing", "numbers_missing",
    "legend_missing", "establishment_missing", "price_on_custom", "ready_unknown",
    "ingredients_missing", "allergens_unknown", "lean_on_label".
    """

    code: str
    data: Mapping[str, str] = field(default_factory=dict[str, str])
