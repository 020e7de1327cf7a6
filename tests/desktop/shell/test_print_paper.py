"""`steelyard print`: every paper of the shop as PDF from its records."""

from pathlib import Path

import pytest

from desktop.commands import main
from desktop.paths import Paths
from desktop.records import open_records
from shared.orderfile import write
from tests.desktop.shell import small_shop
from tests.printing.orders import halves
from tests.printing.pages import MADE, amounts, pages, text


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> tuple[Paths, str, str]:
    """The shop's folder, Anna's order number and the lot's."""
    paths, order = small_shop.make(tmp_path_factory.mktemp("shop"))
    store = open_records(paths)
    with store.read() as work:
        lot = work.lots.get(order.lot_id)
    store.close()
    assert lot is not None
    return paths, str(order.number), str(lot.number)


def printed(shop: tuple[Paths, str, str], out: Path, *arguments: str) -> bytes:
    status = main(["print", *arguments, "-o", str(out), "--data-dir", str(shop[0].data)])
    assert status == 0
    return out.read_bytes()


def test_the_bill(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    pdf = printed(shop, tmp_path / "x.pdf", "bill", shop[1])
    assert {3000, 7863, 5863} <= set(amounts(pdf))


def test_the_counts(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    said = text(printed(shop, tmp_path / "x.pdf", "counts", shop[2]))
    assert "16.25" in said
    assert "16.25 lb taken home of 92.5 lb hanging: 17.6 %" in said.replace("\n", " ")
    assert "Bert Iversen, order" in said.replace("\n", " ")


def test_a_quote_of_what_isnt_weighed_has_a_range(tmp_path: Path) -> None:
    """Booked at 185 lb, $0.85 a pound and $60.00 a head, a tenth less and more of pounds.

    At least 166.5 lb, $141.525, is $141.53 for the hog; its odd cent is share 1's: $70.77 + $30.
    """
    paths, order = small_shop.make(tmp_path / "shop", weighed=False)
    said = printed((paths, "", ""), tmp_path / "q.pdf", "quote", str(order.number))
    assert {10863, 10077, 11649} <= set(amounts(said))
    assert "Estimate" in text(said)


def test_the_weight_ticket(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    said = " ".join(text(printed(shop, tmp_path / "x.pdf", "weight-ticket", shop[1])).split())
    assert "Side 1, tag 114" in said
    assert "92.50" in said
    assert "Cutting instructions" in said


def test_the_statement(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    arguments = ("statement", shop[1], "--price", "$2.40")
    pdf = printed(shop, tmp_path / "x.pdf", *arguments)
    assert 22200 in amounts(pdf)  # 92.5 lb × $2.40
    assert "Oak Hollow" not in text(pdf)


def test_a_price_that_is_none(
    shop: tuple[Paths, str, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "x.pdf"
    arguments = ["print", "statement", shop[1], "--price", "cheap", "-o", str(out)]
    assert main([*arguments, "--data-dir", str(shop[0].data)]) == 2
    assert "cheap is not a price" in capsys.readouterr().err
    assert not out.exists()


def test_the_block_sheet_of_a_lot(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    said = text(printed(shop, tmp_path / "x.pdf", "block-sheet", shop[2]))
    assert "114" in said
    assert "Anna Berg" in said


def test_the_block_sheet_of_an_order_file(tmp_path: Path) -> None:
    file, out = tmp_path / "order.json", tmp_path / "x.pdf"
    file.write_text(write("pork", halves().question), "utf-8")
    arguments = ["print", "block-sheet", str(file), "--paper", "a4", "-o", str(out)]
    assert main(arguments) == 0
    assert "Jørgen & Łucja <O'Neil>" in text(out.read_bytes()).replace("\n", " ")


def test_the_labels_say_what_the_scale_said(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    pdf = printed(shop, tmp_path / "x.pdf", "labels", shop[1])
    assert len(pages(pdf)) == 1
    assert "16.25 lb" in text(pdf)
    assert "NOT FOR SALE" in " ".join(text(pdf).split())


def test_the_tag(shop: tuple[Paths, str, str], tmp_path: Path) -> None:
    said = " ".join(text(printed(shop, tmp_path / "x.pdf", "tag", shop[2])).split())
    assert "114" in said
    assert "NOT FOR SALE" in said


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("bill", "987654"), "There is no order 987654"),
        (("counts", "987654"), "There is no lot 987654"),
        (("block-sheet", "987654"), "There is no lot 987654"),
        (("labels", "987654"), "There is no order 987654"),
        (("tag", "987654"), "There is no lot 987654"),
    ],
)
def test_what_is_not_there_is_said(
    shop: tuple[Paths, str, str],
    tmp_path: Path,
    arguments: tuple[str, str],
    said: str,
    capsys: pytest.CaptureFixture[str],
) -> None:
    out = tmp_path / "x.pdf"
    status = main(["print", *arguments, "-o", str(out), "--data-dir", str(shop[0].data)])
    assert status == 1
    assert said in capsys.readouterr().err
    assert not out.exists()


def test_an_animal_the_lot_has_not(
    shop: tuple[Paths, str, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    arguments = ["print", "tag", shop[2], "--animal", "2", "-o", str(tmp_path / "x.pdf")]
    assert main([*arguments, "--data-dir", str(shop[0].data)]) == 1
    assert "has no animal 2" in capsys.readouterr().err


def test_a_released_sheet_is_printed_as_it_was_kept(tmp_path: Path) -> None:
    paths, order = small_shop.make(tmp_path / "shop")
    store = open_records(paths)
    signed = store.sign_on("Ann", "Counter")
    with store.work(signed.person, signed.station) as work:
        from tests.db.examples import settled

        settled(work, order.id)
        kept = f"%PDF kept {MADE}".encode()
        work.orders.release(order.lot_id, [order.id], snapshot="{}", pdf=kept)
        lot = work.lots.get(order.lot_id)
        work.commit()
    store.close()
    assert lot is not None
    found = (paths, str(order.number), str(lot.number))
    assert printed(found, tmp_path / "x.pdf", "block-sheet", str(lot.number)) == kept


def test_a_blank_order_form_of_a_species_needs_no_records(tmp_path: Path) -> None:
    from pypdf import PdfReader

    made = tmp_path / "form.pdf"
    assert main(["print", "order-form", "deer", "-o", str(made), "--paper", "a4"]) == 0
    fields = PdfReader(made).get_fields() or {}
    assert fields["form.species"]["/V"] == "deer"
    assert len(fields) > 100
