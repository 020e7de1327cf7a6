"""A report on paper: its chart above, its table beneath, on any number of pages."""

from collections.abc import Callable, Iterable, Sequence
from datetime import datetime
from fractions import Fraction

from printing.bar_chart import draw_chart
from printing.letterhead import Letterhead, open_paper, sender
from printing.page import Align, Column, table
from printing.typefaces import width
from printing.words import Words
from shared.shop.charts import Chart
from shared.shop.details import ShopDetails

SIZE = 9.0
LEAST = 44.0


def report(
    title: str,
    facts: Sequence[tuple[str, str]],
    chart: Chart | None,
    say: Callable[[Fraction], str],
    columns: Sequence[tuple[str, Align]],
    rows: Iterable[Sequence[str]],
    *,
    shop: ShopDetails,
    made: datetime,
    words: Words,
    sums: Sequence[str] = (),
) -> bytes:
    """The paper as PDF. `rows` are taken one by one, so that whoever gives them may count.

    A list of the books has no chart; `sums` is its last line.
    """
    head = Letterhead(sender(shop), title, (), (), tuple(facts))
    sheet = open_paper(shop.paper, head, "", made, words)
    if chart is not None and not chart.empty:
        draw_chart(sheet, chart, say)
    every = list(rows)
    known = [*every[:400], sums] if sums else every[:400]
    table(sheet, _columns(sheet.room, columns, known), every, SIZE, sums)
    return sheet.pdf()


def _columns(
    room: float, columns: Sequence[tuple[str, Align]], rows: Sequence[Sequence[str]]
) -> list[Column]:
    """Columns as wide as what stands in them; the first that is text takes what is left over.

    Where there is too little room all give way alike, and their texts wrap.
    """
    wide = [
        max(
            LEAST,
            width(heading, "semibold", SIZE * 0.85) + 10,
            max((width(row[at], "regular", SIZE) + 10 for row in rows), default=0.0),
        )
        for at, (heading, _align) in enumerate(columns)
    ]
    over = sum(wide) - room
    if over > 0:
        wide = [one * room / sum(wide) for one in wide]
    else:
        texts = [at for at, (_heading, align) in enumerate(columns) if align == "left"]
        wide[max(texts, key=lambda at: wide[at], default=0)] -= over
    return [
        Column(heading, one, align) for (heading, align), one in zip(columns, wide, strict=True)
    ]
