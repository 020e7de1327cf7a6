"""Our table of application identifiers beside that of an independent library (biip)."""

import pytest
from biip.gs1_application_identifiers import GS1ApplicationIdentifier

from shared.marking.identifiers import IDENTIFIERS, Identifier, Piece


def written(piece: Piece) -> str:
    letter = "N" if piece.kind == "digits" else "X"
    if piece.least == piece.most:
        return f"{letter}{piece.most}"
    if piece.check and piece.least == 0:
        return f"[+{letter}{piece.most}]"
    return f"{letter}..{piece.most}"


@pytest.mark.parametrize("identifier", IDENTIFIERS.values(), ids=lambda one: one.ai)
def test_format_and_separator_are_biips(identifier: Identifier) -> None:
    theirs = GS1ApplicationIdentifier.extract(identifier.ai)
    pieces = [f"N{len(identifier.ai)}", *(written(piece) for piece in identifier.pieces)]
    assert "+".join(pieces).replace("+[+", "[+") == theirs.format
    assert identifier.separated == theirs.separator_required


def test_the_identifiers_of_the_trade_are_there() -> None:
    """Those a meat plant's packages and pallets carry, by the GS1 syntax dictionary."""
    weights = {f"{ai}{places}" for ai in ("310", "320") for places in range(6)}
    assert weights | {"00", "01", "02", "10", "11", "13", "15", "16", "17", "20", "21", "240",
                      "241", "251", "30", "37", "3922", "3932", "3952", "410", "417", "420",
                      "427", "7007", "7030", "7039"} <= set(IDENTIFIERS)  # fmt: skip
    assert all(one.decimals == int(one.ai[3]) for one in IDENTIFIERS.values() if one.ai in weights)
