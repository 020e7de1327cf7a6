"""Whose packages a led share's are: dealt in turn from the leader's line, told under it."""

from collections.abc import Sequence
from dataclasses import replace

from printing.block_lot import LotSheet
from printing.block_row import Row
from shared.cutting.breaking import BlockLine, PoolLine
from shared.cutting.divided import packages_dealt

NO_BREAK = "\u00a0"


def with_dealt(row: Row, lines: Sequence[BlockLine | PoolLine], sheet: LotSheet) -> Row:
    """The row with how its packages are dealt, where a line's owner leads others.

    Worked number: 7 packages of two halves of a side, the second cut as the first, are 4 and 3.
    """
    leaders = {one.leader for one in sheet.question.shares if one.leader}
    led = [one for one in lines if one.share in leaders and sheet.packages.get(one.line)]
    if not led:
        return row
    dealt: dict[int, int] = {}
    for line in led:
        found = packages_dealt(sheet.packages[line.line], line.share, sheet.question.shares)
        for share, count in found.items():
            dealt[share] = dealt.get(share, 0) + count
    who = ", ".join(f"{count}{NO_BREAK}{sheet.owners[share]}" for share, count in dealt.items())
    told = sheet.words.say("block.dealt", who=who)
    second = sheet.also.say("block.dealt", who=who) if sheet.also else ""
    return replace(
        row,
        details=", ".join(one for one in (row.details, told) if one),
        second_details=", ".join(one for one in (row.second_details, second) if one),
    )
