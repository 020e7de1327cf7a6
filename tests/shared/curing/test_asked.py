"""Fresh or cured: of which cuts it is asked, by the finishes in the species' files."""

import pytest

from shared.carcass.anatomy import catalogue
from shared.curing.asked import left_open, not_to_be_cured, usual_finish


# Hams, picnics and bellies are sold fresh and cured alike; what may be either is in the species'
# file, what the house does in its usual. Chops are fresh unless said (common practice, no source).
@pytest.mark.parametrize(
    ("cut", "finishes", "asked"),
    [
        ("whole_ham", (), True),
        ("whole_ham", ("cured_smoked",), False),
        ("whole_ham", ("fresh",), False),
        ("skin_on_picnic", (), True),
        ("belly_slab", (), True),
        ("boneless_ham_roast", ("tied",), True),
        ("boneless_ham_roast", ("tied", "seasoned"), False),
        ("centre_chop", (), False),
        ("bacon", (), False),
        ("spareribs", (), False),
        ("no such cut", (), False),
    ],
)
def test_what_is_left_open(cut: str, finishes: tuple[str, ...], asked: bool) -> None:
    assert left_open(catalogue("pork"), cut, finishes) is asked


@pytest.mark.parametrize(
    ("cut", "finish"),
    [
        ("whole_ham", ("cured_smoked",)),
        ("belly_slab", ("cured_smoked",)),
        ("whole_picnic", ("fresh",)),
        ("whole_jowl", ()),  # the usual grinds it, which says neither
        ("spareribs", ()),
    ],
)
def test_what_the_usual_proposes(cut: str, finish: tuple[str, ...]) -> None:
    assert usual_finish(catalogue("pork"), cut) == finish


@pytest.mark.parametrize(
    ("species", "cut", "finishes", "asked"),
    [
        ("pork", "whole_ham", (), True),
        ("pork", "whole_ham", ("fresh",), True),
        ("pork", "whole_ham", ("cured",), False),
        ("pork", "bacon", ("sliced",), True),
        ("pork", "ground_pork", (), False),
        ("beef", "packer_brisket", (), True),
        ("beef", "packer_brisket", ("corned",), False),
    ],
)
def test_what_a_cure_asks_first(
    species: str, cut: str, finishes: tuple[str, ...], asked: bool
) -> None:
    assert not_to_be_cured(catalogue(species), cut, finishes) is asked
