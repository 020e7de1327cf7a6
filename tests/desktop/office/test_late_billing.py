"""Interest on late payment: asked about, a bill of its own, its own income, never on itself."""

from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import pytest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.place import OfficePlace
from shared.billing.rates import LateTerms
from shared.shop.people import SignedOn
from tests.desktop.office import ready_orders
from tests.desktop.office.ready_orders import RATES, handed_over
from tests.desktop.office.test_place import issued, settle
from tests.desktop.recorded_messages import RecordedMessages
from tests.store_fixture import Clock

TERMS = LateTerms(free_days=30, yearly_rate=Fraction(12, 100))


@pytest.fixture
def place(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    signed: SignedOn,
    clock: Clock,
    monkeypatch: pytest.MonkeyPatch,
) -> OfficePlace:
    """Bill 1 of $102.49 less $50.00 down, issued; 12 % a year after 30 days."""
    monkeypatch.setattr(ready_orders, "RATES", replace(RATES, late=TERMS))
    handed_over(store, signed)
    return issued(qtbot, bench)


def test_within_the_free_days_nothing_is_asked(
    qtbot: QtBot, bench: Bench, place: OfficePlace, messages: RecordedMessages, clock: Clock
) -> None:
    clock.now += timedelta(days=30)
    assert place.bills.side.late.isVisible()
    place.bills.late_interest()
    settle(qtbot, bench)
    assert "30 days" in messages.told[-1]
    with bench.store.read() as work:
        assert len(work.bills.list()) == 1


def test_late_interest_is_a_bill_of_its_own_and_bears_none(
    qtbot: QtBot,
    bench: Bench,
    store: Store,
    place: OfficePlace,
    messages: RecordedMessages,
    clock: Clock,
) -> None:
    # 5,249 cents due, 100 days after the 30 free ones: 5,249 × 0.12 × 100 / 365 = 172.57, $1.73.
    clock.now += timedelta(days=130)
    messages.answers.append(True)
    place.bills.late_interest()
    settle(qtbot, bench)
    assert place.bills.side.sums["due"].text() == "$54.22"
    with store.read() as work:
        income = {one.code: one.cents for one in work.books.income(bench.today(), bench.today())}
    assert income == {"late_interest": 173}
    # 100 days more, on the $52.49 only.
    clock.now += timedelta(days=100)
    messages.answers.append(True)
    place.bills.late_interest()
    settle(qtbot, bench)
    assert place.bills.side.sums["due"].text() == "$55.95"
    place.bills.late_interest()
    settle(qtbot, bench)
    assert place.bills.side.sums["due"].text() == "$55.95"


def test_without_terms_on_the_card_interest_isnt_offered(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn, clock: Clock
) -> None:
    handed_over(store, signed)
    found = issued(qtbot, bench)
    assert not found.bills.side.late.isVisible()
