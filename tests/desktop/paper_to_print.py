"""Small papers for tests of printing: pages of given sizes with a word on each."""

from io import BytesIO

from reportlab.pdfgen.canvas import Canvas

LETTER = (612.0, 792.0)
LABEL = (288.0, 216.0)


def paper(*sizes: tuple[float, float]) -> bytes:
    """A PDF with a page of each size, a black square in its top left quarter."""
    out = BytesIO()
    canvas = Canvas(out, invariant=1)
    for number, (width, height) in enumerate(sizes, start=1):
        canvas.setPageSize((width, height))
        canvas.rect(0, height / 2, width / 2, height / 2, stroke=0, fill=1)
        canvas.drawString(20, 20, f"page {number}")
        canvas.showPage()
    canvas.save()
    return out.getvalue()
