"""Why a carcass isn't cut yet: it waits for a test result, or is held for another reason."""

from typing import TYPE_CHECKING

from desktop.rail.known_words import held_words
from desktop.rail.seen import see

if TYPE_CHECKING:
    from desktop.bench import Bench


def held_text(bench: "Bench", animal_id: int) -> str:
    """Each hold that stands, in words; "" where it may be cut."""
    seen = see(bench, animal_id)
    return "\n".join(held_words(seen)) if seen is not None else ""
