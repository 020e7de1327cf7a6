"""A card tried on the shop's own lots of last month."""

from dataclasses import replace
from datetime import date
from fractions import Fraction
from pathlib import Path

from desktop.office.card_trial import trial_of
from desktop.records import open_records
from shared.billing.bill import Bill
from shared.billing.rates import Charge
from tests.desktop.shell import small_shop

NEW = replace(
    small_shop.CARD,
    code="2027",
    holds_from=date(2027, 1, 1),
    charges=(
        Charge("kill", "per_head", Fraction(7000)),
        Charge("cut_and_wrap", "per_lb_hot", Fraction(90)),
    ),
)


def test_both_bills_of_each_owner_side_by_side(tmp_path: Path) -> None:
    """92.5 lb: $30.00 + $78.63 beside $35.00 + $83.25; 94 lb: $30.00 + $79.90 beside $119.60."""
    paths, order = small_shop.make(tmp_path)
    store = open_records(paths)
    found = trial_of(store, NEW, date(2026, 3, 1), date(2026, 3, 31))
    nothing = trial_of(store, NEW, date(2026, 4, 1), date(2026, 4, 30))
    store.close()
    assert [one.owner for one in found.bills] == ["Anna Berg", "Bert Iversen"]
    first = found.bills[0]
    assert isinstance(first.old, Bill)
    assert isinstance(first.new, Bill)
    assert (first.old.total_cents, first.new.total_cents) == (10_863, 11_825)
    assert found.new_cents == 11_825 + 11_960
    assert found.old_cents == 10_863 + 10_990
    assert nothing.bills == ()
    assert order.share == 1
