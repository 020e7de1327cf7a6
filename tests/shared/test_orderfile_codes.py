"""Codes in an order file are held against the species they speak of."""

import pytest

from shared.orderfile import OrderFile, read
from tests.shared.test_orderfile import GOOD


@pytest.mark.parametrize(
    ("find", "put", "code", "pointer"),
    [
        ('"whole_ham"', '"whole_hamm"', "no_such_cut", "/choices/0/cut"),
        ('"smoked"', '"smoky"', "no_such_finish", "/choices/0/finishes/0"),
        ('"cut": "whole_ham"', '"cut": "hock", "way": "left"', "no_such_way", "/choices/0/way"),
        ('"liver"', '"livver"', "no_such_part", "/carcasses/0/gone/0/part"),
        ('"stretch": "rib"', '"stretch": "ribs"', "no_such_stretch",
         "/carcasses/0/measured/0/stretch"),
        ('"own_lengths": {"rib"', '"own_lengths": {"ribs"', "no_such_stretch",
         "/settings/own_lengths/ribs"),
        ('"species": "pork"', '"species": "dodo"', "not_one_of", "/species"),
    ],
)  # fmt: skip
def test_codes_are_held_against_the_species(find: str, put: str, code: str, pointer: str) -> None:
    known = GOOD.replace('"chops"', '"centre_chop"').replace('"ground"', '"ground_pork"')
    assert isinstance(read(known), OrderFile)
    assert known.count(find) == 1
    text = known.replace(find, put)
    found = read(text)
    assert isinstance(found, tuple)
    assert [(one.pointer, one.code) for one in found] == [(pointer, code)]
    line = text.splitlines()[found[0].line - 1][found[0].column - 1 :]
    assert line.startswith(put.split(": ")[-1].split("{")[-1])
