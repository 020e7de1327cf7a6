"""Barcodes: one path, whole dots, read back from the finished PDF by zxing-cpp."""

from io import BytesIO

import pytest
import zxingcpp
from reportlab.pdfgen.canvas import Canvas

from printing.barcode import Kind, bars, dots_that_fit, draw_bars, module_points
from tests.printing.rasterised import codes_of

GS1 = "[01]98898765432106[3202]012345[13]260309"


def _drawn(kind: Kind, content: str, dots: int, dpi: int) -> bytes:
    out = BytesIO()
    canvas = Canvas(out, pagesize=(288, 216), invariant=1)
    draw_bars(canvas, bars(kind, content), (30.3, 40.7), dots, dpi, 50)
    canvas.showPage()
    canvas.save()
    return out.getvalue()


@pytest.mark.parametrize("dpi", [203, 300])
def test_an_in_house_serial_is_read_back(dpi: int) -> None:
    (code,) = codes_of(_drawn("code128", "1042-7-7", 2, dpi), dpi=dpi)
    assert (code.text, code.format) == ("1042-7-7", zxingcpp.BarcodeFormat.Code128)


@pytest.mark.parametrize("kind", ["gs1_128", "gs1_datamatrix"])
def test_gs1_is_read_back_as_gs1(kind: Kind) -> None:
    (code,) = codes_of(_drawn(kind, GS1, 2 if kind == "gs1_128" else 4, 300), dpi=300)
    assert code.content_type == zxingcpp.ContentType.GS1
    assert code.text == "(01)98898765432106(3202)012345(13)260309"


def test_modules_are_whole_dots() -> None:
    assert module_points(3, 203) == pytest.approx(3 * 72 / 203)
    symbol = bars("code128", "1042-7-7")
    quiet = symbol.wide + 20
    assert dots_that_fit(symbol, quiet * module_points(2, 203) + 0.01, 203) == 2
    assert dots_that_fit(symbol, quiet * module_points(1, 203) - 0.01, 203) == 0


def test_content_a_symbol_cannot_hold_is_refused() -> None:
    with pytest.raises(ValueError, match="can't hold"):
        bars("code128", "x" * 300)
    with pytest.raises(ValueError, match="can't hold"):
        bars("gs1_128", "[01]123")
