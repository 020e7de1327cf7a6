"""One search for whatever is known: a name, a few digits, a tag, a number."""

from db.unit_of_work import Work
from tests.db.examples import arrived, lot_of_halves, lot_of_one, order_of


def kinds(work: Work, text: str) -> list[tuple[str, str]]:
    return [(one.kind, one.title) for one in work.search.find(text)]


def test_everything_people_ask_for_is_found(work: Work) -> None:
    lot = lot_of_halves(work)
    arrived(work, lot, "T-114")
    assert kinds(work, "2") == [("order", "2")]
    assert kinds(work, "#1") == [("order", "1"), ("lot", "1")]
    assert kinds(work, "114") == [("animal", "T-114")]
    assert kinds(work, "iver") == [("customer", "Bert Iversen")]
    assert kinds(work, "0100456") == [("customer", "Bert Iversen")]
    assert kinds(work, "zz") == []
    assert kinds(work, "  ") == []


def test_the_exact_tag_comes_first(work: Work) -> None:
    for tag in ("1145", "114", "2114"):
        arrived(work, lot_of_one(work), tag)
    found = [title for kind, title in kinds(work, "114") if kind == "animal"]
    assert found == ["114", "2114", "1145"]


def test_a_hit_says_whose_it_is_and_how_to_open_it(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot, 2)
    (hit,) = work.search.find("2")
    assert (hit.id, hit.lot_id, hit.detail) == (order.id, lot.id, "Bert Iversen")


def test_no_more_than_asked_for(work: Work) -> None:
    for number in range(5):
        lot_of_one(work, f"Berg {number}")
    assert len(work.search.find("berg", limit=3)) == 3
