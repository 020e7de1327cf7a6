"""The shop's usual over the species file's: its own primals replaced, the others kept."""

from shared.carcass.anatomy import catalogue
from shared.carcass.catalogue import UsualLine
from shared.shop.usual import UsualWay, as_choice, as_usual, shop_catalogue, usual_of
from shared.units import LENGTH_UNITS_PER_INCH

CHOP = UsualLine("loin", "centre_chop", "rest", 0, LENGTH_UNITS_PER_INCH, None, 2, None, ("fresh",))
ROAST = UsualLine("loin", "loin_roast", "pieces", 2)


def test_without_its_own_the_file_holds() -> None:
    assert shop_catalogue("pork") is catalogue("pork")
    assert shop_catalogue("pork").also_usual == ()


def test_its_own_primal_stands_in_place_of_the_files_in_cutting_order() -> None:
    ways = (UsualWay("pork", "loin", 1, (CHOP,)), UsualWay("pork", "loin", 2, (ROAST,)))
    own = shop_catalogue("pork", ways)
    known = catalogue("pork")
    assert [one for one in own.usual if one.primal == "loin"] == [CHOP]
    assert own.also_usual == (ROAST,)
    others = [one for one in known.usual if one.primal != "loin"]
    assert [one for one in own.usual if one.primal != "loin"] == others
    primals = [known.primals.index(one.primal) for one in own.usual]
    assert primals == sorted(primals)
    assert {one.primal for one in usual_of("pork", ways)} == {one.primal for one in known.usual}


def test_a_line_goes_to_a_choice_and_back() -> None:
    for line in (*catalogue("pork").usual, *catalogue("beef").usual, CHOP, ROAST):
        assert as_usual(as_choice(line), line.primal) == line
