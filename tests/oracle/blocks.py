"""Blocks of random lots put to planner and judge; run in processes of their own."""

import json
import signal
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from types import FrameType

from shared.carcass import anatomy
from shared.cutting.answer import Answer
from shared.cutting.order import Question
from shared.cutting.plan import Planner
from shared.orderfile import OrderFile, read
from tests.oracle import checker, pools
from tests.oracle.alike import unlike
from tests.oracle.lot import Lot
from tests.oracle.model import WORST, can_stand, verdict
from tests.oracle.random_orders import Case, cases
from tests.oracle.species_file import Species

FILES = Path(anatomy.__file__).parent / "species"
SPECIES = sorted(path.stem for path in FILES.glob("*.toml"))
BLOCK = 250
CONFLICTS_CHECKED = 40
PATIENCE = 10
POOL_KINDS = ("trim", "leaner", "batch")


@dataclass(frozen=True)
class Block:
    """What came of a block: counts by verdict and of edges, and the lots judged otherwise."""

    counts: Counter[str]
    wrong: list[str]


class TooSlowError(Exception):
    """The planner took longer than anybody would wait."""


@cache
def species_of(name: str) -> Species:
    return Species.read(FILES / f"{name}.toml")


def question_of(case: Case) -> Question:
    found = read(json.dumps(case.order))
    assert isinstance(found, OrderFile), found
    return found.question


def run(name: str, seed: str) -> Block:
    """Put one block of lots to both, and look at the plans and at the first conflicts."""
    species, planner = species_of(name), Planner(anatomy.catalogue(name))
    block = Block(Counter(), [])
    looked_at = 0
    for case in cases(species, name, seed, BLOCK):
        lot = Lot(case.order, species)
        try:
            with patience():
                answer = planner.answer(question_of(case))
        except TooSlowError:
            block.wrong.append(f"{case.seed}: over {PATIENCE} s")
            continue
        found = list(differences(lot, answer))
        if looked_at < CONFLICTS_CHECKED and (answer.conflicts or answer.questions):
            looked_at += 1
            found += reducible(lot, answer)
        if found:
            block.wrong.append(f"{case.seed}: {found[:3]} {json.dumps(case.order)}")
        block.counts[answer.verdict] += 1
        block.counts["edge"] += case.edge is not None
    return block


@contextmanager
def patience() -> Iterator[None]:
    """Give up on an answer that takes too long, where the system can."""

    def give_up(_number: int, _frame: FrameType | None) -> None:
        raise TooSlowError

    if not hasattr(signal, "SIGALRM"):
        yield
        return
    before = signal.signal(signal.SIGALRM, give_up)
    signal.alarm(PATIENCE)
    try:
        yield
    finally:
        signal.alarm(0)
        signal.signal(signal.SIGALRM, before)


def expected_verdict(lot: Lot, answer: Answer) -> str:
    """The judge's verdict: the solver's, the pools', and whether the owners must settle."""
    asks = any(one.kind == "undivided_piece" for one in answer.questions) or unlike(lot)
    found = [verdict(lot), pools.verdict(lot, answer.lines), "asks" if asks else "sure"]
    return max(found, key=WORST.index)


def differences(lot: Lot, answer: Answer) -> Iterator[str]:
    """Where verdict or plan are not what the judge says."""
    expected = expected_verdict(lot, answer)
    if answer.verdict != expected:
        yield f"planner {answer.verdict}, judge {expected}"
    yield from checker.faults(lot, answer)


def reducible(lot: Lot, answer: Answer) -> Iterator[str]:
    """Conflicts (and single parts wanted twice) that stand, or can't though one line is let go."""
    sets = [one.lines for one in answer.conflicts if one.kind not in POOL_KINDS]
    sets += [one.lines for one in answer.questions if one.kind == "single_wanted_twice"]
    for lines in sets:
        if can_stand(lot, lines) is not None:
            yield f"{lines} can stand together"
        for one in lines:
            if can_stand(lot, [other for other in lines if other != one]) is None:
                yield f"{lines} can't stand even without {one}"
