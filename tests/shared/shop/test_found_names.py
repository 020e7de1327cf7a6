"""What a person types on the phone finds the cut, in either number, order and spelling.

The names are those of the program's own catalogue, in the language of the screen.
"""

import pytest

from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.shop.found_names import Forms, found_names, name_forms, one_meant, stems, written_nearly


def _cuts(species: str, language: str) -> tuple[list[str], list[Forms]]:
    words = Words(language)
    codes = list(catalogue(species).cuts)
    return codes, [
        name_forms([words.name(species, f"cut.{code}", count) for count in (1, 2)])
        for code in codes
    ]


@pytest.mark.parametrize(
    ("species", "language", "typed", "cut"),
    [
        ("pork", "en", "feet", "foot"),
        ("pork", "en", "Foot", "foot"),
        ("pork", "en", "hocks", "hock"),
        ("pork", "en", "spare ribs half", "half_spareribs"),
        ("pork", "es", "patas", "foot"),
        ("pork", "es", "pata", "foot"),
        ("beef", "en", "t bones", "t_bone_steak"),
        ("beef", "en", "tbone", "t_bone_steak"),
        ("beef", "en", "tri tips", "tri_tip"),
        ("beef", "en", "oxtail", "oxtail"),
        ("beef", "en", "steak flank", "flank_steak"),
        ("beef", "en", "patty", "beef_patties"),
        ("beef", "es", "corazon", "heart"),
        ("beef", "es", "corazones", "heart"),
        ("beef", "es", "bisteces de cuete", "eye_of_round_steak"),
        ("veal", "en", "calves liver", "liver"),
    ],
)
def test_a_cut_is_found_by_one_or_by_several(
    species: str, language: str, typed: str, cut: str
) -> None:
    codes, forms = _cuts(species, language)
    at = one_meant(typed, forms)
    assert at is not None, [forms[each] for each in found_names(typed, forms)]
    assert codes[at] == cut


@pytest.mark.parametrize(
    ("species", "typed"), [("lamb", "chops"), ("pork", "ribs"), ("beef", "roasts"), ("pork", "ham")]
)
def test_what_many_are_called_is_asked_not_guessed(species: str, typed: str) -> None:
    codes, forms = _cuts(species, "en")
    found = found_names(typed, forms)
    assert one_meant(typed, forms) is None
    assert len(found) > 3
    assert all(any(typed in form for form in forms[at]) for at in found)
    assert len(set(found)) == len(found) <= len(codes)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("species", ["beef", "bison", "deer", "goat", "lamb", "pork", "veal"])
def test_every_cut_is_found_by_each_of_its_names(species: str, language: str) -> None:
    """The whole name, of one and of several, finds the cut, and first of all."""
    _, forms = _cuts(species, language)
    for each in forms:
        for name in each:
            assert name in forms[found_names(name, forms)[0]], name


def test_one_named_wholly_comes_first() -> None:
    forms = [name_forms(one) for one in (("calf liver",), ("sliced liver",), ("liver", "livers"))]
    assert found_names("liver", forms) == (2, 0, 1)
    assert one_meant("livers", forms) == 2


def test_what_nobody_has_is_offered_by_what_is_near_never_taken() -> None:
    _, forms = _cuts("beef", "en")
    assert found_names("brisquet", forms) == ()
    assert one_meant("brisquet", forms) is None
    near = written_nearly("brisquet", forms)
    assert near
    assert all("brisket" in forms[at][0] for at in near)
    assert written_nearly("xylophone", forms) == ()


@pytest.mark.parametrize(
    ("several", "one"),
    [("patties", "patty"), ("calves", "calf"), ("raices", "raiz"), ("bisteces", "bistec")],
)
def test_the_endings_of_several_come_off(several: str, one: str) -> None:
    assert one in stems(several)
    assert stems("rib") == {"rib"}


def test_nothing_typed_finds_nothing() -> None:
    assert found_names("  ", [("ham",)]) == ()
    assert one_meant("", [("ham",)]) is None
    assert found_names("-", [("tri-tip", "tri-tips"), ("ham",)]) == (0,)
