"""What one order has on the wrapping table: its lines, planned beside made, and its packages."""

from collections import Counter
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from printing.words.choice_words import product_words
from shared.carcass.anatomy import catalogue
from shared.curing.waiting import came_out, in_cure, on_the_way
from shared.cutting.dealt import dealt
from shared.cutting.forecast import Forecast, forecast
from shared.cutting.plan import plan
from shared.shop.counted import may_be_counted, weight_together

if TYPE_CHECKING:
    from collections.abc import Mapping

    from db.store import Store
    from printing.words import Words
    from shared.curing.batch import BatchState
    from shared.curing.recipe import Recipe
    from shared.cutting.forecast import LineForecast, Range
    from shared.cutting.order import Choice, Question
    from shared.marking.plant_marks import PlantMarks
    from shared.shop.counted import CountedPackages, CountedWeight
    from shared.shop.details import ShopDetails
    from shared.shop.lots import Lot
    from shared.shop.orders import Order
    from shared.shop.packages import PackageMade


@dataclass(frozen=True, slots=True)
class WrapLine:
    """One line of the order, or with line 0 an odd product; weights in nanograms.

    `planned` and `planned_ng` are None where the plan makes nothing of it. `counted` of the
    packages were wrapped by count; `made_ng` knows nothing of them. `together_ng` is what they
    weigh together, None where nobody weighed all of them; `weighed` says that in a shop that
    counts this line was chosen to be weighed. `stage` is how far the batch is that holds meat of
    it, None where none does or it is out.
    """

    line: int
    cut: str
    product: str
    finishes: tuple[str, ...]
    planned: "Range | None"
    planned_ng: int | None
    packages: int = 0
    pieces: int = 0
    made_ng: int = 0
    counted: int = 0
    together_ng: int | None = None
    weighed: bool = False
    stage: "BatchState | None" = None


@dataclass(frozen=True, slots=True)
class Wrapping:
    """An order as the wrapping table sees it, read in one go."""

    order: "Order"
    lot: "Lot"
    shop: "ShopDetails"
    question: "Question"
    forecast: Forecast
    packages: "tuple[PackageMade, ...]"
    counted: "tuple[CountedPackages, ...]"
    recipes: "tuple[Recipe, ...]"
    marks: "PlantMarks"
    lines: tuple[WrapLine, ...]
    weights: "tuple[CountedWeight, ...]" = ()
    weighed: frozenset[int] = frozenset()
    came_out: frozenset[int] = frozenset()
    in_cure: frozenset[int] = frozenset()
    stages: "Mapping[int, BatchState]" = field(default_factory=dict[int, "BatchState"])

    @property
    def planned_packages(self) -> tuple[int, int]:
        """Packages planned in all, at least and at most."""
        one = dealt(self.forecast, self.question.shares).packages(self.order.share)
        return one.low, one.high

    @property
    def made_packages(self) -> int:
        """Packages made in all, void ones left out."""
        return sum(line.packages for line in self.lines)

    @property
    def by_count(self) -> bool:
        """Whether packages of this order may be counted instead of weighed."""
        return may_be_counted(self.shop.wrapped, self.lot.regime)

    @property
    def made_by_count(self) -> int:
        """Packages made by count, void ones left out."""
        return sum(line.counted for line in self.lines)

    @property
    def made_ng(self) -> int:
        """Net weight made in all, nanograms."""
        return sum(line.made_ng for line in self.lines)


def read_wrapping(store: "Store", order_id: int, words: "Words") -> Wrapping | None:
    """Read an order with its plan; None when there is none such. For a worker: it plans."""
    with store.read() as work:
        order = work.orders.get(order_id)
        lot = work.lots.get(order.lot_id) if order is not None else None
        if order is None or lot is None:
            return None
        question = work.lots.question(lot.id)
        graded = work.cooler.meat_factor(lot.id)
        own = work.yields.used(lot.species)
        packages = work.packages.of_order(order_id)
        counted = work.counted.of_order(order_id)
        shop = work.shop.details()
        recipes = work.recipes.all()
        marks = work.marks.now()
        weights = work.counted_lines.weights(order_id)
        weighed = work.counted_lines.weighed(order_id)
        batches = work.batches.of_order(order_id)
    known = catalogue(lot.species)
    expected = forecast(question, plan(question, known), known, own, graded)
    read = Wrapping(
        order,
        lot,
        shop,
        question,
        expected,
        packages,
        counted,
        recipes,
        marks,
        (),
        weights,
        weighed,
        came_out(order_id, batches),
        in_cure(lot.id, batches),
        on_the_way(order_id, batches),
    )
    return _with_lines(read, words)


def with_packages(
    wrapping: Wrapping, packages: "tuple[PackageMade, ...]", words: "Words"
) -> Wrapping:
    """The same order after a package was added or made void; the plan stays as it is."""
    return _with_lines(replace(wrapping, packages=packages), words)


def with_counted(
    wrapping: Wrapping, counted: "tuple[CountedPackages, ...]", words: "Words"
) -> Wrapping:
    """The same order after packages were counted or a count was made void."""
    return _with_lines(replace(wrapping, counted=counted), words)


def with_weights(
    wrapping: Wrapping,
    weights: "tuple[CountedWeight, ...]",
    weighed: frozenset[int],
    words: "Words",
) -> Wrapping:
    """The same order after counted packages were weighed together, or a line is weighed."""
    return _with_lines(replace(wrapping, weights=weights, weighed=weighed), words)


def _with_lines(wrapping: Wrapping, words: "Words") -> Wrapping:
    """The order with its lines as its packages, counts and weights make them."""
    lines = _lines(
        _choices(wrapping),
        wrapping.lot.species,
        dealt(wrapping.forecast, wrapping.question.shares).of_share(wrapping.order.share),
        wrapping.packages,
        wrapping.counted,
        words,
    )
    return replace(wrapping, lines=tuple(_counted_too(one, wrapping) for one in lines))


def _counted_too(line: WrapLine, wrapping: Wrapping) -> WrapLine:
    if not line.line:
        return line
    found = weight_together(line.line, line.counted, wrapping.weights)
    together = None if found is None else found.net.nanograms
    weighed, stage = line.line in wrapping.weighed, wrapping.stages.get(line.line)
    return replace(line, together_ng=together, weighed=weighed, stage=stage)


def _choices(wrapping: Wrapping) -> "tuple[Choice, ...]":
    """The lines its packages are of: its own, or those of the order it is cut by."""
    share = wrapping.order.share
    leader = next((one.leader for one in wrapping.question.shares if one.number == share), None)
    if leader is None:
        return wrapping.order.choices
    return tuple(one for one in wrapping.question.choices if one.share == leader)


def _lines(
    choices: "tuple[Choice, ...]",
    species: str,
    expected: "tuple[LineForecast, ...]",
    packages: "tuple[PackageMade, ...]",
    counted: "tuple[CountedPackages, ...]",
    words: "Words",
) -> tuple[WrapLine, ...]:
    rows: list[WrapLine] = []
    live = [one for one in packages if not one.void]
    counts: Counter[int] = Counter()
    for count in counted:
        counts[count.line] += 0 if count.void else count.packages
    cuts = catalogue(species).cuts
    planned = {one.line: one for one in expected}
    for choice in choices:
        cut = cuts.get(choice.cut)
        if cut is not None and cut.kind == "to_trim":
            continue
        line = planned.get(choice.line)
        rows.append(
            WrapLine(
                choice.line,
                choice.cut,
                product_words(words, species, choice.cut, choice.finishes),
                choice.finishes,
                None if line is None else line.packages,
                None if line is None else line.finished.mid,
                *_made([one for one in live if one.line == choice.line], counts[choice.line]),
            )
        )
    known = {row.line for row in rows}
    odd: dict[tuple[str, str, tuple[str, ...]], list[PackageMade]] = {}
    for one in live:
        if one.line not in known:
            odd.setdefault((one.cut, one.product, one.finishes), []).append(one)
    for (cut_code, product, finishes), made in odd.items():
        rows.append(WrapLine(0, cut_code, product, finishes, None, None, *_made(made)))
    return tuple(rows)


def _made(packages: "list[PackageMade]", counted: int = 0) -> tuple[int, int, int, int]:
    return (
        len(packages) + counted,
        sum(one.pieces for one in packages),
        sum(one.net.nanograms for one in packages),
        counted,
    )
