"""What fits beside the lines that stay: always what the search says of all lines together."""

import pytest

from shared.carcass import anatomy
from shared.cutting.beside import Beside
from shared.cutting.changed_choice import with_count
from shared.cutting.demand import Demand, demand
from shared.cutting.grouped import grouped
from shared.cutting.groups import groups
from shared.cutting.order import Question
from shared.cutting.plan import compiled, shop_of
from shared.cutting.standing import stand, stands
from shared.cutting.ways import Ways
from tests.bench.crowded import question_of
from tests.bench.full_orders import FORMS, full_order
from tests.oracle import random_orders
from tests.oracle.blocks import SPECIES, species_of
from tests.shared.cutting.tiny_lot import catalogue, choice, lot


def _compiled(question: Question) -> tuple[list[Demand], Ways]:
    shop = shop_of(question, compiled(catalogue()))
    return [demand(one, shop) for one in question.choices], shop.ways


def _beside(stay: list[Demand], ways: Ways, *watched: int) -> Beside:
    return Beside(grouped(stay, groups(stay, ways), ways), watched, ways)


def test_no_ham_steaks_beside_a_whole_ham() -> None:
    (ham, steaks), ways = _compiled(
        lot(choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 8))
    )
    assert _beside([ham], ways).most(steaks) == 0
    # Where the centre runs to 5 1/4 in: 6 take 4 13/16 in with the kerfs between, 7 take 5 5/8 in.
    assert _beside([], ways).most(steaks) == 6
    assert not _beside([ham], ways).may_fit(steaks)


def test_the_most_chops_of_a_back() -> None:
    (chops,), ways = _compiled(lot(choice(1, "chops", "slices", 45)))
    assert _beside([], ways).most(chops) == 38
    assert _beside([], ways).fits(with_count(chops, 38))
    assert not _beside([], ways).fits(with_count(chops, 39))


def test_what_is_watched_must_stand_even_if_nothing_touches_it() -> None:
    (ham, steaks, chops), ways = _compiled(
        lot(
            choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 6),
            choice(3, "chops", "slices", 4),
        )
    )  # fmt: skip
    assert _beside([ham, steaks], ways).most(chops) == 4
    assert _beside([ham, steaks], ways, 2).most(chops) == 0


def test_another_count_is_the_line_compiled_anew() -> None:
    question = lot(choice(1, "ham_steaks", "slices", 6), choice(2, "chops", "at_least", 3), sides=2)
    shop = shop_of(question, compiled(catalogue()))
    for one in question.choices:
        four = with_count(demand(one, shop), 4)
        assert four == demand(four.choice, shop)
        assert four.choice.amount.count == 4


@pytest.mark.parametrize("name", SPECIES)
def test_every_line_of_random_orders(name: str) -> None:
    found = 0
    for number in range(25):
        order = random_orders.case(species_of(name), name, f"{name} beside {number}").order
        found += _agree(question_of(order), name)
    assert found > 10


@pytest.mark.parametrize("form", FORMS)
def test_every_fourth_line_of_a_full_beef(form: str) -> None:
    question = question_of(full_order("beside 1", form))  # type: ignore[arg-type]
    assert _agree(question, "beef", 4) >= 5


def _agree(question: Question, name: str, step: int = 1) -> int:
    """How many lines of one row were asked about, each beside all others of its group."""
    shop = shop_of(question, compiled(anatomy.catalogue(name)))
    lines = [demand(one, shop) for one in question.choices]
    lines = [one for one in lines if one.rows and one.refusal is None]
    asked = 0
    for one in lines[::step]:
        others = [other for other in lines if other is not one]
        beside = _beside(others, shop.ways)
        (group,) = [it for it in groups([*others, one], shop.ways) if any(x is one for x in it)]
        assert beside.fits(one) == stands(group, shop.ways)
        together = stand(sorted(group, key=lambda it: it.choice.line), shop.ways)
        assert beside.surest(one) == (None if together is None else together.scenario)
        if len(one.rows) == 1 and one.choice.amount.kind in ("pieces", "slices"):
            kept = [other for other in group if other is not one]
            more = with_count(one, one.rows[0].need + 3)
            most = beside.most(more)
            if most:
                assert stands([*kept, with_count(more, most)], shop.ways)
            if most < more.rows[0].need:
                assert not stands([*kept, with_count(more, most + 1)], shop.ways)
            asked += 1
    return asked
