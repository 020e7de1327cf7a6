"""The evening of the kill: who is told what, on paper or by mail, and that it is logged."""

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt, QUrl, QUrlQuery
from PySide6.QtGui import QDesktopServices
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.weights_dialog import WeightsDialog
from printing.mail import MOST_LINK
from shared.carcass.carcass import Holding
from shared.shop.lots import Lot, LotShare, NewLot
from shared.units import Weight
from tests.db.examples import arrived, booked, customer, weighed
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import opened, pressed
from tests.printing.pages import text

CTRL = Qt.KeyboardModifier.ControlModifier


def killed(bench: Bench) -> Lot:
    """A beef of two quarters and a half: the first owner reads Spanish and has mail."""
    with bench.store.work(bench.person, bench.station) as work:
        details = work.shop.details()
        work.shop.save(replace(details, name="North Fork Meats", phone="(555) 010-0100"))
        first = customer(work, "María Peña")
        work.customers.save(replace(first, language="es", email="maria@example.org"))
        second = customer(work, "Bert Iversen", "(555) 010-0456")
        shares = (
            LotShare(1, first.id, holdings=(Holding(0, 1, "fore"),)),
            LotShare(2, second.id, holdings=(Holding(0, 1, "hind"), Holding(0, 2))),
        )
        lot = booked(work, NewLot("beef", 1, bench.today(), second.id, shares))
        animal = arrived(work, lot, "T-114")
        weighed(work, animal, "400", side=1)
        work.commit()
    return lot


@pytest.fixture
def dialog(qtbot: QtBot, bench: Bench) -> WeightsDialog:
    killed(bench)
    made = WeightsDialog(bench)
    qtbot.addWidget(made)
    made.open()
    qtbot.waitUntil(lambda: made.table.rows.rowCount() == 2)
    return made


def test_each_share_of_the_day_is_told_weighed_or_not(dialog: WeightsDialog) -> None:
    first, second = dialog.table.rows.rows()
    assert first.note.hanging.pounds == 220  # 55 % of 400 lb, by table
    assert second.hanging_ng is None
    shown = [str(dialog.table.rows.index(1, at).data()) for at in range(6)]
    assert shown[2] == ""
    assert shown[3] == "by table, not weighed yet"
    assert shown[4:] == ["no address", "not yet"]
    assert "hangs at 220" in dialog.says.text()
    dialog.table.choose(1)
    assert "the rest is not weighed yet" in dialog.says.text()
    assert unnamed(dialog) == []


def test_it_is_logged_like_a_call_and_told_anew_when_it_weighs_otherwise(
    qtbot: QtBot, bench: Bench, dialog: WeightsDialog
) -> None:
    dialog.how.set_value("spoken")
    dialog.note.set_text("his wife")
    dialog.try_it()
    qtbot.waitUntil(lambda: dialog.table.rows.row(0).told is not None)
    assert dialog.isVisible()
    told = dialog.table.rows.row(0).told
    assert told is not None
    assert (told.how, told.note, told.person) == ("spoken", "his wife", bench.person.name)
    assert not dialog.table.rows.row(0).told_otherwise
    with bench.store.work(bench.person, bench.station) as work:
        (animal,) = work.animals.list()
        (one,) = work.weighings.of_animal(animal.id)
        work.weighings.correct(one.id, Weight.from_pounds("380"), "misread")
        work.commit()
    dialog.read()
    qtbot.waitUntil(lambda: dialog.table.rows.row(0).told_otherwise)
    assert "weighed otherwise since" in dialog.says.text()


def test_a_mail_opens_filled_in_and_who_has_no_address_is_told_so(
    qtbot: QtBot, dialog: WeightsDialog, monkeypatch: pytest.MonkeyPatch
) -> None:
    links: list[QUrl] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: links.append(url) or True)
    dialog.open_mail()
    qtbot.waitUntil(lambda: bool(links))
    (link,) = links
    assert link.path() == "maria@example.org"
    asked = QUrlQuery(link)
    full = QUrl.ComponentFormattingOption.FullyDecoded
    assert asked.queryItemValue("subject", full).startswith("North Fork Meats: su parte pesa 220")
    body = asked.queryItemValue("body", full)
    assert "María Peña," in body
    assert "Según la tabla" in body
    assert ", orden 1 (Arete T-114):" in body
    assert "(555) 010-0100" in body
    sent = bytes(link.toEncoded().data()).decode("ascii")
    assert len(sent) <= MOST_LINK
    assert "%0D%0A" in sent, "Qt hands the line ends on as they were escaped"
    assert dialog.refusal.isHidden(), "nothing of it was left out"
    dialog.table.choose(1)
    dialog.open_mail()
    assert dialog.refusal.text().startswith("Bert Iversen has no mail address kept")
    assert len(links) == 1


def test_several_addresses_of_a_customer_and_one_that_is_none(
    qtbot: QtBot, bench: Bench, dialog: WeightsDialog, monkeypatch: pytest.MonkeyPatch
) -> None:
    links: list[QUrl] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: links.append(url) or True)
    for email in ("ana+res@example.org; Luis <luis@example.org>", "ana en casa"):
        with bench.store.work(bench.person, bench.station) as work:
            (ana,) = work.customers.find("María")
            found = work.customers.get(ana.id)
            assert found is not None
            work.customers.save(replace(found, email=email))
            work.commit()
        dialog.read()
        qtbot.waitUntil(lambda now=email: dialog.table.rows.row(0).email == now)
        dialog.table.choose(0)
        dialog.open_mail()
        qtbot.waitUntil(lambda: not bench.work.busy())
    (link,) = links
    sent = bytes(link.toEncoded().data()).decode("ascii")
    assert sent.startswith("mailto:ana%2Bres@example.org,luis@example.org?subject=")
    assert dialog.refusal.text().startswith("“ana en casa” can't be read as a mail address")


def test_a_note_too_long_for_a_link_loses_its_parts_and_says_so(
    qtbot: QtBot, bench: Bench, dialog: WeightsDialog, monkeypatch: pytest.MonkeyPatch
) -> None:
    links: list[QUrl] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: links.append(url) or True)
    with bench.store.work(bench.person, bench.station) as work:
        details = work.shop.details()
        work.shop.save(replace(details, address="Callejón de los Ñandúes número uno, " * 30))
        work.commit()
    dialog.open_mail()
    qtbot.waitUntil(lambda: bool(links))
    body = QUrlQuery(links[0]).queryItemValue("body", QUrl.ComponentFormattingOption.FullyDecoded)
    assert "220" in body
    assert "Callejón" not in body
    assert "shorter than the printed note" in dialog.refusal.text()


def test_a_computer_without_a_mail_program_says_so(
    qtbot: QtBot, dialog: WeightsDialog, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda _url: False)
    dialog.open_mail()
    qtbot.waitUntil(lambda: bool(dialog.refusal.text()))
    assert "no mail program" in dialog.refusal.text()


def test_the_notes_are_one_paper_each_in_its_owner_s_language(
    qtbot: QtBot, dialog: WeightsDialog
) -> None:
    dialog.print_notes()
    qtbot.waitUntil(lambda: getattr(dialog, "preview", None) is not None)
    said = text(dialog.preview.pdf)
    assert "Lo que pesa su parte" in said
    assert "What your share weighs" in said
    assert "not weighed yet" in said
    assert "$" not in said, "a price nobody asked for"
    dialog.preview.close()


def test_the_counter_opens_it_by_key_and_an_empty_day_says_so(qtbot: QtBot, bench: Bench) -> None:
    place = opened(qtbot, bench)
    pressed(Qt.Key.Key_W, CTRL)
    dialog = place.dialog
    assert isinstance(dialog, WeightsDialog)
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert dialog.says.text() == "No animal was killed or is to be on this day."
    assert not dialog.main.isEnabled()


def test_while_it_is_read_it_says_so_and_shows_no_other_day(
    qtbot: QtBot, bench: Bench, dialog: WeightsDialog
) -> None:
    dialog.day.set_value(bench.today() + timedelta(1))
    dialog.read()
    assert dialog.says.text() == "Reading"
    assert dialog.table.rows.rowCount() == 0
    assert not dialog.print_all.isEnabled()
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert dialog.says.text() == "No animal was killed or is to be on this day."
    dialog.day.set_value(bench.today())
    dialog.read()
    assert dialog.says.text() == "Reading"
    qtbot.waitUntil(lambda: not bench.work.busy())
    assert dialog.table.rows.rowCount() == 2
    assert dialog.print_all.isEnabled()
