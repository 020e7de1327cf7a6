"""How a name and a phone number are made ready for searching."""

import pytest

from shared.shop.customers import name_key, phone_digits, town


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("Jørgen & Łucja <O'Neil>", "jorgen & lucja <o'neil>"),
        ("  MÜLLER   Søren ", "muller soren"),
        ("Straße", "strasse"),
        ("Ægir Þór", "aegir thor"),
        ("Nguyễn Đạt", "nguyen dat"),
        ("", ""),
    ],
)
def test_a_name_is_found_without_its_accents(text: str, key: str) -> None:
    assert name_key(text) == key
    assert name_key(name_key(text)) == key


def test_only_digits_of_a_phone_number_count() -> None:
    assert phone_digits("+1 (555) 010-0123 ext. 4") == "155501001234"
    assert phone_digits("²٣ none") == ""


def test_the_town_is_the_last_line_of_an_address() -> None:
    assert town("1 Mill Road\n Oakfield, WI 53000 \n\n") == "Oakfield, WI 53000"
    assert town("") == ""
