"""Rate cards: exact rates back, the right card for the day, old ones kept."""

from datetime import date
from fractions import Fraction

from db.unit_of_work import Work
from shared.billing.rates import AppliesTo, Charge, RateCard, Step

CARD = RateCard(
    code="house",
    name="House rates",
    holds_from=date(2026, 1, 1),
    charges=(
        Charge("kill", "per_head", Fraction(6500), applies_to=AppliesTo(ages=("under_30",))),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(143, 2), minimum=5000),
        Charge("storage", "per_day", Fraction(0), steps=(Step(Fraction(5), Fraction(500)),)),
        Charge("hide_credit", "flat", Fraction(1000), tax_rate=Fraction(7, 80), credit=True),
    ),
)


def test_a_card_comes_back_exact(work: Work) -> None:
    made = work.rates.save(CARD)
    assert made.id > 0
    assert made.charges == CARD.charges
    assert work.rates.all() == (made,)
    kept = work._connection.exec_driver_sql(
        "SELECT rate, typeof(rate) FROM charges WHERE code = 'cut_and_wrap'"
    ).one()
    assert tuple(kept) == ("143/2", "text")


def test_the_card_that_holds_on_the_day(work: Work) -> None:
    old = work.rates.save(CARD)
    new = work.rates.save(RateCard("house", "House rates", date(2026, 7, 1)))
    farm = work.rates.save(RateCard("farm", "Farms", date(2026, 1, 1), group="farm"))
    assert work.rates.current(date(2025, 12, 31)) is None
    assert work.rates.current(date(2026, 6, 30), species="pork") == old
    assert work.rates.current(date(2026, 7, 1), species="pork") == new
    assert work.rates.current(date(2026, 7, 1), group="farm") == farm


def test_a_card_changed_is_a_new_one_and_the_old_one_stays(work: Work) -> None:
    first = work.rates.save(CARD)
    changed = work.rates.save(
        RateCard("house", "House", CARD.holds_from, charges=CARD.charges[:1], id=first.id)
    )
    assert changed.id != first.id
    assert work.rates.all() == (changed,)
    assert work.rates.all(retired=True) == (first, changed)
    work.rates.retire(changed.id, "sold up")
    assert work.rates.all() == ()
    assert work.changes.of("rate_card", changed.id)[0].reason == "sold up"
