"""Package serials: the check character finds a wrong and a swapped character."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shared.marking.problems import MarkingProblem
from shared.marking.serial import PackageSerial, check_character, package_serial, read_serial

NUMBERS = st.integers(1, 999_999_999)


def test_the_check_character_is_the_standards() -> None:
    """ISBT 128 donation numbers use ISO/IEC 7064 MOD 37-2; its worked example, from memory."""
    assert check_character("G123498654321") == "H"


@given(NUMBERS, NUMBERS)
def test_a_serial_comes_back(order: int, package: int) -> None:
    serial = package_serial(order, package)
    assert read_serial(f" {serial.lower()} ") == PackageSerial(order, package)


@given(NUMBERS, NUMBERS, st.data())
def test_one_wrong_digit_or_two_swapped_are_found(
    order: int, package: int, data: st.DataObject
) -> None:
    serial = package_serial(order, package)
    at = data.draw(st.integers(0, len(serial) - 3))
    digit = data.draw(st.sampled_from("0123456789"))
    slips = {serial[:at] + digit + serial[at + 1 :]}
    slips.add(serial[:at] + serial[at + 1] + serial[at] + serial[at + 2 :])
    for slip in slips - {serial}:
        assert isinstance(read_serial(slip), MarkingProblem), slip


def test_another_code_isnt_ours() -> None:
    for text in ("", "1042-7", "1042-07-7", "0-7-7", "(01)98898765432106", "1042-7-22"):
        assert read_serial(text) == MarkingProblem("not_ours", {"text": text})
    assert package_serial(1042, 7) == "1042-7-7"
    assert read_serial("1042-7-3") == MarkingProblem("check_character", {"text": "1042-7-3"})


@pytest.mark.parametrize(("order", "package"), [(0, 1), (1, 0), (-1, 1), (10**9, 1)])
def test_no_number_no_serial(order: int, package: int) -> None:
    with pytest.raises(ValueError, match="no serial"):
        package_serial(order, package)
