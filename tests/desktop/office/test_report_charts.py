"""An animal has one colour and pattern in every report, whatever others are beside it."""

from datetime import date

from PySide6.QtCore import QObject

from desktop.bench import Bench
from desktop.office.report_charts import ANIMALS, ReportCharts
from desktop.panels.bar_fill import FILLS
from printing.bar_chart import GREYS
from shared.carcass.anatomy import species
from shared.shop.charts import Chart, Series
from shared.shop.reports import CutOut, Killed, KillWeek
from shared.units import NG_PER_LB

MONDAY = date(2026, 3, 2)


def kinds(chart: Chart) -> dict[str, int]:
    names = [one.name for one in chart.series]
    return dict(zip(names, chart.kinds, strict=True))


def test_every_animal_there_is_has_a_place_and_no_two_look_alike() -> None:
    assert sorted(ANIMALS) == sorted(species())
    assert len({FILLS[at] for at in range(len(ANIMALS))}) == len(ANIMALS)
    paper = {(GREYS[at], at % 2) for at in range(len(ANIMALS))}
    assert len(paper) == len(ANIMALS)


def test_goats_alone_look_as_beside_beef(bench: Bench, qapp: object) -> None:
    over = QObject()
    charts = ReportCharts(bench, over)
    weeks = [KillWeek(MONDAY, one, 3, 3, NG_PER_LB) for one in ("beef", "goat")]
    both = kinds(charts.pounds_by_week("", weeks))
    assert both["Beef"] != both["Goat"]
    for alone in (
        charts.pounds_by_week("", weeks[1:]),
        charts.head_by_week("", weeks[1:]),
        charts.hanging("", [Killed(MONDAY, "114", "goat", "Anna Berg", 1, 40 * NG_PER_LB)]),
        charts.cut_out("", [CutOut("goat", "Anna Berg", 1, 1, 40 * NG_PER_LB, 20 * NG_PER_LB)]),
    ):
        assert kinds(alone) == {"Goat": both["Goat"]}


def test_bars_of_no_animal_have_the_look_of_their_place() -> None:
    assert Chart("", (), (Series("expected", ()), Series("made", ()))).kinds == (0, 1)
