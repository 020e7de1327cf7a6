"""Figures as papers write them, and every word a customer's paper can need, in both languages."""

import re
from datetime import date
from fractions import Fraction
from pathlib import Path
from typing import get_args

import polib
import pytest

import printing.words
from printing.letterhead import day_text, head_text, number_text, pounds, rate_shown
from printing.words import LANGUAGES, Words
from shared.billing.rates import CHARGE_CODES, Basis
from shared.billing.stakes import WaitsFor
from shared.shop.money import PaymentKind, PaymentMeans

FOLDER = Path(str(printing.words.__file__)).parent


@pytest.mark.parametrize(
    ("exact", "written"),
    [
        (Fraction(819), "819"),
        (Fraction(375, 2), "187.5"),
        (Fraction(1625, 8), "203.125"),
        (Fraction(1, 3), "0.3333"),
        (Fraction(-5, 2), "\u22122.5"),
        (Fraction(1234567, 100), "12,345.67"),
        (Fraction(0), "0"),
        (Fraction(-1, 1000000), "0.0000"),
    ],
)
def test_a_quantity_has_the_decimals_it_has(exact: Fraction, written: str) -> None:
    assert number_text(exact) == written


@pytest.mark.parametrize(
    ("heads", "written"),
    [("1", "1"), ("1/2", "½"), ("1/4", "¼"), ("3/2", "1½"), ("1/3", "1/3"), ("4/3", "1\u00a01/3")],
)
def test_heads_are_written_as_people_say_them(heads: str, written: str) -> None:
    assert head_text(Fraction(heads)) == written


def test_pounds_rates_and_days() -> None:
    assert pounds(Fraction(375, 2)) == "187.5\u00a0lb"
    assert rate_shown(Fraction(143, 2)) == "$0.715"
    assert rate_shown(Fraction(100, 3)) == "$0.3333"
    assert day_text(date(2026, 3, 9), Words("en")) == "March 9, 2026"
    assert day_text(date(2026, 12, 1), Words("es")) == "1 de diciembre de 2026"


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_word_a_bill_can_need_is_there(language: str) -> None:
    words = Words(language, strict=True)
    keys = [f"charge.{code}" for code in CHARGE_CODES]
    keys += [f"bills.basis_{one}" for one in (*get_args(Basis), "per_share")]
    keys += [f"bills.waits_{one}" for one in get_args(WaitsFor) if one]
    keys += [f"bills.paid_{one}" for one in get_args(PaymentKind)]
    keys += [f"bills.received_{one}" for one in get_args(PaymentKind)]
    keys += [f"bills.means_{one}" for one in get_args(PaymentMeans)]
    keys += [f"bills.month_{month}" for month in range(1, 13)]
    keys += [f"bills.note_{one}" for one in ("by_table", "half_of_whole", "waiting")]
    assert [key for key in keys if not words.has(key)] == []


def test_both_languages_say_the_same_things_with_the_same_data() -> None:
    told: dict[str, dict[str, set[str]]] = {}
    for language in LANGUAGES:
        for entry in polib.pofile(str(FOLDER / language / "bills.po")):
            forms = list(entry.msgstr_plural.values()) or [entry.msgstr]
            assert all(form.strip() for form in forms), entry.msgid
            data = set(re.findall(r"{(\w+)}", " ".join(forms)))
            told.setdefault(entry.msgid, {})[language] = data
    assert [key for key, by in told.items() if by.get("en") != by.get("es")] == []
