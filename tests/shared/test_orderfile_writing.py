"""What an order file says of batches, added fat and divided sides comes back as it was written."""

import json
from fractions import Fraction

import pytest

from shared.cutting.order import Added
from shared.orderfile import OrderFile, read_form, write
from tests.shared.test_orderfile import GOOD, only_fault, schema_takes


def test_seasoning_added_fat_and_sides_not_cut_alike_come_back() -> None:
    value = json.loads(GOOD)
    assert "cut_alike" not in value["settings"]
    value["settings"]["cut_alike"] = False
    value["choices"][2] |= {
        "seasoning": "hot_italian",
        "added": {"of": "pork_fat", "share": "20 %"},
    }
    value["choices"][1]["added"] = {"of": "beef_fat"}
    found = read_form(json.dumps(value))
    assert isinstance(found, OrderFile)
    assert schema_takes(value)
    assert found.question.settings.cut_alike is False
    assert found.question.choices[2].seasoning == "hot_italian"
    assert found.question.choices[2].added == Added("pork_fat", Fraction(1, 5))
    assert found.question.choices[1].added == Added("beef_fat")
    text = write(found.species, found.question)
    assert read_form(text) == found
    assert schema_takes(json.loads(text))


@pytest.mark.parametrize("added", [{"of": "water"}, {"share": "20 %"}, "pork_fat"])
def test_added_is_one_of_the_stocks_the_shop_keeps(added: object) -> None:
    value = json.loads(GOOD)
    value["choices"][2]["added"] = added
    fault = only_fault(json.dumps(value))
    assert fault.pointer.startswith("/choices/2/added")
    assert not schema_takes(value)
