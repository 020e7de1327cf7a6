"""What the check of a batch's nitrite says, in a sentence."""

from printing.words import Words
from shared.curing.nitrite import (
    LIMITS,
    CureUse,
    Limit,
    NitriteCheck,
    Product,
    nitrite,
    whole_ppm,
)


def nitrite_text(use: CureUse | None, words: Words) -> str:
    """The verdict with its figures, or what isn't known; None is a recipe without cure."""
    if use is None:
        return words.say("batches.no_cure")
    check = nitrite(use)
    if check.bacon_as is not None:
        return f"{_as_bacon(use, check.bacon_as, words)} {_verdict(check, words)}"
    return _verdict(check, words)


def _as_bacon(use: CureUse, bacon_as: Product, words: Words) -> str:
    """Both classes with their figures: the recipe's, and the one bacon is held to."""
    return words.say(
        "batches.bacon_in_it",
        recipe=words.say(f"batches.product_{use.product}"),
        figures=_figures(LIMITS[use.product]),
        bacon=words.say(f"batches.product_{bacon_as}"),
        bacon_figures=_figures(LIMITS[bacon_as]),
    )


def _figures(limit: Limit) -> str:
    if limit.target is not None:
        return str(limit.target)
    return f"{limit.floor}\N{EN DASH}{limit.ceiling}"


def _verdict(check: NitriteCheck, words: Words) -> str:
    if check.ppm is not None and check.verdict == "cant_be_checked":
        return words.say("batches.bacon_unchecked", ppm=whole_ppm(check.ppm))
    if check.ppm is None:
        missing = "; ".join(words.say(f"batches.missing_{one}") for one in check.missing)
        return words.say("batches.cant_be_checked", missing=missing)
    limit = check.limit
    return words.say(
        f"batches.{check.verdict}",
        ppm=whole_ppm(check.ppm),
        floor=limit.floor,
        ceiling=limit.ceiling,
        target=limit.target,
    )
