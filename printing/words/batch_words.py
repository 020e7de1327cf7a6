"""What the check of a batch's nitrite says, in a sentence."""

from printing.words import Words
from shared.curing.nitrite import CureUse, nitrite, whole_ppm


def nitrite_text(use: CureUse | None, words: Words) -> str:
    """The verdict with its figures, or what isn't known; None is a recipe without cure."""
    if use is None:
        return words.say("batches.no_cure")
    check = nitrite(use)
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
