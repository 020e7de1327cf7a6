"""The one way a value is written, and its hash, against the standard's own test value."""

from hypothesis import given
from hypothesis import strategies as st

from shared.shop.papers import canonical_json, digest


def test_keys_are_sorted_and_letters_stay_letters() -> None:
    assert canonical_json({"b": [1, None, True], "a": "ø"}) == '{"a":"ø","b":[1,null,true]}'


def test_the_hash_is_sha_256() -> None:
    """FIPS 180-4's example message "abc"."""
    assert digest("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


@given(st.dictionaries(st.text(max_size=4), st.integers(), max_size=5))
def test_the_order_of_writing_does_not_matter(value: dict[str, int]) -> None:
    turned = dict(reversed(value.items()))
    assert canonical_json(turned) == canonical_json(value)
