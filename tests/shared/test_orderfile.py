"""The open order file: round trips, and faults that name pointer, line and column.

The schema is checked by the jsonschema library, independent of the reader.
"""

import json
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from shared.carcass import anatomy
from shared.carcass.carcass import Carcass, Gone, Holding, Measured, Share, SideWeights
from shared.carcass.dressing import Dressing
from shared.cutting.order import Amount, Choice, Package, Question, Settings
from shared.cutting.plan import plan
from shared.orderfile import FileFault, OrderFile, read, read_form, schema, write
from shared.units import Weight

GOOD = """{
 "steelyard_order": 1,
 "species": "pork",
 "catalogue_version": 1,
 "settings": {"kerf_saw": "1/16 in", "own_lengths": {"rib": "13 1/2 in"}},
 "carcasses": [
  {"tag": "114", "age": "under_30", "skin": "scalded", "split": null, "live": "250 lb",
   "hot": [{"whole": "92 lb"}, {"fore": "40 lb", "hind": "53.50 lb"}],
   "gone": [{"part": "liver", "side": 0, "weight": "1 lb 4 oz", "reason": "spots"}],
   "measured": [{"stretch": "rib", "side": 2, "length": "13 1/2 in"}]}
 ],
 "shares": [
  {"number": 1, "owner": "Jørgen & Łucja <O'Neil>", "holdings": [{"carcass": 1, "side": 1}]},
  {"number": 2, "owner": "Ana", "holdings": [
   {"carcass": 1, "side": 2, "fraction": "1/2"}], "leader": 1}
 ],
 "choices": [
  {"line": 1, "share": 1, "cut": "whole_ham", "amount": {"pieces": 1}, "finishes": ["smoked"]},
  {"line": 2, "share": 2, "cut": "chops", "amount": {"slices": 14}, "thickness": "3/4 in",
   "package": {"pieces": 2}, "pinned": [{"carcass": 1, "side": 2, "count": 14}]},
  {"line": 3, "share": 2, "cut": "ground", "amount": "rest", "lean": "80 %",
   "package": {"weight": "1 lb"}}
 ]
}
"""

Change = Callable[[dict[str, Any]], object]


def schema_takes(value: dict[str, Any]) -> bool:
    return Draft202012Validator(schema()).is_valid(value)


def faults(text: str) -> tuple[FileFault, ...]:
    found = read_form(text)
    assert isinstance(found, tuple)
    return found


def only_fault(text: str) -> FileFault:
    (fault,) = faults(text)
    return fault


def changed(change: Change) -> dict[str, Any]:
    value = json.loads(GOOD)
    change(value)
    return value


def test_the_schema_is_a_schema_and_takes_the_good_file() -> None:
    Draft202012Validator.check_schema(schema())
    assert schema_takes(json.loads(GOOD))


def test_a_good_file_is_read_into_values() -> None:
    found = read_form(GOOD)
    assert isinstance(found, OrderFile)
    assert found.species == "pork"
    carcass = found.question.carcasses[0]
    assert carcass.hot[1].nanograms == Weight(9350, "lb", -2).nanograms
    assert carcass.gone[0].weight is not None
    # 1 lb = 453.59237 g exactly (agreement of 1959), an ounce is a sixteenth of it
    assert carcass.gone[0].weight.nanograms * 16 == 20 * 453_592_370_000
    assert carcass.measured == (Measured("rib", 2, 27 * 101_600),)
    assert found.question.shares[1] == Share(2, "Ana", (Holding(0, 2, "", Fraction(1, 2)),), 1)
    chops = found.question.choices[1]
    assert chops.thickness == 152_400
    assert chops.pinned == ((0, 2, 14),)
    assert found.question.choices[2].lean == Fraction(4, 5)
    assert found.question.settings == Settings(
        kerf_saw=12_700, own_lengths=(("rib", 27 * 101_600),)
    )


def test_writing_gives_back_what_was_read() -> None:
    found = read_form(GOOD)
    assert isinstance(found, OrderFile)
    text = write(found.species, found.question)
    assert read_form(text) == found
    assert schema_takes(json.loads(text))


@pytest.mark.parametrize(
    ("find", "put", "code", "pointer", "line"),
    [
        ('"side": 0,', '"side": 0.0,', "number_with_point", "/carcasses/0/gone/0/side", 9),
        ('"side": 0,', '"side": 1e0,', "number_with_point", "/carcasses/0/gone/0/side", 9),
        ('"live": "250 lb"', '"live": NaN', "syntax", "/carcasses/0/live", 7),
        ('"tag": "114",', '"tag": "114", "tag": "115",', "key_twice", "/carcasses/0/tag", 7),
        ('"line": 2,', '"line": 2', "syntax", "/choices/1", 19),
        ('"amount": {"pieces": 1}', '"amount": {"pieces": 1,}', "syntax", "/choices/0/amount", 18),
        ('"owner": "Ana"', '"owner": "Ana', "syntax", "/shares/1", 14),
        ('"owner": "Ana"', '"owner": "\\ud83d"', "bad_text", "/shares/1/owner", 14),
        ('"line": 3', '"line": 99999999999999999999', "number_too_long", "/choices/2/line", 21),
        ('"line": 3', '"line": 03', "syntax", "/choices/2", 21),
    ],
)
def test_syntax_faults_name_pointer_and_line(
    find: str, put: str, code: str, pointer: str, line: int
) -> None:
    assert GOOD.count(find) == 1
    fault = only_fault(GOOD.replace(find, put))
    assert (fault.code, fault.pointer, fault.line) == (code, pointer, line)


def test_a_fault_names_the_column_of_the_value() -> None:
    text = GOOD.replace('"thickness": "3/4 in"', '"thickness": "three quarters"')
    fault = only_fault(text)
    line = text.splitlines()[fault.line - 1]
    assert line[fault.column - 1 :].startswith('"three quarters"')
    assert (fault.pointer, fault.code) == ("/choices/1/thickness", "not_a_length")
    assert fault.found == "three quarters"


def test_all_faults_are_found_in_one_reading_in_the_order_of_the_file() -> None:
    text = GOOD.replace('"scalded"', '"boiled"').replace('"3/4 in"', '"3/4"').replace("1 lb 4", "x")
    assert [fault.pointer for fault in faults(text)] == [
        "/carcasses/0/skin",
        "/carcasses/0/gone/0/weight",
        "/choices/1/thickness",
    ]


def put(*path: str | int) -> Callable[[object], Change]:
    def to(new: object) -> Change:
        def change(value: dict[str, Any]) -> None:
            spot: Any = value
            for step in path[:-1]:
                spot = spot[step]
            spot[path[-1]] = new

        return change

    return to


def drop(*path: str | int) -> Change:
    def change(value: dict[str, Any]) -> None:
        spot: Any = value
        for step in path[:-1]:
            spot = spot[step]
        del spot[path[-1]]

    return change


PLANTED: list[tuple[Change, str]] = [
    (put("steelyard_order")(2), "/steelyard_order"),
    (put("steelyard_order")(True), "/steelyard_order"),
    (put("colour")("red"), "/colour"),
    (put("species")("Pork"), "/species"),
    (put("species")(7), "/species"),
    (drop("choices"), ""),
    (drop("species"), ""),
    (put("carcasses")([]), "/carcasses"),
    (put("carcasses")({}), "/carcasses"),
    (put("settings", "kerf_saw")("-1/16 in"), "/settings/kerf_saw"),
    (put("settings", "kerf_saw")("1/16"), "/settings/kerf_saw"),
    (put("settings", "at_block")("yes"), "/settings/at_block"),
    (put("settings", "own_lengths")([]), "/settings/own_lengths"),
    (put("settings", "own_lengths", "rib")("0 in"), "/settings/own_lengths/rib"),
    (put("carcasses", 0, "age")("old"), "/carcasses/0/age"),
    (put("carcasses", 0, "split")("no"), "/carcasses/0/split"),
    (put("carcasses", 0, "live")("0 lb"), "/carcasses/0/live"),
    (put("carcasses", 0, "live")(250), "/carcasses/0/live"),
    (put("carcasses", 0, "live")("250 pounds"), "/carcasses/0/live"),
    (put("carcasses", 0, "live")("1/0 lb"), "/carcasses/0/live"),
    (put("carcasses", 0, "hot")([{}]), "/carcasses/0/hot"),
    (put("carcasses", 0, "hot", 0, "left")("1 lb"), "/carcasses/0/hot/0/left"),
    (drop("carcasses", 0, "gone", 0, "part"), "/carcasses/0/gone/0"),
    (put("carcasses", 0, "gone", 0, "side")(3), "/carcasses/0/gone/0/side"),
    (put("carcasses", 0, "gone", 0, "side")(True), "/carcasses/0/gone/0/side"),
    (put("carcasses", 0, "measured", 0, "side")(0), "/carcasses/0/measured/0/side"),
    (put("shares", 0, "number")(0), "/shares/0/number"),
    (put("shares", 0, "number")("1"), "/shares/0/number"),
    (put("shares", 0, "owner")(None), "/shares/0/owner"),
    (put("shares", 0, "holdings")([]), "/shares/0/holdings"),
    (put("shares", 0, "holdings", 0, "carcass")(0), "/shares/0/holdings/0/carcass"),
    (put("shares", 0, "holdings", 0, "quarter")("front"), "/shares/0/holdings/0/quarter"),
    (put("shares", 1, "holdings", 0, "fraction")("1/0"), "/shares/1/holdings/0/fraction"),
    (put("shares", 1, "holdings", 0, "fraction")("0/2"), "/shares/1/holdings/0/fraction"),
    (put("shares", 1, "leader")("1"), "/shares/1/leader"),
    (put("choices", 0, "line")(0), "/choices/0/line"),
    (drop("choices", 0, "amount"), "/choices/0"),
    (put("choices", 0, "amount")("some"), "/choices/0/amount"),
    (put("choices", 0, "amount")({}), "/choices/0/amount"),
    (put("choices", 0, "amount")({"pieces": 0}), "/choices/0/amount/pieces"),
    (put("choices", 0, "amount")({"pieces": 1, "slices": 2}), "/choices/0/amount"),
    (put("choices", 0, "amount")({"pieces": 1, "of": "side"}), "/choices/0/amount"),
    (put("choices", 0, "amount")({"pounds": 5}), "/choices/0/amount/pounds"),
    (put("choices", 0, "amount")({"fraction": "1/2", "of": "leg"}), "/choices/0/amount/of"),
    (put("choices", 0, "cut")("Whole ham"), "/choices/0/cut"),
    (put("choices", 0, "finishes")("smoked"), "/choices/0/finishes"),
    (put("choices", 0, "finishes")(["Smoked"]), "/choices/0/finishes/0"),
    (put("choices", 0, "ribs")(0), "/choices/0/ribs"),
    (put("choices", 0, "package")({"pieces": 1, "weight": "1 lb"}), "/choices/0/package"),
    (put("choices", 0, "package")("1 lb"), "/choices/0/package"),
    (put("choices", 2, "lean")("80"), "/choices/2/lean"),
    (put("choices", 2, "lean")("0 %"), "/choices/2/lean"),
    (put("choices", 0, "made")(1), "/choices/0/made"),
    (drop("choices", 1, "pinned", 0, "count"), "/choices/1/pinned/0"),
    (put("choices", 1, "pinned", 0, "count")(-1), "/choices/1/pinned/0/count"),
]


@pytest.mark.parametrize(("change", "pointer"), PLANTED)
def test_reader_and_schema_agree_on_planted_faults(change: Change, pointer: str) -> None:
    value = changed(change)
    assert not schema_takes(value)
    assert pointer in {fault.pointer for fault in faults(json.dumps(value, indent=1))}


BEYOND_THE_SCHEMA: list[tuple[Change, str, str]] = [
    (put("shares", 1, "number")(1), "/shares/1/number", "number_twice"),
    (put("shares", 1, "leader")(3), "/shares/1/leader", "no_such_share"),
    (put("shares", 1, "leader")(2), "/shares/1/leader", "no_such_share"),
    (put("shares", 1, "holdings", 0, "carcass")(2), "/shares/1/holdings/0/carcass",
     "no_such_carcass"),
    (put("shares", 1, "holdings", 0, "side")(1), "/shares/1/holdings/0/fraction", "owned_twice"),
    (put("shares", 1, "holdings", 0, "fraction")("3/2"), "/shares/1/holdings/0/fraction",
     "not_a_share"),
    (put("choices", 2, "line")(1), "/choices/2/line", "number_twice"),
    (put("choices", 2, "share")(3), "/choices/2/share", "no_such_share"),
    (put("choices", 1, "pinned", 0, "carcass")(2), "/choices/1/pinned/0/carcass",
     "no_such_carcass"),
]  # fmt: skip


@pytest.mark.parametrize(("change", "pointer", "code"), BEYOND_THE_SCHEMA)
def test_the_reader_checks_what_a_schema_cannot_say(
    change: Change, pointer: str, code: str
) -> None:
    value = changed(change)
    assert schema_takes(value)
    fault = faults(json.dumps(value))[0]
    assert (fault.pointer, fault.code) == (pointer, code)


@pytest.mark.parametrize("text", ["", " ", "[", '{"a"', "nul", "{]", '"', "\ufeff", "[" * 5000])
def test_any_text_gives_a_fault_and_no_exception(text: str) -> None:
    assert faults(text)[0].line == 1


codes = st.from_regex(r"[a-z][a-z0-9_]{0,10}", fullmatch=True)
words = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12)
counts = st.integers(1, 9999)
lengths = st.integers(1, 20_000_000)
fractions = st.fractions(Fraction(1, 1000), 1, max_denominator=1000)
weights = st.builds(
    Weight, st.integers(1, 10**6), st.sampled_from(["lb", "oz", "kg", "g"]), st.integers(-4, 0)
).filter(lambda one: one.exact_nanograms.denominator == 1)
maybe_weight = st.none() | weights
flags = st.booleans()
side_weights = st.builds(SideWeights, maybe_weight, maybe_weight, maybe_weight)
amounts = st.one_of(
    st.sampled_from([Amount("all"), Amount("rest")]),
    st.builds(Amount, st.sampled_from(["pieces", "slices", "up_to", "at_least"]), counts),
    st.builds(Amount, st.just("pounds"), weight=weights),
    st.builds(
        Amount,
        st.just("fraction"),
        fraction=fractions,
        of=st.sampled_from(["side", "animal"]),
    ),
)
packages = st.builds(Package, st.none() | counts, st.none()) | st.builds(
    Package, st.none(), weights
)
on_off, in_out = st.sampled_from(["", "on", "off"]), st.sampled_from(["", "in", "out"])
carcasses = st.builds(
    Carcass,
    species=st.just("pork"),
    tag=words,
    sex=words,
    age=st.sampled_from(["under_30", "30_and_over", "unknown"]),
    skin=st.sampled_from(["scalded", "skinned", "unknown"]),
    regime=st.sampled_from(["inspected", "custom"]),
    split=st.sampled_from([None, True, False]),
    live=maybe_weight,
    hot=st.tuples(side_weights, side_weights),
    chilled=st.tuples(side_weights, side_weights),
    hot_whole=maybe_weight,
    dressing=st.builds(Dressing, on_off, on_off, in_out, in_out),
    booked=maybe_weight,
    gone=st.lists(
        st.builds(Gone, codes, st.integers(0, 2), maybe_weight, words, flags, flags), max_size=2
    ).map(tuple),
    measured=st.lists(st.builds(Measured, codes, st.integers(1, 2), lengths), max_size=2).map(
        tuple
    ),
)
shares = st.tuples(
    st.builds(
        Share,
        st.just(1),
        words,
        st.builds(Holding, st.just(0), st.just(1), st.just(""), fractions).map(lambda one: (one,)),
    ),
    st.builds(
        Share,
        st.just(7),
        words,
        st.builds(
            Holding, st.just(0), st.just(2), st.sampled_from(["fore", "hind", ""]), fractions
        ).map(lambda one: (one,)),
        st.sampled_from([None, 1]),
    ),
)
choices = st.lists(
    st.builds(
        Choice,
        line=st.integers(1, 999),
        share=st.sampled_from([1, 7]),
        cut=codes,
        amount=amounts,
        way=st.just("") | codes,
        thickness=st.none() | lengths,
        piece_weight=maybe_weight,
        ribs=st.none() | st.integers(1, 15),
        lean=st.none() | fractions,
        package=packages,
        finishes=st.lists(codes, max_size=2).map(tuple),
        note=words,
        pinned=st.lists(
            st.tuples(st.just(0), st.integers(0, 2), st.integers(0, 99)), max_size=2
        ).map(tuple),
        made=st.booleans(),
    ),
    max_size=3,
    unique_by=lambda one: one.line,
).map(tuple)
settings = st.builds(
    Settings,
    kerf_saw=st.none() | st.integers(0, 100_000),
    kerf_slicer=st.none() | st.integers(0, 100_000),
    at_block=st.booleans(),
    own_lengths=st.dictionaries(codes, lengths, max_size=2).map(lambda one: tuple(one.items())),
)
questions = st.builds(Question, st.tuples(carcasses), shares, choices, settings)


@given(questions)
def test_every_question_comes_back_from_its_file(question: Question) -> None:
    text = write("pork", question)
    assert read_form(text) == OrderFile("pork", 1, question)
    assert schema_takes(json.loads(text))


def test_the_same_question_gives_the_same_text() -> None:
    found = read_form(GOOD)
    assert isinstance(found, OrderFile)
    again = read_form(write("pork", found.question))
    assert isinstance(again, OrderFile)
    assert write("pork", again.question) == write("pork", found.question)


EXAMPLES = sorted((Path(__file__).parents[2] / "demo" / "orders").glob("*.json"))


def test_every_species_has_a_worked_example() -> None:
    assert {path.stem for path in EXAMPLES} == set(anatomy.species())


@pytest.mark.parametrize("path", EXAMPLES, ids=[path.stem for path in EXAMPLES])
def test_the_worked_examples_are_read_and_stand(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert schema_takes(json.loads(text))
    found = read(text)
    assert isinstance(found, OrderFile), found
    assert found.species == path.stem
    assert read(write(found.species, found.question)) == found
    answer = plan(found.question, anatomy.catalogue(found.species))
    assert answer.verdict in ("sure", "likely"), answer.conflicts
    assert not [one for one in answer.cautions if one.code in ("rest_empty", "tight")]
