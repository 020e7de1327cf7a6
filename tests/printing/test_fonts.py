"""The typefaces have every character our papers and labels print, and straight columns."""

from importlib.resources import files
from pathlib import Path

import pytest
from reportlab.pdfbase.ttfonts import TTFontFile

FONTS = Path(str(files("printing"))) / "fonts"
FACES = sorted(FONTS.glob("*.ttf"))
FRACTIONS = "¼½¾⅛⅜⅝⅞⅓⅔"
MARKS = "≥≤✓×–—“”‘’·•…→−±°′″§¢"
# ISO 8859-1 and the Latin Extended-A block cover the names of people and places our shops write.
LATIN = "".join(map(chr, range(0xA1, 0x180))).replace("\xad", "").replace("\u0149", "")


@pytest.mark.parametrize("face", FACES, ids=lambda face: face.stem)
def test_a_face_has_what_we_print(face: Path) -> None:
    glyphs = TTFontFile(str(face)).charToGlyph
    assert [c for c in FRACTIONS + MARKS + LATIN if ord(c) not in glyphs] == []


@pytest.mark.parametrize("face", FACES, ids=lambda face: face.stem)
def test_figures_are_equally_wide(face: Path) -> None:
    widths = TTFontFile(str(face)).charWidths
    assert len({widths[ord(figure)] for figure in "0123456789"}) == 1


def test_a_license_lies_beside_each_family() -> None:
    assert {face.stem.split("-")[0] for face in FACES} == {"InterTabular", "DejaVuSansCondensed"}
    assert "SIL OPEN FONT LICENSE" in (FONTS / "Inter-LICENSE.txt").read_text(encoding="utf-8")
    assert "Bitstream Vera" in (FONTS / "DejaVu-LICENSE.txt").read_text(encoding="utf-8")
