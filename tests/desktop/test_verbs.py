"""One verb for one act: Keep takes a form in, Leave it goes without, Close shuts what is kept."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

import pytest

import desktop

CODE = Path(desktop.__file__).parent
LEAVING = {"Leave it", "Close", "Stop"}  # what is being written is stopped first
OTHER_WORDS = {
    "Leave", "Leave them", "Cancel", "OK", "Ok", "Done", "Discard", "Save", "Keep it", "Keep them",
    "Accept", "Apply", "Exit",
}  # fmt: skip


def _attribute(call: ast.Call) -> str:
    return call.func.attr if isinstance(call.func, ast.Attribute) else ""


def plain(text: str) -> str:
    """A button's words without its accelerator and its keys: "&Keep (Ctrl+Enter)" is Keep."""
    return re.sub(r"\s*\([^)]*\)$", "", text.replace("&", "")).strip()


def calls(named: str) -> Iterator[tuple[str, ast.Call]]:
    for path in sorted(CODE.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and _attribute(node) == named:
                yield f"{path.relative_to(CODE)}:{node.lineno}", node


def written(node: ast.AST) -> set[str]:
    """The sentences in an expression, whichever of them is shown."""
    return {
        plain(one.args[-1].value)
        for one in ast.walk(node)
        if isinstance(one, ast.Call)
        and _attribute(one) in ("tr", "translate")
        and one.args
        and isinstance(one.args[-1], ast.Constant)
        and isinstance(one.args[-1].value, str)
    }


def test_a_form_is_left_and_a_list_is_closed_everywhere_by_the_same_words() -> None:
    found = {at: call.args for at, call in calls("set_words") if len(call.args) == 4}
    assert len(found) > 40
    wrong = {at: written(args[3]) - LEAVING for at, args in found.items()}
    assert {at: words for at, words in wrong.items() if words} == {}
    keeping = {
        at: {one for one in written(args[2]) if one.startswith("Keep")}
        for at, args in found.items()
    }
    mixed = {at: words for at, words in keeping.items() if words - {"Keep"}}
    assert mixed == {}


def test_a_button_beside_a_form_says_nothing_else_for_it() -> None:
    said = {
        at: words
        for named in ("setText", "ask", "set_words", "addButton")
        for at, call in calls(named)
        if (words := set().union(*map(written, call.args)) & OTHER_WORDS)
    }
    assert said == {}


def accelerators(dialog: ast.ClassDef, spanish: dict[tuple[str, str], str] | None) -> list[str]:
    """The accelerator of each of a dialog's widgets: one of them, where its words change."""
    at: dict[str, str] = {}
    for call in (one for one in ast.walk(dialog) if isinstance(one, ast.Call)):
        if _attribute(call) not in ("setText", "set_label", "set_words"):
            continue
        assert isinstance(call.func, ast.Attribute)
        whose = ast.unparse(call.func.value)
        for n, argument in enumerate(call.args):
            for one in ast.walk(argument):
                if isinstance(one, ast.Call) and _attribute(one) == "tr":
                    words = one.args[0]
                    assert isinstance(words, ast.Constant)
                    shown = str(words.value)
                    if spanish is not None:
                        shown = spanish.get((dialog.name, shown), "")
                    letter = re.search(r"&([^&\s])", shown.replace("&&", ""))
                    if letter:
                        at[f"{whose} {n}"] = letter[1].lower()
    return list(at.values())


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_two_of_a_dialog_have_the_same_accelerator(language: str) -> None:
    spanish = None if language == "en" else translated()
    twice: dict[str, list[str]] = {}
    seen = 0
    for path in sorted(CODE.rglob("*.py")):
        for node in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.ClassDef) and any(
                "Dialog" in ast.unparse(b) for b in node.bases
            ):
                letters = accelerators(node, spanish)
                seen += len(letters)
                double = sorted({one for one in letters if letters.count(one) > 1})
                if double:
                    twice[f"{path.relative_to(CODE)} {node.name}"] = double
    assert seen > 250
    assert twice == {}


def translated() -> dict[tuple[str, str], str]:
    root = ElementTree.parse(CODE / "resources" / "translations" / "steelyard_es.ts").getroot()
    return {
        (context.findtext("name") or "", one.findtext("source") or ""): (
            one.findtext("translation") or ""
        )
        for context in root.iter("context")
        for one in context.iter("message")
    }
