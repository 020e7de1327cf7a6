"""The columns of a rate card's charges, on the page and in the form."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject

from desktop.office.money_words import charge_words
from desktop.office.usual_charges import particulars, rate_shown
from desktop.tables import Column, Figure
from shared.billing.rates import Charge

if TYPE_CHECKING:
    from desktop.bench import Bench


def charge_columns(_parent: QObject, bench: "Bench") -> list[Column[Charge]]:
    """What a charge is for, by what, its rate, who pays, and what is particular about it."""
    translate = QCoreApplication.translate
    return [
        Column(
            "what",
            lambda: translate("ChargeList", "Charge"),
            lambda one: charge_words(one.code, bench.words, one.name),
            width=190,
        ),
        Column(
            "basis",
            lambda: translate("ChargeList", "Charged"),
            lambda one: bench.words.say(f"bills.basis_{one.basis}"),
            width=170,
        ),
        Column(
            "rate",
            lambda: translate("ChargeList", "Rate"),
            lambda one: Figure(rate_shown(one.rate) if one.rate or one.steps else ""),
            kind="figure",
            width=100,
        ),
        Column(
            "falls_to",
            lambda: translate("ChargeList", "Paid by"),
            _payer,
            width=120,
        ),
        Column(
            "more",
            lambda: translate("ChargeList", "Further"),
            lambda one: particulars(one, bench.words),
            stretch=True,
            tip=lambda one: particulars(one, bench.words),
        ),
    ]


def _payer(charge: Charge) -> str:
    if charge.falls_to == "producer":
        return QCoreApplication.translate("ChargeList", "the producer")
    return QCoreApplication.translate("ChargeList", "the owner")
