"""A confirmation that is mailed: filled in for the owner, the paper in a file to be attached."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QUrl, QUrlQuery
from PySide6.QtGui import QDesktopServices, QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop.bench import Bench
from desktop.counter.mailed_paper import MailedPaper
from tests.db.examples import lot_of_halves
from tests.desktop.audit import unnamed
from tests.desktop.counter.opened_counter import with_order

CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def paper(qtbot: QtBot, bench: Bench) -> Iterator[MailedPaper]:
    """The confirmation of Anna's half hog; she reads Spanish and has two addresses."""
    with bench.store.work(bench.person, bench.station) as work:
        lot = lot_of_halves(work)
        details = work.shop.details()
        work.shop.save(replace(details, name="North Fork Meats"))
        anna = work.customers.get(lot.shares[0].customer_id or 0)
        assert anna is not None
        email = "anna+hogs@example.org, ole@example.org"
        work.customers.save(replace(anna, language="es", email=email))
        work.commit()
    place = with_order(qtbot, bench, lot)
    QTest.keyClick(place.order.table, Qt.Key.Key_P, CTRL)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), MailedPaper))
    found = QApplication.activeModalWidget()
    assert isinstance(found, MailedPaper)
    yield found
    found.close()
    place.hide()


def test_the_mail_is_filled_in_and_the_paper_lies_ready(
    bench: Bench, paper: MailedPaper, monkeypatch: pytest.MonkeyPatch
) -> None:
    links: list[QUrl] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: links.append(url) or True)
    QTest.keyClick(paper, Qt.Key.Key_F7)
    (link,) = links
    sent = bytes(link.toEncoded().data()).decode("ascii")
    assert sent.startswith("mailto:anna%2Bhogs@example.org,ole@example.org?subject=North%20Fork")
    asked, full = QUrlQuery(link), QUrl.ComponentFormattingOption.FullyDecoded
    assert asked.queryItemValue("subject", full) == "North Fork Meats: su orden 1"
    body = asked.queryItemValue("body", full)
    assert body.startswith("Anna Berg,\r\n\r\nVa adjunta la confirmación de la orden 1.")
    assert "estimado" in body
    assert "Necesitamos su orden de corte para el" in body
    written = Path(QGuiApplication.clipboard().text())
    assert written.parent == bench.paths.data / "mail"
    assert written.read_bytes() == paper.pdf
    assert str(written) in paper.said.text()
    assert unnamed(paper) == []


def test_who_has_no_address_is_told_of_and_so_is_a_computer_without_mail(
    paper: MailedPaper, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda _url: False)
    paper.mail_button.click()
    assert "no mail program" in paper.said.text()
    paper._to = replace(paper._to, email="at her sister's")  # pyright: ignore[reportPrivateUsage]
    paper.mail_button.click()
    assert paper.said.text().startswith("Anna Berg has no mail address that can be read")
