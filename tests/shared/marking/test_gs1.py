"""Element strings against GS1's own test vectors, read back by an independent library (biip)."""

from datetime import date
from decimal import Decimal

import biip
import pytest
from biip.gs1_messages import GS1Message
from hypothesis import given
from hypothesis import strategies as st

from shared.marking.gs1 import (
    FNC1,
    SET_82,
    Element,
    ElementString,
    check_digit,
    element_string,
    gtin14,
    lacking,
    package_elements,
    parse,
    parse_human,
)
from shared.marking.problems import MarkingProblem
from shared.units import Weight, WeightUnit, weight_text

# GS1 Barcode Syntax Dictionary and Engine (27 July 2026), zxing test vectors, GS1 Denmark.
CHECK_DIGITS = [
    ("629104150021", 3),
    ("730001100001", 7),
    ("501234567890", 0),
    ("501234567421", 6),
    ("890400021003", 7),
    ("1234567890123", 1),
    ("9501234567890", 3),
    ("9889876543210", 6),
    ("9061414100001", 5),
    ("9001234567890", 8),
    ("0952012345678", 8),
    ("12345678901234567", 5),
]
GTIN = "98898765432106"


def string(found: ElementString | MarkingProblem) -> ElementString:
    assert isinstance(found, ElementString), found
    return found


@pytest.mark.parametrize(("digits", "check"), CHECK_DIGITS)
def test_published_check_digits(digits: str, check: int) -> None:
    assert check_digit(digits) == check


def test_a_check_digit_needs_digits() -> None:
    for text in ("", "12a", "١٢٣"):
        with pytest.raises(ValueError, match="digits"):
            check_digit(text)


@pytest.mark.parametrize(
    ("human", "raw"),
    [
        ("(01)12345678901231(10)12345", "01123456789012311012345"),
        ("(3100)123456(10)12345", "31001234561012345"),
        ("(10)12345(11)991225", f"1012345{FNC1}11991225"),
        (
            "(01)98898765432106(15)991231(3103)001750(10)12A(422)123(21)123456",
            f"01988987654321061599123131030017501012A{FNC1}422123{FNC1}21123456",
        ),
    ],
)
def test_fnc1_stands_only_where_it_must(human: str, raw: str) -> None:
    found = string(parse_human(human))
    assert (found.raw, found.human) == (raw, human)
    assert string(parse(f"]C1{raw}")) == found == string(parse(raw + FNC1))


# What the published strings mean.
WEIGHTS = [
    ("(01)98898765432106(3202)012345(15)991231", "123.45\u00a0lb"),
    ("(01)90614141000015(3202)000150", "1.50\u00a0lb"),
    ("(01)90012345678908(3103)001750", "1.750\u00a0kg"),
    ("(01)90012345678908(3202)001750(11)100312", "17.50\u00a0lb"),
    ("(01)95012345678903(3103)000123", "0.123\u00a0kg"),
    ("(01)09520123456788(3103)000195(3922)0299(17)201225", "0.195\u00a0kg"),
    ("(3103)000035", "0.035\u00a0kg"),
    ("(3102)001234", "12.34\u00a0kg"),
]


@pytest.mark.parametrize(("human", "net"), WEIGHTS)
def test_published_strings_say_the_weight_that_biip_reads(human: str, net: str) -> None:
    found = string(parse_human(human))
    assert found.net_weight is not None
    assert weight_text(found.net_weight) == net
    theirs = read_by_biip(found)
    number = Decimal(net.partition("\u00a0")[0])
    assert next(one.decimal for one in theirs.element_strings if one.ai.ai[0] == "3") == number
    assert theirs.as_hri() == human


def read_by_biip(found: ElementString) -> GS1Message:
    message = biip.parse(f"]C1{found.raw}").gs1_message
    assert message is not None
    return message


def test_dates_are_read_as_biip_reads_them() -> None:
    human = "(01)98898765432106(3202)012345(15)991231"
    best_before = read_by_biip(string(parse_human(human))).element_strings[-1]
    assert best_before.date == date(1999, 12, 31)


@pytest.mark.parametrize(
    ("value", "good"),
    [
        ("201310", False),
        ("200132", False),
        ("200230", False),
        ("200229", True),
        ("210229", False),
        ("201200", True),
        ("200001", False),
        ("20121", False),
    ],
)
def test_published_date_vectors(value: str, good: bool) -> None:
    """201310 has a month 13, 200132 a day 32, 200230 is 30 February; day 00 is the month."""
    found = element_string([Element("17", value)])
    assert isinstance(found, ElementString) == good


def test_a_harvest_day_is_a_day_and_may_be_two() -> None:
    for value, code in (
        ("250131", ""),
        ("250131250202", ""),
        ("250100", "date"),
        ("2501312", "date"),
    ):
        found = element_string([Element("7007", value)])
        assert (found.code if isinstance(found, MarkingProblem) else "") == code


@pytest.mark.parametrize(
    ("human", "code"),
    [
        ("(01)95012345678902(3103)000123", "check_digit"),
        ("(01)9501234567890", "length"),
        ("(01)9501234567890X", "characters"),
        ("(01)95012345678903(01)95012345678903", "twice"),
        ("(99)1", "unknown_ai"),
        ("(10)", "length"),
        ("(10)123456789012345678901", "length"),
        ("(10)1 2", "characters"),
        ("(10)ø", "characters"),
        ("(3202)00123", "length"),
        ("(3202)00123x", "characters"),
        ("(422)1234", "length"),
        ("0195012345678903", "unknown_ai"),
        ("", "unknown_ai"),
    ],
)
def test_a_wrong_string_is_refused(human: str, code: str) -> None:
    found = parse_human(human)
    assert isinstance(found, MarkingProblem)
    assert found.code == code


@pytest.mark.parametrize(
    ("raw", "code"),
    [
        ("0195012345", "cut_short"),
        (f"01950{FNC1}12345678903", "cut_short"),
        ("99", "unknown_ai"),
        ("", "empty"),
        ("]C1", "empty"),
    ],
)
def test_a_wrong_scan_is_refused(raw: str, code: str) -> None:
    found = parse(raw)
    assert isinstance(found, MarkingProblem)
    assert found.code == code


def test_what_must_stand_beside_a_net_weight() -> None:
    alone, whole, content = (
        string(parse_human(text))
        for text in ("(3202)000150", "(01)90614141000015(3202)000150", "(02)90614141000015")
    )
    assert lacking(alone) == MarkingProblem("needs_gtin", {"ai": "3202", "needs": "01 02"})
    assert lacking(whole) is None
    assert lacking(content) == MarkingProblem("needs_count", {"ai": "02", "needs": "37"})


def test_gtins_of_every_length_become_fourteen_digits() -> None:
    assert gtin14(" 6291041500213 ") == "06291041500213"
    assert [gtin14(text) for text in ("6291041500214", "123", "62910415x0213")] == [
        MarkingProblem("check_digit", {"ai": "01", "value": "6291041500214", "expected": "3"}),
        MarkingProblem("length", {"ai": "01", "value": "123"}),
        MarkingProblem("characters", {"ai": "01", "value": "62910415x0213"}),
    ]


def test_a_package_says_what_it_is_and_weighs() -> None:
    net = Weight(1234, "lb", -2)
    found = string(package_elements(GTIN, net, date(2026, 11, 25), lot="L-31", serial="1042-7"))
    assert found.human == "(01)98898765432106(3202)001234(13)261125(10)L-31(21)1042-7"
    assert found.bracketed == "[01]98898765432106[3202]001234[13]261125[10]L-31[21]1042-7"
    assert (found.net_weight, found.value("21"), found.value("17")) == (net, "1042-7", "")
    assert lacking(found) is None
    assert string(parse_human("(10)A")).net_weight is None


@pytest.mark.parametrize(
    ("net", "human"),
    [
        (Weight(12, "lb"), "(3200)000012"),
        (Weight(12, "oz"), "(3202)000075"),
        (Weight(350, "g"), "(3102)000035"),
        (Weight(1234567, "lb", -4), "MarkingProblem"),
        (Weight(1234560, "lb", -4), "(3203)123456"),
        (Weight(1_000_000, "kg"), "MarkingProblem"),
        (Weight(1, "lb", -6), "MarkingProblem"),
        (Weight(0, "lb"), "MarkingProblem"),
    ],
)
def test_weights_are_written_exactly_or_not_at_all(net: Weight, human: str) -> None:
    found = package_elements(GTIN, net, date(2026, 11, 25))
    shown = found.human[18:30] if isinstance(found, ElementString) else "MarkingProblem"
    assert shown == human


def test_only_a_gtin_for_weighed_goods_will_do() -> None:
    net, day = Weight(1, "lb"), date(2026, 11, 25)
    assert package_elements("6291041500213", net, day) == MarkingProblem(
        "not_variable", {"gtin": "06291041500213"}
    )
    assert package_elements("1", net, day) == MarkingProblem("length", {"ai": "01", "value": "1"})
    found = package_elements(GTIN, net, day, lot="a b")
    assert found == MarkingProblem("characters", {"ai": "10", "value": "a b"})


TEXTS = st.text(sorted(SET_82), min_size=1, max_size=20)


@given(
    st.integers(1, 999_999),
    st.sampled_from(["lb", "kg"]),
    st.integers(0, 5),
    st.dates(date(2000, 1, 1), date(2049, 12, 31)),
    TEXTS,
    TEXTS,
)
def test_any_package_comes_back_from_the_scan_and_from_biip(
    count: int, unit: WeightUnit, places: int, day: date, lot: str, serial: str
) -> None:
    net = Weight(count, unit, -places)
    found = string(package_elements(GTIN, net, day, lot=lot, serial=serial))
    assert string(parse(f"]d2{found.raw}")) == found
    assert found.net_weight == net
    theirs = {one.ai.ai[:2]: one for one in read_by_biip(found).element_strings}
    weight = theirs["32" if unit == "lb" else "31"]
    assert weight.decimal == Decimal(count).scaleb(-places)
    assert theirs["13"].date == day
    assert (theirs["10"].value, theirs["21"].value) == (lot, serial)
    assert theirs["01"].value == GTIN
