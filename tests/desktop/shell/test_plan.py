"""`steelyard plan`: exit statuses, JSON with whole numbers only, and faults with line and field."""

import io
import json
import re
from pathlib import Path

import pytest

from desktop.commands import main
from printing.words import LANGUAGES, Words
from shared.orderfile import FileFault

ORDER: dict[str, object] = {
    "steelyard_order": 1,
    "species": "pork",
    "carcasses": [{"tag": "114", "hot": [{"whole": "92 lb"}, {"whole": "92 lb"}]}],
    "shares": [
        {
            "number": 1,
            "owner": "Jørgen & Łucja <O'Neil>",
            "holdings": [
                {"carcass": 1, "side": 1, "fraction": "1"},
                {"carcass": 1, "side": 2, "fraction": "1"},
            ],
        }
    ],
}


def order_file(folder: Path, *choices: dict[str, object]) -> str:
    numbered = [{"line": at, "share": 1, **each} for at, each in enumerate(choices, start=1)]
    path = folder / "order.json"
    path.write_text(json.dumps({**ORDER, "choices": numbered}, ensure_ascii=False), "utf-8")
    return str(path)


WHOLE_HAM: dict[str, object] = {"cut": "whole_ham", "amount": {"pieces": 1}}
HAM_STEAKS: dict[str, object] = {"cut": "ham_steak", "amount": "rest", "thickness": "3/4 in"}


def test_one_ham_whole_and_steaks_from_the_rest_of_a_whole_hog_are_a_leg_each(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", "--json", order_file(tmp_path, WHOLE_HAM, HAM_STEAKS)]) == 0
    answer = json.loads(capsys.readouterr().out)
    assert answer["verdict"] == "sure"
    sides = {(line["cut"], line["carcass"], line["side"]) for line in answer["lines"]}
    assert sides == {("whole_ham", 1, 1), ("ham_steak", 1, 2)}


def test_three_hams_of_one_hog_can_not_be_cut(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    three: dict[str, object] = {"cut": "whole_ham", "amount": {"pieces": 3}}
    assert main(["plan", "--json", order_file(tmp_path, three)]) == 1
    answer = json.loads(capsys.readouterr().out)
    assert answer["verdict"] == "cant"
    assert [conflict["lines"] for conflict in answer["conflicts"]] == [[1]]


def test_the_json_has_no_number_with_a_point(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["plan", "--json", order_file(tmp_path, WHOLE_HAM, HAM_STEAKS)])

    def refuse(number: str) -> float:
        raise AssertionError(f"a number with a point: {number}")

    json.loads(capsys.readouterr().out, parse_float=refuse)


def test_the_plan_is_said_in_the_trades_words_by_side_and_owner(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", order_file(tmp_path, WHOLE_HAM)]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0] == "It can be cut."
    assert "Carcass 1, tag 114, side 1" in lines
    ham = lines[lines.index("Carcass 1, tag 114, side 1") + 1]
    assert ham.strip().startswith("1 ")
    assert ham.endswith("Jørgen & Łucja <O'Neil>")


def test_the_order_may_come_by_standard_input(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    text = Path(order_file(tmp_path, WHOLE_HAM)).read_text("utf-8")
    monkeypatch.setattr("sys.stdin", io.StringIO(text))
    assert main(["plan", "-"]) == 0
    assert capsys.readouterr().out.startswith("It can be cut.")


@pytest.mark.parametrize(
    ("wrong", "fields"),
    [
        ({"thickness": "thick", "ribs": "7"}, {"thickness": "thick", "ribs": "7"}),
        ({"cut": "drumstick", "finishes": ["dyed"]}, {"cut": "drumstick", "finishes/0": "dyed"}),
        ({"share": 7}, {"share": "7"}),
    ],
)
def test_a_wrong_file_names_line_and_field_of_everything_wrong(
    tmp_path: Path,
    wrong: dict[str, object],
    fields: dict[str, str],
    capsys: pytest.CaptureFixture[str],
) -> None:
    path = tmp_path / "wrong.json"
    choice = {"line": 1, "share": 1, **WHOLE_HAM, **wrong}
    path.write_text(json.dumps({**ORDER, "choices": [choice]}, indent=1), "utf-8")
    assert main(["plan", str(path)]) == 2
    lines = path.read_text("utf-8").splitlines()
    found: dict[str, str] = {}
    for each in capsys.readouterr().err.splitlines():
        match = re.fullmatch(re.escape(str(path)) + r":(\d+):(\d+): /choices/0/(\S+): .+", each)
        assert match is not None, each
        found[match[3]] = lines[int(match[1]) - 1]
    assert set(found) == set(fields)
    for field, typed in fields.items():
        assert typed in found[field]


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"{", "this is not JSON"),
        (b"\xff\xfe\x00", "not text in UTF-8"),
        (None, "can't be read"),
        (json.dumps({**ORDER, "choices": [], "settings": {"x": 1.5}}).encode(), "with a point"),
    ],
)
def test_what_is_no_order_file_ends_with_status_2(
    tmp_path: Path, content: bytes | None, said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "order.json"
    if content is not None:
        path.write_bytes(content)
    assert main(["plan", str(path)]) == 2
    assert said in capsys.readouterr().err


def test_every_code_of_the_order_file_has_its_sentence_in_both_languages() -> None:
    from desktop.shell.plan import fault_text

    root = Path(__file__).parents[3] / "shared"
    written = "".join(path.read_text("utf-8") for path in root.glob("orderfile*.py"))
    calls = re.findall(r'(?:\.fault|\.slip|_known)\((?:[^()]|\([^()]*\))*?"([a-z_]+)"', written)
    codes = {code for code in calls if code not in {"number", "leader", "line", "share"}}
    assert {"syntax", "unknown_key", "not_a_weight", "no_such_cut", "owned_twice"} <= codes
    for language in LANGUAGES:
        for code in codes:
            fault = FileFault("/choices/0", 3, 4, code, "asked", "found")
            assert fault_text("f", fault, Words(language, strict=True)).startswith("f:3:4: ")


def test_a_shops_folder_without_records_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", order_file(tmp_path, WHOLE_HAM), "--shop", str(tmp_path / "no")]) == 1
    assert "There are no records at" in capsys.readouterr().err
