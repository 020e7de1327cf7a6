"""How long the planner takes, beside a general solver (OR-tools CP-SAT) on the same questions.

CPU time, the least of some batches, planner and solver by turns in one run. What each row of the
report measures:

- from scratch: frozen values in, frozen plan lines and trim out, with nothing remembered but the
  catalogue.
- after one change: a planner that has answered the order answers it with one choice changed.
- conflicts with remedies, from scratch: of an order with conflicts the answer and the ways out of
  each, with nothing remembered but the catalogue.
- a line that brings a conflict, with its remedies: a planner stands at an order that stands (that
  with conflicts, without each conflict's newest line); one such line is typed back, and the answer
  and its ways out are timed together. So the counter meets it.
- CP-SAT: the whole of it, building the model (ours) and solving; and the solving alone.

Python looks for garbage between the tries, not within one, as in the window, which puts that off
while something is planned (desktop/collecting.py).
"""

import argparse
import gc
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import replace
from unittest.mock import patch

from ortools.sat.python import cp_model

from shared.carcass import anatomy
from shared.cutting.answer import Remedy
from shared.cutting.order import Amount, Choice, Question
from shared.cutting.plan import Planner, plan
from shared.cutting.remedy import remedies
from tests.bench.crowded import crowded, question_of, slow_orders
from tests.bench.full_orders import FORMS, Form, Json, full_order
from tests.oracle.blocks import SPECIES, species_of
from tests.oracle.lot import Lot
from tests.oracle.model import verdict

BATCHES = 5


def cpu_ms(work: Callable[[], object], batches: int = BATCHES) -> float:
    """CPU milliseconds of some work: the least of so many tries."""
    best = float("inf")
    for _ in range(batches):
        gc.disable()
        try:
            start = time.process_time()
            work()
            best = min(best, time.process_time() - start)
        finally:
            gc.enable()
    return best * 1000


def percentile(times: Sequence[float], part: float) -> float:
    """The time that so large a part of the times don't exceed: of 1 to 100 ms 0.99 is 99 ms."""
    ordered = sorted(times)
    return ordered[max(0, -(-int(part * 1000) * len(ordered) // 1000) - 1)]


def changed(question: Question) -> Question:
    """The same question with one count one higher, else without its last line."""
    for place, one in enumerate(question.choices):
        if one.amount.kind in ("slices", "pieces"):
            more = replace(one, amount=Amount(one.amount.kind, one.amount.count + 1))
            choices: list[Choice] = list(question.choices)
            choices[place] = more
            return replace(question, choices=tuple(choices))
    return replace(question, choices=question.choices[:-1])


def after_one_change(question: Question) -> float:
    """The planner stands at the question; the time it takes for it with one choice changed."""
    planner, other = Planner(anatomy.catalogue("beef")), changed(question)
    best = float("inf")
    for _ in range(BATCHES):
        planner.answer(question)
        best = min(best, cpu_ms(lambda: planner.answer(other), 1))
    return best


def typed_back(question: Question, species: str) -> list[float]:
    """Of each conflict's newest line the time of answer and ways out together, typed back alone.

    The planner stands at the question without any of those lines; every try has its own.
    """
    catalogue = anatomy.catalogue(species)
    newest = {max(one.lines) for one in plan(question, catalogue).conflicts}
    times: list[float] = []
    for line in sorted(newest):
        aside = newest - {line}
        typed = replace(question, choices=tuple(_without(question, aside)))
        before = replace(question, choices=tuple(_without(question, newest)))
        best = float("inf")
        for _ in range(BATCHES):
            planner = Planner(catalogue)
            planner.answer(before)
            best = min(best, cpu_ms(lambda p=planner, q=typed: with_remedies(q, p), 1))
        times.append(best)
    return times


def _without(question: Question, lines: set[int]) -> list[Choice]:
    return [one for one in question.choices if one.line not in lines]


def with_remedies(question: Question, planner: Planner) -> tuple[tuple[Remedy, ...], ...]:
    """A plan and the ways out of its conflicts."""
    return remedies(question, planner.answer(question), planner.ways.catalogue, planner)


class Timed(cp_model.CpSolver):
    """The solver, adding up the CPU milliseconds spent in it."""

    spent = 0.0

    def solve(
        self,
        model: cp_model.CpModel,
        solution_callback: cp_model.CpSolverSolutionCallback | None = None,
    ) -> cp_model.CpSolverStatus:
        """Solve as ever."""
        start = time.process_time()
        try:
            return super().solve(model, solution_callback)
        finally:
            Timed.spent += (time.process_time() - start) * 1000


def solver_ms(order: Json) -> tuple[float, float]:
    """The solver's total time and the time of solving alone, once; model building is ours."""
    lot = Lot(order, species_of(order["species"]))
    Timed.spent = 0.0
    with patch.object(cp_model, "CpSolver", Timed):
        total = cpu_ms(lambda: verdict(lot), 1)
    return total, Timed.spent


def row(name: str, times: Sequence[float], unit: str = "ms") -> None:
    """One line of the report."""
    figures = [percentile(times, part) for part in (0.5, 0.9, 0.99)]
    told = "  ".join(f"{one:9.2f}" for one in (*figures, max(times)))
    sys.stdout.write(f"{name:58} {len(times):5}  {told} {unit}\n")
    sys.stdout.flush()


def whole_beef(form: Form, seed: str, lots: int, beside: int) -> None:
    """A beef of four owners: from scratch, after one change, and both beside the solver."""
    catalogue = anatomy.catalogue("beef")
    scratch, change, total, alone, times = [], [], [], [], []
    helped, typed = list[float](), list[float]()
    lines = 0
    for number in range(lots):
        order = full_order(f"{seed}.{number}", form)
        question = question_of(order)
        lines += len(question.choices)
        scratch.append(cpu_ms(lambda q=question: plan(q, catalogue)))
        change.append(after_one_change(question))
        answer = plan(question, catalogue)
        if answer.conflicts:
            helped.append(cpu_ms(lambda q=question: with_remedies(q, Planner(catalogue))))
            typed += typed_back(question, "beef")
        if number < beside:
            one, solve = solver_ms(order)
            total.append(one)
            alone.append(solve)
            times.append(one / change[-1])
    sys.stdout.write(f"\nwhole beef, four owners, {form}: {lines / lots:.1f} lines\n")
    row("  planner, from scratch", scratch)
    row("  planner, after one change", change)
    if helped:
        row("  planner, conflicts with remedies, from scratch", helped)
        row("  planner, a line that brings a conflict, with its remedies", typed)
    if total:
        row("  CP-SAT, building and solving", total)
        row("  CP-SAT, solving alone", alone)
        row("  CP-SAT in all / planner after one change", times, "times")


def one_run(seed: str, lots: int) -> None:
    """Up to 20 choices on one run, of one side and of both, and the orders that once were slow."""
    planners = {name: Planner(anatomy.catalogue(name)) for name in SPECIES}
    for strip in (True, False):
        sides = "one side: a strip" if strip else "both sides"
        sys.stdout.write(f"\nup to 20 choices on one run of {sides}\n")
        for peaceful in (True, False):
            _crowd(seed, lots, peaceful, planners, strip)
    for name, order in slow_orders():
        catalogue, question = anatomy.catalogue(order["species"]), question_of(order)
        row(f"  {name}", [cpu_ms(lambda q=question, c=catalogue: plan(q, c), 2)])


def _crowd(seed: str, lots: int, peaceful: bool, planners: dict[str, Planner], strip: bool) -> None:
    times: list[float] = []
    longest = ("", 0.0)
    for number in range(lots):
        order = crowded(f"{seed}.{number}", peaceful, planners, strip)
        catalogue = anatomy.catalogue(order["species"])
        question = question_of(order)
        times.append(cpu_ms(lambda q=question, c=catalogue: plan(q, c), 2))
        longest = max(longest, (f"{seed}.{number}", times[-1]), key=lambda one: one[1])
    row("  that stand" if peaceful else "  wild, with conflicts", times)
    over = sum(one > 20 for one in times)
    sys.stdout.write(f"    over 20 ms: {over}; longest: lot {longest[0]}\n")


def main(words: list[str]) -> int:
    """Print it all."""
    asked = argparse.ArgumentParser(prog="python -m tests.bench plan")
    asked.add_argument("--lots", type=int, default=200)
    asked.add_argument("--crowded", type=int, default=100)
    asked.add_argument("--beside", type=int, default=20, help="lots put to the solver too")
    asked.add_argument("--seed", default="1")
    given = asked.parse_args(words)
    if sys.gettrace() is not None:
        sys.stderr.write("not under coverage or a debugger: the figures would be false\n")
        return 2
    sys.stdout.write(f"seed {given.seed}; CPU time, least of {BATCHES}\n")
    sys.stdout.write(f"{'':58} {'lots':>5}  {'median':>9}  {'90 %':>9}  {'99 %':>9}  {'most':>9}\n")
    for form in FORMS:
        whole_beef(form, given.seed, given.lots, given.beside)
    one_run(given.seed, given.crowded)
    return 0
