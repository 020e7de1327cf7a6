"""The invented plant's rate cards.

The rates lie within what plants publish: $30 to $75 a head for beef and $10 to $12 for disposal
(Michigan State Univ. Extension, "Pricing freezer beef", July 2013), 55 to 75 cents a hanging
pound for cutting and wrapping, a least charge for small stock. Elsewhere: common practice, no
source.
"""

from datetime import date, timedelta
from fractions import Fraction
from typing import Literal

from shared.billing.rates import AppliesTo, Charge, RateCard, Step

SMOKED = AppliesTo(finishes=("cured_smoked", "fully_cooked", "smoked", "cured"))
LINKED = AppliesTo(cuts=("link_sausage",), finishes=("links",))
PATTIES = AppliesTo(cuts=("pork_patty", "beef_patties", "lamb_patties", "goat_patties"))
SAUSAGE = AppliesTo(cuts=("bulk_sausage", "link_sausage", "sausage_patty", "lamb_sausage"))
OLDER = AppliesTo(ages=("30_and_over",))


def cards(today: date) -> tuple[RateCard, ...]:
    """Custom and inspected rates for beef, pork and small stock, held for a good while."""
    held = today - timedelta(days=200)
    return tuple(
        card
        for regime, more in (("custom", 0), ("inspected", 8))
        for card in _of_regime("inspected" if regime == "inspected" else "custom", more, held)
    )


def _of_regime(regime: Literal["custom", "inspected"], more: int, held: date) -> list[RateCard]:
    word = regime.capitalize()
    beef = (
        Charge("kill", "per_head", Fraction(7_500 + 100 * more)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(68 + more)),
        Charge("disposal", "per_head", Fraction(1_200)),
        Charge("over_30_months", "per_head", Fraction(4_000), applies_to=OLDER),
        Charge("patties", "per_lb_finished", Fraction(35), applies_to=PATTIES),
        *_asked(),
    )
    pork = (
        Charge("kill", "per_head", Fraction(6_500 + 100 * more)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(62 + more)),
        Charge("cure_and_smoke", "per_lb_finished", Fraction(110), applies_to=SMOKED),
        Charge("sausage", "per_lb_finished", Fraction(55), applies_to=SAUSAGE),
        Charge("links", "per_lb_finished", Fraction(90), applies_to=LINKED),
        *_asked(),
    )
    small = (
        Charge("kill", "per_head", Fraction(4_500 + 100 * more)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(125 + more), minimum=4_840),
        *_asked(),
    )
    return [
        RateCard(f"beef-{regime}", f"{word} beef", held, ("beef",), regime, "", beef),
        RateCard(f"pork-{regime}", f"{word} pork", held, ("pork",), regime, "", pork),
        RateCard(
            f"small-{regime}", f"{word} lamb and goat", held, ("lamb", "goat"), regime, "", small
        ),
    ]


def _asked() -> tuple[Charge, ...]:
    return (
        Charge(
            "storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),), asked=True
        ),
        Charge("delivery", "flat", Fraction(2_500), asked=True),
    )
