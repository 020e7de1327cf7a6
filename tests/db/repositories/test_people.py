"""Who works here: found by name, added once, kept when they leave."""

from db.store import Store
from db.unit_of_work import Work
from shared.shop.people import Person, Station


def test_signing_on_twice_is_the_same_person(store: Store) -> None:
    first = store.sign_on("Olga", "Office")
    again = store.sign_on(" Olga ", "Counter")
    assert again.person == first.person
    assert again.station != first.station
    with store.read() as reading:
        assert reading.people.persons() == (first.person,)
        assert reading.people.stations() == (again.station, first.station)


def test_one_who_left_stays_known_and_may_come_back(work: Work) -> None:
    olga = work.people.add_person("Olga")
    work.people.retire(olga.id)
    assert Person(olga.id, "Olga", active=False) in work.people.persons()
    assert work.people.add_person("Olga") == olga
    assert olga in work.people.persons()


def test_a_station_is_added_once(work: Work) -> None:
    wrap = work.people.add_station("Wrap")
    assert wrap == Station(wrap.id, "Wrap")
    assert work.people.add_station("Wrap") == wrap
