"""What billing answers when something can't be billed or paid; values, never sentences."""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class BillingProblem:
    """A code and what it is about.

    Of a rate card: "code_missing", "bad_code", "same_code", "rate_negative", "rate_absurd",
    "minimum_negative", "minimum_per_share" (of each share, but none is set), "tax_negative",
    "tax_absurd", "steps_not_rising", "shrink_missing", "shrink_absurd", "weights_crossed",
    "no_card", "no_card_then", "two_cards", "days_negative".
    Of a bill: "no_such_share", "no_such_animal", "quarters_differ", "producer_card_lacks",
    "fore_share_absurd", "shares_over", "weight_missing" (a statement can't wait).
    Of money: "not_positive", "overpaid", "nothing_due", "more_than_owed", "more_than_due",
    "reason_missing", "no_such_line", "more_than_billed", "nothing_to_credit".
    Of a kept text: "damaged", "too_new".
    """

    code: str
    data: Mapping[str, str] = field(default_factory=dict[str, str])
