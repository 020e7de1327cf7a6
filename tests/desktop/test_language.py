"""The window's language: English is in the code, Spanish in its file, and both can be changed."""

import ast
import gc
import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QLocale, QTranslator
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

import desktop
from desktop.bench import Bench
from desktop.block.place import BlockPlace
from desktop.language import Language
from desktop.look.space import column
from desktop.paths import resources
from desktop.places_bar import PlacesBar
from printing.words import Words
from tests.desktop.block.hog import hanging
from tests.printing.words.test_one_word import calls_a_half_lado
from tests.printing.words.test_quotation_marks import quoted_wrongly

TRANSLATIONS = resources() / "translations"
SPANISH = TRANSLATIONS / "steelyard_es.ts"
DESKTOP = Path(desktop.__file__).parent
CALLED = ("translate", "QCoreApplication.translate")


@pytest.fixture
def language(qapp: QApplication) -> Iterator[Language]:
    """The program's languages; English again afterwards, in the locale there was."""
    before = QLocale()
    language = Language(qapp, TRANSLATIONS)
    yield language
    language.use("en")
    QLocale.setDefault(before)


def _messages() -> list[tuple[str, str, ElementTree.Element]]:
    """Context, English and the translation of every string of the window."""
    return [
        (
            context.findtext("name", ""),
            message.findtext("source", ""),
            next(message.iter("translation")),
        )
        for context in ElementTree.parse(SPANISH).getroot().iter("context")
        for message in context.iter("message")
    ]


def test_every_sentence_is_kept_under_a_name_that_is_asked_for() -> None:
    """`dialog.tr(…)` outside its class is kept under "dialog", and nobody asks for that."""
    assert [name for name, _, _ in _messages() if not name.lstrip("_")[:1].isupper()] == []


def test_english_needs_no_file(qapp: QApplication, tmp_path: Path) -> None:
    before = QLocale()
    language = Language(qapp, tmp_path)
    assert language.use("en")
    assert language.now == "en"
    QLocale.setDefault(before)


def test_a_language_without_words_changes_nothing(qapp: QApplication, tmp_path: Path) -> None:
    language = Language(qapp, tmp_path)
    assert not language.use("es")
    assert language.now == "en"


def test_spanish_loads_and_is_left_again(language: Language) -> None:
    assert language.use("es")
    assert QCoreApplication.translate("Places", "Block") == "Mesa"
    assert language.use("en")
    assert QCoreApplication.translate("Places", "Block") == "Block"


def test_words_rewritten_under_the_running_program_stay_as_they_were_read(
    qapp: QApplication, tmp_path: Path
) -> None:
    """Qt's own loading maps the file: emptied in place, the next sentence ended the program."""
    there = tmp_path / "steelyard_es.qm"
    there.write_bytes(SPANISH.with_suffix(".qm").read_bytes())
    before = QLocale()
    language = Language(qapp, tmp_path)
    assert language.use("es")
    there.write_bytes(b"")
    gc.collect()
    for context, text, said in _messages():
        assert QCoreApplication.translate(context, text) == said.text
    assert not language.use("es"), "what is no longer there can't be taken on"
    assert QCoreApplication.translate("Places", "Block") == "Mesa", "and nothing has changed"
    assert language.use("en")
    QLocale.setDefault(before)


def test_no_string_is_left_unfinished() -> None:
    messages = _messages()
    assert len(messages) > 700
    left = [(context, text) for context, text, said in messages if not said.text]
    left += [(context, text) for context, text, said in messages if said.get("type")]
    assert left == []


def test_every_field_of_a_sentence_is_in_its_translation() -> None:
    """A field that is lost or misspelled would stop the window with a KeyError."""
    field = re.compile(r"{\w*}")
    for context, text, said in _messages():
        found = sorted(field.findall(said.text or ""))
        assert found == sorted(field.findall(text)), (context, text)


def test_every_alt_letter_is_kept() -> None:
    letter = re.compile(r"&\w")
    for context, text, said in _messages():
        found = len(letter.findall(said.text or ""))
        assert found == len(letter.findall(text)), (context, text)
        assert "amp;" not in (said.text or ""), (context, text)


def test_what_is_quoted_stands_between_one_kind_of_marks() -> None:
    """“ and ”, as Spanish is written in the US; so too in the manual of both languages."""
    for context, text, said in _messages():
        assert not quoted_wrongly(text), (context, text)
        assert not quoted_wrongly(said.text or ""), (context, text)
        assert '"' not in (said.text or ""), (context, text)
    pages = sorted((DESKTOP / "help").rglob("*.md"))
    assert len(pages) > 10
    for page in pages:
        for line in page.read_text("utf-8").splitlines():
            assert not quoted_wrongly(line), (page, line)


def test_half_a_carcass_is_a_media_canal() -> None:
    wrong = [
        (context, said.text)
        for context, text, said in _messages()
        if calls_a_half_lado(text.replace("&", ""), said.text or "")
    ]
    assert wrong == []


def test_the_compiled_words_are_those_of_the_file(qapp: QApplication) -> None:
    compiled = QTranslator(qapp)
    assert compiled.load(str(SPANISH.with_suffix(".qm")))
    for context, text, said in _messages():
        assert compiled.translate(context, text) == said.text, "run lrelease"


def test_bar_and_block_change_their_words_without_a_restart(
    qtbot: QtBot, bench: Bench, language: Language
) -> None:
    hanging(bench)
    window = QWidget()
    qtbot.addWidget(window)
    bar, block = PlacesBar(window), BlockPlace(bench, window)
    column(window).addWidget(bar)
    block.show_carcass(1)
    view = block.view
    assert view.leave.text() == "List (Esc)"
    assert language.use("es")
    bench.words = Words("es", strict=True)
    for widget in (bar, block):
        QCoreApplication.sendEvent(widget, QEvent(QEvent.Type.LanguageChange))
    assert [one.text() for one in bar.buttons.values()] == [
        "Mostrador",
        "Riel",
        "Mesa",
        "Empaque",
        "Oficina",
    ]
    assert block.title() == "Mesa"
    assert view.leave.text() == "Lista (Esc)"
    assert view.heading.text().startswith("Arete ")
    assert view.heading.text().endswith("antes del cuchillo")
    read = ("&Seguir leyendo", "Ya &leí la hoja 1", "&Empezar a cortar")
    assert view.main.text() in read


def test_every_sentence_is_seen_by_the_tool_that_collects_them() -> None:
    """Lupdate knows `translate` by that name and with its words written there, not by another.

    Under any other name a sentence never comes into the file, and stays English in silence.
    """
    unseen: list[str] = []
    for path in sorted(DESKTOP.rglob("*.py")):
        source = path.read_text("utf-8")
        if "QT_TRANSLATE_NOOP" in source:
            continue  # marked where they are written
        for node in ast.walk(ast.parse(source)):
            if isinstance(node, ast.Assign) and "QCoreApplication.translate" in _values(node):
                if "translate" not in ast.unparse(node.targets[0]):
                    unseen.append(f"{path.name}:{node.lineno}")
            elif isinstance(node, ast.JoinedStr):
                if any(f"{called}(" in ast.unparse(node) for called in (*CALLED[1:], "self.tr")):
                    unseen.append(f"{path.name}:{node.lineno} inside an f-string")
            elif isinstance(node, ast.Call) and ast.unparse(node.func) in CALLED:
                texts = node.args[:2]
                if len(texts) < 2 or not all(isinstance(one, ast.Constant) for one in texts):
                    unseen.append(f"{path.name}:{node.lineno}")
    assert unseen == []


def _values(node: ast.Assign) -> list[str]:
    values = node.value.elts if isinstance(node.value, ast.Tuple) else [node.value]
    return [ast.unparse(one) for one in values]
