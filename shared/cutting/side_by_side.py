"""Many whole numbers side by side in one integer, so that one step reckons with all of them."""

from collections.abc import Iterable


class SideBySide:
    """Fields of one width. `tops` has the top bit of each field, which tells that it isn't short.

    A number with all its tops set, from which less is taken than there is, keeps them: of 5 and 3
    side by side 2 and 3 may be taken, 2 and 4 may not. No more may be taken at once than half a
    field holds, else one borrows of the next.
    """

    def __init__(self, most: Iterable[int]) -> None:
        """A field for each number, wide enough to be short by so much."""
        most = [*most]
        self.width = max(most, default=0).bit_length() + 1
        self.field = (1 << self.width) - 1
        self.tops = self.joined([1 << self.width - 1] * len(most))

    def joined(self, numbers: Iterable[int]) -> int:
        """Numbers in their fields, the first one lowest."""
        found = 0
        for place, one in enumerate(numbers):
            found |= one << self.width * place
        return found

    def least(self, numbers: Iterable[int]) -> int:
        """Field by field the least of some: of 5 and 3, and of 2 and 4, it is 2 and 3."""
        found = -1
        for one in numbers:
            if found < 0:
                found = one
            elif one != found:
                not_less = ((one | self.tops) - found) & self.tops
                mask = not_less - (not_less >> self.width - 1)
                found = found & mask | one & ~mask
        return max(0, found)
