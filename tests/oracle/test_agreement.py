"""Planner and solver on random lots: equal verdicts, valid plans, conflicts that can't shrink.

The lots are the same each time. `STEELYARD_ORACLE_LOTS` sets how many there are in all,
`STEELYARD_ORACLE_SEED` gives other ones: more by hand, with fresh seeds.
"""

import os
from collections import Counter
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from dataclasses import replace
from fractions import Fraction
from multiprocessing import get_context

import pytest

from shared.carcass import anatomy
from shared.carcass.catalogue import Catalogue, Way
from shared.cutting.order import Question
from shared.cutting.plan import Planner
from tests.oracle.blocks import (
    BLOCK,
    SPECIES,
    Block,
    expected_verdict,
    question_of,
    run,
    species_of,
)
from tests.oracle.lot import Lot
from tests.oracle.random_orders import cases

SEED = os.environ.get("STEELYARD_ORACLE_SEED", "1")
LOTS = int(os.environ.get("STEELYARD_ORACLE_LOTS", "4000"))
BLOCKS = [
    (name, number) for number in range(-(-LOTS // (BLOCK * len(SPECIES)))) for name in SPECIES
]
Results = Callable[[str, int], Block]


@pytest.fixture(scope="module")
def results() -> Iterator[Results]:
    """Blocks by species and number; worked off by as many processes as there are processors."""
    if "PYTEST_XDIST_WORKER" in os.environ:
        yield lambda name, number: run(name, f"{SEED}.{number}")
        return
    with ProcessPoolExecutor(os.cpu_count(), mp_context=get_context("spawn")) as pool:
        futures: dict[tuple[str, int], Future[Block]] = {}
        for name, number in BLOCKS:
            futures[name, number] = pool.submit(run, name, f"{SEED}.{number}")
        yield lambda name, number: futures[name, number].result()
        pool.shutdown(wait=False, cancel_futures=True)


@pytest.mark.parametrize(("name", "number"), BLOCKS)
def test_planner_and_solver_agree(results: Results, name: str, number: int) -> None:
    block = results(name, number)
    print(name, number, dict(block.counts))  # noqa: T201
    assert not block.wrong, f"{len(block.wrong)} of {BLOCK}\n" + "\n".join(block.wrong[:3])
    assert sum(block.counts[one] for one in ("sure", "likely", "tight", "asks", "cant")) == BLOCK


def test_the_lots_are_hard_enough(results: Results) -> None:
    """At least 30 % stand, 30 % can't, 20 % lie within one slice or piece of the edge.

    The edge: the solver found that one more, or one less, of some line decides.
    """
    counts: Counter[str] = Counter()
    for name in SPECIES:
        counts += results(name, 0).counts
    print(dict(counts))  # noqa: T201
    lots = BLOCK * len(SPECIES)
    assert counts["sure"] + counts["likely"] + counts["tight"] >= lots * 0.3, counts
    assert counts["cant"] >= lots * 0.3, counts
    assert counts["edge"] >= lots * 0.2, counts


def one_unit_shorter(question: Question) -> Question:
    """Every measured stretch 1/203,200 in shorter than it is."""
    carcasses = tuple(
        replace(
            one,
            measured=tuple(replace(it, length=max(1, it.length - 1)) for it in one.measured),
        )
        for one in question.carcasses
    )
    return replace(question, carcasses=carcasses)


def a_thousandth_less(catalogue: Catalogue) -> Catalogue:
    """Every part off a run a thousandth too small for what is taken of it."""

    def more(way: Way) -> Way:
        parts = tuple(replace(it, share=it.share * Fraction(1001, 1000)) for it in way.parts)
        return replace(way, parts=parts)

    cuts = {
        code: replace(cut, ways=tuple(more(way) for way in cut.ways))
        for code, cut in catalogue.cuts.items()
    }
    return replace(catalogue, cuts=cuts)


@pytest.mark.parametrize("mutant", ["length", "share"])
def test_one_unit_of_capacity_less_is_noticed(mutant: str) -> None:
    """The judge is sharp: a planner that has one unit too little differs from it."""
    caught = 0
    for name in SPECIES:
        catalogue = anatomy.catalogue(name)
        if mutant == "share":
            catalogue = a_thousandth_less(catalogue)
        planner = Planner(catalogue)
        for case in cases(species_of(name), name, f"{SEED}.unit", 120, to_the_unit=1):
            question = question_of(case)
            if mutant == "length":
                question = one_unit_shorter(question)
            answer = planner.answer(question)
            caught += answer.verdict != expected_verdict(Lot(case.order, species_of(name)), answer)
    print(mutant, caught)  # noqa: T201
    assert caught >= 5
