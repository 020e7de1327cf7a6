"""Which holes in the cards' dates are doubted before a card is kept."""

from datetime import timedelta

from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from shared.shop.holdings import whole
from shared.shop.lots import LotShare, NewLot
from shared.shop.people import SignedOn
from tests.db.examples import booked, customer
from tests.desktop.office.test_rate_card_dialog import opened


def test_a_shops_first_card_is_kept_without_a_doubt_of_days_nobody_came_on(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("First")
    dialog.holds_from.set_value(bench.today())
    dialog.table.choose(0)
    dialog.rate.set_text("60")
    dialog.try_it()
    assert not dialog.isVisible(), dialog.refusal.text()
    with store.read() as work:
        assert len(work.rates.all()) == 1


def test_a_first_card_leaves_out_nobody_who_came_before_it(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        anna = customer(work, "Anna Berg", "(555) 010-0201")
        shares = (LotShare(1, anna.id, holdings=whole(0)),)
        day = bench.today() - timedelta(days=5)
        booked(work, NewLot("lamb", 1, day, anna.id, shares))
        work.commit()
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("First")
    dialog.holds_from.set_value(bench.today())
    dialog.table.choose(0)
    dialog.rate.set_text("60")
    dialog.try_it()
    assert dialog.isVisible()
    assert "No card holds for lamb" in dialog.refusal.text()
    assert "beef" not in dialog.refusal.text()
