"""Cautions and questions that refuse nothing."""

import os
import subprocess
import sys
from dataclasses import replace

from shared.carcass.carcass import Gone
from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import SAW, catalogue, choice, inches, lot, pounds


def test_tight_says_where_and_by_how_much() -> None:
    question = lot(
        choice(1, "whole_ham", "pieces", 1), choice(2, "ham_steaks", "slices", 6), sides=2
    )
    (caution,) = plan(question, catalogue()).cautions
    assert (caution.code, caution.line) == ("tight", 2)
    assert caution.where is not None
    assert (caution.where.side, caution.where.part) == (2, "ham_centre")
    assert caution.asked == 6 * inches("3/4") + 5 * SAW
    assert (caution.expected, caution.most) == (inches("19/4"), inches("319/64"))


def test_pounds_trimmed_away_are_told() -> None:
    found = plan(lot(gone=(Gone("meat_rib", 1, pounds(2), "bruise"),)), catalogue())
    (caution,) = found.cautions
    assert (caution.code, caution.line, caution.asked) == ("trimmed", 0, pounds(2).nanograms)


def test_what_was_trimmed_of_one_part_twice_is_told_once() -> None:
    gone = tuple([Gone("meat_rib", 1, pounds(part), "bruise") for part in (2, 3)])
    (caution,) = plan(lot(gone=gone), catalogue()).cautions
    assert caution.asked == pounds(5).nanograms


_TRIMMED_OFTEN = """
from shared.carcass.carcass import Gone
from shared.cutting.plan import plan
from tests.shared.cutting.tiny_lot import catalogue, lot, pounds
parts = ("meat_rib", "meat_loin", "meat_blade")
gone = tuple([Gone(part, 1, pounds(1), "bruise") for part in parts])
print(repr(plan(lot(gone=gone), catalogue()).cautions))
"""


def test_cautions_come_in_one_order_on_every_machine() -> None:
    """Three parts trimmed: hashes of texts differ from run to run, the answer doesn't."""
    found: set[str] = set()
    for seed in ("1", "2", "3", "4"):
        ran = subprocess.run(
            [sys.executable, "-c", _TRIMMED_OFTEN],
            env={**os.environ, "PYTHONHASHSEED": seed},
            capture_output=True,
            text=True,
            check=True,
        )
        found.add(ran.stdout)
    (told,) = found
    places = [told.index(f"part='{part}'") for part in ("meat_blade", "meat_loin", "meat_rib")]
    assert places == sorted(places)


def test_a_roast_weight_nobody_uses() -> None:
    found = plan(lot(choice(1, "whole_ham", piece_weight=pounds(3))), catalogue())
    assert [one.code for one in found.cautions] == ["unused_piece_weight"]
    used = plan(lot(choice(1, "loin_roast", "pieces", 1, piece_weight=pounds(3))), catalogue())
    assert used.cautions == ()


def test_an_unknown_age_is_told_where_it_would_matter() -> None:
    plain = catalogue()
    parts = dict(plain.parts)
    for code in ("bone_loin", "bone_sirloin"):
        parts[code] = replace(parts[code], srm_from_30_months=True)
    cattle = replace(plain, parts=parts)
    lines = choice(1, "t_bones", "slices", 2), choice(2, "boneless_chops", "slices", 2)
    some = choice(3, "chops", "slices", 2)
    found = plan(lot(*lines, some, age="unknown"), cattle)
    assert [(one.code, one.line) for one in found.cautions] == [("age_unknown", 1)]
    assert found.verdict == "sure"
    older = plan(lot(*lines, some, age="30_and_over"), cattle)
    assert [(one.kind, one.lines) for one in older.conflicts] == [("srm", (1,))]


def test_a_line_whose_part_is_gone_is_told_nothing_of_its_roast_weight() -> None:
    gone = tuple(
        [Gone(f"meat_{part}", 1, None, "abscess") for part in ("blade", "rib", "loin", "sirloin")]
    )
    roast = choice(1, "loin_roast", "pieces", 1, piece_weight=pounds(3))
    found = plan(lot(roast, gone=gone), catalogue())
    assert found.verdict == "cant"
    assert "unused_piece_weight" not in {one.code for one in found.cautions}
