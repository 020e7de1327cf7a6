"""A report's paper has its chart, its table and its days; a long one keeps its headings."""

from datetime import UTC, datetime
from fractions import Fraction

from printing.report import report
from printing.words import Words
from shared.shop.charts import Chart, Series
from shared.shop.details import ShopDetails
from tests.printing.pages import pages, places

CHART = Chart(
    "Pounds by week",
    ("Nov 16", "Nov 23"),
    (Series("beef", (Fraction(2000), Fraction(3200))), Series("pork", (None, Fraction(840)))),
    stacked=True,
)


def made(rows: int) -> bytes:
    return report(
        "Pounds by week",
        [("From", "Mon Nov 16, 2026")],
        CHART,
        lambda value: f"{int(value):,} lb",
        [("Week of", "left"), ("Animal", "left"), ("Hot weight", "right")],
        [(f"Week {at}", "Beef", "1,234.5 lb") for at in range(rows)],
        shop=ShopDetails(name="Oak Lane Meats"),
        made=datetime(2026, 11, 25, 12, tzinfo=UTC),
        words=Words(),
    )


def test_chart_table_and_days_are_on_one_page() -> None:
    (said,) = pages(made(4))
    for part in ("Oak Lane Meats", "Mon Nov 16, 2026", "4,000 lb", "Nov 23", "pork", "Week 3"):
        assert part in said


def test_a_long_report_has_its_headings_on_every_page_and_nothing_beyond_it() -> None:
    pdf = made(200)
    found = pages(pdf)
    assert len(found) > 3
    assert all("Hot weight" in page for page in found)
    assert sum(page.count("Beef") for page in found) == 200
    assert all(0 <= x <= wide and 0 <= y <= high for x, y, wide, high in places(pdf))


def test_a_list_of_the_books_has_no_chart_and_its_sums_once_at_the_end() -> None:
    pdf = report(
        "Who owes what",
        [("As of", "Mon Nov 16, 2026")],
        None,
        str,
        [("Customer", "left"), ("Owed", "right")],
        [(f"Customer {at}", "$10.00") for at in range(120)],
        shop=ShopDetails(name="Oak Lane Meats"),
        made=datetime(2026, 11, 25, 12, tzinfo=UTC),
        words=Words(),
        sums=("Sum", "$1,200.00"),
    )
    found = pages(pdf)
    assert len(found) > 1
    assert [page.count("$1,200.00") for page in found] == [0] * (len(found) - 1) + [1]
    assert found[-1].index("Sum") > found[-1].index("Customer 119")
