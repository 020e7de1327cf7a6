"""Up to 20 choices on one run: orders that nobody sane types in, but somebody will."""

import json
import random
from collections.abc import Iterator
from pathlib import Path

from shared.cutting.order import Question
from shared.cutting.plan import Planner
from shared.orderfile import OrderFile, read
from tests.oracle import random_orders
from tests.oracle.blocks import SPECIES, species_of
from tests.oracle.species_file import Json

MOST = 20
SLOW = Path(__file__).parent / "slow_orders"


def question_of(order: Json) -> Question:
    """The planner's question of an order file."""
    found = read(json.dumps(order))
    assert isinstance(found, OrderFile), found
    return found.question


def slow_orders() -> Iterator[tuple[str, Json]]:
    """Orders the planner once took long for, by name."""
    for path in sorted(SLOW.glob("*.json")):
        yield path.stem, json.loads(path.read_text("utf-8"))


def crowded(seed: str, peaceful: bool, planners: dict[str, Planner], strip: bool = False) -> Json:
    """Choices on one run of one carcass; `peaceful` leaves out each that doesn't fit.

    Of both its sides, or of one alone: a `strip`.
    """
    draw = random.Random(f"crowded {seed}")
    name = draw.choice(SPECIES)
    species = species_of(name)
    run = draw.choice(list(species.runs))
    order: Json = {
        "steelyard_order": 1,
        "species": name,
        "catalogue_version": species.toml["version"],
        "settings": {"cut_alike": False},
        "carcasses": [random_orders._carcass(draw, species, run)],
        "choices": [],
    }
    order["shares"] = random_orders._shares(draw, species, 1)
    if strip:
        order["shares"] = _of_one_side(order["shares"])
    cuts = random_orders._cuts_of(species, run)
    for line in range(1, 2 * MOST + 1):
        choice = random_orders._choice(draw, species, order, line, draw.choice(cuts))
        order["choices"].append(choice)
        if peaceful and planners[name].verdict(question_of(order)) in ("cant", "asks"):
            order["choices"].pop()
        if len(order["choices"]) == MOST:
            break
    return order


def _of_one_side(shares: list[Json]) -> list[Json]:
    """The owners of the side the first of them holds of, and nothing else of theirs."""
    side = shares[0]["holdings"][0]["side"]
    for one in shares:
        one["holdings"] = [held for held in one["holdings"] if held["side"] == side]
    return [one for one in shares if one["holdings"]]
