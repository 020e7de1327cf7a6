"""Lines of owners of whose animals nothing is left: they hold up nobody else's order."""

from shared.cutting.order import Question


def ended_lines(question: Question) -> frozenset[int]:
    """Lines of shares whose animals were all condemned, refused or not brought.

    Of four hogs of four owners the fourth wasn't brought: the lines of share 4.
    """
    gone = {place for place, one in enumerate(question.carcasses) if one.condemned}
    shares = {
        one.number
        for one in question.shares
        if one.holdings and all(held.carcass in gone for held in one.holdings)
    }
    return frozenset(one.line for one in question.choices if one.share in shares)
