"""The rate card form: rates typed down the list, refused at the field, holes in the dates said."""

from dataclasses import replace
from datetime import date
from fractions import Fraction
from time import thread_time

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from db.store import Store
from desktop.bench import Bench
from desktop.office.charge_dialog import ChargeDialog
from desktop.office.rates_page import RatesPage
from desktop.office.usual_charges import particulars, usual_charges
from desktop.work import LIMIT_MS
from shared.billing.rates import AppliesTo, Charge, LateTerms, Step
from shared.carcass.anatomy import catalogue, species
from shared.shop.people import SignedOn
from tests.desktop.audit import unnamed
from tests.desktop.office.ready_orders import RATES
from tests.desktop.typing_in import type_into


def opened(qtbot: QtBot, bench: Bench) -> RatesPage:
    page = RatesPage(bench)
    qtbot.addWidget(page)
    page.resize(1366, 620)
    page.show()
    page.refresh()
    page.new_card()
    return page


@pytest.mark.timed
def test_it_opens_within_a_slot(qtbot: QtBot, bench: Bench) -> None:
    page = RatesPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.refresh()
    began = thread_time()
    page.new_card()
    took = (thread_time() - began) * 1000
    assert took < LIMIT_MS
    assert unnamed(page.dialog) == []
    began = thread_time()
    page.dialog.change()
    took = (thread_time() - began) * 1000
    assert took < LIMIT_MS
    assert unnamed(page.dialog.charge_dialog) == []
    page.dialog.charge_dialog.reject()
    page.dialog.reject()


def test_rates_are_typed_down_the_list_by_keyboard(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("Spring rates")
    dialog.holds_from.set_value(date(2026, 1, 1))
    qtbot.waitUntil(dialog.isActiveWindow)
    dialog.rate.focus()
    for typed in ("$60", "0.715"):
        type_into(dialog.rate.line, typed)
        QTest.keyClick(dialog.rate.line, Qt.Key.Key_Return)
    QTest.keyClick(dialog.rate.line, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert not dialog.isVisible(), dialog.refusal.text()
    with store.read() as work:
        (card,) = work.rates.all()
    assert (card.name, card.holds_from) == ("Spring rates", date(2026, 1, 1))
    assert [(one.code, one.basis, one.rate) for one in card.charges] == [
        ("kill", "per_head", Fraction(6000)),
        ("cut_and_wrap", "per_lb_hot", Fraction(143, 2)),
    ]


@pytest.mark.parametrize(
    ("typed", "said"), [("-5", "below nothing"), ("70000000", "more than any"), ("1200", "more")]
)
def test_negative_and_absurd_rates_are_refused_at_their_field(
    qtbot: QtBot, bench: Bench, store: Store, typed: str, said: str
) -> None:
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("Slip of the key")
    dialog.table.choose(1)
    dialog.rate.set_text(typed)
    dialog.try_it()
    assert dialog.isVisible()
    assert said in dialog.rate.complaint.text()
    with store.read() as work:
        assert work.rates.all() == ()
    dialog.reject()


def test_all_a_charge_can_have_is_kept(qtbot: QtBot, bench: Bench, store: Store) -> None:
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("All of it")
    dialog.holds_from.set_value(date(2026, 1, 1))
    dialog.regime.set_value("custom")
    dialog.group.set_text("restaurant")
    dialog.add()
    charge = dialog.charge_dialog
    charge.code.set_text("Cooler rent")
    charge.basis.set_value("per_day")
    charge.rate.set_text("0")
    charge.steps.set_text("5: $5; 10: 7.50")
    charge.tax.set_text("6.25 %")
    charge.payer.set_value("producer")
    charge.billed.set_value("asked")
    charge.try_it()
    assert not charge.isVisible()
    dialog.ask_late()
    dialog.late_dialog.rate.set_text("12")
    dialog.late_dialog.try_it()
    dialog.try_it()
    with store.read() as work:
        (card,) = work.rates.all()
    assert (card.regime, card.group) == ("custom", "restaurant")
    assert card.late == LateTerms(30, Fraction(12, 100), 0)
    (kept,) = card.charges
    assert (kept.code, kept.name, kept.basis) == ("cooler_rent", "Cooler rent", "per_day")
    assert kept.steps == (Step(Fraction(5), Fraction(500)), Step(Fraction(10), Fraction(750)))
    assert (kept.tax_rate, kept.falls_to, kept.asked) == (Fraction(1, 16), "producer", True)


def test_what_the_form_has_no_field_for_stays(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    kill, cut, cure = RATES.charges
    cut = replace(cut, applies_to=AppliesTo(cuts=("ham",)))
    before = replace(
        RATES,
        species=("pork", "lamb"),
        charges=(kill, cut, cure),
        late=LateTerms(10, Fraction(1, 10)),
    )
    with store.work(signed.person, signed.station) as work:
        work.rates.save(before)
        work.commit()
    page = opened(qtbot, bench)
    page.dialog.holds_from.set_value(date(2026, 2, 1))
    page.dialog.try_it()
    with store.read() as work:
        last = max(work.rates.all(), key=lambda one: one.id)
    assert (last.species, last.late, last.charges) == (before.species, before.late, before.charges)


def test_a_hole_in_the_dates_is_said_before_it_is_kept(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("Spring")
    dialog.species.set_value("pork")
    dialog.holds_from.set_value(date(2026, 4, 1))
    dialog.table.choose(0)
    dialog.rate.set_text("60")
    dialog.try_it()
    assert dialog.isVisible()
    assert "No card holds for hog from" in dialog.refusal.text()
    with store.read() as work:
        assert work.rates.all() == ()
    dialog.try_it()
    assert not dialog.isVisible(), dialog.refusal.text()
    with store.read() as work:
        assert len(work.rates.all()) == 1


def test_minimum_tax_and_shrink_are_refused_at_their_fields(qtbot: QtBot, bench: Bench) -> None:
    page = opened(qtbot, bench)
    page.dialog.table.choose(1)
    page.dialog.change()
    charge = page.dialog.charge_dialog
    charge.rate.set_text("0.70")
    charge.basis.set_value("per_lb_hot_less_shrink")
    charge.try_it()
    assert charge.shrink.complaint.text()
    charge.shrink.set_text("4")
    charge.tax.set_text("-1")
    charge.try_it()
    assert "below nothing" in charge.tax.complaint.text()
    charge.tax.set_text("")
    charge.steps.set_text("10: 1; 5: 2")
    charge.try_it()
    assert "each above" in charge.steps.complaint.text()
    charge.reject()
    page.dialog.reject()


def test_every_limit_a_card_holds_is_shown_and_kept(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    """Kinds, ages and single cuts are shown, and none is lost by keeping another."""
    limits = AppliesTo(
        cuts=("whole_ham", "bacon"), kinds=("roast", "whole"), ages=("30_and_over", "unknown")
    )
    start = replace(RATES.charges[0], minimum=2_500, applies_to=limits)
    kept: list[Charge] = []
    dialog = ChargeDialog(bench, start, (), kept.append)
    qtbot.addWidget(dialog)
    dialog.show()
    assert unnamed(dialog) == []
    assert dialog.kinds.text() == "roasts, cuts left whole"
    assert dialog.age.text() == "30 months and over, age not known"
    assert dialog.cuts.text() == "whole ham, shank on; bacon"
    assert dialog.cuts.line.isReadOnly()
    dialog.try_it()
    assert kept == [start]
    again = ChargeDialog(bench, start, (), kept.append)
    qtbot.addWidget(again)
    again.kinds.set_value(("steaks",))
    again.age.set_value(())
    again.try_it()
    assert kept[1].applies_to == AppliesTo(cuts=("whole_ham", "bacon"), kinds=("steaks",))
    said = particulars(start, bench.words)
    assert "roasts, cuts left whole" in said
    assert "age not known" in said
    assert "whole ham, shank on or bacon" in said


def test_every_cure_there_is_stands_in_the_usual_charge_for_curing() -> None:
    """A corned brisket was billed nothing where the card had a rate for cure and smoke."""
    cures = {
        finish.code
        for one in species()
        for finish in catalogue(one).finishes.values()
        if finish.cured
    }
    charge = next(one for one in usual_charges() if one.code == "cure_and_smoke")
    assert "corned" in cures
    assert cures <= set(charge.applies_to.finishes)


def test_tax_and_shrink_say_that_they_are_per_cent(bench: Bench) -> None:
    """Fractions chosen here: 13/200 is 6.5 %, 1/40 is 2.5 %."""
    taxed = Charge("cut_wrap", "per_lb_hot", Fraction(95), tax_rate=Fraction(13, 200))
    assert particulars(taxed, bench.words) == "tax 6.5\u00a0%"
    shrunk = replace(taxed, tax_rate=Fraction(0), shrink=Fraction(1, 40))
    assert particulars(shrunk, bench.words) == "less 2.5\u00a0% shrink"


def test_single_cuts_are_taken_in_by_name_and_said_in_a_sentence(
    qtbot: QtBot, bench: Bench
) -> None:
    """Typed, stepped to and taken in with Enter; another taken out again."""
    smoke = Charge("smoke", "per_lb_finished", Fraction(95), applies_to=AppliesTo())
    kept: list[Charge] = []
    dialog = ChargeDialog(bench, smoke, (), kept.append, animals=("pork",))
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.holds.text() == "Holds for every cut."
    dialog.pick_cuts()
    cuts = dialog.cuts_dialog
    qtbot.waitUntil(cuts.isActiveWindow)
    assert unnamed(cuts) == []
    assert cuts.table.rows.rowCount() == len(catalogue("pork").cuts)
    for typed in ("bacon", "whole ham, shank on", "spareribs"):
        type_into(cuts.wanted.line, typed)
        assert cuts.table.rows.rowCount() >= 1
        QTest.keyClick(cuts.wanted.line, Qt.Key.Key_Return)
    assert cuts.isVisible()
    last = cuts.table.chosen()
    assert last is not None
    assert last.code in cuts.chosen
    QTest.keyClick(cuts.wanted.line, Qt.Key.Key_Return)
    assert last.code not in cuts.chosen
    assert cuts.holds.text() == "Counts only what is made as: bacon or whole ham, shank on."
    type_into(cuts.wanted.line, "brisket")
    assert "No cut of these animals" in cuts.refusal.text()
    QTest.keyClick(cuts.wanted.line, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert not cuts.isVisible()
    assert dialog.cuts.text() == "bacon; whole ham, shank on"
    dialog.basis.set_value("flat")
    dialog.finishes.set_value(("smoked",))
    dialog._say_holds()  # pyright: ignore[reportPrivateUsage]
    assert dialog.holds.text() == (
        "Billed only to owners who ordered some of: "
        "bacon or whole ham, shank on; of these only smoked."
    )
    dialog.try_it()
    assert kept[0].applies_to == AppliesTo(("bacon", "whole_ham"), (), ("smoked",))


def test_cuts_and_a_kind_none_of_them_is_are_refused_at_the_kind(
    qtbot: QtBot, bench: Bench
) -> None:
    start = Charge("slice", "per_lb_in", Fraction(30), applies_to=AppliesTo(cuts=("bacon",)))
    kept: list[Charge] = []
    dialog = ChargeDialog(bench, start, (), kept.append, animals=("pork",))
    qtbot.addWidget(dialog)
    qtbot.waitUntil(lambda: dialog._offered is not None)  # pyright: ignore[reportPrivateUsage]
    dialog.kinds.set_value(("offal",))
    dialog.try_it()
    assert "never be billed" in dialog.kinds.complaint.text()
    assert kept == []
    dialog.kinds.set_value(())
    dialog.try_it()
    assert kept == [start]


def test_a_card_whose_animals_have_none_of_the_cuts_says_so_before_it_is_kept(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    bacon = replace(RATES.charges[1], applies_to=AppliesTo(cuts=("bacon",)))
    with store.work(signed.person, signed.station) as work:
        work.rates.save(replace(RATES, charges=(RATES.charges[0], bacon)))
        work.commit()
    page = opened(qtbot, bench)
    page.dialog.species.set_value("lamb")
    page.dialog.try_it()
    assert page.dialog.isVisible()
    assert "have none of its cuts" in page.dialog.refusal.text()
    page.dialog.species.set_value("pork")
    page.dialog.try_it()
    assert "have none of its cuts" not in page.dialog.refusal.text()
    page.dialog.reject()


def test_without_single_cuts_the_field_says_every_cut(qtbot: QtBot, bench: Bench) -> None:
    dialog = ChargeDialog(bench, None, (), lambda _charge: None)
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.cuts.text() == ""
    assert dialog.cuts.line.placeholderText() == "every cut"
    assert dialog.kinds.text() == "any"


def test_a_rate_uncommonly_high_is_asked_about_before_it_is_kept(
    qtbot: QtBot, bench: Bench, store: Store
) -> None:
    """68 typed for 68 cents a pound is $68.00."""
    page = opened(qtbot, bench)
    dialog = page.dialog
    dialog.name.set_text("Slip of the key")
    dialog.holds_from.set_value(date(2025, 1, 1))
    dialog.table.choose(1)
    dialog.rate.set_text("68")
    dialog.try_it()
    assert "Cut and wrap at $68.00 per lb hot is uncommonly much." in dialog.refusal.text()
    with store.read() as work:
        assert work.rates.all() == ()
    dialog.rate.set_text("0.68")
    dialog.try_it()
    assert not dialog.isVisible(), dialog.refusal.text()


def test_a_shop_without_a_card_is_told_what_one_is_and_begins_it_by_key(
    qtbot: QtBot, bench: Bench, store: Store, signed: SignedOn
) -> None:
    page = RatesPage(bench)
    qtbot.addWidget(page)
    page.show()
    page.refresh()
    assert page.none.isVisible()
    assert not page.cards.isVisible()
    page.activateWindow()
    page.first_focus().setFocus()
    qtbot.waitUntil(page.first_focus().hasFocus)
    QTest.keyClick(page.first_focus(), Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    assert page.dialog.isVisible()
    page.dialog.reject()
    with store.work(signed.person, signed.station) as work:
        work.rates.save(RATES)
        work.commit()
    page.refresh()
    assert not page.none.isVisible()
    assert page.first_focus() is page.cards


def test_escape_asks_before_it_drops_the_rates_taken_into_the_list(
    qtbot: QtBot, bench: Bench
) -> None:
    dialog = opened(qtbot, bench).dialog
    dialog.rate.set_text("60")
    assert dialog.take_rate()
    dialog.reject()
    assert dialog.isVisible()
    assert "not kept" in dialog.refusal.text()
    dialog.reject()
    assert not dialog.isVisible()
