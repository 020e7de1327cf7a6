"""Lanes as bits of a mask."""

from functools import lru_cache


@lru_cache(maxsize=4096)
def bits_of(mask: int) -> tuple[int, ...]:
    """The single lanes of a mask: 5 is lanes 1 and 4."""
    return tuple([1 << bit for bit in range(mask.bit_length()) if mask >> bit & 1])
