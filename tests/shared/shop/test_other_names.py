"""A thing is found by names it doesn't carry, and none of those hides its own."""

from collections.abc import Sequence

import pytest

from shared.shop.found_names import name_forms
from shared.shop.other_names import Found, Layer, NamesSearched, OtherName

OWN = ["shank slice", "ground beef", "ground beef patty", "hip bone", "whole bone-in shank"]
TRADE = [["osso buco"], ["burger", "hamburger"], ["burger"], [], []]
SPANISH = [["rebanada de chambarete"], ["carne molida"], ["torta de carne molida"], [], []]


def _layer(names: Sequence[Sequence[str]]) -> Layer:
    return [[OtherName(one) for one in each] for each in names]


@pytest.fixture
def searched() -> NamesSearched:
    forms = [name_forms((one, f"{one}s")) for one in OWN]
    return NamesSearched(forms, lambda: (_layer(TRADE), _layer(SPANISH)))


def test_one_other_name_means_one_thing(searched: NamesSearched) -> None:
    assert searched.found("Osso Buco") == (Found(0, "osso buco"),)
    assert searched.meant("osso buco") == 0
    assert searched.meant("hamburgers") == 1


def test_a_name_of_several_things_offers_all_and_takes_none(searched: NamesSearched) -> None:
    assert searched.found("burger") == (Found(1, "burger"), Found(2, "burger"))
    assert searched.meant("burger") is None


def test_part_of_an_other_name_finds_from_three_letters_at_the_beginning_of_a_word(
    searched: NamesSearched,
) -> None:
    assert searched.found("oss") == (Found(0, "osso buco"),)
    assert searched.found("buc") == (Found(0, "osso buco"),)
    assert searched.found("ossobuco") == (Found(0, "osso buco"),)
    assert searched.found("os") == ()
    assert searched.found("ucos") == ()


def test_another_language_is_looked_through_only_where_nothing_else_is_found(
    searched: NamesSearched,
) -> None:
    assert searched.meant("carne molida") == 1
    assert searched.found("chambarete") == (Found(0, "rebanada de chambarete"),)
    assert [one.at for one in searched.found("ham")] == [1], "of hamburger alone"


def test_a_whole_own_name_is_never_anothers() -> None:
    forms = [name_forms(("ham", "hams")), name_forms(("leg", "legs"))]
    names = NamesSearched(forms, lambda: (_layer([[], ["ham"]]),))
    assert names.meant("ham") == 0
    assert names.found("ham") == (Found(0), Found(1, "ham"))


def test_a_whole_other_name_comes_before_part_of_an_own_one_and_is_asked() -> None:
    forms = [name_forms(("ham, hock off",)), name_forms(("hock of the leg",))]
    names = NamesSearched(forms, lambda: (_layer([[], ["ham hock"]]),))
    assert names.found("ham hock") == (Found(1, "ham hock"), Found(0))
    assert names.meant("ham hock") is None


def test_what_is_written_nearly_so_is_offered_never_taken(searched: NamesSearched) -> None:
    assert searched.found("osso bucco") == ()
    assert searched.meant("osso bucco") is None
    assert searched.near("osso bucco") == (Found(0, "osso buco"),)
    assert searched.near("xylophone") == ()


def test_names_are_read_when_they_are_first_needed() -> None:
    asked: list[str] = []

    def others() -> tuple[Layer, ...]:
        asked.append("read")
        return (_layer([["burger"]]),)

    names = NamesSearched([name_forms(("ground beef",))], others)
    assert names.meant("ground beef") == 0
    assert asked == [], "a whole own name asks for no other"
    assert names.meant("burger") == 0
    assert names.meant("burg") == 0
    assert asked == ["read"]


def test_nothing_typed_finds_nothing(searched: NamesSearched) -> None:
    for typed in ("", "  ", "-"):
        assert [one for one in searched.found(typed) if one.other] == []
    assert searched.meant("") is None
    assert searched.near("") == ()
