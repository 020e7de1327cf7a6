"""Kept papers: the same bytes again, and a hash that tells whether the values are the same."""

from db.unit_of_work import Work
from shared.shop.papers import PaperRow, canonical_json, digest
from tests.db.examples import lot_of_halves, order_of


def test_a_paper_is_printed_again_from_its_bytes(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    snapshot = canonical_json({"owner": "Łucja", "lines": [1, 2]})
    kept = work.papers.keep(
        "receipt", lot_id=order.lot_id, order_id=order.id, number=7, snapshot=snapshot,
        pdf=b"%PDF\x00\xff",
    )  # fmt: skip
    assert work.papers.get(kept.id) == kept
    assert kept.pdf == b"%PDF\x00\xff"
    assert kept.sha256 == digest(snapshot)
    row = PaperRow(kept.id, "receipt", order.lot_id, order.id, 7, kept.sha256, work.now, "Test")
    assert work.papers.of_order(order.id) == (row,)
    assert work.papers.of_lot(order.lot_id) == (row,)
    assert work.papers.get(99) is None
