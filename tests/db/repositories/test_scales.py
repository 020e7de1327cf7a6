"""Scales by station: kept whole, written again by version, taken out of use."""

from dataclasses import replace

from db.unit_of_work import Work
from shared.shop.problems import Refused, StaleEdit
from shared.shop.scales import Scale
from shared.units import Weight

RAIL = Scale(
    name="Rail",
    port="/dev/ttyUSB0",
    pattern="comma_header",
    division=Weight(5, "lb", -1),
    hook=Weight(35, "lb", -1),
    gambrel=Weight(6, "lb"),
)


def test_a_scale_is_kept_whole_at_its_station(work: Work) -> None:
    made = work.scales.save(RAIL)
    assert isinstance(made, Scale)
    assert made == replace(RAIL, id=made.id, version=1)
    assert work.scales.of_station(work.station.id) == (made,)
    other = work.people.add_station("Office")
    assert work.scales.of_station(other.id) == ()


def test_it_is_written_again_by_version_and_taken_out_of_use(work: Work) -> None:
    made = work.scales.save(RAIL)
    assert isinstance(made, Scale)
    again = work.scales.save(replace(made, baud=2400))
    assert isinstance(again, Scale)
    assert again.baud == 2400
    assert isinstance(work.scales.save(replace(made, baud=1200)), StaleEdit)
    assert isinstance(work.scales.save(replace(again, used=False)), Scale)
    assert work.scales.of_station(work.station.id) == ()


def test_one_without_a_name_or_a_readable_pattern_is_refused(work: Work) -> None:
    assert work.scales.save(replace(RAIL, name=" ")) == Refused("name_missing")
    own = replace(RAIL, pattern="own", own_pattern="(")
    assert work.scales.save(own) == Refused("pattern")
