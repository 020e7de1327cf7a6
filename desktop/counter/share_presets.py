"""The ways a lot is usually shared: who holds which sides and quarters of its animals."""

from collections.abc import Callable
from typing import Literal

from shared.carcass.carcass import Holding
from shared.shop.holdings import half, quarter, split_quarter, whole

Preset = Literal["whole", "each", "halves", "quarters", "half_and_quarters", "split_quarters"]
PRESETS: tuple[Preset, ...] = (
    "whole",
    "halves",
    "quarters",
    "half_and_quarters",
    "split_quarters",
    "each",
)

_Held = Callable[[int], tuple[Holding, ...]]
_OF_EACH_ANIMAL: dict[Preset, tuple[_Held, ...]] = {
    "whole": (whole,),
    "halves": (lambda at: half(at, 1), lambda at: half(at, 2)),
    "quarters": (
        lambda at: quarter(at, 1, "fore"),
        lambda at: quarter(at, 1, "hind"),
        lambda at: quarter(at, 2, "fore"),
        lambda at: quarter(at, 2, "hind"),
    ),
    "half_and_quarters": (
        lambda at: half(at, 1),
        lambda at: quarter(at, 2, "fore"),
        lambda at: quarter(at, 2, "hind"),
    ),
    "split_quarters": (
        lambda at: split_quarter(at, 1),
        lambda at: split_quarter(at, 1),
        lambda at: split_quarter(at, 2),
        lambda at: split_quarter(at, 2),
    ),
}


def holdings_of(preset: Preset, head: int) -> tuple[tuple[Holding, ...], ...]:
    """What each share holds, share 1 first.

    Two halves of two head: share 1 holds side 1 of both, share 2 side 2 of both. "each" gives
    every animal to an owner of its own.
    """
    if preset == "each":
        return tuple(whole(at) for at in range(head))
    return tuple(
        tuple(one for at in range(head) for one in held(at)) for held in _OF_EACH_ANIMAL[preset]
    )
