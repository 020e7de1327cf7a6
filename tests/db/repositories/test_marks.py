"""The plant's marks: kept whole, one row two may edit, artworks never changed."""

from dataclasses import replace

from db.store import Store
from shared.marking.plant_marks import Artwork, PlantMarks
from shared.shop.people import SignedOn
from shared.shop.problems import StaleEdit

FIRST = Artwork("first.png", b"\x89PNG first", 300, 240)
SECOND = Artwork("second.png", b"\x89PNG second", 320, 320)


def kept(store: Store, signed: SignedOn, marks: PlantMarks) -> PlantMarks | StaleEdit:
    with store.work(signed.person, signed.station) as work:
        found = work.marks.save(marks)
        if isinstance(found, PlantMarks):
            work.commit()
    return found


def test_none_until_the_plant_sets_them(store: Store) -> None:
    with store.read() as work:
        marks = work.marks.now()
    assert marks == PlantMarks(version=1)
    assert not marks.has_legend


def test_they_come_back_as_they_were_set(store: Store, signed: SignedOn) -> None:
    found = kept(store, signed, PlantMarks(" M12 ", "artwork", FIRST, {}, "keep_refrigerated", 1))
    assert found == PlantMarks("M12", "artwork", FIRST, {}, "keep_refrigerated", 2)
    with store.read() as work:
        assert work.marks.now() == found


def test_an_artwork_that_came_before_is_the_same_again(store: Store, signed: SignedOn) -> None:
    marks = PlantMarks("M12", "artwork", FIRST, version=1)
    for artwork in (FIRST, SECOND, FIRST):
        found = kept(store, signed, replace(marks, artwork=artwork))
        assert isinstance(found, PlantMarks)
        assert found.artwork == artwork
        marks = found
    taken_out = kept(store, signed, replace(marks, legend="", artwork=None))
    assert isinstance(taken_out, PlantMarks)
    assert taken_out.artwork is None


def test_two_who_edit_at_once_are_told(store: Store, signed: SignedOn) -> None:
    kept(store, signed, PlantMarks("M12", "stock", version=1))
    late = kept(store, signed, PlantMarks("M13", "stock", version=1))
    assert isinstance(late, StaleEdit)
    assert late.by == signed.person.name
    with store.read() as work:
        assert work.marks.now().establishment == "M12"


def test_a_products_number_is_given_and_taken_away(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        work.marks.number("pork", "pork_chop", "90614141000015")
        work.marks.number("beef", "rib_steak", "90614141000022")
        work.marks.number("pork", "pork_chop", "90614141000039")
        work.marks.number("beef", "rib_steak", "")
        work.commit()
    with store.read() as work:
        assert work.marks.now().gtins == {("pork", "pork_chop"): "90614141000039"}
