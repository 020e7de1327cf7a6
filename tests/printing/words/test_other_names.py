"""Names the trade uses besides the catalogue's find the cuts they mean, in both languages.

Which name means which cut is common practice, no source: the table below was written from memory,
for every kind of animal, and is what somebody at the phone may say.
"""

import polib
import pytest

from printing.words import LANGUAGES, Words
from printing.words.other_names import cut_names, other_names
from shared.carcass.anatomy import catalogue, species
from shared.shop.customers import name_key
from shared.shop.found_names import name_forms
from shared.shop.other_names import NamesSearched
from tests.test_house import ROOT

SAID = """
beef en prime rib = rib_roast rib_roast_chine_off
beef en osso buco = shank_slices
beef en hamburger = ground_beef
beef en burgers = ground_beef beef_patties
beef en filet mignon = filet
beef en fillet = filet whole_tenderloin
beef en porterhouse = porterhouse_steak
beef en Delmonico = ribeye_steak club_steak bone_in_strip_steak strip_steak
beef en triangle = tri_tip
beef en tri tip = tri_tip
beef en skirt steak = inside_skirt outside_skirt
beef en New York strip = strip_steak bone_in_strip_steak
beef en picanha = coulotte
beef en hanger steak = hanging_tender
beef en brats = fresh_sausage
beef en arrachera = inside_skirt outside_skirt
beef en suadero = navel
beef en chuletón = rib_steak rib_steak_chine_off tomahawk_steak
beef es chuletón = rib_steak rib_steak_chine_off tomahawk_steak
beef es arrachera = inside_skirt outside_skirt
beef es suadero = navel
beef es cecina = jerky top_round_steak
beef es costilla cargada = short_ribs flanken_short_ribs
beef es osobuco = shank_slices
beef es hamburguesas = ground_beef beef_patties
beef es rabo = oxtail
beef es prime rib = rib_roast rib_roast_chine_off
bison en prime rib = rib_roast rib_roast_chine_off
bison en burger = ground_bison bison_patties
bison en osso buco = shank_slices
bison es hamburguesa = ground_bison bison_patties
bison es filete miñón = filet
pork en Boston butt = whole_butt long_butt butt_roast boneless_butt_roast
pork en picnic ham = skin_on_picnic whole_picnic short_shank_picnic
pork en back fat = fatback
pork en ham hock = hock
pork en trotters = foot
pork en pigs feet = foot
pork en hog jowl = whole_jowl
pork en baby back ribs = back_ribs
pork en brats = link_sausage
pork en pork belly = skin_on_belly belly_slab half_belly
pork en rind = skin
pork en pork liver = liver
pork en manitas = foot
pork en codillos = hock cross_cut_shank
pork es manitas = foot
pork es manitas de cerdo = foot
pork es codillo = hock cross_cut_shank
pork es jamón = skin_on_ham whole_ham short_shank_ham half_ham boneless_ham
pork es cecina = ham_cutlet
pork es lechón = roasting_pig
pork es lonja = fatback
pork es Boston butt = whole_butt long_butt butt_roast boneless_butt_roast
pork es hígado de puerco = liver
veal en osso bucos = osso_buco
veal en scallopini = scaloppine
veal en burger = ground_veal veal_patties
veal en fillet = whole_tenderloin short_tenderloin
veal es osobuco = osso_buco
veal es chuletón = rib_chop rib_chop_chine_off
veal es rabo = tail
lamb en rack of lamb = whole_rack frenched_rack half_rack
lamb en French rack = frenched_rack
lamb en lollipop chops = rib_chop
lamb en leg of lamb = whole_leg leg_shank_off short_leg boneless_leg boneless_short_leg
lamb en backstrap = boneless_loin rack_eye
lamb es paletilla = square_shoulder shoulder_roast boneless_shoulder
lamb es chuletitas = rib_chop
lamb es carré = whole_rack frenched_rack half_rack
goat en curry goat = bone_in_cubes
goat en rack of goat = whole_rack frenched_rack half_rack
goat en birria = bone_in_cubes
goat es birria = bone_in_cubes
goat es hamburguesa = ground_goat goat_patties
deer en inner loins = tenderloin
deer en backstraps = whole_backstrap
deer en burger = ground_venison venison_patties
deer en ham = whole_leg leg_shank_off boneless_leg
deer en deer sticks = snack_sticks
deer en horns = antlers
deer es cuernos = antlers
deer es cecina = jerky
deer es hamburguesa = ground_venison venison_patties
"""


def _searched(kind: str, language: str) -> tuple[list[str], NamesSearched]:
    words, codes = Words(language, strict=True), list(catalogue(kind).cuts)
    own = [[words.name(kind, f"cut.{code}", count) for count in (1, 2)] for code in codes]
    return codes, NamesSearched(
        [name_forms(each) for each in own], lambda: cut_names(words, kind, codes)
    )


def _table() -> list[tuple[str, str, str, frozenset[str]]]:
    said: list[tuple[str, str, str, frozenset[str]]] = []
    for line in SAID.strip().splitlines():
        typed, cuts = line.split(" = ")
        kind, language, name = typed.split(" ", 2)
        said.append((kind, language, name, frozenset(cuts.split())))
    return said


@pytest.mark.parametrize(("kind", "language", "typed", "cuts"), _table())
def test_what_is_said_on_the_phone_finds_the_cuts_it_means(
    kind: str, language: str, typed: str, cuts: frozenset[str]
) -> None:
    """All of them and before anything else; only where the name means one may it be taken."""
    codes, names = _searched(kind, language)
    found = [codes[one.at] for one in names.found(typed)]
    assert frozenset(found[: len(cuts)]) == cuts
    meant = names.meant(typed)
    assert meant is None or (len(cuts) == 1 and codes[meant] in cuts)


def test_every_animal_is_in_the_table_in_both_languages() -> None:
    told = {(kind, language) for kind, language, _, _ in _table()}
    assert told == {(kind, language) for kind in species() for language in LANGUAGES}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", species())
def test_no_other_name_hides_a_name_of_the_catalogue(kind: str, language: str) -> None:
    """Who types a cut's own name, of one or several, gets that cut, first of all."""
    codes, names = _searched(kind, language)
    for at, forms in enumerate(names.forms):
        for own in forms:
            meant = names.meant(own)
            assert meant is not None, own
            assert own in names.forms[meant], (own, codes[meant])
            assert names.found(own)[0].other == "", own
            assert at in [one.at for one in names.found(own)]
    words = Words(language, strict=True)
    own_names = {form for forms in names.forms for form in forms}
    others = {name_key(one) for code in codes for one in other_names(words, kind, code)}
    assert own_names.isdisjoint(others)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", species())
def test_other_names_are_of_cuts_there_are_and_each_is_found(kind: str, language: str) -> None:
    path = ROOT / "printing" / "words" / language / f"{kind}.po"
    listed = {one.msgid for one in polib.pofile(str(path)) if one.msgid.startswith("other.")}
    codes, names = _searched(kind, language)
    assert listed <= {"other.animal", *(f"other.{code}" for code in codes)}
    assert "other.animal" in listed
    words = Words(language, strict=True)
    for at, code in enumerate(codes):
        for other in other_names(words, kind, code):
            assert at in [one.at for one in names.found(other)], other
            assert other == other.strip() != "", code


def test_the_catalogues_name_finds_what_the_shop_has_named_itself() -> None:
    words = Words("en", {"pork/cut.hock": "knuckle end"})
    codes = list(catalogue("pork").cuts)
    forms = [name_forms([words.name("pork", f"cut.{code}")]) for code in codes]
    names = NamesSearched(forms, lambda: cut_names(words, "pork", codes))
    found = next(one for one in names.found("hock") if codes[one.at] == "hock")
    assert found.other == "hock"
    assert codes[names.meant("knuckle end") or 0] == "hock"
